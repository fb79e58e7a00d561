namespace Condyle.Runtime.Kernels;

/// <summary>
/// Blends of a chain's later joints: where each source joint stands in the source joint before it, averaged, and taken from the chain's joint before,
/// so that bones keep their length halfway.
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
                if (Sources.Weight(source, pose) is > 0 and var weight)
                    pose.Mix.Add(Sources.Frame(source, pose).In(Rigid.Of(pose.Worlds[SourcesBefore[source]])), weight);
            }

            Targets.Write(i, Targets.Stand(i, pose), Rigid.Of(pose.Worlds[Before[i]]), pose);
        }
    }
}
