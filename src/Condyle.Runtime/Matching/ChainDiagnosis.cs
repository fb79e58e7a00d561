using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>Says why many-bone IK or a curve doesn't stand as it should, the cause before its effects.</summary>
internal sealed class ChainDiagnosis(LimbPlan limb, IReadOnlyList<Affine3d> wanted, PoseFrames frames) : LimbDiagnosis(limb, wanted, frames)
{
    private readonly UnsolvedCopy unsolved = UnsolvedCopy.Of(limb.Solver.Copy, frames);

    private int Tip => Wanted.Count - 1;

    public override IEnumerable<MatchNote> Notes()
    {
        if (Joints.Max(Off) <= LimbMatch.AllowedMetres && Joints.Max(TurnedOff) <= LimbMatch.AllowedDegrees)
            yield break;
        foreach (var note in Solver.KeepsRoot ? RootMoved().Concat(Reached()).Concat(BoneLengths()) : BoneLengths())
            yield return note;
        if (Joints.Max(Off) <= LimbMatch.AllowedMetres)
        {
            var joint = Joints.MaxBy(TurnedOff);
            yield return new(MatchNoteKind.Twisted, $"{Title(joint)} is twisted by {Figures.Degrees(TurnedOff(joint))} against what the chain gives it by itself.");
            yield break;
        }

        var (moved, turned) = (Joints.MaxBy(Off), Joints.MaxBy(TurnedOff));
        yield return new(MatchNoteKind.OtherShape, $"{Ends} the solver gives another shape: {Title(moved)} comes out {Figures.Millimetres(Off(moved))} off, and {Title(turned)} turned {Figures.Degrees(TurnedOff(turned))}.");
    }

    private IEnumerable<MatchNote> Reached()
    {
        var distance = (Wanted[Tip].Origin - Found[0].Origin).Length;
        var brought = (Found[Tip].Origin - Found[0].Origin).Length;
        if (Off(Tip) > LimbMatch.AllowedMetres && Math.Abs(distance - brought) > LimbMatch.AllowedMetres)
            yield return new(MatchNoteKind.OutOfReach, $"{Title(Tip)} is {Figures.Millimetres(distance)} from the root, and the solver brings it to {Figures.Millimetres(brought)}.");
        if (Tremble() > LimbMatch.AllowedMetres)
            yield return new(MatchNoteKind.AlmostStraight, $"{Ends} joints move by {Figures.Millimetres(Tremble())} with the last digit of a float of the goal's place: the chain is {Figures.Millimetres(ChainHeight.Of(Wanted))} from straight, and {Figures.Millimetres(Afar())} from the middle of the world.");
        if (Solver.Pole is null && Tip > 1 && PlaneOff() > LimbMatch.AllowedDegrees)
            yield return new(MatchNoteKind.PlaneFixed, $"{Ends} the chain's plane is {Figures.Degrees(PlaneOff())} off, and no pole turns it.");
    }

    private IEnumerable<int> Joints => Enumerable.Range(0, Wanted.Count);

    private double Afar() => Math.Max(Wanted[0].Origin.Length, Wanted[Tip].Origin.Length);

    // How far the joints go for a change of the goal's distance: a flat arc of length L is 8·h² / 3·L shorter than its bow.
    private double Tremble()
    {
        var height = ChainHeight.Of(Wanted);
        return height > LimbMatch.AllowedMetres / 4 ? Math.Min(height, 3 * unsolved.Length * Digits * Afar() / (16 * height)) : 0;
    }

    private double PlaneOff() => (Wanted[Tip].Origin - Wanted[0].Origin).Direction is { } line
        ? Math.Abs(PlanePlace.TurnOf(Found, Wanted, line, unsolved.Length)) * Compare.DegreesPerRadian
        : 0;
}
