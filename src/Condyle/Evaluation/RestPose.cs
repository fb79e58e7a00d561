using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>Where every node stands at rest, and the placement that makes it stand there with its channels at zero.</summary>
internal sealed class RestPose
{
    private readonly Dictionary<int, Rested> nodes;
    private readonly Dictionary<int, Vector3d?> spots = [];
    private readonly List<GeometryFault> faults = [];
    private readonly HashSet<string> said = [];
    private readonly NodePath path = new();

    private RestPose(int nodes) => this.nodes = new(nodes);

    /// <summary>What can't be worked out, in a rigger's words.</summary>
    public IReadOnlyList<GeometryFault> Faults => faults;

    /// <summary>The rest of a rig that is known whole.</summary>
    /// <exception cref="RigGeometryException">A node's rest can't be worked out; the message lists all faults.</exception>
    public static RestPose Of(RigModel model)
    {
        var rest = KnownOf(model);
        return rest.faults.Count == 0 ? rest : throw new RigGeometryException(rest.faults);
    }

    /// <summary>The rest of those nodes for which it is known, as in a rig that is still being typed.</summary>
    public static RestPose KnownOf(RigModel model)
    {
        var rest = new RestPose(model.Nodes.Count);
        foreach (var node in model.Nodes)
            rest.Resolve(node);
        return rest;
    }

    public bool TryWorldOf(RigNode node, out Affine3d world)
    {
        var known = nodes.TryGetValue(node.Id, out var rested) ? rested.World : null;
        world = known.GetValueOrDefault();
        return known.HasValue;
    }

    /// <summary>The node's world frame at rest.</summary>
    public Affine3d WorldOf(RigNode node) =>
        TryWorldOf(node, out var world) ? world : throw new RigGeometryException($"Where {node.Title} stands at rest isn't known.");

    /// <summary>The node's fixed frame in its parent's space, in front of its channels; none but the identity for exported joints.</summary>
    public Affine3d PlacementOf(RigNode node) =>
        nodes.TryGetValue(node.Id, out var rested) && rested.Placement is { } placement ? placement : throw new RigGeometryException($"Where {node.Title} is placed isn't known.");

    /// <summary>The node's channels at rest: as delivered for a joint, else zero.</summary>
    public static Trs ChannelsOf(RigNode node) => node.Rest.TryKnown(out var rest) && node.IsExported ? Trs.Of(rest) : Trs.Identity;

    private Affine3d? Resolve(RigNode node)
    {
        if (nodes.TryGetValue(node.Id, out var known))
            return known.World;
        if (path.Enter(node) is { } fault)
            return Fault(fault);
        var rested = new Rested();
        rested.World = node.IsUnknown ? Fault($"{node.Title} is a node of which nothing is known.") : node.IsExported ? Joint(node, rested) : Placed(node, rested);
        path.Leave();
        nodes[node.Id] = rested;
        return rested.World;
    }

    private Affine3d? Joint(RigNode node, Rested rested)
    {
        rested.Placement = Affine3d.Identity;
        return !node.Rest.TryKnown(out var rest) ? Fault($"The rest of joint {node.Title} isn't known.")
            : ParentOf(node) is { } parent ? parent * Trs.Of(rest).ToAffine()
            : null;
    }

    private Affine3d? Placed(RigNode node, Rested rested)
    {
        if (ParentOf(node) is not { } parent)
            return null;
        if (!node.Placement.TryKnown(out var placement))
            return Fault($"Where {node.Title} is placed isn't known.");
        if (placement is null)
        {
            rested.Placement = Affine3d.Identity;
            return parent;
        }

        // Scale and shear of the target aren't taken: a control is a clean frame wherever it stands.
        var world = placement switch
        {
            AtNode at => Resolve(at.Target)?.Frame,
            AsImage image => Resolve(image.Of)?.Mirrored,
            AtSpot { Spot: var spot } => Point(spot) is { } point ? Affine3d.At(point) : null,
            _ => throw new InvalidOperationException("An unknown kind of placement."),
        };
        if (world is { } frame)
            rested.Placement = parent.Inverse() * frame;
        return world;
    }

    private Affine3d? ParentOf(RigNode node) =>
        !node.Parent.TryKnown(out var parent) ? Fault($"What {node.Title} hangs under isn't known.")
        : parent is null ? Affine3d.Identity
        : Resolve(parent);

    private Vector3d? Point(RigSpot spot)
    {
        if (spots.TryGetValue(spot.Id, out var known))
            return known;
        var (point, fault) = spot is RigPointBeside beside ? PointBeside(beside) : PolePoint((RigPolePoint)spot);
        if (fault is not null)
            Fault(fault.Message, fault.About);
        spots[spot.Id] = point;
        return point;
    }

    private (Vector3d? Point, GeometryFault? Fault) PointBeside(RigPointBeside spot) =>
        spot.Node is null || !spot.By.TryKnown(out var by) ? (null, new GeometryFault($"The node or the offset of {spot.Title} isn't known.", null))
        : (Resolve(spot.Node)?.Origin + by, null);

    private (Vector3d? Point, GeometryFault? Fault) PolePoint(RigPolePoint spot)
    {
        var joints = spot.Chain?.Joints?.Select(Resolve).ToList();
        return joints is null ? (null, new GeometryFault($"The chain of {spot.Title} isn't known.", null))
            : joints.Contains(null) ? (null, null)
            : Bend.PolePoint(spot, [.. joints.Select(joint => joint!.Value.Origin)]);
    }

    private Affine3d? Fault(string message, RigElement? about = null)
    {
        if (said.Add(message))
            faults.Add(new GeometryFault(message, about));
        return null;
    }

    // An object for each, since a table of frames is so large that the runtime lays it among what is seldom collected.
    private sealed class Rested
    {
        public Affine3d? World { get; set; }

        public Affine3d? Placement { get; set; }
    }
}
