using Condyle.Evaluation;

namespace Condyle.Runtime.Matching;

/// <summary>Says why a solved copy doesn't stand as it should, the cause before its effects.</summary>
internal abstract class LimbDiagnosis(LimbPlan limb, IReadOnlyList<Affine3d> wanted, PoseFrames frames)
{
    /// <summary>A distance worked out in floats is off by this share of how far from the world's origin its ends are.</summary>
    protected const double Digits = 4.0 / (1 << 23);

    protected LimbSolver Solver => limb.Solver;

    /// <summary>Where the joints should be.</summary>
    protected IReadOnlyList<Affine3d> Wanted => wanted;

    /// <summary>Where they are.</summary>
    protected IReadOnlyList<Affine3d> Found { get; } = [.. limb.Joints.Select(joint => frames.WorldOf(joint.Solved).Frame)];

    /// <summary>How a note begins that is about the whole limb.</summary>
    protected string Ends => $"From {Title(0)} to {Title(wanted.Count - 1)}";

    public abstract IEnumerable<MatchNote> Notes();

    protected IEnumerable<MatchNote> RootMoved()
    {
        if (Off(0) > LimbMatch.AllowedMetres)
            yield return new(MatchNoteKind.RootMoved, $"{Title(0)} stands {Figures.Millimetres(Off(0))} from where the solved copy hangs, and the solver doesn't move it.");
    }

    protected IEnumerable<MatchNote> BoneLengths()
    {
        for (var bone = 0; bone < wanted.Count - 1; bone++)
        {
            var (has, given) = ((wanted[bone + 1].Origin - wanted[bone].Origin).Length, (Found[bone + 1].Origin - Found[bone].Origin).Length);
            if (Math.Abs(has - given) > LimbMatch.AllowedMetres)
                yield return new(MatchNoteKind.BoneLength, $"The bone from {Title(bone)} to {Title(bone + 1)} is {Figures.Millimetres(has)} long, and the solver gives it {Figures.Millimetres(given)}.");
        }
    }

    protected double Off(int joint) => (Found[joint].Origin - wanted[joint].Origin).Length;

    protected double TurnedOff(int joint) => Compare.Angle(Found[joint], wanted[joint]);

    protected string Title(int joint) => limb.Joints[joint].Original.Title;
}
