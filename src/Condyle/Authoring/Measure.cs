using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>An angle of the rig that responses take on: how far a node is turned from its rest about one of its own axes, in degrees.</summary>
public readonly record struct Measure : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Measure(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "measured angle");

    internal int Id => HandleGuard.Of(draft, "measured angle", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>
    /// Says about which axis. The node's rotation channel from rest is split into a turn about that axis and one across it, and the first is measured:
    /// from −180 to 180 degrees, with the jump where they meet.
    /// </summary>
    /// <param name="axis">The axis of the node's own frame.</param>
    /// <returns>The measured angle.</returns>
    [OverloadResolutionPriority(1)]
    public Measure About(Axis axis, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => About(axis, Draft.Place(file, line));

    /// <inheritdoc cref="About(Axis, string, int)"/>
    public Measure About(Axis axis) => About(axis, PlaceId.None);

    internal Measure About(Fact<Axis> axis, PlaceId place)
    {
        Given.AnAxis(axis);
        Draft.Record(new MeasureAxisSet(place, Id, axis));
        return this;
    }

    internal static Measure Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Measure));
}
