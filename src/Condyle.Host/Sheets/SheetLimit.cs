namespace Condyle.Host.Sheets;

/// <summary>The range of a control's channel. An end that is null is none: the channel goes on there.</summary>
/// <param name="Channel">The channel, MoveX to TurnZ.</param>
/// <param name="FromMetres">The least move.</param>
/// <param name="ToMetres">The greatest move.</param>
/// <param name="FromDegrees">The least turn.</param>
/// <param name="ToDegrees">The greatest turn.</param>
internal sealed record SheetLimit(string Channel, double? FromMetres, double? ToMetres, double? FromDegrees, double? ToDegrees)
{
    /// <summary>Move or turn, as lines say it.</summary>
    public string What() => IsTurn ? "turn" : "move";

    /// <summary>The axis and the range: <c>X -5° to 140°</c>.</summary>
    public string Range() => IsTurn ? Range(FromDegrees, ToDegrees, "°") : Range(FromMetres, ToMetres, " m");

    public override string ToString() => $"{What()} {Range()}";

    private bool IsTurn => Channel.StartsWith("Turn", StringComparison.Ordinal);

    private string Range(double? from, double? to, string unit) =>
        FormattableString.Invariant($"{Channel[^1..]} {(from is null ? "-∞" : $"{from:R}{unit}")} to {(to is null ? "∞" : $"{to:R}{unit}")}");
}
