using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>A sentence that lays a copy along a smooth curve through nodes: a spine, a neck, a tail, a rope.</summary>
public readonly record struct Curve : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Curve(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "curve");

    internal int Id => HandleGuard.Of(draft, "curve", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Leads the curve through a node, after those said before. It needs two or more, from the chain's root on; the first and the last also turn it.</summary>
    /// <param name="node">The node to go through.</param>
    /// <returns>The curve.</returns>
    [OverloadResolutionPriority(1)]
    public Curve Through(Node node, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Through(node, Draft.Place(file, line));

    /// <inheritdoc cref="Through(Node, string, int)"/>
    public Curve Through(Node node) => Through(node, PlaceId.None);

    internal Curve Through(Node node, PlaceId place)
    {
        Draft.Record(new CurveLed(place, Id, node.IdIn(Draft)));
        return this;
    }

    /// <summary>Lets the chain take the curve's length; without it the bones keep theirs.</summary>
    /// <param name="weight">How much: at 0 the bones keep their length, at 1 the chain fills the curve as at rest.</param>
    /// <returns>The curve.</returns>
    [OverloadResolutionPriority(1)]
    public Curve Stretching(Weight weight, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Stretching(weight, Draft.Place(file, line));

    /// <inheritdoc cref="Stretching(Weight, string, int)"/>
    public Curve Stretching(Weight weight) => Stretching(weight, PlaceId.None);

    internal Curve Stretching(Weight weight, PlaceId place)
    {
        Draft.Record(new CurveStretchSet(place, Id, weight.In(Draft)));
        return this;
    }

    internal static Curve Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Solver));
}
