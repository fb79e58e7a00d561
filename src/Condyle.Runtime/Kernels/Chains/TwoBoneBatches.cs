using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Two-bone IK in closed form, by the law of cosines (Euclid, Elements II.12–13): turns a copy's three joints so that its tip is at the goal,
/// its bend faces the pole, and its tip turns with the goal from rest. Where it stretches, the middle joint and the tip also move along their bones.
/// </summary>
/// <remarks>
/// Bones and unsolved bend are those of the copy with its channels at zero, under its base as it is now. At the distance of rest the bones are those in their new plane.
/// Not continuous with the pole on the line from root to goal, with the goal at the root, and, without a pole, with the goal opposite to where it was unsolved.
/// </remarks>
internal sealed class TwoBoneBatch : Batch
{
    public required ScaledLimb[] Limbs { get; init; }

    /// <inheritdoc cref="LimbKind"/>
    public required LimbKind Kind { get; init; }

    protected override void RunOne(Buffers pose) => One.TwoBoneKernel.Run(this, pose);

    protected override void RunEight(Buffers pose) => Eight.TwoBoneKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.TwoBoneKernel.Run(this, pose);
}

/// <summary>The same without scale on the way; it gives frames and no channels.</summary>
internal sealed class TwoBoneFrameBatch : Batch
{
    public required Items<RigidLimb> Limbs { get; init; }

    /// <inheritdoc cref="LimbKind"/>
    public required LimbKind Kind { get; init; }

    protected override void RunOne(Buffers pose)
    {
        if (Limbs.GoAbreast)
            EightNodes.TwoBoneFrameKernel.Run(this, pose);
        else
            One.TwoBoneFrameKernel.Run(this, pose);
    }

    protected override void RunEight(Buffers pose) => Eight.TwoBoneFrameKernel.Run(this, pose);

    protected override void RunSixteen(Buffers pose) => Sixteen.TwoBoneFrameKernel.Run(this, pose);
}

/// <summary>What differs between solvers in more than numbers.</summary>
/// <param name="HasPole">Whether they face poles.</param>
/// <param name="IsTurned">Whether inputs turn their planes.</param>
/// <param name="IsPlain">Whether they neither stretch nor approach their reach smoothly.</param>
/// <param name="Leans">Whether their bends may lie beside their planes, as the slight ones of straight limbs do.</param>
internal readonly record struct LimbKind(bool HasPole, bool IsTurned, bool IsPlain, bool Leans);

/// <summary>What a limb reaches and faces, and how far.</summary>
/// <param name="Goal">The frame that the tip goes to.</param>
/// <param name="Pole">The frame that the bend faces, or the goal again.</param>
/// <param name="TipInGoal">How the tip is turned in its goal at rest.</param>
/// <param name="Stretch">The slot of the weight by which the bones lengthen.</param>
/// <param name="Most">How many times their length they have at most.</param>
/// <param name="Softness">The part of the reach that is approached smoothly, as a share of the bones' length.</param>
/// <param name="Turner">The input that turns its plane, in degrees; any one where nothing does.</param>
/// <param name="Unturned">The value of that input at which the plane isn't turned.</param>
internal readonly record struct LimbAim(int Goal, int Pole, Quaternion TipInGoal, int Stretch, float Most, float Softness, int Turner, float Unturned)
{
    public readonly int Goal = Goal;
    public readonly int Pole = Pole;
    public readonly Quaternion TipInGoal = TipInGoal;
    public readonly int Stretch = Stretch;
    public readonly float Most = Most;
    public readonly float Softness = Softness;
    public readonly int Turner = Turner;
    public readonly float Unturned = Unturned;
}

/// <summary>The plane of an unsolved limb, in its root.</summary>
/// <param name="Line">From root to tip.</param>
/// <param name="Side">The bend across the line.</param>
internal readonly record struct LimbBend(Vector3 Line, Vector3 Side)
{
    public readonly Vector3 Line = Line;
    public readonly Vector3 Side = Side;
}

