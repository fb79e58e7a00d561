namespace Condyle.Runtime.Kernels;

/// <summary>Drives by channels: local = (base · placement)⁻¹ · source · offset, written as translation, rotation and, if asked, scale.</summary>
internal sealed class DriveBatch : Batch
{
    public required int[] Channels { get; init; }

    public required int[] Bases { get; init; }

    public required Affines Placements { get; init; }

    public required int[] Sources { get; init; }

    public required Affines Offsets { get; init; }

    public required bool[] WritesScale { get; init; }

    /// <summary>The scale at rest: the scale of those that don't write it, and the signs of those that do.</summary>
    public required Vectors RestScales { get; init; }

    public override void Run(Buffers pose)
    {
        for (var i = 0; i < Channels.Length; i++)
        {
            var frame = pose.Worlds[Bases[i]] * Placements[i];
            var local = (pose.Worlds[Sources[i]] * Offsets[i]).In(frame);
            pose.Moves[Channels[i]] = local.Origin;
            pose.Turns[Channels[i]] = Rotation.Of(local, RestScales[i]);
            pose.Scales[Channels[i]] = WritesScale[i] ? local.ScaleFor(RestScales[i]) : RestScales[i];
        }
    }
}
