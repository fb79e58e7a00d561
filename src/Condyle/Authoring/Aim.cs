using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A sentence that turns a node so that it points at another one: an eye, a searchlight, a crane's hook. It writes the node's rotation alone.</summary>
/// <remarks>What points at the target, and how the node lies about that line, is as at rest, so that rest holds.</remarks>
public readonly record struct Aim : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Aim(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "aim");

    internal int Id => HandleGuard.Of(draft, "aim", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Sets the node to point at: the direction in which it stands at rest, as the node sees it, stays on it.</summary>
    /// <param name="target">The node to point at.</param>
    /// <returns>The aim.</returns>
    [OverloadResolutionPriority(1)]
    public Aim At(Node target, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => At(target, Draft.Place(file, line));

    /// <inheritdoc cref="At(Node, string, int)"/>
    public Aim At(Node target) => At(target, PlaceId.None);

    internal Aim At(Node target, PlaceId place)
    {
        Draft.Record(new AimTargetSet(place, Id, target.IdIn(Draft)));
        return this;
    }

    /// <summary>
    /// Says which of the node's axes points at the target, to the point: one that is off at rest is brought onto it, so that the node leaves its rest.
    /// Needed where the target rests on the node and so is in no direction.
    /// </summary>
    /// <param name="axis">The axis of the node's own frame.</param>
    /// <returns>The aim.</returns>
    [OverloadResolutionPriority(1)]
    public Aim Along(Axis axis, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Along(axis, Draft.Place(file, line));

    /// <inheritdoc cref="Along(Axis, string, int)"/>
    public Aim Along(Axis axis) => Along(axis, PlaceId.None);

    internal Aim Along(Fact<Axis> axis, PlaceId place)
    {
        Given.AnAxis(axis);
        Draft.Record(new AimAxisSet(place, Id, axis));
        return this;
    }

    /// <summary>Keeps the side that is towards a node at rest towards it, which sets the roll about the line to the target. Without an up the roll goes with the node's parent.</summary>
    /// <param name="towards">The node whose place is up, as a pole is for a limb.</param>
    /// <returns>The aim.</returns>
    [OverloadResolutionPriority(1)]
    public Aim Up(Node towards, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Up(towards, Draft.Place(file, line));

    /// <inheritdoc cref="Up(Node, string, int)"/>
    public Aim Up(Node towards) => Up(towards, PlaceId.None);

    internal Aim Up(Node towards, PlaceId place) => Up(towards.IdIn(Draft), (Axis?)null, place);

    /// <summary>Keeps the side that faces along another node's axis at rest so, which sets the roll about the line to the target.</summary>
    /// <param name="of">The node whose axis is up, for instance the head's for its eyes.</param>
    /// <param name="axis">The axis of that node's own frame.</param>
    /// <returns>The aim.</returns>
    public Aim Up(Node of, Axis axis, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Up(of, axis, Draft.Place(file, line));

    internal Aim Up(Node of, Fact<Axis> axis, PlaceId place)
    {
        Given.AnAxis(axis);
        return Up(of.IdIn(Draft), axis.TryKnown(out var known) ? (Axis?)known : Fact<Axis?>.Open, place);
    }

    internal static Aim Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Solver));

    private Aim Up(int node, Fact<Axis?> axis, PlaceId place)
    {
        Draft.Record(new AimUpSet(place, Id, node, axis));
        return this;
    }
}