/// <summary>A limb whose frames may have scale.</summary>
/// <param name="Aim">What it reaches.</param>
/// <param name="Bend">Its plane.</param>
/// <param name="Base">What carries its root.</param>
/// <param name="Root">The frame of the unsolved root in its base.</param>
/// <param name="Middle">The frame of the unsolved middle joint in the root.</param>
/// <param name="Tip">The frame of the unsolved tip in the middle joint.</param>
/// <param name="MiddleAgain">The middle joint's move, behind its placement, that makes the first bone twice as long.</param>
/// <param name="TipAgain">The tip's move that does so with the second bone.</param>
/// <param name="RootChannel">The channels of the root.</param>
/// <param name="MiddleChannel">The channels of the middle joint.</param>
/// <param name="TipChannel">The channels of the tip.</param>
internal readonly record struct ScaledLimb(
    LimbAim Aim, LimbBend Bend, int Base, Affine Root, Affine Middle, Affine Tip, Vector3 MiddleAgain, Vector3 TipAgain, int RootChannel, int MiddleChannel, int TipChannel)
{
    public readonly LimbAim Aim = Aim;
    public readonly LimbBend Bend = Bend;
    public readonly int Base = Base;
    public readonly Affine Root = Root;
    public readonly Affine Middle = Middle;
    public readonly Affine Tip = Tip;
    public readonly Vector3 MiddleAgain = MiddleAgain;
    public readonly Vector3 TipAgain = TipAgain;
    public readonly int RootChannel = RootChannel;
    public readonly int MiddleChannel = MiddleChannel;
    public readonly int TipChannel = TipChannel;
}

/// <summary>A limb whose frames have no scale.</summary>
/// <param name="Aim">What it reaches.</param>
/// <param name="Bend">Its plane.</param>
/// <param name="Base">What carries its root.</param>
/// <param name="Root">The frame of the unsolved root in its base.</param>
/// <param name="FirstBone">The unsolved first bone, in the limb's plane.</param>
/// <param name="SecondBone">The unsolved second bone, in the limb's plane.</param>
/// <param name="Reach">How far the tip is from the root, unsolved.</param>
/// <param name="FirstTurn">How the root is turned from the frame of the first bone in its plane.</param>
/// <param name="SecondTurn">How the middle joint is turned from that of the second.</param>
/// <param name="RootFrame">Where the root's frame goes.</param>
/// <param name="MiddleFrame">Where the middle joint's goes.</param>
/// <param name="TipFrame">Where the tip's goes.</param>
internal readonly record struct RigidLimb(
    LimbAim Aim, LimbBend Bend, int Base, Rigid Root, LimbBone FirstBone, LimbBone SecondBone, float Reach, Quaternion FirstTurn, Quaternion SecondTurn, int RootFrame, int MiddleFrame, int TipFrame)
{
    public readonly LimbAim Aim = Aim;
    public readonly LimbBend Bend = Bend;
    public readonly int Base = Base;
    public readonly Rigid Root = Root;
    public readonly LimbBone FirstBone = FirstBone;
    public readonly LimbBone SecondBone = SecondBone;
    public readonly float Reach = Reach;
    public readonly Quaternion FirstTurn = FirstTurn;
    public readonly Quaternion SecondTurn = SecondTurn;
    public readonly int RootFrame = RootFrame;
    public readonly int MiddleFrame = MiddleFrame;
    public readonly int TipFrame = TipFrame;
}

/// <param name="Direction">How it points, unsolved, along the line of its limb's plane, to its side and beside it; along the line where it has no length.</param>
/// <param name="Length">Its length.</param>
/// <param name="Over">One over its length; zero where it has none.</param>
internal readonly record struct LimbBone(Vector3 Direction, float Length, float Over)
{
    public readonly Vector3 Direction = Direction;
    public readonly float Length = Length;
    public readonly float Over = Over;
}
