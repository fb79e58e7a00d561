using Condyle.Model;

namespace Condyle.Rules;

/// <summary>What moves what in a rig: what a node carries, what follows it, and which nodes something moves. What the skeleton itself carries isn't told.</summary>
internal sealed class RigMotion
{
    private readonly Dictionary<RigNode, List<RigNode>> moved = [];
    private readonly Dictionary<RigNode, RigNode> ridden = [];
    private readonly HashSet<RigNode> asked = [];
    private readonly HashSet<RigNode> written = [];

    private RigMotion(RigModel model)
    {
        IsWhole = model.IsWhole;
        foreach (var node in model.Nodes)
        {
            var parent = Known(node.Parent);
            if (!node.IsExported || parent is { IsExported: false })
                Link(parent, node);
        }

        foreach (var label in model.Labels)
            Ask(Known(label.Parent));
        foreach (var drive in model.Drives)
            Add(drive);
        foreach (var blend in model.Blends)
            Add(blend);
        foreach (var solver in model.TwoBones.Cast<RigSolver>().Concat(model.ManyBones))
            Add(solver.Copy?.Joints, [Known(solver.Goal), Known(solver.Pole), PlaneOf(solver)]);
        foreach (var curve in model.Curves)
            Add(curve);
        foreach (var aim in model.Aims)
            Add(aim.Node is { } aimed ? [aimed] : [], [Known(aim.Target), Known(aim.Up)?.Node]);
        foreach (var twist in model.Twists)
            Add(twist.Joints?.OfType<RigNode>(), [Known(twist.Ends)?.Start, Known(twist.Ends)?.End]);
        foreach (var falloff in model.Falloffs)
            Add(falloff.Joints, [Known(falloff.Source)]);
        foreach (var response in model.Responses)
            Add(response);
        foreach (var measure in model.Measures)
            Ask(measure.Node);
        foreach (var space in model.Spaces)
            Add(space);
    }

    public static RigMotion Of(RigModel model) => new(model);

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

    private void Add(RigDrive drive)
    {
        if (drive.Target is not { } target)
            return;
        foreach (var source in drive.Sources)
        {
            Link(source.Source, target);
            if (source.Way == DriveWay.Channels)
                written.Add(target);
            else if (source.Source is { } ride)
                ridden[target] = ride;
        }
    }

    private void Add(RigBlend blend)
    {
        foreach (var source in blend.Sources)
        {
            if (blend.Node is { } node)
                Write(node, source.Node);
            foreach (var (from, to) in (source.Copy?.Joints ?? []).Zip(blend.Chain?.Joints ?? [], (from, to) => (from, to)))
                Write(to, from);
        }
    }

    private void Add(IEnumerable<RigNode>? led, IReadOnlyList<RigNode?> sources)
    {
        IsWhole &= led is not null;
        foreach (var source in sources)
            Ask(source);
        foreach (var node in led ?? [])
        {
            written.Add(node);
            foreach (var source in sources)
                Link(source, node);
        }
    }

    // The joints of a copy hang under each other, so what moves the first of them moves all: there are as many nodes as joints, or nearly.
    private void Add(RigCurve curve)
    {
        Add(curve.Copy?.Joints.Take(1), curve.Nodes);
        written.UnionWith(curve.Copy?.Joints ?? []);
    }

    private void Add(RigResponse response)
    {
        foreach (var target in response.Targets)
        {
            if (target.Node is { } node)
                Write(node, (response.Source as RigMeasure)?.Node);
        }
    }

    private void Add(RigSpace space)
    {
        foreach (var parent in space.Parents)
        {
            if (space.Control is not { } control || parent.Node is not { } node)
                continue;
            Link(node, control);
            if (!ridden.ContainsKey(control))
                ridden[control] = node;
        }
    }

    private void Write(RigNode target, RigNode? source)
    {
        written.Add(target);
        Link(source, target);
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

    private RigNode? PlaneOf(RigSolver solver) => (solver is RigTwoBone both ? Known(both.PlaneTurn) as RigMeasure : null)?.Node;

    private T? Known<T>(Fact<T?> fact)
        where T : class
    {
        IsWhole &= fact.TryKnown(out var element);
        return element;
    }
}
