using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>A goal that a solver's bones don't reach while everything is at rest.</summary>
/// <param name="Missing">How far the tip stays from it, in metres.</param>
/// <param name="IsTooNear">Whether it is nearer to the root than the bones fold; else it is too far.</param>
internal readonly record struct SolverReach(double Missing, bool IsTooNear)
{
    /// <summary>None where the goal is within reach, where there is none, or where the goal or the copy's root has left its own rest: then what moved it is to blame.</summary>
    public static SolverReach? Missed(RigSolver solver, PoseFrames frames)
    {
        if (solver.Copy is not { } copy || !solver.Goal.TryKnown(out var goal) || goal is null || !IsSolved(solver, copy))
            return null;
        if (Departure.Between(frames.Rest.WorldOf(goal), frames.WorldOf(goal)).Counts || Departure.Between(frames.Rest.WorldOf(copy.Joints[0]), frames.StandOf(copy.Joints[0])).Counts)
            return null;
        var unsolved = UnsolvedCopy.Of(copy, frames);
        var distance = (frames.WorldOf(goal).Origin - unsolved.Frames[0].Origin).Length;
        var reached = solver is RigTwoBone twoBone ? ReachedBy(twoBone, unsolved, distance, frames) : Math.Min(Math.Max(distance, InnerOf(unsolved)), Math.Max(unsolved.Length, unsolved.Reach));
        var missing = Math.Abs(distance - reached);
        return missing > Departure.LeastMetres ? new(missing, distance < reached) : null;
    }

    private static bool IsSolved(RigSolver solver, RigCopy copy) => solver is RigTwoBone ? copy.Joints.Count == 3 : copy.Joints.Count >= 2;

    // What softness leaves is no fault of the goal's.
    private static double ReachedBy(RigTwoBone solver, UnsolvedCopy unsolved, double distance, PoseFrames frames)
    {
        var options = TwoBoneOptions.Of(solver, frames.Rest);
        var stretch = Math.Min(Math.Max(frames.ValueOf(options.Stretch), 0), 1);
        var reach = TwoBoneReach.Of(distance, unsolved.Reach, unsolved.Lengths[0], unsolved.Lengths[1], 0, stretch, options.Most);
        return reach.Distance * reach.Factor;
    }

    private static double InnerOf(UnsolvedCopy unsolved) => Math.Min(Math.Max(0, (2 * unsolved.Lengths.Max()) - unsolved.Length), unsolved.Reach);
}
