namespace Condyle.Runtime.Kernels;

/// <summary>How far the tips of two bones go towards their goals, and by what factor the bones lengthen.</summary>
/// <remarks>
/// With d the goal's distance, L the bones' length and h = L − s the hard range: r = d up to h, and r = L − s·e^−(d − h)/s beyond it (common practice, no source).
/// The hard range ends no nearer than where the tip rests. The factor is 1 + w·(min(d / r, most) − 1).
/// </remarks>
internal sealed class TwoBoneReaches
{
    /// <summary>The weight slot of each solver's stretch.</summary>
    public required int[] Stretches { get; init; }

    /// <summary>The greatest factors.</summary>
    public required float[] Most { get; init; }

    /// <summary>The parts of the reach that are approached smoothly, as shares of the bones' length.</summary>
    public required float[] Softness { get; init; }

    /// <summary>The distance r, what it is short of L, and the factor.</summary>
    public (float Distance, float Short, float Factor) Of(int i, float goal, float atRest, float first, float second, Buffers pose)
    {
        var inner = MathF.Min(MathF.Abs(first - second), atRest);
        var outer = MathF.Max(first + second, atRest);
        var hard = MathF.Max(outer - (Softness[i] * (first + second)), atRest);
        var soft = outer - hard;
        var rest = goal <= hard ? outer - MathF.Max(goal, inner)
            : soft > 0 ? soft * MathF.Exp((hard - goal) / soft)
            : 0;
        var reach = goal <= hard ? MathF.Max(goal, inner) : outer - rest;
        var stretch = Math.Clamp(pose.Weights[Stretches[i]], 0, 1);
        return (reach, rest, goal > reach && reach > Rotation.Tiny ? 1 + (stretch * (MathF.Min(goal / reach, Most[i]) - 1)) : 1);
    }
}
