using Condyle.Model;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>A rig as arrays: its schedule, its pose at rest, and where in a pose the things lie that are asked for.</summary>
internal sealed class RigLayout
{
    /// <summary>Stands for the weight of a label that nothing shows or hides.</summary>
    public const int NoWeight = -1;

    private RigLayout(RigModel model)
    {
        var graph = RigPlan.Of(model);
        var joints = model.Nodes.Where(node => node.IsExported).Select(node => graph[node]).ToList();
        var labels = model.Labels.Select(label =>
            Facts.Known(label.Parent, $"What {label.Title} hangs under") is { } parent ? graph[parent] : null).ToList();
        var riders = graph.Riders;
        var weights = new WeightTable(graph.Inputs);
        LabelWeights = [.. model.Labels.Select(label =>
            Facts.Known(label.ShownBy, $"The weight of {label.Title}") is { } weight ? weights.SlotOf(weight) : NoWeight)];

        var ridden = riders.SelectMany(rider => new[] { rider.Control, rider.Control.Stand.Root });
        var builder = new ScheduleBuilder(graph, model, [.. joints, .. labels.Concat(ridden).OfType<PlannedNode>()], weights);
        (Schedule, AtRest) = builder.Build(graph.Inputs.AtRest);
        Inputs = graph.Inputs;
        Riders = [.. riders.Select(rider => RiderOf(rider.Control, model.Choices.IndexOf(rider.Choice)))];
        JointWorlds = [.. joints.Select(WorldSlot.Of)];
        JointsHeldByMatrix = [.. joints.Index().Where(joint => joint.Item.IsHeldByMatrix).Select(joint => joint.Index)];
        LabelWorlds = [.. labels.Select(WorldSlot.Of)];
        Schedule.Run(AtRest);
    }

    public Schedule Schedule { get; }

    /// <summary>Where the switches, dials and options lie.</summary>
    public InputTable Inputs { get; }

    /// <summary>The controls that ride one of several nodes, each after all that it needs.</summary>
    public IReadOnlyList<Rider> Riders { get; }

    /// <summary>The evaluated pose with every control at zero and every switch, dial and choice at its default.</summary>
    public Buffers AtRest { get; }

    /// <summary>The world slot of each exported joint.</summary>
    public IReadOnlyList<WorldSlot> JointWorlds { get; }

    /// <summary>The exported joints that a drive by matrix carries, so that their channels don't hold their motion.</summary>
    public IReadOnlyCollection<int> JointsHeldByMatrix { get; }

    /// <summary>The world slot of the node that each label goes with.</summary>
    public IReadOnlyList<WorldSlot> LabelWorlds { get; }

    /// <summary>The weight slot that shows each label, or <see cref="NoWeight"/>.</summary>
    public IReadOnlyList<int> LabelWeights { get; }

    /// <exception cref="RigGeometryException">Something isn't known, or nodes need each other in a loop.</exception>
    public static RigLayout Of(RigModel model) => new(model);

    private static Rider RiderOf(PlannedNode control, int choice) => new(
        choice,
        control.BaseSlot,
        control.ChannelSlot,
        WorldSlot.Of(control),
        WorldSlot.Of(control.Stand.Root),
        Pack.Single(control.Stand.Offset),
        Channels.All & ~Facts.Known(control.Node.Locked, $"What is locked on {control.Node.Title}"));
}

/// <summary>Where a world frame lies, and in which of its forms.</summary>
internal readonly record struct WorldSlot(int Slot, bool IsRigid)
{
    public static WorldSlot Of(PlannedNode? node) => new(Slots.WorldOf(node), node is null or { IsRigid: true });

    public Affine In(Buffers pose) => IsRigid ? pose.Frames[Slot].ToAffine() : pose.Worlds[Slot];
}
