namespace Condyle.Host.Sheets;

/// <summary>A rig as a reviewer reads it: its nodes by name, where they rest, and what moves them. It is what a saved model file holds.</summary>
/// <param name="Rig">The rig's name.</param>
/// <param name="Nodes">Its nodes, parents before children.</param>
/// <param name="Relations">What moves them.</param>
internal sealed record RigSheet(string Rig, IReadOnlyList<SheetNode> Nodes, IReadOnlyList<SheetRelation> Relations);

/// <summary>A node.</summary>
/// <param name="Name">Its name; a second one of the same name has its number after it.</param>
/// <param name="Kind">Joint, copied joint, control, group or label.</param>
/// <param name="Under">Its parent's name, or null.</param>
/// <param name="Role">What an exported joint is for.</param>
/// <param name="Place">Where it rests in the world, in metres; null where that isn't known.</param>
/// <param name="Turn">How it is turned there, as a unit quaternion.</param>
/// <param name="Channels">The channels that an animator may use, of a control.</param>
/// <param name="Limits">Their ranges.</param>
/// <param name="Settings">The switches, dials and choices that were made on it.</param>
/// <param name="Shows">The text of a label.</param>
internal sealed record SheetNode(
    string Name, string Kind, string? Under, string? Role, IReadOnlyList<double>? Place, IReadOnlyList<double>? Turn, string? Channels, IReadOnlyList<SheetLimit> Limits, IReadOnlyList<SheetSetting> Settings, string? Shows);

/// <summary>What moves a node.</summary>
/// <param name="Of">The node's name.</param>
/// <param name="How">By channels, by matrix, blend, two-bone IK, …</param>
/// <param name="Sources">By what it goes.</param>
/// <param name="Says">What else is said of it, or null.</param>
internal sealed record SheetRelation(string Of, string How, IReadOnlyList<SheetSource> Sources, string? Says);

/// <summary>One thing that a node goes by.</summary>
/// <param name="Name">A node's name, or that of a switch, dial or choice.</param>
/// <param name="As">What it is for, or null: goal, pole, the option that picks it, …</param>
/// <param name="Weight">Its weight in a blend, or null.</param>
internal sealed record SheetSource(string Name, string? As, string? Weight)
{
    public override string ToString() => Name + (As is null ? "" : $" ({As})") + (Weight is null ? "" : $" × {Weight}");
}
