using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>Sets the goal and the pole of a many-bone IK.</summary>
/// <remarks>
/// The goal takes the tip's turn and stands where the tip should be, beyond that by what the solver leaves short, so that a tip that ends before its goal comes to its place.
/// The plane is turned by the pole as <see cref="PlanePlace"/> says. What the chain does between its ends follows from those two, and can't be asked for.
/// </remarks>
internal sealed class ManyBoneMatch(LimbPlan limb, ManyBoneLimb solver, LivePose pose, IReadOnlyList<Affine3d> wanted) : ISolverMatch
{
    /// <summary>By this share a goal goes beyond where a chain is straight or folded, so that it stays so whatever a float makes of it.</summary>
    private const double Beyond = 4e-6;

    private const int MostCorrections = 12;

    private Vector3d asked;

    private Vector3d Root => pose.Frames.WorldOf(limb.Joints[0].Solved).Origin;

    private List<Affine3d> Found => [.. limb.Joints.Select(joint => pose.Frames.WorldOf(joint.Solved).Frame)];

    public void Reach()
    {
        asked = GoalFor(UnsolvedCopy.Of(solver.Copy, pose.Frames));
        PlaceGoal(asked);
    }

    public void Settle()
    {
        pose.Unnoted(Correct);
        PlaceGoal(asked);
        TurnPlane();
    }

    public IEnumerable<MatchNote> Notes() => new ChainDiagnosis(limb, wanted, pose.Frames).Notes();

    private void Correct()
    {
        TurnPlane();
        var (goal, least) = (asked, Off());
        for (var round = 0; round < MostCorrections && least > LimbMatch.AllowedMetres / 100; round++)
        {
            goal += wanted[^1].Origin - Found[^1].Origin;
            PlaceGoal(goal);
            TurnPlane();
            if (Off() is var now && now < least)
                (asked, least) = (goal, now);
        }
    }

    private double Off() => Found.Zip(wanted, (found, should) => (found.Origin - should.Origin).Length).Max();

    // A straight chain's goal is no nearer than its reach, and a folded one's no further: next to either, the joints' way from the line goes with the root of what is missing.
    private Vector3d GoalFor(UnsolvedCopy unsolved)
    {
        var toTip = wanted[^1].Origin - Root;
        var (inner, outer) = (Math.Max(0, (2 * unsolved.Lengths.Max()) - unsolved.Length), unsolved.Length);
        var isFlat = ChainHeight.Of(wanted) < LimbMatch.AllowedMetres / 4;
        var distance = !isFlat ? toTip.Length
            : toTip.Length > outer * (1 - Beyond) ? Math.Max(toTip.Length, outer * (1 + Beyond))
            : toTip.Length < inner * (1 + Beyond) ? inner * (1 - Beyond)
            : toTip.Length;
        return Root + ((toTip.Direction ?? Vector3d.Zero) * distance);
    }

    private void PlaceGoal(Vector3d goal) =>
        pose.Place(solver.Goal, Affine3d.Rigid(goal, pose.CarriedFromRest(limb.Joints[^1].Solved, wanted[^1].Rotation, solver.Goal.Node)));

    private void TurnPlane()
    {
        if (solver.Pole is not { } pole)
            return;
        var (plane, found) = (solver.Solved.PlaneIn(pose.Frames), Found);
        var length = UnsolvedCopy.Of(solver.Copy, pose.Frames).Length;
        var turned = plane.Turned(PlanePlace.TurnOf(found, wanted, plane.Line, length));
        pose.Move(pole, PlanePlace.PoleFor(solver.Copy, pole.Node, turned, found[0].Origin, wanted[Bend.MiddleOf(wanted.Count)].Origin, length, pose.Frames.Rest));
    }
}
