namespace Condyle.Runtime.Kernels;

/// <summary>What solvers reach and face, and the planes in which their copies bend.</summary>
internal sealed class SolverEnds
{
    /// <summary>Stands for the pole of a solver that has none.</summary>
    public const int NoPole = -1;

    /// <summary>Nearer than this share of the bones' length, the goal is at the root and the pole on the line; so is a pole that rounding can't tell from the line.</summary>
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
}

/// <summary>How far a distance may differ from the one at rest to be taken as that one: the height of a straight limb goes with the root of the difference.</summary>
internal static class RestDistance
{
    /// <summary>As a share of how far from the world's origin things are: what a float leaves of world frames a dozen deep.</summary>
    public const float Rounding = 5e-7f;

    /// <summary>Two bones that rest further from straight and from folded than so many times the rounding feel it less and less, so less of it is taken as rest.</summary>
    public const float Bent = 16;
}
