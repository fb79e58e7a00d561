namespace Condyle.Host.Sheets;

/// <summary>A switch, dial or choice of a control.</summary>
/// <param name="Kind">Which of them.</param>
/// <param name="Name">Its name on the control.</param>
/// <param name="AtRest">Its default, in its unit; null for a choice, whose first option it is.</param>
/// <param name="From">The least value of a dial.</param>
/// <param name="To">The greatest one.</param>
/// <param name="Unit">What a dial is in: degrees, metres, share or none.</param>
/// <param name="Options">The options of a choice.</param>
internal sealed record SheetSetting(string Kind, string Name, double? AtRest, double? From, double? To, string? Unit, IReadOnlyList<string>? Options)
{
    public const string Switch = "switch", Dial = "dial", Choice = "choice";

    public override string ToString() => FormattableString.Invariant(Kind switch
    {
        Dial => $"{Kind} {Name}, {From:R} to {To:R}, at rest {AtRest:R}",
        Choice => $"{Kind} {Name} among {string.Join(", ", Options ?? [])}",
        _ => $"{Kind} {Name}, at rest {AtRest:R}",
    });
}
