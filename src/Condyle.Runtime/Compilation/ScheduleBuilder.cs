using Condyle.Model;
using Condyle.Runtime.Kernels;

namespace Condyle.Runtime.Compilation;

/// <summary>Lays a graph out: keeps what is read, sorts it by level and kind, gives it slots and gathers it into batches.</summary>
internal sealed class ScheduleBuilder
{
    private readonly WeightTable weights;
    private readonly Slots slots;
    private readonly IReadOnlyList<PlannedNode> changing;
    private readonly IReadOnlyList<Writer> writers;
    private readonly int morphs;

    public ScheduleBuilder(RigPlan graph, RigModel model, IReadOnlyList<PlannedNode> outputs, WeightTable weights)
    {
        this.weights = weights;
        MarkRead(graph.Ordered, [.. outputs, .. graph.Morphs.SelectMany(morph => morph.Reads)]);
        var read = graph.Ordered.Where(node => node.IsRead).ToList();
        changing = [.. read.Where(node => node.World.Root is not null).OrderBy(node => node.Level).ThenBy(BatchKey.Of)];
        List<CurveWriter> curves = [.. read.Select(node => node.Response).OfType<ResponseWriter>(), .. graph.Morphs];
        morphs = graph.Morphs.Count;
        List<Writer> written = [.. read.SelectMany(node => node.Writers).Where(writer => writer is not SpaceWriter).Distinct()];
        var measures = curves.SelectMany(writer => writer.Measures).Concat(written.OfType<TwoBoneWriter>().Select(solver => solver.Measure).OfType<MeasureWriter>());
        writers = [
            .. written,
            .. measures.Where(measure => measure.Node.Moves).Distinct(),
            .. curves];
        slots = new Slots([.. model.Nodes.Select(node => graph[node])], [.. read.Where(node => node.World.Root is null)], changing, outputs.ToHashSet());
    }

    /// <summary>The schedule and the pose at rest, not evaluated yet.</summary>
    public (Schedule Schedule, Buffers AtRest) Build(IReadOnlyList<float> inputsAtRest)
    {
        var batches = new BatchBuilder(slots, weights);
        var levels = changing.Where(node => !node.IsFramedByWriter).Select(node => (Node: node, Kind: BatchKey.Of(node)))
            .Concat(changing.Where(node => node is { IsRigid: true, AxesAreRead: true }).Select(node => (Node: node, Kind: new BatchKey(BatchKind.Axes))))
            .Concat(changing.Where(node => node is { IsRigid: false, FrameIsRead: true }).Select(node => (Node: node, Kind: new BatchKey(BatchKind.Unscaled))))
            .GroupBy(item => (item.Node.Level, item.Kind), item => item.Node)
            .Select(group => (group.Key, Batch: batches.Worlds(group.Key.Kind, [.. group])))
            .Concat(writers.GroupBy(writer => (writer.Level, Kind: BatchKey.Of(writer)))
                .Select(group => (group.Key, Batch: batches.Writers(group.Key.Kind, [.. group]))))
            .OrderBy(item => item.Key.Level)
            .ThenBy(item => item.Key.Kind)
            .Select(item => item.Batch)
            .ToList();
        levels.InsertRange(0, weights.ToBatches());

        var mostSources = writers.OfType<BlendWriter>().Select(blend => blend.Sources.Count)
            .Concat(changing.Select(node => node.Writer).OfType<SpaceWriter>().Select(space => space.Sources.Count)).DefaultIfEmpty(0).Max();
        var atRest = new Buffers(new BufferSizes(slots.Channels, slots.Worlds, slots.LastingWorlds, inputsAtRest.Count, weights.Count, morphs, mostSources, SolverPacking.RoomOf(writers)));
        slots.Fill(atRest);
        weights.FoldConstants(atRest);
        for (var i = 0; i < inputsAtRest.Count; i++)
            atRest.Inputs[i] = inputsAtRest[i];
        return (new Schedule(levels, slots.Fetched), atRest);
    }

    private static void MarkRead(IReadOnlyList<PlannedNode> ordered, IReadOnlyList<PlannedNode> outputs)
    {
        foreach (var output in outputs)
            output.IsRead = true;
        for (var i = ordered.Count - 1; i >= 0; i--)
        {
            if (!ordered[i].IsRead)
                continue;
            foreach (var framed in ordered[i].Writers.SelectMany(writer => writer.ReadsFramesOf))
                framed.FrameIsRead = true;
            foreach (var axed in ordered[i].ReadsAxesOf)
                axed.AxesAreRead = true;
            foreach (var needed in ordered[i].Reads)
                needed.IsRead = true;
        }
    }
}
