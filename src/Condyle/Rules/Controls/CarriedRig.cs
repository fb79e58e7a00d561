using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A rig in which one control carries most others: what goes with it, and which controls it leaves behind.</summary>
internal sealed class CarriedRig
{
    private const int FewestCarried = 3;

    private readonly RigMotion motion;
    private readonly ILookup<RigNode, RigSolver> solversByPole;
    private readonly HashSet<RigNode> goals = [];
    private readonly HashSet<RigNode> carried;
    private readonly HashSet<RigNode> carriedBySkeleton = [];
    private readonly HashSet<RigNode> told = [];

    private CarriedRig(RigModel model, RigMotion motion, RigNode carrier, HashSet<RigNode> carried, IReadOnlyList<RigNode> leftBehind)
    {
        (this.motion, this.carried, Carrier, LeftBehind) = (motion, carried, carrier, leftBehind);
        var solvers = model.TwoBones.Cast<RigSolver>().Concat(model.ManyBones).ToList();
        goals.UnionWith(solvers.Select(GoalOf).OfType<RigNode>());
        solversByPole = solvers.Where(solver => solver.Pole.TryKnown(out var pole) && pole is not null).ToLookup(solver => solver.Pole.TryKnown(out var pole) ? pole! : null!);
        foreach (var joint in model.Nodes)
        {
            if (joint.IsExported && Above(joint) is { } above && (carried.Contains(above) || carriedBySkeleton.Contains(above)))
                carriedBySkeleton.Add(joint);
        }
    }

    public RigNode Carrier { get; }

    /// <summary>The controls that hang in the world beside the one that carries the others.</summary>
    public IReadOnlyList<RigNode> LeftBehind { get; }

    /// <summary>None where no single control carries most of the rig and moves its skeleton's root, or none is left behind.</summary>
    public static CarriedRig? Of(RigModel model, RigMotion motion)
    {
        // A control that goes with a joint is no witness: what the joint goes with isn't told by the hierarchy.
        var ends = new Dictionary<RigNode, RigNode>(model.Nodes.Count);
        var counts = new Dictionary<RigNode, int>();
        var (controls, carrier, most) = (0, (RigNode?)null, 0);
        foreach (var node in model.Nodes)
        {
            if (node.Kind != NodeKind.Control || EndOf(node, motion, ends) is not { IsExported: false } end)
                continue;
            controls++;
            counts[end] = counts.TryGetValue(end, out var others) ? others + 1 : 1;
            if (counts[end] > most)
                (carrier, most) = (end, counts[end]);
        }

        if (carrier is null || most <= FewestCarried || most * 2 <= controls || !IsFree(carrier, motion))
            return null;
        var carried = motion.AllMovedBy(carrier);
        var left = model.Nodes.FindAll(node => node != carrier && IsFree(node, motion) && !carried.Contains(node));
        return left.Count > 0 && model.Nodes.Exists(node => node.IsExported && Above(node) is null && carried.Contains(node)) ? new CarriedRig(model, motion, carrier, carried, left) : null;
    }

    /// <summary>What becomes of a part of the skeleton that only this control moves, while what the part hangs from goes away.</summary>
    public string? TornOff(RigNode control)
    {
        // A goal that stands in the world may be meant to: feet stay on the ground, hands on a rail.
        var moved = motion.AllMovedBy(control);
        if (goals.Contains(control) || moved.Overlaps(goals))
            return null;
        var torn = moved.FirstOrDefault(joint => joint.IsExported && !carried.Contains(joint) && carriedBySkeleton.Contains(joint) && Above(joint) is { } above && !moved.Contains(above));
        return torn is not null && told.Add(torn) ? $"{torn.Title}, which it moves, is torn off {Above(torn)!.Title}" : null;
    }

    /// <summary>What becomes of a chain whose bend faces this control, while its goal goes away.</summary>
    public string? LeftTurning(RigNode control)
    {
        var solvers = solversByPole[control].ToList();
        return solvers.Count > 0 && solvers.TrueForAll(solver => GoalOf(solver) is { } goal && carried.Contains(goal))
            ? $"the bend of {solvers[0].Copy?.Chain.Title ?? "a chain"} turns back to it"
            : null;
    }

    // The last node in a row of what carries what; a loop ends where it began.
    private static RigNode EndOf(RigNode node, RigMotion motion, Dictionary<RigNode, RigNode> ends)
    {
        if (ends.TryGetValue(node, out var known))
            return known;
        var way = new List<RigNode>();
        while (!ends.ContainsKey(node))
        {
            ends[node] = node;
            way.Add(node);
            if (motion.CarrierOf(node) is not { } carrier)
                break;
            node = carrier;
        }

        foreach (var passed in way)
            ends[passed] = ends[node];
        return ends[node];
    }

    private static RigNode? GoalOf(RigSolver solver) => solver.Goal.TryKnown(out var goal) ? goal : null;

    private static RigNode? Above(RigNode joint) => joint.Parent.TryKnown(out var above) ? above : null;

    private static bool IsFree(RigNode node, RigMotion motion) =>
        node.Kind == NodeKind.Control && node.Parent.TryKnown(out var parent) && parent is null && !motion.IsWritten(node) && !motion.IsRiding(node);
}
