using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>What solvers reach and face, and the planes in which their copies bend.</summary>
internal sealed class SolverEnds
{
    /// <summary>Stands for the pole of a solver that has none.</summary>
    public const int NoPole = -1;

    /// <summary>Nearer than this share of the bones' length, the goal is at the root and the pole on the line.</summary>
    public const float Near = 1e-6f;

    public required int[] Goals { get; init; }

    /// <summary>The world slot of each pole, or <see cref="NoPole"/>.</summary>
    public required int[] Poles { get; init; }

    /// <summary>From root to tip, in the unsolved root.</summary>
    public required Vectors Lines { get; init; }

    /// <summary>The bend across the line, in the unsolved root.</summary>
    public required Vectors Sides { get; init; }

    /// <summary>How each tip is turned in its goal at rest.</summary>
    public required Rotations TipsInGoals { get; init; }

    /// <summary>The plane of the unsolved copy, the one towards the goal and the pole, and how far the goal is from the root.</summary>
    public (Plane Before, Plane After, float Distance) Planes(int i, in Affine root, float length, Buffers pose)
    {
        var before = Plane.Spanned(root.Direction(Lines[i]), root.Direction(Sides[i]));
        var toGoal = pose.Worlds[Goals[i]].Origin - root.Origin;
        var toPole = Poles[i] == NoPole ? Vector3.Zero : pose.Worlds[Poles[i]].Origin - root.Origin;
        return (before, before.Carried(toGoal, toPole, Near * length), toGoal.Length());
    }

    /// <summary>How far root and goal are from the world's origin.</summary>
    public float FarOut(int i, in Affine root, Buffers pose) => root.Origin.Length() + pose.Worlds[Goals[i]].Origin.Length();

    /// <summary>The tip's rotation in the world: it turns with the goal.</summary>
    public Quaternion TipTurn(int i, Buffers pose) => Rotation.Of(pose.Worlds[Goals[i]], Vector3.One) * TipsInGoals[i];
}

/// <summary>Takes a distance that differs from the one at rest by nothing but rounding as that one: the height of a straight limb goes with the root of the difference.</summary>
internal static class RestDistance
{
    /// <summary>As a share of how far from the world's origin things are: what a float leaves of world frames a dozen deep.</summary>
    public const float Rounding = 5e-7f;

    /// <summary>Two bones that rest further from straight and from folded than so many times the rounding feel it less and less, so less of it is taken as rest.</summary>
    public const float Bent = 16;

    public static float Settle(float distance, float atRest, float farOut) => MathF.Abs(distance - atRest) <= Rounding * farOut ? atRest : distance;
}
