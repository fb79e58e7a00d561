namespace Condyle.Runtime.Kernels;

/// <summary>Drives by channels: local = (base · placement)⁻¹ · source · offset, written as translation, rotation and, if asked, scale.</summary>
internal sealed class DriveBatch : Batch
{
    public required int[] Channels { get; init; }

    public required Stands Stands { get; init; }

    public required int[] Sources { get; init; }

    public required Affines Offsets { get; init; }

    /// <summary>The rotations of the offsets, where neither the stands nor the sources have scale.</summary>
    public required Rotations? OffsetTurns { get; init; }

    public required bool[] WritesScale { get; init; }

    /// <summary>The scale at rest: the scale of those that don't write it, and the signs of those that do.</summary>
    public required Vectors RestScales { get; init; }

    protected override void RunOne(Buffers pose) => Run<Lane1>(pose);

    protected override void RunEight(Buffers pose) => Run<Lane8>(pose);

    protected override void RunSixteen(Buffers pose) => Run<Lane16>(pose);

    private void Run<TLane>(Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        for (var i = 0; i < Channels.Length; i++)
        {
            if (OffsetTurns is not null)
                Carry<TLane>(i, OffsetTurns, pose);
            else
                Multiply<TLane>(i, pose);
        }
    }

    private void Carry<TLane>(int i, Rotations offsets, Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        var origin = pose.Worlds.Wide<TLane>(Sources[i]).Point(WideVector<TLane>.All(Offsets[i].Origin));
        var turn = pose.WorldTurns.Wide<TLane>(Sources[i]) * WideTurn<TLane>.All(offsets[i]);
        pose.Moves.Set(Channels[i], Stands.Frame<TLane>(i, pose).SeenRigidly(origin));
        pose.Turns.Set(Channels[i], (Stands.Turn<TLane>(i, pose).Inverse * turn).Trued());
        pose.Scales.Set(Channels[i], WideVector<TLane>.All(RestScales[i]));
    }

    private void Multiply<TLane>(int i, Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        var local = (pose.Worlds.Wide<TLane>(Sources[i]) * WideAffine<TLane>.All(Offsets[i])).In(Stands.Frame<TLane>(i, pose));
        var scale = WideVector<TLane>.All(RestScales[i]);
        pose.Moves.Set(Channels[i], local.Origin);
        pose.Turns.Set(Channels[i], local.TurnFor(scale));
        pose.Scales.Set(Channels[i], WritesScale[i] ? local.ScaleFor(scale) : scale);
    }
}
