namespace Condyle.Runtime.Kernels;

/// <summary>
/// Blends whose targets have no scale on the way: frame = the average of the sources, and where somebody reads them, channels = (base · placement)⁻¹ · frame.
/// In chains' later joints the average is that of where each source joint stands in the source joint before it, taken from the chain's joint before.
/// </summary>
internal sealed class MeetBatch : Batch
{
    public required Meeting[] Items { get; init; }

    public required BlendSource[] Sources { get; init; }

    /// <summary>Whether they are chains' later joints.</summary>
    public required bool IsChain { get; init; }

    /// <inheritdoc cref="FollowBatch.IsPlaced"/>
    public required bool IsPlaced { get; init; }

    /// <inheritdoc cref="FollowBatch.WritesChannels"/>
    public required bool WritesChannels { get; init; }

    /// <inheritdoc cref="FollowBatch.LeavesChannels"/>
    public required bool LeavesChannels { get; init; }

    protected override void RunOne(Buffers pose) => One.MeetKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.MeetKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.MeetKernel.Run(this, pose);
}

/// <summary>The same with two sources each, whose weights, none below zero, add up to one.</summary>
internal sealed class PairMeetBatch : Batch
{
    public required Items<PairMeeting> Items { get; init; }

    /// <inheritdoc cref="MeetBatch.IsChain"/>
    public required bool IsChain { get; init; }

    /// <inheritdoc cref="FollowBatch.IsPlaced"/>
    public required bool IsPlaced { get; init; }

    /// <inheritdoc cref="FollowBatch.WritesChannels"/>
    public required bool WritesChannels { get; init; }

    /// <inheritdoc cref="FollowBatch.LeavesChannels"/>
    public required bool LeavesChannels { get; init; }

    protected override void RunOne(Buffers pose)
    {
        if (Items.GoAbreast)
            EightNodes.PairMeetKernel.Run(this, pose);
        else
            One.PairMeetKernel.Run(this, pose);
    }

    protected override void RunEight(Buffers pose) => Eight.PairMeetKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.PairMeetKernel.Run(this, pose);
}

/// <param name="Target">The node where the sources meet.</param>
/// <param name="Rest">Its channels while all weights are zero.</param>
/// <param name="Before">For a chain's later joint, the frame of the joint before.</param>
/// <param name="FirstSource">Where its stretch of sources begins.</param>
/// <param name="EndSource">Where it ends.</param>
internal readonly record struct Meeting(FrameTarget Target, Rigid Rest, int Before, int FirstSource, int EndSource)
{
    public readonly FrameTarget Target = Target;
    public readonly Rigid Rest = Rest;
    public readonly int Before = Before;
    public readonly int FirstSource = FirstSource;
    public readonly int EndSource = EndSource;
}

/// <param name="Target">The node where the sources meet.</param>
/// <param name="Before">For a chain's later joint, the frame of the joint before.</param>
/// <param name="First">The one source.</param>
/// <param name="Second">The other.</param>
/// <param name="Weight">The slot of the other's weight; the rest is the one's.</param>
internal readonly record struct PairMeeting(FrameTarget Target, int Before, PairSource First, PairSource Second, int Weight)
{
    public readonly FrameTarget Target = Target;
    public readonly int Before = Before;
    public readonly PairSource First = First;
    public readonly PairSource Second = Second;
    public readonly int Weight = Weight;
}

/// <param name="Frame">The source's frame.</param>
/// <param name="Before">For a chain's later joint, the frame of the source joint before.</param>
internal readonly record struct PairSource(int Frame, int Before)
{
    public readonly int Frame = Frame;
    public readonly int Before = Before;
}

/// <param name="Frame">The source's frame.</param>
/// <param name="Before">For a chain's later joint, the frame of the source joint before.</param>
/// <param name="Weight">The slot of its weight.</param>
internal readonly record struct BlendSource(int Frame, int Before, int Weight)
{
    public readonly int Frame = Frame;
    public readonly int Before = Before;
    public readonly int Weight = Weight;
}
