using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>Says why two-bone IK doesn't stand as it should, the cause before its effects.</summary>
internal sealed class TwoBoneDiagnosis(LimbPlan limb, TwoBoneLimb solver, IReadOnlyList<Affine3d> wanted, PoseFrames frames) : LimbDiagnosis(limb, wanted, frames)
{
    private readonly TwoBoneTask task = solver.Solved.TaskIn(frames);

    public override IEnumerable<MatchNote> Notes()
    {
        foreach (var note in RootMoved().Concat(BoneLengths()))
            yield return note;
        if (Tremble() > LimbMatch.AllowedMetres)
            yield return new(MatchNoteKind.AlmostStraight, $"{Title(1)} moves by {Figures.Millimetres(Tremble())} with the last digit of a float of the goal's place: it is {Figures.Millimetres(Height())} off the line from {Title(0)} to {Title(2)}, and the limb {Figures.Millimetres(Afar())} from the middle of the world.");
        if (Off(2) > LimbMatch.AllowedMetres && Math.Abs((Wanted[2].Origin - task.Root).Length - (task.Reach.Distance * task.Reach.Factor)) > LimbMatch.AllowedMetres)
            yield return new(MatchNoteKind.OutOfReach, $"{Title(2)} is {Figures.Millimetres((Wanted[2].Origin - task.Root).Length)} from the root, and the solver brings it to {Figures.Millimetres(task.Reach.Distance * task.Reach.Factor)}.");

        var (plane, off) = (task.After, Math.Max(TurnedOff(0), Off(1) > LimbMatch.AllowedMetres ? SideOff() : 0));
        if (off > LimbMatch.AllowedDegrees && Solver.Pole is null && PlaneOff(plane) > LimbMatch.AllowedDegrees)
            yield return new(MatchNoteKind.PlaneFixed, $"{Ends} the limb's plane is {Figures.Degrees(PlaneOff(plane))} off, and {(task.Options.Turner is RigDial dial ? $"{dial.Title} goes no further" : "neither a pole nor a dial turns it")}.");
        else if (off > LimbMatch.AllowedDegrees)
            yield return new(MatchNoteKind.BendsAside, $"{Title(1)} bends beside the solver's plane or backwards: {Title(0)} comes out turned {Figures.Degrees(TurnedOff(0))} and {Title(1)} {Figures.Millimetres(Off(1))} off.");
        else if (TurnedOff(1) > LimbMatch.AllowedDegrees)
            yield return new(MatchNoteKind.Twisted, $"{Title(1)} is twisted by {Figures.Degrees(TurnedOff(1))}, and the solver bends it about its hinge alone.");
    }

    private double Height() => (Wanted[1].Origin - Wanted[0].Origin).Across(task.After.Line).Length;

    private double Afar() => Math.Max(task.Root.Length, (task.Root + task.ToGoal).Length);

    // How far the middle joint goes for a change of the goal's distance, by the derivative of the triangle's height; a limb that is straight stays so.
    private double Tremble()
    {
        var (first, second) = (task.Unsolved.Lengths[0], task.Unsolved.Lengths[1]);
        return Height() > LimbMatch.AllowedMetres / 4 ? Math.Min(Height(), Digits * Afar() * first * second / (task.Unsolved.Length * Height())) : 0;
    }

    // By how much the first bone points elsewhere.
    private double SideOff() => Angle(Found[1].Origin - Found[0].Origin, Wanted[1].Origin - Wanted[0].Origin);

    private double PlaneOff(BendPlane plane) => Angle(
        (Found[1].Origin - task.Root).Across(plane.Line), (Wanted[1].Origin - task.Root).Across(plane.Line));

    private static double Angle(Vector3d a, Vector3d b) => Math.Atan2(Vector3d.Cross(a, b).Length, Vector3d.Dot(a, b)) * Compare.DegreesPerRadian;
}
