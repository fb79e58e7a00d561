using System.Globalization;
using System.Text.RegularExpressions;
using Condyle.Analyzers.Reporting;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Numbers in code that is said for several sides: what is opposite on them is said once, by the side's sign.</summary>
internal sealed class SaidNumbers
{
    private static readonly Regex Mark = new("\u0001(\\d+)\u0002", RegexOptions.CultureInvariant);

    private readonly List<float> values = [];

    /// <summary>Keeps a number and gives what stands for it in the code.</summary>
    public string Take(float value)
    {
        values.Add(value);
        return $"\u0001{values.Count - 1}\u0002";
    }

    /// <summary>The code that is right each time it is said; none where the times differ in more than the sides' signs.</summary>
    public static string? Written(IReadOnlyList<(string Code, SaidNumbers Numbers, Side? Side)> each, string? side)
    {
        if (each.Any(one => one.Code != each[0].Code))
            return null;
        var fits = true;
        var written = Mark.Replace(each[0].Code, mark =>
        {
            var index = int.Parse(mark.Groups[1].Value, CultureInfo.InvariantCulture);
            var first = each[0].Numbers.values[index];
            if (each.All(one => Same(one.Numbers.values[index], first)))
                return NumberCode.Of(first);
            var onLeft = first * (each[0].Side?.Sign ?? 1);
            fits &= side is not null && each.All(one => one.Side is not null && Same(one.Numbers.values[index], onLeft * one.Side.Sign));
            return $"{NumberCode.Of(onLeft)} * {side}.{nameof(Side.Sign)}";
        });
        return fits ? written : null;
    }

    private static bool Same(float one, float other) => one.Equals(other) || (one == 0 && other == 0);
}
