using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>Gathers the weighted frames of a blend's sources. Weights at or below zero count as zero; the rest is divided by its sum.</summary>
internal sealed class Mix(int mostSources)
{
    /// <summary>A sum of weights below this is no weight at all: nobody has the target.</summary>
    public const float None = 1e-9f;

    private readonly Quaternion[] turns = new Quaternion[mostSources];
    private readonly float[] weights = new float[mostSources];
    private int count;
    private float sum;
    private Vector3 moves;

    public void Clear() => (count, sum, moves) = (0, 0, Vector3.Zero);

    public void Add(in Rigid frame, float weight)
    {
        (turns[count], weights[count]) = (frame.Turn, weight);
        count++;
        sum += weight;
        moves += frame.Origin * weight;
    }

    /// <summary>The mean of the moves and the spherical average of the turns; false where all weights are zero.</summary>
    public bool TryAverage(out Rigid mean)
    {
        mean = default;
        if (sum < None)
            return false;
        var turn = count switch
        {
            1 => turns[0],
            2 => Average.Slerp(turns[0], turns[1], weights[1] / sum),
            _ => Average.Spherical(turns.AsSpan(0, count), weights.AsSpan(0, count), sum),
        };
        mean = new Rigid(moves / sum, turn);
        return true;
    }
}
