using Lane = System.Runtime.Intrinsics.Vector128<float>;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Weights of morph targets: the sums of their curves.</summary>
internal static class MorphKernel
{
    public static void Run(MorphBatch batch, Buffers pose)
    {
        var curve = 0;
        for (var i = 0; i < batch.Morphs.Length; i++)
        {
            var sum = Lane.Zero;
            for (; curve < batch.Ends[i]; curve++)
                sum += CurveAccess.At(batch.Curves, curve, pose);
            pose.Morphs.Set(batch.Morphs[i], sum);
        }
    }
}
