using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>What solves a limb's one copy, and what an animator has of it.</summary>
internal abstract record LimbSolver(RigCopy Copy)
{
    /// <summary>Whether the copy's root hangs where it hangs, whatever is solved.</summary>
    public abstract bool KeepsRoot { get; }

    /// <summary>The control that takes the copy's tip somewhere.</summary>
    public abstract Handle Goal { get; }

    /// <summary>The pole's handle.</summary>
    public virtual Handle? Pole => null;

    /// <summary>The controls that a curve goes through.</summary>
    public virtual IReadOnlyList<Handle> Through => [];

    /// <summary>A way to bring the copy to where its joints should be.</summary>
    public abstract ISolverMatch MatchIn(LimbPlan limb, LivePose pose, IReadOnlyList<Affine3d> wanted);
}

/// <summary>Sets the controls of a solver so that its copy stands where it should.</summary>
internal interface ISolverMatch
{
    /// <summary>Brings the copy near: what follows its controls, and with it the limb's root, may move by that, and then it is asked again. Nobody is told of it.</summary>
    void Reach();

    /// <summary>Does the rest, and notes what the controls had to do for all of it.</summary>
    void Settle();

    /// <summary>Why the copy doesn't stand as it should, the cause before its effects.</summary>
    IEnumerable<MatchNote> Notes();
}

/// <summary>Two-bone IK.</summary>
/// <param name="Solved">The solver.</param>
/// <param name="Goal">The goal's handle.</param>
/// <param name="Pole">The pole's handle.</param>
/// <param name="Stretch">The switch by which the bones lengthen, where it does nothing else.</param>
internal sealed record TwoBoneLimb(SolvedTwoBone Solved, Handle Goal, Handle? Pole, RigSwitch? Stretch) : LimbSolver(Solved.Copy)
{
    public override bool KeepsRoot => true;

    public override Handle Goal { get; } = Goal;

    public override Handle? Pole { get; } = Pole;

    public override ISolverMatch MatchIn(LimbPlan limb, LivePose pose, IReadOnlyList<Affine3d> wanted) => new TwoBoneMatch(limb, this, pose, wanted);
}

/// <summary>Many-bone IK.</summary>
/// <param name="Solved">The solver.</param>
/// <param name="Goal">The goal's handle.</param>
/// <param name="Pole">The pole's handle.</param>
internal sealed record ManyBoneLimb(SolvedManyBone Solved, Handle Goal, Handle? Pole) : LimbSolver(Solved.Copy)
{
    public override bool KeepsRoot => true;

    public override Handle Goal { get; } = Goal;

    public override Handle? Pole { get; } = Pole;

    public override ISolverMatch MatchIn(LimbPlan limb, LivePose pose, IReadOnlyList<Affine3d> wanted) => new ManyBoneMatch(limb, this, pose, wanted);
}

/// <summary>A curve.</summary>
/// <param name="Solved">The curve.</param>
/// <param name="Through">The handles of its nodes, each control once, but for those that the limb hangs under.</param>
/// <param name="Stretch">The switch by which the chain takes the curve's length, where it does nothing else.</param>
internal sealed record CurvedLimb(SolvedCurve Solved, IReadOnlyList<Handle> Through, RigSwitch? Stretch) : LimbSolver(Solved.Copy)
{
    public override bool KeepsRoot => false;

    public override Handle Goal => Through[^1];

    public override IReadOnlyList<Handle> Through { get; } = Through;

    public override ISolverMatch MatchIn(LimbPlan limb, LivePose pose, IReadOnlyList<Affine3d> wanted) => new CurveMatch(limb, this, pose, wanted);
}
