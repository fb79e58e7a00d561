using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>World frames of nodes that stand still on a base that moves, without scale on the way: frame = base · offset.</summary>
internal sealed class StillFrameBatch : Batch
{
    public required Items<StillFrame> Items { get; init; }

    protected override void RunOne(Buffers pose)
    {
        if (Items.GoAbreast)
            EightNodes.StillFrameKernel.Run(this, pose);
        else
            One.StillFrameKernel.Run(this, pose);
    }

    protected override void RunEight(Buffers pose) => Eight.StillFrameKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.StillFrameKernel.Run(this, pose);
}

/// <summary>World frames of nodes whose channels stand right on the base, as those of exported joints do, without scale on the way: frame = base · T · R.</summary>
internal sealed class ChannelFrameBatch : Batch
{
    public required Items<ChannelFrame> Items { get; init; }

    /// <summary>Whether rotations are brought back to length one: a few products leave them near enough to it.</summary>
    public required bool IsTrued { get; init; }

    protected override void RunOne(Buffers pose)
    {
        if (Items.GoAbreast)
            EightNodes.ChannelFrameKernel.Run(this, pose);
        else
            One.ChannelFrameKernel.Run(this, pose);
    }

    protected override void RunEight(Buffers pose) => Eight.ChannelFrameKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.ChannelFrameKernel.Run(this, pose);
}

/// <summary>World frames of nodes whose channels stand behind a placement, without scale on the way: frame = base · placement · T · R.</summary>
internal sealed class PlacedFrameBatch : Batch
{
    public required Items<PlacedFrame> Items { get; init; }

    /// <inheritdoc cref="ChannelFrameBatch.IsTrued"/>
    public required bool IsTrued { get; init; }

    protected override void RunOne(Buffers pose)
    {
        if (Items.GoAbreast)
            EightNodes.PlacedFrameKernel.Run(this, pose);
        else
            One.PlacedFrameKernel.Run(this, pose);
    }

    protected override void RunEight(Buffers pose) => Eight.PlacedFrameKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.PlacedFrameKernel.Run(this, pose);
}

/// <summary>The axes of frames without scale, for those who reckon with scale.</summary>
internal sealed class AxesBatch : Batch
{
    public required int[] Slots { get; init; }

    protected override void RunOne(Buffers pose) => One.FormKernel.Axes(Slots, pose);

    protected override void RunEight(Buffers pose) => Eight.FormKernel.Axes(Slots, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.FormKernel.Axes(Slots, pose);
}

/// <summary>What frames with scale are without it, for those who read no more than origins and rotations.</summary>
internal sealed class UnscaledBatch : Batch
{
    public required int[] Slots { get; init; }

    protected override void RunOne(Buffers pose) => One.FormKernel.Unscaled(Slots, pose);

    protected override void RunEight(Buffers pose) => Eight.FormKernel.Unscaled(Slots, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.FormKernel.Unscaled(Slots, pose);
}

/// <param name="Frame">Where the frame goes.</param>
/// <param name="Base">What carries it.</param>
/// <param name="Offset">Where it stands on that.</param>
internal readonly record struct StillFrame(int Frame, int Base, Rigid Offset)
{
    public readonly int Frame = Frame;
    public readonly int Base = Base;
    public readonly Rigid Offset = Offset;
}

/// <param name="Frame">Where the frame goes.</param>
/// <param name="Base">What carries it.</param>
/// <param name="Channel">Its channels.</param>
internal readonly record struct ChannelFrame(int Frame, int Base, int Channel)
{
    public readonly int Frame = Frame;
    public readonly int Base = Base;
    public readonly int Channel = Channel;
}

/// <param name="Frame">Where the frame goes.</param>
/// <param name="Base">What carries it.</param>
/// <param name="Channel">Its channels.</param>
/// <param name="Placement">What they stand in on that.</param>
internal readonly record struct PlacedFrame(int Frame, int Base, int Channel, Placement Placement)
{
    public readonly int Frame = Frame;
    public readonly int Base = Base;
    public readonly int Channel = Channel;
    public readonly Placement Placement = Placement;
}

/// <summary>A constant frame without scale that moves are brought out of: its axes do that with fewer products than its rotation.</summary>
internal readonly record struct Placement(Affine Axes, Quaternion Turn)
{
    public readonly Affine Axes = Axes;
    public readonly Quaternion Turn = Turn;
}
