using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>
/// A sentence that lets each joint of a chain take a share of a control's turn: a tail that curls, a hose, an antenna. It comes on top of whatever else turns the joints,
/// and several add up.
/// </summary>
/// <remarks>
/// Each joint turns about the axis that the control is turned about, as the two lie at rest and carried by the joints above. So at the chain's tip the turns add up to
/// the control's turn times the total, which is 1 unless said otherwise. The control's turn is taken the short way: at half a turn it jumps to the other side.
/// </remarks>
public readonly record struct Falloff : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Falloff(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "falloff");

    internal int Id => HandleGuard.Of(draft, "falloff", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>Sets whose turn is shared out: what its channels hold beyond rest.</summary>
    /// <param name="control">A control, or any node that is turned.</param>
    /// <returns>The falloff.</returns>
    [OverloadResolutionPriority(1)]
    public Falloff From(Node control, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => From(control, Draft.Place(file, line));

    /// <inheritdoc cref="From(Node, string, int)"/>
    public Falloff From(Node control) => From(control, PlaceId.None);

    internal Falloff From(Node control, PlaceId place)
    {
        Draft.Record(new FalloffSourced(place, Id, control.IdIn(Draft)));
        return this;
    }

    /// <summary>
    /// Sets how the shares go, evenly, from the chain's first joint to its last; they are scaled so that they add up to the total. Without it all are the same and add up to 1.
    /// </summary>
    /// <param name="first">What the first joint takes, in proportion to the others.</param>
    /// <param name="last">What the last joint takes.</param>
    /// <param name="total">What all take together: at 1, the tip turns by as much as the control.</param>
    /// <returns>The falloff.</returns>
    public Falloff Sharing(float first, float last, float total = 1, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Sharing(first, last, total, Draft.Place(file, line));

    internal Falloff Sharing(Fact<float> first, Fact<float> last, Fact<float> total, PlaceId place)
    {
        Given.Finite(first, "The share of the first joint");
        Given.Finite(last, "The share of the last joint");
        Given.Finite(total, "What the shares add up to");
        Draft.Record(new FalloffSharesSet(place, Id, first, last, total));
        return this;
    }

    /// <summary>Lets each joint take its share of the control's move as well, so that the bones change their length.</summary>
    /// <returns>The falloff.</returns>
    public Falloff WithMove([CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => WithMove(Draft.Place(file, line));

    internal Falloff WithMove(PlaceId place)
    {
        Draft.Record(new FalloffMoved(place, Id));
        return this;
    }

    internal static Falloff Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Solver));
}
