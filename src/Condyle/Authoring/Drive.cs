using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A sentence that makes a node follow a source. It is finished by saying how.</summary>
public readonly record struct Drive : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Drive(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "drive");

    internal int Id => HandleGuard.Of(draft, "drive", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Writes the node's own translation and rotation so that it lands on the source. This is the kind that can be exported.</summary>
    /// <param name="source">The node to follow.</param>
    /// <returns>The drive.</returns>
    [OverloadResolutionPriority(1)]
    public Drive ByChannels(Node source, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => ByChannels(source, Draft.Place(file, line));

    /// <inheritdoc cref="ByChannels(Node, string, int)"/>
    public Drive ByChannels(Node source) => ByChannels(source, PlaceId.None);

    internal Drive ByChannels(Node source, PlaceId place)
    {
        Draft.Record(new DriveSourced(place, Id, DriveWay.Channels, source.IdIn(Draft)));
        return this;
    }

    /// <summary>Replaces the node's placement by the source's frame and leaves its channels alone. Right for groups; nothing of it can be exported.</summary>
    /// <param name="source">The node to follow.</param>
    /// <returns>The drive.</returns>
    [OverloadResolutionPriority(1)]
    public Drive ByMatrix(Node source, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => ByMatrix(source, Draft.Place(file, line));

    /// <inheritdoc cref="ByMatrix(Node, string, int)"/>
    public Drive ByMatrix(Node source) => ByMatrix(source, PlaceId.None);

    internal Drive ByMatrix(Node source, PlaceId place)
    {
        Draft.Record(new DriveSourced(place, Id, DriveWay.Matrix, source.IdIn(Draft)));
        return this;
    }

    /// <summary>Keeps the offset that the node has from its source at rest; without it the node lands on its source.</summary>
    /// <returns>The drive.</returns>
    public Drive KeepingOffset([CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => KeepingOffset(Draft.Place(file, line));

    internal Drive KeepingOffset(PlaceId place)
    {
        Draft.Record(new DriveOffsetKept(place, Id));
        return this;
    }

    /// <summary>Writes the node's scale as well.</summary>
    /// <returns>The drive.</returns>
    public Drive WithScale([CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => WithScale(Draft.Place(file, line));

    internal Drive WithScale(PlaceId place)
    {
        Draft.Record(new DriveScaled(place, Id));
        return this;
    }

    /// <summary>
    /// Writes these channels alone; the others stay with whatever else writes them, else with the animator, else at rest. So translation, rotation and scale can
    /// follow different nodes, or one of them none.
    /// </summary>
    /// <param name="channels">The channels: moves and scales by axis in the space of the node's channels, the rotation whole.</param>
    /// <returns>The drive.</returns>
    /// <exception cref="ArgumentException">There is no channel among them, or a part of the rotation.</exception>
    [OverloadResolutionPriority(1)]
    public Drive Writing(Channels channels, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Writing(channels, Draft.Place(file, line));

    /// <inheritdoc cref="Writing(Channels, string, int)"/>
    public Drive Writing(Channels channels) => Writing(channels, PlaceId.None);

    internal Drive Writing(Fact<Channels> channels, PlaceId place)
    {
        Given.Writable(channels);
        Draft.Record(new DriveChannelsSet(place, Id, channels));
        return this;
    }

    /// <summary>Keeps what a rule finds about this drive, with the reason; the analyzer and the program both honour it.</summary>
    /// <param name="rule">The rule's id, for instance <c>CDY3001</c>.</param>
    /// <param name="because">Why the team means it so.</param>
    /// <returns>The drive.</returns>
    /// <exception cref="ArgumentException">The reason is empty.</exception>
    public Drive Accept(string rule, string because, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Accept(rule, because, Draft.Place(file, line));

    internal Drive Accept(Text rule, Text because, PlaceId place)
    {
        Given.AReason(rule, because);
        Draft.Record(new Accepted(place, Id, rule, because));
        return this;
    }

    internal static Drive Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Drive));
}
