using System.Numerics;

namespace Quayside.Tests;

/// <summary>Where a joint stands in the world: its axes and its place, in double precision.</summary>
/// <param name="Numbers">16 numbers, column after column.</param>
internal sealed record Frame(double[] Numbers)
{
    /// <summary>A matrix of System.Numerics multiplies row vectors, so that its rows are the columns here.</summary>
    public static Frame Of(Matrix4x4 matrix) => new([.. Enumerable.Range(0, 16).Select(i => (double)matrix[i / 4, i % 4])]);

    public double MetresTo(Frame other) => Length(12, 3, other);

    /// <summary>From the difference of the axes, which is exact for small angles where the arc cosine of a trace isn't: its length is 2√2 · sin(angle / 2).</summary>
    public double DegreesTo(Frame other) => 2 * Math.Asin(Math.Min(1, Length(0, 11, other) / (2 * Math.Sqrt(2)))) * 180 / Math.PI;

    private double Length(int first, int count, Frame other) =>
        Math.Sqrt(Enumerable.Range(first, count).Sum(i => (Numbers[i] - other.Numbers[i]) * (Numbers[i] - other.Numbers[i])));
}
