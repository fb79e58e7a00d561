namespace Condyle.Runtime.Kernels;

/// <summary>Drives by channels without scale on the way: frame = source · offset, and where somebody reads them, channels = (base · placement)⁻¹ · frame.</summary>
internal sealed class FollowBatch : Batch
{
    public required Items<Follower> Items { get; init; }

    /// <summary>Whether there are placements; the channels of exported joints stand right on the base.</summary>
    public required bool IsPlaced { get; init; }

    /// <summary>Whether somebody reads the channels.</summary>
    public required bool WritesChannels { get; init; }

    /// <summary>Whether nobody reads them while the rig is evaluated.</summary>
    public required bool LeavesChannels { get; init; }

    protected override void RunOne(Buffers pose)
    {
        if (Items.GoAbreast)
            EightNodes.FollowKernel.Run(this, pose);
        else
            One.FollowKernel.Run(this, pose);
    }

    protected override void RunEight(Buffers pose) => Eight.FollowKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.FollowKernel.Run(this, pose);
}

/// <param name="Target">The node that follows.</param>
/// <param name="Source">The frame that it follows.</param>
/// <param name="Offset">Where it stands on that.</param>
internal readonly record struct Follower(FrameTarget Target, int Source, Rigid Offset)
{
    public readonly FrameTarget Target = Target;
    public readonly int Source = Source;
    public readonly Rigid Offset = Offset;
}
