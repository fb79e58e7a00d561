using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// Two-bone IK in closed form, by the law of cosines (Euclid, Elements II.12–13): turns a copy's three joints so that its tip is at the goal,
/// its bend faces the pole, and its tip turns with the goal from rest.
/// </summary>
/// <remarks>
/// Bones and unsolved bend are read from the copy with its channels at zero, under its base as it is now. Beyond reach the tip stops at the nearest point.
/// Not continuous with the pole on the line from root to goal, with the goal at the root, and, without a pole, with the goal opposite to where it was unsolved.
/// </remarks>
internal sealed class TwoBoneBatch : Batch
{
    /// <summary>Stands for the pole of a solver that has none.</summary>
    public const int NoPole = -1;

    /// <summary>Nearer than this share of the bones' length, the goal is at the root and the pole on the line.</summary>
    private const float Near = 1e-6f;

    public required int[] Bases { get; init; }

    /// <summary>The frame of each unsolved root in its base.</summary>
    public required Affines Roots { get; init; }

    /// <summary>The frame of each unsolved middle joint in the root.</summary>
    public required Affines Middles { get; init; }

    /// <summary>The frame of each unsolved tip in the middle joint.</summary>
    public required Affines Tips { get; init; }

    /// <summary>From root to tip, in the unsolved root.</summary>
    public required Vectors Lines { get; init; }

    /// <summary>The bend across the line, in the unsolved root.</summary>
    public required Vectors Sides { get; init; }

    public required int[] Goals { get; init; }

    /// <summary>The world slot of each pole, or <see cref="NoPole"/>.</summary>
    public required int[] Poles { get; init; }

    /// <summary>How each tip is turned in its goal at rest.</summary>
    public required Rotations TipsInGoals { get; init; }

    public required int[] RootChannels { get; init; }

    public required int[] MiddleChannels { get; init; }

    public required int[] TipChannels { get; init; }

    protected override void RunOne(Buffers pose)
    {
        for (var i = 0; i < Bases.Length; i++)
            Solve(i, pose);
    }

    private void Solve(int i, Buffers pose)
    {
        var root = pose.Worlds[Bases[i]] * Roots[i];
        var middle = root * Middles[i];
        var firstBone = root.Direction(Middles[i].Origin);
        var secondBone = middle.Direction(Tips[i].Origin);
        var (first, second) = (firstBone.Length(), secondBone.Length());
        var before = Plane.Spanned(root.Direction(Lines[i]), root.Direction(Sides[i]));

        var goal = pose.Worlds[Goals[i]];
        var toGoal = goal.Origin - root.Origin;
        var toPole = Poles[i] == NoPole ? Vector3.Zero : pose.Worlds[Poles[i]].Origin - root.Origin;
        var after = before.Carried(toGoal, toPole, Near * (first + second));

        var reach = MathF.Min(MathF.Max(toGoal.Length(), MathF.Abs(first - second)), first + second);
        var (foot, height) = Triangle(first, second, reach);
        var firstSolved = (after.Line * foot) + (after.Side * height);
        var secondSolved = (after.Line * (reach - foot)) - (after.Side * height);

        var rootTurn = after.Bone(firstSolved) * Quaternion.Conjugate(before.Bone(firstBone)) * Rotation.Of(root, Vector3.One);
        var middleTurn = after.Bone(secondSolved) * Quaternion.Conjugate(before.Bone(secondBone)) * Rotation.Of(middle, Vector3.One);
        var tipTurn = Rotation.Of(goal, Vector3.One) * TipsInGoals[i];

        var solvedRoot = Turn(RootChannels[i], rootTurn, root, pose);
        var solvedMiddle = Turn(MiddleChannels[i], middleTurn, solvedRoot * Middles[i], pose);
        Turn(TipChannels[i], tipTurn, solvedMiddle * Tips[i], pose);
    }

    /// <summary>Where the middle joint stands over the line from root to tip: how far along it and how high above it.</summary>
    private static (float Foot, float Height) Triangle(float first, float second, float reach)
    {
        if (reach < Rotation.Tiny)
            return (0, first);
        var foot = (((first - second) * ((first + second) / reach)) + reach) / 2;

        // Heron's formula: no difference of squares, which would lose the height of an almost straight limb; exactly zero where the reach is at its end.
        var (sum, difference) = (first + second, first - second);
        var area = (sum + reach) * (sum - reach) * (reach + difference) * (reach - difference);
        return (foot, MathF.Sqrt(MathF.Max(0, area)) / (2 * reach));
    }

    /// <summary>Writes a turn in the world as a joint's channel, and gives the frame of the turned joint.</summary>
    private static Affine Turn(int channel, Quaternion world, in Affine stand, Buffers pose)
    {
        var turn = Rotation.Of(Affine.Of(Vector3.Zero, world, Vector3.One).In(stand), Vector3.One);
        pose.Turns[channel] = turn;
        return stand * Affine.Of(Vector3.Zero, turn, Vector3.One);
    }
}
