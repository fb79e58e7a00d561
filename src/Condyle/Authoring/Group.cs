using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A transform that only holds others: locked unless said otherwise, and never exported.</summary>
public readonly record struct Group : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Group(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "group");

    internal int Id => HandleGuard.Of(draft, "group", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>The group's name.</summary>
    public string Name => NameFact.ToString();

    internal Text NameFact => Draft.NameOf(Id);

    /// <summary>Puts the group under another node of the rig; without it the group stands in the world.</summary>
    /// <param name="parent">The node whose motion the group takes.</param>
    /// <returns>The group.</returns>
    [OverloadResolutionPriority(1)]
    public Group Under(Node parent, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Under(parent, Draft.Place(file, line));

    /// <inheritdoc cref="Under(Node, string, int)"/>
    public Group Under(Node parent) => Under(parent, PlaceId.None);

    internal Group Under(Node parent, PlaceId place)
    {
        Draft.Record(new ParentSet(place, Id, parent.IdIn(Draft)));
        return this;
    }

    /// <summary>Stands the group where another node rests, so that its channels read zero there; without it the group stands at its parent.</summary>
    /// <param name="target">The node whose rest frame the group takes.</param>
    /// <returns>The group.</returns>
    [OverloadResolutionPriority(1)]
    public Group PlacedAt(Node target, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => PlacedAt(target, Draft.Place(file, line));

    /// <inheritdoc cref="PlacedAt(Node, string, int)"/>
    public Group PlacedAt(Node target) => PlacedAt(target, PlaceId.None);

    internal Group PlacedAt(Node target, PlaceId place)
    {
        Draft.Record(new PlacedAtNode(place, Id, target.IdIn(Draft)));
        return this;
    }

    /// <summary>Stands the group at a spot that the rig's geometry gives.</summary>
    /// <param name="spot">The spot, for instance a pole point.</param>
    /// <returns>The group.</returns>
    [OverloadResolutionPriority(1)]
    public Group PlacedAt(Spot spot, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => PlacedAt(spot, Draft.Place(file, line));

    /// <inheritdoc cref="PlacedAt(Spot, string, int)"/>
    public Group PlacedAt(Spot spot) => PlacedAt(spot, PlaceId.None);

    internal Group PlacedAt(Spot spot, PlaceId place)
    {
        Draft.Record(new PlacedAtSpot(place, Id, spot.IdIn(Draft)));
        return this;
    }

    /// <summary>Frees channels of a group on purpose; a group's channels are locked otherwise.</summary>
    /// <param name="channels">The channels that may change.</param>
    /// <returns>The group.</returns>
    [OverloadResolutionPriority(1)]
    public Group Unlock(Channels channels, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Unlock(channels, Draft.Place(file, line));

    /// <inheritdoc cref="Unlock(Channels, string, int)"/>
    public Group Unlock(Channels channels) => Unlock(channels, PlaceId.None);

    internal Group Unlock(Fact<Channels> channels, PlaceId place)
    {
        Draft.Record(new LockChanged(place, Id, channels, locked: false));
        return this;
    }

    /// <summary>Keeps what a rule finds about this group, with the reason; the analyzer and the program both honour it.</summary>
    /// <param name="rule">The rule's id, for instance <c>CDY1001</c>.</param>
    /// <param name="because">Why the team means it so.</param>
    /// <returns>The group.</returns>
    /// <exception cref="ArgumentException">The reason is empty.</exception>
    public Group Accept(string rule, string because, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Accept(rule, because, Draft.Place(file, line));

    internal Group Accept(Text rule, Text because, PlaceId place)
    {
        Given.AReason(rule, because);
        Draft.Record(new Accepted(place, Id, rule, because));
        return this;
    }

    internal static Group Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Group));

    /// <summary>A group is a node.</summary>
    [TakesOpen]
    public static implicit operator Node(Group group) => new(group.Draft, group.Id);

    /// <summary>The group's name.</summary>
    /// <returns>The name.</returns>
    public override string ToString() => Name;
}
