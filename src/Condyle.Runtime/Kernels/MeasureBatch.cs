namespace Condyle.Runtime.Kernels;

/// <summary>
/// Measured angles: the turn about one axis in a node's rotation q from rest, 2·atan2(q's component along the axis, q.w), in degrees (swing and twist).
/// Of a rotation's two quaternions the one with the positive w counts; half a turn is 180 degrees.
/// </summary>
internal sealed class MeasureBatch : Batch
{
    /// <summary>The input that each angle is written to.</summary>
    public required int[] Inputs { get; init; }

    public required int[] Channels { get; init; }

    public required Rotations RestInverses { get; init; }

    public required Axis[] Axes { get; init; }

    protected override void RunOne(Buffers pose) => One.MeasureKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.MeasureKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.MeasureKernel.Run(this, pose);
}
