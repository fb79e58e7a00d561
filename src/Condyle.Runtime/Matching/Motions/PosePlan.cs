using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>Puts a node that a control carries where an exported joint should be.</summary>
/// <param name="Joint">The joint's index.</param>
/// <param name="Handle">The node and its control: the joint itself, or its copy that controls turn.</param>
/// <param name="Turns">Whether the control turns the node.</param>
/// <param name="Moves">Whether it moves it too.</param>
/// <param name="Sight">What of the joint points at the node instead, as a direction in the joint's own frame, and as long as the node is away at rest.</param>
internal sealed record PoseStep(int Joint, Handle Handle, bool Turns, bool Moves, Vector3d? Sight = null);

/// <summary>By which controls a rig's exported joints are posed, one after the other, from the root down.</summary>
internal sealed class PosePlan
{
    private readonly CompiledRig rig;
    private readonly LimbTable table;
    private readonly HashSet<int> used = [];
    private readonly List<PoseStep> steps = [];
    private readonly Dictionary<int, float> shown = [];

    public PosePlan(CompiledRig rig)
    {
        (this.rig, table) = (rig, rig.LimbTable);
        var joints = table.Model.Nodes.Where(node => node.IsExported).ToList();
        var carrying = joints.Select(CarriedFor).OfType<Handle>().Select(carried => carried.Index).ToHashSet();
        foreach (var (index, joint) in joints.Index())
        {
            if (Handle.WriterOf(joint, Channels.Turn, table.Sentences.Writers) is AimedNode { AtRest: var aim })
                AddAim(index, joint, aim, carrying);
            else if (CarriedFor(joint) is { } carried && used.Add(carried.Index))
                Add(index, carried);
        }
    }

    public IReadOnlyList<PoseStep> Steps => steps;

    /// <summary>The switches that show the copies whose joints controls turn, and their values.</summary>
    public IReadOnlyDictionary<int, float> Shown => shown;

    /// <summary>The switches that show the solved copies of limbs instead.</summary>
    public Dictionary<int, float> ShownSolved()
    {
        var solved = new Dictionary<int, float>(shown);
        foreach (var plan in table.Plans)
        {
            if (plan.ShowsSolved is { } values)
            {
                foreach (var (sw, value) in values)
                    solved[sw] = value;
            }
        }

        return solved;
    }

    private Handle? CarriedFor(RigNode joint)
    {
        if (BlendOf(joint) is not { } blend)
            return table.Sentences.Writers.ChannelsOf(joint).Count > 0 ? table.HandleOf(joint) : null;
        foreach (var source in blend.Sources)
        {
            if (TurnedBy(source, joint) is not { } turned || table.HandleOf(turned) is not { } handle || BlendEnds.For(table.Model, blend, source) is not { } values)
                continue;
            foreach (var (sw, value) in values)
                shown[sw] = value;
            return handle;
        }

        return null;
    }

    /// <summary>What a source of a blend gives a joint, where controls alone turn it: a copied joint, or a node that is a control or follows one.</summary>
    private RigNode? TurnedBy(BlendSource source, RigNode joint)
    {
        if (source.Copy is not { } copy)
            return source.Node;
        return copy.Joints.Find(candidate => candidate.Original == joint) is { } turned && Handle.WriterOf(turned, Channels.Turn, table.Sentences.Writers) is ChannelDrive ? turned : null;
    }

    // A joint's sight says where what it looks at lies, but not how far. What carries a joint besides goes where that joint is.
    private void AddAim(int index, RigNode joint, AimRest aim, HashSet<int> carrying)
    {
        if (table.HandleOf(aim.Target) is not { Moves: true } target || carrying.Contains(target.Index) || !used.Add(target.Index))
            return;
        var away = (table.Rest.WorldOf(target.Node).Origin - table.Rest.WorldOf(joint).Origin).Length;
        steps.Add(new PoseStep(index, target, Turns: false, Moves: true, aim.Along * (away > 0 ? away : 1)));
    }

    private void Add(int joint, Handle carried)
    {
        var locked = carried.Control.Locked.TryKnown(out var channels) ? channels : Channels.None;
        var moves = carried.Moves && (locked & Channels.Move) == Channels.None;
        if (!moves && MoverOf(carried) is { } mover)
        {
            used.Add(mover);
            var control = table.Controls.ElementAt(mover);
            var turns = (rig.Controls[mover].Locked & Channels.Turn) == Channels.None;
            steps.Add(new PoseStep(joint, new Handle(carried.Node, control, mover, Moves: true), turns, Moves: true));
        }

        steps.Add(new PoseStep(joint, carried, Turns: true, moves));
    }

    /// <summary>
    /// The nearest control above one that can move it and that nothing has needed so far, neither itself nor what is under it: a joint whose own control only turns is brought to its place by that one.
    /// </summary>
    private int? MoverOf(Handle carried)
    {
        for (var above = rig.ControlTree.Above(carried.Index); above is { } control; above = rig.ControlTree.Above(control))
        {
            if (used.Any(taken => taken != carried.Index && rig.ControlTree.IsUnder(taken, control)))
                return null;
            if ((rig.Controls[control].Locked & Channels.Move) == Channels.None)
                return control;
        }

        return null;
    }

    private RigBlend? BlendOf(RigNode joint) => Handle.WriterOf(joint, Channels.Turn, table.Sentences.Writers) switch
    {
        BlendedChain chain => chain.Blend,
        BlendedNode node => node.Blend,
        _ => null,
    };
}
