using Condyle.Evaluation;
using Condyle.Runtime.Matching.Fitting;

namespace Condyle.Runtime.Matching;

/// <summary>Sets the controls that a limb's curve goes through, as <see cref="CurveFit"/> does.</summary>
internal sealed class CurveMatch(LimbPlan limb, CurvedLimb solver, LivePose pose, IReadOnlyList<Affine3d> wanted) : ISolverMatch
{
    private readonly CurveFit fit = new(
        pose, solver.Through, solver.Stretch, [.. limb.Joints.Zip(wanted, (joint, frame) => new FitTarget(joint.Solved, frame, Turns: true))]);

    public void Reach() => fit.Begin();

    public void Settle() => fit.Run();

    public IEnumerable<MatchNote> Notes() =>
        solver.Through.SelectMany(pose.PassedLimits).Concat(new ChainDiagnosis(limb, wanted, pose.Frames).Notes());
}
