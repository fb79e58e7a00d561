using System.Diagnostics.CodeAnalysis;
using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Which nodes don't stand where they rest while everything is at rest, and which of them is the first to leave.</summary>
internal sealed class Departures
{
    private readonly EvaluatedRig rig;
    private readonly Dictionary<int, Departure> departures = [];
    private readonly Dictionary<int, RigNode> causes = [];
    private readonly Dictionary<int, RigElement> sentences = [];

    public Departures(RigModel model, EvaluatedRig rig)
    {
        this.rig = rig;
        foreach (var node in model.Nodes)
        {
            var (rest, stand) = (rig.Rest.WorldOf(node), rig.AtRest.WorldOf(node));
            if (!IsFarFrom(rest.Origin, stand.Origin, 1) && !IsFarFrom(rest.X, stand.X) && !IsFarFrom(rest.Y, stand.Y) && !IsFarFrom(rest.Z, stand.Z))
                continue; // as nearly all of them are
            var departure = Departure.Between(rest, stand);
            if (departure.Counts)
                departures[node.Id] = departure;
        }

        if (departures.Count > 0)
            NoteSentences(model);
    }

    // Far below what counts of a departure.
    private static bool IsFarFrom(Vector3d from, Vector3d to, double square) => (to - from) is var way && !(Vector3d.Dot(way, way) <= 1e-12 * square);

    private static bool IsFarFrom(Vector3d from, Vector3d to) => IsFarFrom(from, to, Vector3d.Dot(from, from));

    public bool AreNone => departures.Count == 0;

    public bool TryOf(RigNode node, out Departure departure) => departures.TryGetValue(node.Id, out departure);

    /// <summary>The first node that leaves on the way to a node: what carries and drives it stays.</summary>
    public RigNode CauseOf(RigNode node)
    {
        var way = new List<RigNode>();
        var at = node;
        while (!causes.TryGetValue(at.Id, out _) && rig.Needs.Of(at).FirstOrDefault(needed => departures.ContainsKey(needed.Id) && !LeavesBehind(at, needed)) is { } earlier)
        {
            way.Add(at);
            at = earlier;
        }

        var cause = causes.TryGetValue(at.Id, out var known) ? known : at;
        foreach (var passed in way)
            causes[passed.Id] = cause;
        return cause;
    }

    /// <summary>Whether a node leaves its rest just as another does, like what that one carries: nothing of its own is added.</summary>
    public bool GoesWith(RigNode node, RigNode cause) =>
        !Departure.Between(rig.AtRest.WorldOf(cause) * rig.Rest.WorldOf(cause).Inverse() * rig.Rest.WorldOf(node), rig.AtRest.WorldOf(node)).Counts;

    // What is driven onto a source stands there, whatever it hangs under.
    private bool LeavesBehind(RigNode node, RigNode parent) =>
        sentences.TryGetValue(node.Id, out var sentence) && node.Parent.TryKnown(out var above) && above == parent && sentence switch
        {
            RigDrive { Sources: [.., { Way: DriveWay.Channels } said] } drive => said.Source != parent && drive.Writes.TryKnown(out var only) && only is null,
            RigBlend { Node: not null } blend => !blend.Sources.Exists(source => source.Node == parent),
            _ => false,
        };

    /// <summary>The sentence that moves a node; none where nothing is known to.</summary>
    public bool TrySentenceOf(RigNode node, [NotNullWhen(true)] out RigElement? sentence) => sentences.TryGetValue(node.Id, out sentence);

    // Where several sentences move a node, the one begun last has it.
    private void NoteSentences(RigModel model)
    {
        foreach (var sentence in model.WritingSentences)
        {
            foreach (var node in TargetsOf(sentence))
                sentences[node.Id] = sentence;
        }
    }

    private static IEnumerable<RigNode> TargetsOf(RigElement sentence) => sentence switch
    {
        RigDrive { Target: { } target, Sources.Count: > 0 } => [target],
        RigBlend { Node: { } node, Sources.Count: > 0 } => [node],
        RigBlend { Chain.Joints: { } joints, Sources.Count: > 0 } => joints,
        RigSolver { Copy: { } copy } => copy.Joints,
        RigCurve { Copy: { } copy } => copy.Joints,
        RigAim { Node: { } aimed } => [aimed],
        RigTwist { Joints: { } twisted } => twisted.OfType<RigNode>(),
        RigSpace { Control: { } control, Parents.Count: > 0 } => [control],
        _ => [],
    };
}
