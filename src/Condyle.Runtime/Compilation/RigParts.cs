namespace Condyle.Runtime.Compilation;

/// <summary>What the outside sees of a compiled rig, and where its values lie in a pose.</summary>
internal sealed class RigParts
{
    public required IReadOnlyList<CompiledControl> Controls { get; init; }

    public required IReadOnlyList<CompiledSwitch> Switches { get; init; }

    public required IReadOnlyList<CompiledJoint> Joints { get; init; }

    public required IReadOnlyList<CompiledLabel> Labels { get; init; }

    public required NameTable ControlNames { get; init; }

    public required NameTable SwitchNames { get; init; }

    public required NameTable JointNames { get; init; }

    /// <summary>The world slot of each exported joint.</summary>
    public required IReadOnlyList<int> JointWorlds { get; init; }

    /// <summary>The exported joints that a drive by matrix carries, so that their channels don't hold their motion: those whose base isn't their parent.</summary>
    public IReadOnlyCollection<int> JointsHeldByMatrix { get; init; } = [];

    /// <summary>The world slot of the node that each label goes with.</summary>
    public required IReadOnlyList<int> LabelWorlds { get; init; }

    /// <summary>The weight slot that shows each label; −1: nothing shows it.</summary>
    public required IReadOnlyList<int> LabelWeights { get; init; }
}
