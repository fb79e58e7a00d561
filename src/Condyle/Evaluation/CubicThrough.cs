namespace Condyle.Evaluation;

/// <summary>
/// A smooth curve through points: between two neighbours a cubic in Hermite form, whose parameter is the distance between them (chord length), and whose slope
/// at each point is that of the parabola through it and its neighbours (Bessel's; de Boor 1978, "A Practical Guide to Splines", chapter IV).
/// </summary>
/// <remarks>
/// At the ends the slope is that of the parabola through the three outermost points; two points make a straight line. A point moves the curve for two spans to either side.
/// Continuous in the points, with its direction, but where two neighbours meet: there the slope has no direction.
/// </remarks>
internal sealed class CubicThrough
{
    private readonly IReadOnlyList<Vector3d> points;
    private readonly double[] spans;
    private readonly Vector3d[] slopes;

    public CubicThrough(IReadOnlyList<Vector3d> points)
    {
        this.points = points;
        spans = [.. points.Skip(1).Select((next, i) => (next - points[i]).Length)];
        var chords = spans.Select((_, i) => (points[i + 1] - points[i]).Direction ?? Vector3d.Zero).ToArray();
        slopes = new Vector3d[points.Count];
        for (var i = 1; i < spans.Length; i++)
            slopes[i] = Weighted(chords[i - 1], spans[i], chords[i], spans[i - 1]);
        slopes[0] = End(chords[0], spans.Length > 1 ? slopes[1] : chords[0]);
        slopes[spans.Length] = End(chords[spans.Length - 1], slopes[spans.Length - 1]);
    }

    public int Spans => spans.Length;

    /// <summary>The point at a share of a span's chord.</summary>
    public Vector3d PointAt(int span, double share)
    {
        var (rest, h) = (1 - share, spans[span]);
        return (points[span] * (rest * rest * (1 + (2 * share)))) + (points[span + 1] * (share * share * (3 - (2 * share))))
            + (slopes[span] * (h * share * rest * rest)) - (slopes[span + 1] * (h * share * share * rest));
    }

    /// <summary>The direction there; none where the curve stands still.</summary>
    public Vector3d? DirectionAt(int span, double share)
    {
        var (rest, h) = (1 - share, spans[span]);
        return (((points[span + 1] - points[span]) * (6 * share * rest)) + (slopes[span] * (h * rest * (rest - (2 * share))))
            + (slopes[span + 1] * (h * share * (share - (2 * rest))))).Direction;
    }

    private static Vector3d Weighted(Vector3d a, double weightA, Vector3d b, double weightB) =>
        weightA + weightB > Vector3d.Tiny ? ((a * weightA) + (b * weightB)) / (weightA + weightB) : Vector3d.Zero;

    // A parabola's slope over a span has its chord as the mean of its ends.
    private static Vector3d End(Vector3d chord, Vector3d inner) => (chord * 2) - inner;
}
