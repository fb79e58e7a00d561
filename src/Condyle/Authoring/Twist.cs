using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>
/// A sentence that shares the roll of a bone out to its twist joints. The bone's roll is what one of its ends is turned about it from rest, as seen from the other end
/// (swing and twist); each joint takes a share of it, by where it lies along the bone. It writes the joints' rotations alone.
/// </summary>
/// <remarks>
/// Twist joints that hang below the end follow it and are turned back: their shares are below zero, as on an upper arm whose shoulder turns.
/// At half a turn the roll jumps from 180 to −180 degrees, and the joints with it by their shares.
/// </remarks>
public readonly record struct Twist : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Twist(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "twist");

    internal int Id => HandleGuard.Of(draft, "twist", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>
    /// Says whose turns are compared. With the twist joints below the start, as between elbow and wrist, the bone goes from the start to the end, and a joint's share is
    /// how far along it lies, from 0 to 1. With the joints below the end, as between chest and shoulder, the bone goes from the end to the next joint below, and the shares
    /// go from −1 at the end, which takes its roll away whole, to 0.
    /// </summary>
    /// <param name="start">The node from which the roll counts.</param>
    /// <param name="end">The node whose roll it is.</param>
    /// <returns>The twist.</returns>
    public Twist Between(Node start, Node end, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Between(start, end, Draft.Place(file, line));

    internal Twist Between(Node start, Node end, PlaceId place)
    {
        Draft.Record(new TwistEndsSet(place, Id, start.IdIn(Draft), end.IdIn(Draft)));
        return this;
    }

    /// <summary>Sets the shares, evenly from the first twist joint to the last one, in their order, instead of by where they lie.</summary>
    /// <param name="first">The first joint's share; below zero it turns back.</param>
    /// <param name="last">The last joint's share.</param>
    /// <returns>The twist.</returns>
    public Twist Sharing(float first, float last, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Sharing(first, last, Draft.Place(file, line));

    internal Twist Sharing(Fact<float> first, Fact<float> last, PlaceId place)
    {
        Given.Finite(first, "The share of the first twist joint");
        Given.Finite(last, "The share of the last twist joint");
        Draft.Record(new TwistSharesSet(place, Id, first, last));
        return this;
    }

    internal static Twist Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Solver));
}
