using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>
/// A smooth curve through points: between two neighbours a cubic in Hermite form, whose parameter is the distance between them (chord length), and whose slope
/// at each point is that of the parabola through it and its neighbours (Bessel's; de Boor 1978, "A Practical Guide to Splines", chapter IV).
/// </summary>
internal readonly ref struct CubicThrough
{
    private readonly ReadOnlySpan<Vector3> points;
    private readonly Span<Vector3> slopes;

    /// <param name="points">Two or more.</param>
    /// <param name="slopes">Room for a slope a point.</param>
    public CubicThrough(ReadOnlySpan<Vector3> points, Span<Vector3> slopes)
    {
        this.points = points;
        this.slopes = slopes;
        for (var i = 1; i < Spans; i++)
            slopes[i] = Weighted(Chord(i - 1), SpanOf(i), Chord(i), SpanOf(i - 1));

        // A parabola's slope over a span has its chord as the mean of its ends.
        slopes[0] = (Chord(0) * 2) - (Spans > 1 ? slopes[1] : Chord(0));
        slopes[Spans] = (Chord(Spans - 1) * 2) - slopes[Spans - 1];
    }

    public int Spans => points.Length - 1;

    /// <summary>The point at a share of a span's chord.</summary>
    public Vector3 PointAt(int span, float share)
    {
        var (rest, h) = (1 - share, SpanOf(span));
        return (points[span] * (rest * rest * (1 + (2 * share)))) + (points[span + 1] * (share * share * (3 - (2 * share))))
            + (slopes[span] * (h * share * rest * rest)) - (slopes[span + 1] * (h * share * share * rest));
    }

    /// <summary>The direction there; false where the curve stands still.</summary>
    public bool TryDirectionAt(int span, float share, out Vector3 direction)
    {
        var (rest, h) = (1 - share, SpanOf(span));
        return Rotation.TryDirection(
            ((points[span + 1] - points[span]) * (6 * share * rest)) + (slopes[span] * (h * rest * (rest - (2 * share)))) + (slopes[span + 1] * (h * share * (share - (2 * rest)))),
            out direction);
    }

    private static Vector3 Weighted(Vector3 a, float weightA, Vector3 b, float weightB) =>
        weightA + weightB > Rotation.Tiny ? ((a * weightA) + (b * weightB)) / (weightA + weightB) : Vector3.Zero;

    private float SpanOf(int span) => (points[span + 1] - points[span]).Length();

    private Vector3 Chord(int span) => Rotation.TryDirection(points[span + 1] - points[span], out var direction) ? direction : Vector3.Zero;
}
