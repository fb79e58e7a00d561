using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle;

/// <summary>
/// A sentence that sets channels and morph targets from a dial, a switch or a measured angle, along a curve. Give it keys, then say onto what.
/// </summary>
/// <remarks>
/// Onto a channel it counts from the curve's value at rest, so that rest holds, and comes on top of whatever else sets the channel;
/// several responses on one channel add up.
/// </remarks>
public readonly record struct Response : IHandle
{
    private readonly RigDraft? draft;
    private readonly int id;

    internal Response(RigDraft draft, int id)
    {
        this.draft = draft;
        this.id = id;
    }

    internal RigDraft Draft => HandleGuard.Of(draft, "response");

    internal int Id => HandleGuard.Of(draft, "response", id);

    RigDraft IHandle.Draft => Draft;

    int IHandle.Id => Id;

    /// <summary>
    /// Adds a key to the curve. Between two keys with slopes it is a cubic that leaves and arrives by them, as glTF 2.0's cubic spline;
    /// where a key gives no slope, the curve comes and goes straight to its neighbours.
    /// </summary>
    /// <param name="at">The value of the dial, the switch or the angle, in its own unit.</param>
    /// <param name="value">What the target is set to there: degrees for a turn, metres for a move, a factor for a scale, a weight for a morph target.</param>
    /// <param name="slope">How much the target rises for one unit of the source.</param>
    /// <returns>The response.</returns>
    /// <exception cref="ArgumentException">A number isn't finite.</exception>
    public Response Key(float at, float value, float? slope = null, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        Key(at, value, slope, Draft.Place(file, line));

    internal Response Key(Fact<float> at, Fact<float> value, Fact<float?> slope, PlaceId place)
    {
        Given.Finite(at, "Where a key of a response lies");
        Given.Finite(value, "The value of a response's key");
        if (slope.TryKnown(out var given) && given is { } known)
            Given.Finite(known, "The slope of a response's key");
        Draft.Record(new ResponseKeyed(place, Id, at, value, slope));
        return this;
    }

    /// <summary>Lets the curve go on straight beyond its first and last key; without it the curve holds there.</summary>
    /// <returns>The response.</returns>
    public Response Continued([CallerFilePath] string file = "", [CallerLineNumber] int line = 0) => Continued(Draft.Place(file, line));

    internal Response Continued(PlaceId place)
    {
        Draft.Record(new ResponseContinued(place, Id));
        return this;
    }

    /// <summary>Turns a node about one of its own axes, in degrees; of several axes X comes first, then Y as it lies then, then Z.</summary>
    /// <param name="node">The node to turn.</param>
    /// <param name="axis">The axis of its own frame.</param>
    /// <returns>The response.</returns>
    /// <exception cref="ArgumentException">The axis is none.</exception>
    public Response OntoTurn(Node node, Axis axis, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        OntoTurn(node, axis, Draft.Place(file, line));

    internal Response OntoTurn(Node node, Fact<Axis> axis, PlaceId place) => Onto(ResponseWay.Turn, node, axis, place);

    /// <summary>Moves a node along one of its own axes as it rests, in metres.</summary>
    /// <param name="node">The node to move.</param>
    /// <param name="axis">The axis of its own frame at rest.</param>
    /// <returns>The response.</returns>
    /// <exception cref="ArgumentException">The axis is none.</exception>
    public Response OntoMove(Node node, Axis axis, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        OntoMove(node, axis, Draft.Place(file, line));

    internal Response OntoMove(Node node, Fact<Axis> axis, PlaceId place) => Onto(ResponseWay.Move, node, axis, place);

    /// <summary>Scales a node along one of its own axes, by a factor.</summary>
    /// <param name="node">The node to scale.</param>
    /// <param name="axis">The axis of its own frame.</param>
    /// <returns>The response.</returns>
    /// <exception cref="ArgumentException">The axis is none.</exception>
    public Response OntoScale(Node node, Axis axis, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        OntoScale(node, axis, Draft.Place(file, line));

    internal Response OntoScale(Node node, Fact<Axis> axis, PlaceId place) => Onto(ResponseWay.Scale, node, axis, place);

    /// <summary>Sets the weight of a morph target. Responses on one target add up, counted from zero.</summary>
    /// <param name="mesh">The mesh's name.</param>
    /// <param name="target">The morph target's name in the mesh, or its number from 0 where it has none.</param>
    /// <returns>The response.</returns>
    public Response OntoMorph(string mesh, string target, [CallerFilePath] string file = "", [CallerLineNumber] int line = 0) =>
        OntoMorph(mesh, target, Draft.Place(file, line));

    internal Response OntoMorph(Text mesh, Text target, PlaceId place)
    {
        Draft.Record(new ResponseOntoMorph(place, Id, mesh, target));
        return this;
    }

    private Response Onto(ResponseWay way, Node node, Fact<Axis> axis, PlaceId place)
    {
        Given.AnAxis(axis);
        Draft.Record(new ResponseOntoChannel(place, Id, way, node.IdIn(Draft), axis));
        return this;
    }

    internal static Response Open(RigDraft draft) => new(draft, draft.Unknown(UnknownKind.Response));
}
