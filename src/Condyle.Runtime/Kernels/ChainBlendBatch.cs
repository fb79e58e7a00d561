using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Blends of a chain's later joints: the average of where each source joint stands in the source joint before, taken from the chain's joint before,
/// and brought into the space of the target's channels. From joint to joint frames are taken without scale, as metres in the world.
/// </summary>
internal sealed class ChainBlendBatch : Batch
{
    public required BlendTargets Targets { get; init; }

    /// <summary>The world slot of the chain's joint before each target.</summary>
    public required int[] Before { get; init; }

    public required BlendSources Sources { get; init; }

    /// <summary>The world slot of the source joint before each source.</summary>
    public required int[] SourcesBefore { get; init; }

    public override void Run(Buffers pose)
    {
        var source = 0;
        for (var i = 0; i < Targets.Count; i++)
        {
            pose.Mix.Clear();
            for (; source < Sources.Ends[i]; source++)
            {
                var weight = pose.Weights[Sources.Weights[source]];
                if (weight <= 0)
                    continue;
                var (before, at) = (pose.Worlds[SourcesBefore[source]], pose.Worlds[Sources.Worlds[source]]);
                var back = Quaternion.Conjugate(Rotation.Of(before, Vector3.One));
                pose.Mix.Add(Vector3.Transform(at.Origin - before.Origin, back), back * Rotation.Of(at, Vector3.One), weight);
            }

            if (pose.Mix.TryAverage(out var move, out var turn))
                WriteBone(i, move, turn, pose);
            else
                Targets.WriteRest(i, pose);
        }
    }

    private void WriteBone(int i, Vector3 move, Quaternion turn, Buffers pose)
    {
        var before = pose.Worlds[Before[i]];
        var carry = Rotation.Of(before, Vector3.One);
        var world = Affine.Rigid(before.Origin + Vector3.Transform(move, carry), carry * turn);
        var local = world.In(Targets.Stand(i, pose));
        Targets.Write(i, local.Origin, Rotation.Of(local, Targets.RestScales[i]), pose);
    }
}
