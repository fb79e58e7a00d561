using Condyle.Model;

namespace Condyle.Rules;

/// <summary>The values that a dial, a switch or a measured angle can have.</summary>
internal readonly record struct SourceRange(double From, double To, double AtRest)
{
    /// <summary>None where it isn't known.</summary>
    public static SourceRange? Of(RigElement? source) => source switch
    {
        RigDial dial when dial.From.TryKnown(out var from) && dial.To.TryKnown(out var to) && dial.AtRest.TryKnown(out var rest) => new(from, to, rest),
        RigSwitch given when given.AtRest.TryKnown(out var rest) => new(0, 1, rest),
        RigMeasure => new(-180, 180, 0),
        _ => null,
    };

    private double Tolerance => 1e-4 * (To - From);

    public bool Holds(double value) => value >= From - Tolerance && value <= To + Tolerance;
}
