using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What moves what in a rig: what a node carries, what follows it, and which nodes something moves. What the skeleton itself carries isn't told.</summary>
internal sealed class RigMotion
{
    private readonly Dictionary<RigNode, List<RigNode>> moved;
    private readonly Dictionary<RigNode, RigNode> ridden = [];
    private readonly HashSet<RigNode> asked = [];
    private readonly HashSet<RigNode> written = [];

    private RigMotion(RigModel model, Moves moves)
    {
        IsWhole = !moves.AreOpen;
        moved = new(model.Nodes.Count);
        foreach (var node in model.Nodes)
        {
            var parent = Known(node.Parent);
            if (!node.IsExported || parent is { IsExported: false })
                Link(parent, node);
            var all = moves.Of(node);
            for (var i = 0; i < all.Count; i++)
                Add(all[i]);
        }

        // What is taken besides: to show a label, to tell an angle, to reach and face, to bound a twist.
        foreach (var label in model.Labels)
            Ask(Known(label.Parent));
        foreach (var measure in model.Measures)
            Ask(measure.Node);
        foreach (var solver in model.TwoBones.Cast<RigSolver>().Concat(model.ManyBones))
        {
            Ask(Known(solver.Goal));
            Ask(Known(solver.Pole));
            if (solver is RigTwoBone both && Known(both.PlaneTurn) is RigMeasure turner)
                Ask(turner.Node);
        }

        foreach (var curve in model.Curves)
            curve.Nodes.ForEach(Ask);
        foreach (var aim in model.Aims)
        {
            Ask(Known(aim.Target));
            Ask(Known(aim.Up)?.Node);
        }

        foreach (var twist in model.Twists)
        {
            Ask(Known(twist.Ends)?.Start);
            Ask(Known(twist.Ends)?.End);
        }

        foreach (var falloff in model.Falloffs)
            Ask(Known(falloff.Source));
    }

    public static RigMotion Of(RigModel model, Moves moves) => new(model, moves);

    /// <summary>Whether nothing can move or be moved otherwise than it shows.</summary>
    public bool IsWhole { get; private set; }

    /// <summary>What goes with a node: what hangs under it, follows it or is solved for it.</summary>
    public IReadOnlyList<RigNode> MovedBy(RigNode node) => moved.TryGetValue(node, out var found) ? found : [];

    /// <summary>Whether anything takes a node's motion.</summary>
    public bool IsUsed(RigNode node) => moved.ContainsKey(node) || asked.Contains(node);

    /// <summary>Whether a sentence writes a node's channels.</summary>
    public bool IsWritten(RigNode node) => written.Contains(node);

    /// <summary>Whether a sentence replaces a node's placement: it follows another by matrix, or rides others.</summary>
    public bool IsRiding(RigNode node) => ridden.ContainsKey(node);

    /// <summary>What a node goes with: what it rides, else what it hangs under.</summary>
    public RigNode? CarrierOf(RigNode node) => ridden.TryGetValue(node, out var source) ? source : node.Parent.TryKnown(out var parent) ? parent : null;

    /// <summary>All that goes with a node, near or far.</summary>
    public HashSet<RigNode> AllMovedBy(RigNode node)
    {
        var (reached, waiting) = (new HashSet<RigNode>(), new Stack<RigNode>([node]));
        while (waiting.Count > 0)
        {
            foreach (var next in MovedBy(waiting.Pop()))
            {
                if (reached.Add(next))
                    waiting.Push(next);
            }
        }

        return reached;
    }

    private void Add(Move move)
    {
        if (move.What != Moved.Placement)
            written.Add(move.Node);
        else if (FirstOf(move.Leaders) is { } source && (move.Sentence is RigDrive || !ridden.ContainsKey(move.Node)))
            ridden[move.Node] = source;

        // The joints of a copy hang under each other, so what moves the first of them moves all: a curve has as many nodes as joints, or nearly.
        if (move is { Sentence: RigCurve { Copy.Joints: [var first, ..] } } && move.Node != first)
            return;
        foreach (var leader in move.Leaders)
            Link(leader.Node, move.Node);
    }

    private static RigNode? FirstOf(IReadOnlyList<Leader> leaders)
    {
        foreach (var leader in leaders)
        {
            if (leader.Node is not null)
                return leader.Node;
        }

        return null;
    }

    private void Link(RigNode? from, RigNode to)
    {
        if (from is null)
            return;
        if (!moved.TryGetValue(from, out var others))
            moved[from] = others = [];
        others.Add(to);
    }

    private void Ask(RigNode? node)
    {
        if (node is not null)
            asked.Add(node);
    }

    private T? Known<T>(Fact<T?> fact)
        where T : class
    {
        IsWhole &= fact.TryKnown(out var element);
        return element;
    }
}
