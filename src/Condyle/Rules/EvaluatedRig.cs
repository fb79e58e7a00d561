using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A rig that is known whole, evaluated with everything at rest, and on demand in other poses.</summary>
internal sealed class EvaluatedRig
{
    /// <summary>How much work the poses of one rig may take, in nodes that are worked out; a solver counts for each of its rounds. Above it nothing is evaluated.</summary>
    public const long MostWork = 60_000;

    /// <summary>For so many an average of three rotations or more counts: it converges in less.</summary>
    private const int RoundsOfAverage = 20;

    /// <summary>So many nodes that are only looked at count as one that is worked out.</summary>
    private const int NodesLookedAt = 32;

    private readonly RigSentences sentences;
    private readonly long workOfOne;
    private readonly CancellationToken cancellation;
    private long work;
    private NodeNeeds? needs;

    private EvaluatedRig(RigModel model, RestPose rest, long workOfOne, CancellationToken cancellation)
    {
        this.workOfOne = work = workOfOne;
        this.cancellation = cancellation;
        sentences = new RigSentences(model, rest);
        AtRest = AllAtRest(null);
        GoalsMissed = [.. MissedIn(model, AtRest)];
    }

    /// <summary>Where the nodes were delivered or placed.</summary>
    public RestPose Rest => sentences.Rest;

    /// <summary>Where the nodes stand with every control at zero and every switch at its default.</summary>
    public PoseFrames AtRest { get; }

    /// <summary>What each node needed for that. Only a rig with a slip is asked, so it is worked out again for it.</summary>
    public NodeNeeds Needs
    {
        get
        {
            if (needs is null)
                AllAtRest(needs = new());
            return needs;
        }
    }

    /// <summary>The solvers whose goal is out of reach at rest.</summary>
    public IReadOnlyList<(RigSolver Solver, SolverReach Reach)> GoalsMissed { get; }

    /// <summary>The rig, or why it can't be evaluated; neither where not all of it is known or where that is too much work.</summary>
    public static (EvaluatedRig? Rig, IReadOnlyList<GeometryFault> Faults) Of(CheckedRig rig)
    {
        var model = rig.Model;
        if (!model.IsWhole || !model.IsCertain || WorkOf(model) is not (<= MostWork and var work))
            return (null, []);
        if (rig.Rest.Faults is { Count: > 0 } faults)
            return (null, faults);
        try
        {
            return (new EvaluatedRig(model, rig.Rest, work, rig.Cancellation), []);
        }
        catch (RigGeometryException impossible)
        {
            return (null, impossible.Faults);
        }
    }

    /// <summary>What a question about another pose answers; none where the pose can't be evaluated, or not within what work is left.</summary>
    public T? In<T>(Pose pose, Func<PoseFrames, T> question)
        where T : class
    {
        cancellation.ThrowIfCancellationRequested();
        work += workOfOne;
        if (work > MostWork)
            return null;
        try
        {
            return question(new PoseFrames(sentences, pose));
        }
        catch (RigGeometryException)
        {
            return null;
        }
    }

    private PoseFrames AllAtRest(NodeNeeds? noted)
    {
        var frames = new PoseFrames(sentences, new Pose(), noted);
        foreach (var node in sentences.Nodes)
        {
            cancellation.ThrowIfCancellationRequested();
            frames.WorldOf(node);
        }

        return frames;
    }

    private static IEnumerable<(RigSolver Solver, SolverReach Reach)> MissedIn(RigModel model, PoseFrames atRest)
    {
        foreach (var solver in model.TwoBones.Cast<RigSolver>().Concat(model.ManyBones))
        {
            if (SolverReach.Missed(solver, atRest) is { } reach)
                yield return (solver, reach);
        }
    }

    private static long WorkOf(RigModel model)
    {
        long work = model.Nodes.Count + model.Responses.Count;
        foreach (var solver in model.ManyBones)
            work += (solver.Copy?.Joints.Count ?? 0) * (solver.End.TryKnown(out var end) && end is not null && end.Rounds.TryKnown(out var rounds) ? Math.Max(1L, rounds) : ManyBoneOptions.DefaultRounds);
        foreach (var curve in model.Curves)
            work += (curve.Copy?.Joints.Count ?? 0L) * curve.Nodes.Count;
        foreach (var blend in model.Blends)
            work += (blend.Chain?.Joints?.Count ?? 1L) * blend.Sources.Count * (blend.Sources.Count > 2 ? RoundsOfAverage : 1);
        work += (long)model.Twists.Count * model.Nodes.Count / NodesLookedAt;
        foreach (var space in model.Spaces)
            work += space.Parents.Count;
        return work;
    }
}
