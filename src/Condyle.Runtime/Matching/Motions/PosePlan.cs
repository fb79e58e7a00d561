using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>By which controls a rig's exported joints are posed, one after the other, from the root down.</summary>
internal sealed class PosePlan
{
    private readonly CompiledRig rig;
    private readonly LimbTable table;
    private readonly HashSet<int> used = [];
    private readonly List<IPoseStep> steps = [];
    private readonly HashSet<SolvedCurve> curves = [];
    private readonly Dictionary<int, float> shown = [];

    public PosePlan(CompiledRig rig)
    {
        (this.rig, table) = (rig, rig.LimbTable);
        var joints = table.Model.Nodes.Where(node => node.IsExported).ToList();
        var carrying = joints.Select(CarriedFor).OfType<Handle>().Select(carried => carried.Index).ToHashSet();
        foreach (var (index, joint) in joints.Index())
        {
            if (WriterOf(joint, Channels.Turn) is AimedNode { AtRest: var aim })
                AddAim(index, joint, aim, carrying);
            else if (CurveOf(joint, Channels.Turn) is { } curve)
                AddCurve(curve, joints);
            else if (CarriedFor(joint) is { } carried && used.Add(carried.Index))
                Add(index, carried);
        }
    }

    public IReadOnlyList<IPoseStep> Steps => steps;

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
        return copy.Joints.Find(candidate => candidate.Original == joint) is { } turned && WriterOf(turned, Channels.Turn) is ChannelDrive ? turned : null;
    }

    /// <summary>The curve of the copied joint that a joint follows.</summary>
    private SolvedCurve? CurveOf(RigNode joint, Channels channels) => WriterOf(joint, channels) is ChannelDrive drive ? WriterOf(drive.Source, Channels.Turn) as SolvedCurve : null;

    private IChannelWriter? WriterOf(RigNode node, Channels channels) => Handle.WriterOf(node, channels, table.Sentences.Writers);

    // Joints at the ends often turn with a control of their own; they lie on the curve all the same.
    private void AddCurve(SolvedCurve curve, List<RigNode> joints)
    {
        if (!curves.Add(curve))
            return;
        List<Handle> through = [.. table.HandlesOf(curve).Where(handle => used.Add(handle.Index))];
        List<(int Index, RigNode Node, bool Turns)> along = [.. curve.Copy.Joints.Select(joint => joint.Original).OfType<RigNode>().Where(joint => joint.IsExported)
            .Select(joint => (joints.IndexOf(joint), joint, CurveOf(joint, Channels.Turn) == curve || through.Exists(handle => handle.Control == table.HandleOf(joint)?.Control)))];
        if (through.Count > 0 && along.Count > 1)
            steps.Add(new CurveStep(through, table.StretchOf(curve), along));
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
        var goesAnywhere = carried.Moves && (locked & Channels.Move) == Channels.None;
        if (!goesAnywhere && MoverOf(carried) is { } mover)
        {
            used.Add(mover);
            var control = table.Controls.ElementAt(mover);
            var turns = (rig.Controls[mover].Locked & Channels.Turn) == Channels.None;
            steps.Add(new PoseStep(joint, new Handle(carried.Node, control, mover, Moves: true), turns, Moves: true));
        }

        var goesAlongAnAxis = carried.Moves && (locked & Channels.Move) != Channels.Move;
        steps.Add(new PoseStep(joint, carried, Turns: true, goesAlongAnAxis));
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

    private RigBlend? BlendOf(RigNode joint) => WriterOf(joint, Channels.Turn) switch
    {
        BlendedChain chain => chain.Blend,
        BlendedNode node => node.Blend,
        _ => null,
    };
}
