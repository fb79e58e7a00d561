using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>Says why many-bone IK or a curve doesn't stand as it should, the cause before its effects.</summary>
internal sealed class ChainDiagnosis
{
    /// <summary>A distance worked out in floats is off by this share of how far from the world's origin its ends are.</summary>
    private const double Digits = 4.0 / (1 << 23);

    private readonly LimbPlan limb;
    private readonly IReadOnlyList<Affine3d> wanted;
    private readonly IReadOnlyList<Affine3d> found;
    private readonly UnsolvedCopy unsolved;

    public ChainDiagnosis(LimbPlan limb, IReadOnlyList<Affine3d> wanted, PoseFrames frames)
    {
        (this.limb, this.wanted) = (limb, wanted);
        found = [.. limb.Joints.Select(joint => frames.WorldOf(joint.Solved).Frame)];
        unsolved = UnsolvedCopy.Of(limb.Solver.Copy, frames);
    }

    private int Tip => wanted.Count - 1;

    public IEnumerable<MatchNote> Notes()
    {
        if (Joints.Max(Off) <= LimbMatch.AllowedMetres && Joints.Max(TurnedOff) <= LimbMatch.AllowedDegrees)
            yield break;
        foreach (var note in limb.Solver.KeepsRoot ? Reached().Concat(Lengths()) : Lengths())
            yield return note;
        if (Joints.Max(Off) <= LimbMatch.AllowedMetres)
        {
            var joint = Joints.MaxBy(TurnedOff);
            yield return new(MatchNoteKind.Twisted, $"{Title(joint)} is twisted by {Figures.Degrees(TurnedOff(joint))} against what the chain gives it by itself.");
            yield break;
        }

        var (moved, turned) = (Joints.MaxBy(Off), Joints.MaxBy(TurnedOff));
        yield return new(MatchNoteKind.OtherShape, $"Between its ends {limb.Solver.Copy.Title} takes another shape: {Title(moved)} comes out {Figures.Millimetres(Off(moved))} off, and {Title(turned)} turned {Figures.Degrees(TurnedOff(turned))}.");
    }

    private IEnumerable<MatchNote> Reached()
    {
        if (Off(0) > LimbMatch.AllowedMetres)
            yield return new(MatchNoteKind.RootMoved, $"{Title(0)} stands {Figures.Millimetres(Off(0))} from where the solved copy hangs, and the solver doesn't move it.");
        var distance = (wanted[Tip].Origin - found[0].Origin).Length;
        var brought = (found[Tip].Origin - found[0].Origin).Length;
        if (Off(Tip) > LimbMatch.AllowedMetres && Math.Abs(distance - brought) > LimbMatch.AllowedMetres)
            yield return new(MatchNoteKind.OutOfReach, $"{Title(Tip)} is {Figures.Millimetres(distance)} from the root, and the solver brings it to {Figures.Millimetres(brought)}.");
        if (Tremble() > LimbMatch.AllowedMetres)
            yield return new(MatchNoteKind.AlmostStraight, $"{limb.Solver.Copy.Title} is {Figures.Millimetres(ChainHeight.Of(wanted))} from straight: the last digit of a float of the goal's place moves its joints by {Figures.Millimetres(Tremble())}.");
        if (limb.Solver.Pole is null && PlaneOff() > LimbMatch.AllowedDegrees)
            yield return new(MatchNoteKind.PlaneFixed, $"The chain's plane is {Figures.Degrees(PlaneOff())} off, and no pole turns it.");
    }

    private IEnumerable<MatchNote> Lengths()
    {
        for (var bone = 0; bone < Tip; bone++)
        {
            var (has, given) = ((wanted[bone + 1].Origin - wanted[bone].Origin).Length, (found[bone + 1].Origin - found[bone].Origin).Length);
            if (Math.Abs(has - given) > LimbMatch.AllowedMetres)
                yield return new(MatchNoteKind.BoneLength, $"The bone from {Title(bone)} to {Title(bone + 1)} is {Figures.Millimetres(has)} long, and the solver gives it {Figures.Millimetres(given)}.");
        }
    }

    private IEnumerable<int> Joints => Enumerable.Range(0, wanted.Count);

    // How far the joints go for a change of the goal's distance: a flat arc of length L is 8·h² / 3·L shorter than its bow.
    private double Tremble()
    {
        var (height, digit) = (ChainHeight.Of(wanted), Digits * Math.Max(wanted[0].Origin.Length, wanted[Tip].Origin.Length));
        return height > LimbMatch.AllowedMetres / 4 ? Math.Min(height, 3 * unsolved.Length * digit / (16 * height)) : 0;
    }

    private double PlaneOff() => (wanted[Tip].Origin - wanted[0].Origin).Direction is { } line
        ? Math.Abs(PlanePlace.TurnOf(found, wanted, line, unsolved.Length)) * Compare.DegreesPerRadian
        : 0;

    private double Off(int joint) => (found[joint].Origin - wanted[joint].Origin).Length;

    private double TurnedOff(int joint) => Compare.Angle(found[joint], wanted[joint]);

    private string Title(int joint) => limb.Joints[joint].Original.Title;
}
