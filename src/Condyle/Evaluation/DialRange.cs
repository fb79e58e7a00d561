using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A dial's range and its default.</summary>
internal readonly record struct DialRange(float From, float To, float AtRest)
{
    /// <exception cref="RigGeometryException">A number isn't known, or the default lies outside.</exception>
    public static DialRange Of(RigDial dial)
    {
        var range = new DialRange(
            Facts.Known(dial.From, $"The least value of {dial.Title}"), Facts.Known(dial.To, $"The greatest value of {dial.Title}"), Facts.Known(dial.AtRest, $"The default of {dial.Title}"));
        return range.AtRest >= range.From && range.AtRest <= range.To
            ? range
            : throw new RigGeometryException(
                $"{dial.Title} on {dial.Control?.Title ?? "a control"} is {Invariant.Print(range.AtRest)} at rest. Give a default from {Invariant.Print(range.From)} to {Invariant.Print(range.To)}.", dial);
    }
}
