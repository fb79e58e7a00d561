using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>
/// Forward and backward reaching inverse kinematics (Aristidou and Lasenby 2011, "FABRIK: a fast, iterative solver for the inverse kinematics problem",
/// Graphical Models 73(5), algorithm 1). Positions are from the root.
/// </summary>
/// <remarks>
/// A goal beyond reach, outer or inner, is met by the straight or folded chain. What the last round leaves is made up by <see cref="ChainBow"/>.
/// Cones are kept on the way from root to tip; then neither is done, and the tip may miss. Rigs that are there wait for the others as they are.
/// </remarks>
internal readonly ref struct Fabrik(ChainRoom room, int count, Lane length, WidePlane goal)
{
    private readonly WidePlane goal = goal;
    private readonly ChainBow bow = new(room, count, length, goal);

    /// <param name="turns">What limits the bones, and how the joints turn.</param>
    /// <param name="distance">The goal's distance along the plane's line.</param>
    /// <param name="atRest">The distance that the tip has unsolved.</param>
    /// <param name="tolerance">How near the tip must come.</param>
    /// <param name="mostRounds">After how many rounds it ends at the latest.</param>
    /// <param name="isMeant">Whose chains have a length; the bones of others stay.</param>
    public void Solve(ref BoneTurns turns, Lane distance, Lane atRest, Lane tolerance, int mostRounds, Lane isMeant)
    {
        var aim = goal.Line * distance;
        if (turns.HasCones)
            Limit(ref turns, isMeant);
        var isOpen = isMeant & IsAway(aim, tolerance);
        if (!turns.HasCones && Rigs.Any(isOpen))
            isOpen = Lanes.AndNot(isOpen, GoBeyond(isOpen, distance, atRest));
        for (var round = 0; round < mostRounds && Rigs.Any(isOpen); round++)
        {
            Round(ref turns, aim, isOpen);
            isOpen &= IsAway(aim, tolerance);
        }

        if (!turns.HasCones && Rigs.Any(isOpen))
            bow.Close(distance, isOpen);
    }

    private Lane IsAway(in WideVector aim, Lane tolerance) => Lanes.LessThan(tolerance, (bow.Tip(room.Bones) - aim).Length);

    /// <summary>Stretches out or folds where the goal is beyond reach, and says where that is; the distance at rest counts as reached, whatever rounding says.</summary>
    private Lane GoBeyond(Lane isOpen, Lane distance, Lane atRest)
    {
        var (longest, index) = bow.Longest();
        var inner = bow.Inner(longest, atRest);
        var isFar = Lanes.LessThanOrEqual(Lanes.MaxNative(length, atRest), distance);
        var isBeyond = isOpen & (isFar | (Lanes.LessThan(Lane.Zero, inner) & Lanes.LessThanOrEqual(distance, inner)));
        if (!Rigs.Any(isBeyond))
            return isBeyond;
        for (var i = 0; i < count; i++)
        {
            var isAhead = isFar | Lanes.Equals(index, Lanes.Create((float)i));
            room.Bones.Set(i, WideVector.Choose(isBeyond, WideVector.Choose(isAhead, goal.Line, -goal.Line), room.Bones.Wide(i)));
        }

        return isBeyond;
    }

    private void Limit(ref BoneTurns turns, Lane isMeant)
    {
        turns.Begin();
        for (var i = 0; i < count; i++)
        {
            var limited = WideVector.Choose(isMeant, turns.Limited(i, room.Bones.Wide(i)), room.Bones.Wide(i));
            room.Bones.Set(i, limited);
            turns.Next(i, limited);
        }
    }

    /// <summary>Puts the tip at the goal and draws the joints after it, then the root back in its place.</summary>
    private void Round(ref BoneTurns turns, in WideVector aim, Lane isOpen)
    {
        var (bones, joints, joint) = (room.Bones, room.Tried, WideVector.Zero);
        for (var i = 0; i < count; i++)
        {
            joints.Set(i, joint); // the joint that the bone begins at
            joint = After(joint, i);
        }

        joint = aim;
        for (var i = count - 1; i >= 0; i--)
        {
            Draw(i, joint - joints.Wide(i), isOpen);
            joints.Set(i, joint); // the joint that it ends at
            joint = WideVector.MultiplyAdd(bones.Wide(i), -room.Lengths.Wide(i), joint);
        }

        joint = WideVector.Zero;
        turns.Begin();
        for (var i = 0; i < count; i++)
        {
            Draw(i, joints.Wide(i) - joint, isOpen);
            if (turns.HasCones)
            {
                bones.Set(i, WideVector.Choose(isOpen, turns.Limited(i, bones.Wide(i)), bones.Wide(i)));
                turns.Next(i, bones.Wide(i));
            }

            joint = After(joint, i);
        }
    }

    private WideVector After(in WideVector joint, int bone) => WideVector.MultiplyAdd(room.Bones.Wide(bone), room.Lengths.Wide(bone), joint);

    private void Draw(int bone, in WideVector along, Lane isOpen)
    {
        var direction = along.Direction(out var isThere);
        room.Bones.Set(bone, WideVector.Choose(isThere & isOpen, direction, room.Bones.Wide(bone)));
    }
}
