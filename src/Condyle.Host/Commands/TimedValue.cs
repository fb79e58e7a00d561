using System.Globalization;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>What a command line says of a choice or a dial: <c>name=value</c>, or <c>name=value@seconds</c>.</summary>
/// <param name="Said">The words themselves.</param>
/// <param name="Name">The choice's or dial's name.</param>
/// <param name="Value">What it is set to.</param>
/// <param name="At">When, in seconds; the beginning unless it is said.</param>
internal sealed record TimedValue(string Said, string Name, string Value, float At)
{
    /// <summary>None where it can't be understood.</summary>
    public static TimedValue? Of(string said)
    {
        if (said.Split('=') is not [{ Length: > 0 } name, { Length: > 0 } timed])
            return null;
        return timed.Split('@') switch
        {
            [var value] => new(said, name, value, 0),
            [{ Length: > 0 } value, var at] when float.TryParse(at, NumberStyles.Float, CultureInfo.InvariantCulture, out var seconds) && float.IsFinite(seconds) && seconds >= 0 => new(said, name, value, seconds),
            _ => null,
        };
    }

    /// <exception cref="BadInputException">It lies after the motion's end.</exception>
    public TimedValue Within(float seconds, string option) => At <= seconds ? this
        : throw new BadInputException(option, string.Create(CultureInfo.InvariantCulture, $"'{Said}' comes after the motion, which ends at {seconds:0.##} s"), "Give a time within it");
}
