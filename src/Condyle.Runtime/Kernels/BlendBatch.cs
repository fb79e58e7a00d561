namespace Condyle.Runtime.Kernels;

/// <summary>Blends of lone nodes and of chains' first joints: the sources' world frames, seen from where the target's channels stand, and averaged there.</summary>
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
            pose.Mix.Clear();
            for (; source < Sources.Ends[i]; source++)
            {
                var weight = pose.Weights[Sources.Weights[source]];
                if (weight <= 0)
                    continue;
                var local = pose.Worlds[Sources.Worlds[source]].In(stand);
                pose.Mix.Add(local.Origin, Rotation.Of(local, Targets.RestScales[i]), weight);
            }

            if (pose.Mix.TryAverage(out var move, out var turn))
                Targets.Write(i, move, turn, pose);
            else
                Targets.WriteRest(i, pose);
        }
    }
}
