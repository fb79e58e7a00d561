namespace Condyle.Runtime.Kernels;

/// <summary>Drives by channels with scale on the way: local = (base · placement)⁻¹ · source · offset, written as translation, rotation and, if asked, scale, or as some of them.</summary>
internal sealed class DriveBatch : Batch
{
    public required int[] Channels { get; init; }

    public required Stands Stands { get; init; }

    public required int[] Sources { get; init; }

    public required Affines Offsets { get; init; }

    /// <summary>The channels that are written; the others stay as they are.</summary>
    public required Channels[] Writes { get; init; }

    public required bool[] WritesScale { get; init; }

    /// <summary>The scale at rest: the scale of those that don't write it, and the signs of those that do.</summary>
    public required Vectors RestScales { get; init; }

    protected override void RunOne(Buffers pose) => One.DriveKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.DriveKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.DriveKernel.Run(this, pose);
}
