namespace Condyle.Evaluation;

/// <summary>
/// Forward and backward reaching inverse kinematics (Aristidou and Lasenby 2011, "FABRIK: a fast, iterative solver for the inverse kinematics problem",
/// Graphical Models 73(5), algorithm 1): each round puts the tip at the goal and draws the joints after it from tip to root, then puts the root back and
/// draws them from root to tip, each joint to the place on the line to its neighbour that is a bone's length away.
/// </summary>
/// <remarks>
/// Positions are from the root. Bones keep their length, whatever the goal. A goal beyond reach, outer or inner, is met by the straight or folded chain.
/// Near either end a round gains little: what the last one leaves is made up by <see cref="ChainBow"/>.
/// Cones are kept on the way from root to tip, so that the result has them; then neither that nor the shortcuts beyond reach are taken, and the tip may miss.
/// </remarks>
internal sealed class Fabrik(IReadOnlyList<double> lengths, ConeLimits? limits)
{
    private readonly double length = lengths.Sum();

    /// <summary>The distances that the tip can have from the root; that of the start counts, whatever rounding says.</summary>
    private (double Inner, double Outer) ReachFrom(double atStart) =>
        (Math.Min(Math.Max(0, (2 * lengths.Max()) - length), atStart), Math.Max(length, atStart));

    /// <summary>Turns bones until their end is at a goal.</summary>
    /// <param name="bones">The bones' directions, of length one; changed in place.</param>
    /// <param name="goal">The plane towards the goal.</param>
    /// <param name="distance">The goal's distance along the plane's line.</param>
    /// <param name="atRest">The distance that the tip has unsolved.</param>
    /// <param name="tolerance">How near the tip must come.</param>
    /// <param name="mostRounds">After how many rounds it ends at the latest.</param>
    /// <returns>The number of rounds taken.</returns>
    public int Solve(Vector3d[] bones, BendPlane goal, double distance, double atRest, double tolerance, int mostRounds)
    {
        var aim = goal.Line * distance;
        if ((Tip(bones) - aim).Length <= tolerance && limits is null)
            return 0;
        if (limits is null)
        {
            var (inner, outer) = ReachFrom(atRest);
            if (distance >= outer || (distance <= inner && inner > 0))
            {
                var longest = distance >= outer ? -1 : Enumerable.Range(0, bones.Length).First(i => lengths[i] == lengths.Max());
                for (var i = 0; i < bones.Length; i++)
                    bones[i] = longest < 0 || i == longest ? goal.Line : -goal.Line;
                return 0;
            }
        }

        limits?.Keep(bones, goal.Normal);
        var rounds = 0;
        for (; rounds < mostRounds && (Tip(bones) - aim).Length > tolerance; rounds++)
            Round(bones, aim, goal.Normal);
        if (limits is null && (Tip(bones) - aim).Length > tolerance)
            new ChainBow(lengths, goal).Close(bones, distance);
        return rounds;
    }

    /// <summary>Where the bones end.</summary>
    public Vector3d Tip(IReadOnlyList<Vector3d> bones)
    {
        var tip = Vector3d.Zero;
        for (var i = 0; i < bones.Count; i++)
            tip += bones[i] * lengths[i];
        return tip;
    }

    private void Round(Vector3d[] bones, Vector3d aim, Vector3d normal)
    {
        var joints = new Vector3d[bones.Length + 1];
        for (var i = 0; i < bones.Length; i++)
            joints[i + 1] = joints[i] + (bones[i] * lengths[i]);

        joints[bones.Length] = aim;
        for (var i = bones.Length - 1; i >= 0; i--)
        {
            bones[i] = (joints[i + 1] - joints[i]).Direction ?? bones[i];
            joints[i] = joints[i + 1] - (bones[i] * lengths[i]);
        }

        joints[0] = Vector3d.Zero;
        limits?.Begin();
        for (var i = 0; i < bones.Length; i++)
        {
            bones[i] = (joints[i + 1] - joints[i]).Direction ?? bones[i];
            bones[i] = limits?.Next(i, bones[i], normal) ?? bones[i];
            joints[i + 1] = joints[i] + (bones[i] * lengths[i]);
        }
    }
}
