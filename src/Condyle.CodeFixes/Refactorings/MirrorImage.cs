using System.Globalization;
using System.Text.RegularExpressions;
using Condyle.Model;
using Condyle.Naming;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Whether what is added to a rig is what was there, on the other side.</summary>
internal static class MirrorImage
{
    private static readonly Regex Name = new("[A-Za-z0-9_.-]+", RegexOptions.CultureInvariant);
    private static readonly Regex Vector = new(@"\((?<x>[^ ()]+)(?= [^ ()]+ [^ ()]+\))", RegexOptions.CultureInvariant);

    public static bool IsAllOf(RigAddition rig, Conventions conventions)
    {
        var images = rig.Before.Select(line => (line, Image: Mirrored(line, conventions))).Where(pair => pair.Image != pair.line || !IsNamed(pair.line)).Select(pair => Unsigned(pair.Image));
        return rig.Added.Count > 0 && RigReading.Without(rig.Added.Select(Unsigned), images).Count == 0;
    }

    // What has a name and no side is in the middle, and is there once.
    private static bool IsNamed(string line) => Enum.GetNames(typeof(NodeKind)).Append("label").Append("skeleton").Any(kind => line.StartsWith(kind + " ", StringComparison.Ordinal));

    private static string Mirrored(string line, Conventions conventions) =>
        Name.Replace(line, name => SidedName.Of(name.Value, conventions)?.Counterpart ?? name.Value);

    // Whether X has changed its sign where it has to, the rules on sides tell: here it may have.
    private static string Unsigned(string line) => Vector.Replace(line, vector =>
        double.TryParse(vector.Groups["x"].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var x) ? "(" + Math.Abs(x).ToString(CultureInfo.InvariantCulture) : vector.Value);
}
