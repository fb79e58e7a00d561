using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Forward and backward reaching inverse kinematics (Aristidou and Lasenby 2011, "FABRIK: a fast, iterative solver for the inverse kinematics problem",
/// Graphical Models 73(5), algorithm 1). Positions are from the root.
/// </summary>
/// <remarks>
/// A goal beyond reach, outer or inner, is met by the straight or folded chain. What the last round leaves is made up by <see cref="ChainBow"/>.
/// Cones are kept on the way from root to tip; then neither is done, and the tip may miss.
/// </remarks>
internal readonly ref struct Fabrik(ReadOnlySpan<float> lengths, float length, Plane goal, Span<Vector3> tried)
{
    private readonly ReadOnlySpan<float> lengths = lengths;
    private readonly Span<Vector3> tried = tried;
    private readonly ChainBow bow = new(lengths, length, goal);

    /// <param name="bones">The bones' directions, of length one; changed in place.</param>
    /// <param name="turns">What limits them, and how the joints turn.</param>
    /// <param name="distance">The goal's distance along the plane's line.</param>
    /// <param name="atRest">The distance that the tip has unsolved.</param>
    /// <param name="tolerance">How near the tip must come.</param>
    /// <param name="mostRounds">After how many rounds it ends at the latest.</param>
    public void Solve(Span<Vector3> bones, ref BoneTurns turns, float distance, float atRest, float tolerance, int mostRounds)
    {
        var aim = goal.Line * distance;
        if (!turns.HasCones && (IsThere(bones, aim, tolerance) || IsBeyond(bones, distance, atRest)))
            return;
        if (turns.HasCones)
            Limit(bones, ref turns);
        for (var round = 0; round < mostRounds && !IsThere(bones, aim, tolerance); round++)
            Round(bones, ref turns, aim);
        if (!turns.HasCones && !IsThere(bones, aim, tolerance))
            bow.Close(bones, distance, tried);
    }

    private bool IsThere(ReadOnlySpan<Vector3> bones, Vector3 aim, float tolerance) => (bow.Tip(bones) - aim).Length() <= tolerance;

    /// <summary>Stretches out or folds where the goal is beyond reach; the distance at rest counts as reached, whatever rounding says.</summary>
    private bool IsBeyond(Span<Vector3> bones, float distance, float atRest)
    {
        var (longest, inner) = (bow.Longest, bow.Inner(atRest));
        var isFar = distance >= MathF.Max(length, atRest);
        if (!isFar && !(inner > 0 && distance <= inner))
            return false;
        for (var i = 0; i < bones.Length; i++)
            bones[i] = isFar || i == longest ? goal.Line : -goal.Line;
        return true;
    }

    private static void Limit(Span<Vector3> bones, ref BoneTurns turns)
    {
        turns.Begin();
        for (var i = 0; i < bones.Length; i++)
        {
            bones[i] = turns.Limited(i, bones[i]);
            turns.Next(i, bones[i]);
        }
    }

    /// <summary>Puts the tip at the goal and draws the joints after it, then the root back in its place.</summary>
    private void Round(Span<Vector3> bones, ref BoneTurns turns, Vector3 aim)
    {
        var joint = Vector3.Zero;
        for (var i = 0; i < bones.Length; i++)
        {
            tried[i] = joint; // the joint that the bone begins at
            joint += bones[i] * lengths[i];
        }

        joint = aim;
        for (var i = bones.Length - 1; i >= 0; i--)
        {
            if (Rotation.TryDirection(joint - tried[i], out var direction))
                bones[i] = direction;
            (tried[i], joint) = (joint, joint - (bones[i] * lengths[i])); // the joint that it ends at
        }

        joint = Vector3.Zero;
        turns.Begin();
        for (var i = 0; i < bones.Length; i++)
        {
            if (Rotation.TryDirection(tried[i] - joint, out var direction))
                bones[i] = direction;
            if (turns.HasCones)
            {
                bones[i] = turns.Limited(i, bones[i]);
                turns.Next(i, bones[i]);
            }

            joint += bones[i] * lengths[i];
        }
    }
}
