namespace Condyle.Runtime.Kernels;

/// <summary>Blends of lone nodes and of chains' first joints: the sources' world frames, averaged in the space that the target's channels stand in.</summary>
internal sealed class BlendBatch : Batch
{
    public required BlendTargets Targets { get; init; }

    public required BlendSources Sources { get; init; }

    public override void Run(Buffers pose)
    {
        var source = 0;
        for (var i = 0; i < Targets.Count; i++)
        {
            var stand = Targets.Stand(i, pose);
            var from = Rigid.Of(stand);
            pose.Mix.Clear();
            for (; source < Sources.Ends[i]; source++)
            {
                if (Sources.Weight(source, pose) is > 0 and var weight)
                    pose.Mix.Add(Sources.Frame(source, pose).In(from), weight);
            }

            Targets.Write(i, stand, from, pose);
        }
    }
}
