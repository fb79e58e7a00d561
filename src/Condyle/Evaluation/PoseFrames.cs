using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>The frames of one pose while they are worked out: each node's once, after its parent's and after whatever drives it.</summary>
internal sealed class PoseFrames(RigSentences sentences, Pose pose, NodeNeeds? needs = null)
{
    private readonly RestPose rest = sentences.Rest;
    private readonly RigWriters writers = sentences.Writers;
    private readonly RigFalloffs falloffs = sentences.Falloffs;
    private readonly RigResponses responses = sentences.Responses;
    private readonly Dictionary<int, Affine3d> worlds = new(sentences.Nodes.Count);
    private readonly Dictionary<int, Trs> channels = new(sentences.Nodes.Count);
    private readonly Dictionary<int, double> shears = [];
    private readonly Dictionary<object, object> solved = [];
    private readonly NodePath path = new();

    public PoseFrames(RigModel model, RestPose rest, Pose pose)
        : this(new RigSentences(model, rest), pose)
    {
    }

    public RestPose Rest => rest;

    /// <summary>The shear that was lost, by node.</summary>
    public IReadOnlyDictionary<int, double> Shears => shears;

    public Affine3d WorldOf(RigNode node)
    {
        if (needs is not null && path.Current is { } asking)
            needs.Add(asking, node);
        if (worlds.TryGetValue(node.Id, out var known))
            return known;
        if (path.Enter(node) is { } fault)
            throw new RigGeometryException(fault);
        var world = StandOf(node) * ChannelsOf(node).ToAffine();
        path.Leave();
        worlds[node.Id] = world;
        return world;
    }

    /// <summary>What a sentence works out for this pose, the first time that it is asked for.</summary>
    public T Once<T>(object sentence, Func<PoseFrames, T> work)
        where T : notnull
    {
        if (!solved.TryGetValue(sentence, out var known))
            solved[sentence] = known = work(this);
        return (T)known;
    }

    /// <summary>The frame in which a node's channels are: its parent's with its placement.</summary>
    public Affine3d StandOf(RigNode node) => ParentOf(node) * PlacementOf(node);

    public Affine3d ParentOf(RigNode node) => ParentNodeOf(node) is { } parent ? WorldOf(parent) : Affine3d.Identity;

    public Affine3d PlacementOf(RigNode node) =>
        writers.PlacementOf(node) is { } writer ? writer.PlacementOf(node, this) : rest.PlacementOf(node);

    /// <summary>Whether a sentence sets the node's channels, so that more than an animator moves it.</summary>
    public bool IsWritten(RigNode node) => writers.ChannelsOf(node).Count > 0 || falloffs.On(node).Count > 0 || responses.On(node) is not null;

    /// <summary>Whether a sentence has the node's rotation.</summary>
    public bool IsTurned(RigNode node) => writers.ChannelsOf(node).Any(owner => (owner.Has & Channels.Turn) != Channels.None);

    /// <summary>What a sentence writes so that the node's rotation is the same whatever it hangs under; none where there is no such sentence.</summary>
    public IFrameWriter? FrameWriterOf(RigNode node) => writers.ChannelsOf(node).FirstOrDefault(owner => (owner.Has & Channels.Turn) != Channels.None).Writer as IFrameWriter;

    /// <summary>The node's own translation, rotation and scale: written by what drives it, else set by the animator, else at rest; falloffs and then responses come on top.</summary>
    public Trs ChannelsOf(RigNode node)
    {
        if (!channels.TryGetValue(node.Id, out var own))
        {
            own = OwnChannelsOf(node, Channels.All);
            var shares = falloffs.On(node);
            for (var i = 0; i < shares.Count; i++)
                own = shares[i].On(own, this);
            own = responses.On(node)?.On(own, this) ?? own;
            channels[node.Id] = own;
        }

        return own;
    }

    /// <summary>Where a node stands, whatever turns it; what comes on top isn't counted.</summary>
    public Vector3d OriginOf(RigNode node) => StandOf(node).Apply(OwnChannelsOf(node, Channels.Move).Translation);

    /// <summary>A node's channels for who measures them. One that something writes is worked out first, with all that carries it; one that only an animator moves needs nothing.</summary>
    public Trs MeasuredChannelsOf(RigNode node)
    {
        if (IsWritten(node))
            WorldOf(node);
        return ChannelsOf(node);
    }

    public double ValueOf(WeightPolynomial weight) => weight.At(id => pose.ValueOf(sentences.Variables[id]));

    /// <summary>The value of a switch, a dial, an option or a measured angle.</summary>
    public double ValueOf(RigElement value) => value is RigMeasure measure ? MeasuredAngle.Of(measure, this) : pose.ValueOf(value);

    public IReadOnlyDictionary<MorphName, double> Morphs() => responses.Morphs.ToDictionary(morph => morph.Name, morph => morph.WeightIn(this));

    /// <summary>A local frame as channels of a node, with its rest scale; shear, which they can't hold, is dropped and noted.</summary>
    public Trs Project(RigNode node, Affine3d local)
    {
        NoteShear(node, local);
        var scale = RestPose.ChannelsOf(node).Scale;
        return new Trs(local.Origin, local.RotationFor(scale), scale);
    }

    /// <summary>As <see cref="Project"/>, with the frame's own scale.</summary>
    public Trs ProjectWithScale(RigNode node, Affine3d local)
    {
        NoteShear(node, local);
        return local.ToTrs(RestPose.ChannelsOf(node).Scale);
    }

    private Trs OwnChannelsOf(RigNode node, Channels asked)
    {
        var own = node.Kind is NodeKind.Control or NodeKind.Group ? pose.ChannelsOf(node) : RestPose.ChannelsOf(node);
        var owners = writers.ChannelsOf(node);
        for (var i = 0; i < owners.Count; i++)
        {
            var (writer, has) = owners[i];
            if ((has & asked) != Channels.None)
                own = own.Taking(has, writer.ChannelsOf(node, this));
        }

        return own;
    }

    private static RigNode? ParentNodeOf(RigNode node) =>
        node.Parent.TryKnown(out var parent) ? parent : throw new RigGeometryException($"What {node.Title} hangs under isn't known.");

    private void NoteShear(RigNode node, Affine3d local)
    {
        if (local.Shear is > 1e-9 and var shear)
            shears[node.Id] = Math.Max(shear, shears.TryGetValue(node.Id, out var before) ? before : 0);
    }
}
