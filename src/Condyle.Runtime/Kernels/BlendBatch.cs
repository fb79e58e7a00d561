namespace Condyle.Runtime.Kernels;

/// <summary>
/// Blends. Of lone nodes and of chains' first joints: the sources' world frames, averaged. Of chains' later joints: where each source joint stands in the
/// source joint before it, averaged, and taken from the chain's joint before, so that bones keep their length halfway.
/// </summary>
internal sealed class BlendBatch : Batch
{
    public required BlendTargets Targets { get; init; }

    public required BlendSources Sources { get; init; }

    protected override void RunOne(Buffers pose) => Run<Lane1>(pose);

    protected override void RunEight(Buffers pose) => Run<Lane8>(pose);

    protected override void RunSixteen(Buffers pose) => Run<Lane16>(pose);

    private void Run<TLane>(Buffers pose)
        where TLane : struct, ILane<TLane>
    {
        var source = 0;
        for (var i = 0; i < Targets.Count; i++)
        {
            var end = Sources.Ends[i];
            var mean = Mean(source, end, pose, out TLane isThere);
            var world = Targets.Before is null ? mean : WideRigid<TLane>.World(Targets.Before[i], pose) * mean;
            Targets.Write(i, world, isThere, pose);
            source = end;
        }
    }

    private WideRigid<TLane> Mean<TLane>(int source, int end, Buffers pose, out TLane isThere)
        where TLane : struct, ILane<TLane>
    {
        if (end - source == 2)
            return Mix.Two(Sources.Frame<TLane>(source, pose), Sources.Weight<TLane>(source, pose), Sources.Frame<TLane>(source + 1, pose), Sources.Weight<TLane>(source + 1, pose), out isThere);
        var gathered = new Gathered<TLane>(pose);
        for (; source < end; source++)
            gathered.Add(Sources.Frame<TLane>(source, pose), Sources.Weight<TLane>(source, pose));
        return gathered.Mean(out isThere);
    }
}
