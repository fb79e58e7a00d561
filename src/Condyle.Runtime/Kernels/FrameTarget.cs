namespace Condyle.Runtime.Kernels;

/// <summary>A node whose frame is worked out first, and its channels from that: those of drives and blends without scale on the way.</summary>
/// <param name="Frame">Where the frame goes.</param>
/// <param name="Channel">Its channels.</param>
/// <param name="Stand">What they stand in.</param>
internal readonly record struct FrameTarget(int Frame, int Channel, RigidStand Stand)
{
    public readonly int Frame = Frame;
    public readonly int Channel = Channel;
    public readonly RigidStand Stand = Stand;
}

/// <summary>What channels stand in: base · placement.</summary>
internal readonly record struct RigidStand(int Base, Rigid Placement)
{
    public readonly int Base = Base;
    public readonly Rigid Placement = Placement;
}
