using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>What carries controls that ride one of several nodes.</summary>
internal static class SpaceKernel
{
    public static void Run(SpaceBatch batch, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var worlds = pose.Worlds.Registers;
        var source = 0;
        for (var i = 0; i < batch.Worlds.Length; i++)
        {
            if (batch.RigidOffsets is { } offsets)
                frames[batch.Worlds[i]] = AverageRigid(batch, offsets, source, batch.Ends[i], pose);
            else
                worlds[batch.Worlds[i]] = Average(batch, source, batch.Ends[i], pose);
            source = batch.Ends[i];
        }
    }

    private static WideRigid AverageRigid(SpaceBatch batch, Rigid[] offsets, int source, int end, Buffers pose)
    {
        var frames = pose.Frames.Registers;
        var gathered = new Gathered(pose);
        var (lone, count) = (WideRigid.All(new Rigid(default, System.Numerics.Quaternion.Identity)), Lane.Zero);
        for (; source < end; source++)
        {
            var frame = (frames[batch.Sources[source]] * WideRigid.All(offsets[source])).Trued();
            var weight = WeightOf(batch, source, pose);
            gathered.Add(frame, weight);
            lone = WideRigid.Choose(Count(weight, ref count), frame, lone);
        }

        var isLone = IsLone(count);
        return Rigs.Every(isLone) ? lone : WideRigid.Choose(isLone, lone, gathered.Mean(out _).Trued());
    }

    private static WideAffine Average(SpaceBatch batch, int source, int end, Buffers pose)
    {
        var gathered = new Gathered(pose);
        var (lone, count, sum) = (WideAffine.All(Affine.Identity), Lane.Zero, Lane.Zero);
        var (x, y, z) = (WideVector.Zero, WideVector.Zero, WideVector.Zero);
        for (; source < end; source++)
        {
            var frame = pose.Worlds.Wide(batch.Sources[source]) * batch.Offsets.Constant(source);
            var (turn, weight) = (frame.Turn, WeightOf(batch, source, pose));
            gathered.Add(new() { Origin = frame.Origin, Turn = turn }, weight);
            x = WideVector.MultiplyAdd(turn.RotateBack(frame.X), weight, x);
            y = WideVector.MultiplyAdd(turn.RotateBack(frame.Y), weight, y);
            z = WideVector.MultiplyAdd(turn.RotateBack(frame.Z), weight, z);
            sum += weight;
            lone = WideAffine.Choose(Count(weight, ref count), frame, lone);
        }

        var isLone = IsLone(count);
        if (Rigs.Every(isLone))
            return lone;
        var over = Lanes.Create(1f) / Lanes.MaxNative(sum, Lanes.Create(Mix.None));
        return WideAffine.Choose(isLone, lone, gathered.Mean(out _).Axes * new WideAffine(x * over, y * over, z * over, WideVector.Zero));
    }

    private static Lane WeightOf(SpaceBatch batch, int source, Buffers pose) => Lanes.MaxNative(Lane.Zero, pose.Weights.Wide(batch.Weights[source]));

    /// <summary>Counts a source that has a weight; says where it has.</summary>
    private static Lane Count(Lane weight, ref Lane count)
    {
        var isCounted = Lanes.LessThan(Lane.Zero, weight);
        count += Lanes.ConditionalSelect(isCounted, Lanes.Create(1f), Lane.Zero);
        return isCounted;
    }

    private static Lane IsLone(Lane count) => Lanes.LessThan(count, Lanes.Create(1.5f));
}
