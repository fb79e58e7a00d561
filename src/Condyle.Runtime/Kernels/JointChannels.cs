using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>The channels of a joint in all rigs that lie side by side, as a bake reads them.</summary>
/// <param name="Pose">The rigs.</param>
/// <param name="Slot">Where the channels are.</param>
internal readonly record struct JointChannels(Buffers Pose, int Slot)
{
    private bool IsSixteen => Pose.Width == Sixteen.Rigs.Width;

    /// <summary>Whether every rig's translation is no further than a distance from a point. What is no finite number isn't near anything.</summary>
    public bool IsMoveNear(Vector3 point, float distance) => IsNear(Pose.Moves, point, distance);

    /// <summary>The same of rotations, of either sign, as unit quaternions.</summary>
    public bool IsTurnNear(Quaternion turn, float distance) =>
        IsSixteen ? Sixteen.SampleKernel.IsNear(Pose.Turns, Slot, turn, distance) : Eight.SampleKernel.IsNear(Pose.Turns, Slot, turn, distance);

    /// <summary>The same of scales.</summary>
    public bool IsScaleNear(Vector3 scale, float distance) => IsNear(Pose.Scales, scale, distance);

    /// <summary>Copies the translations of the first rigs; false when one of all rigs' is no finite number.</summary>
    public bool TryCopyMoves(Span<Vector3> into) => TryCopy(Pose.Moves, into);

    /// <summary>The same of rotations, each made a unit quaternion.</summary>
    public bool TryCopyTurns(Span<Quaternion> into) =>
        IsSixteen ? Sixteen.SampleKernel.TryCopy(Pose.Turns, Slot, into) : Eight.SampleKernel.TryCopy(Pose.Turns, Slot, into);

    /// <summary>The same of scales.</summary>
    public bool TryCopyScales(Span<Vector3> into) => TryCopy(Pose.Scales, into);

    private bool IsNear(Vectors column, Vector3 point, float distance) =>
        IsSixteen ? Sixteen.SampleKernel.IsNear(column, Slot, point, distance) : Eight.SampleKernel.IsNear(column, Slot, point, distance);

    private bool TryCopy(Vectors column, Span<Vector3> into) =>
        IsSixteen ? Sixteen.SampleKernel.TryCopy(column, Slot, into) : Eight.SampleKernel.TryCopy(column, Slot, into);
}
