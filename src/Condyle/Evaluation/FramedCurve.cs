namespace Condyle.Evaluation;

/// <summary>A curve with its length and with rotation-minimizing frames, from <see cref="PiecesASpan"/> pieces between two points: lengths are those of the pieces' chords.</summary>
internal sealed class FramedCurve
{
    public const int PiecesASpan = 16;

    private readonly CubicThrough curve;
    private readonly Vector3d[] at;
    private readonly Vector3d[] along;
    private readonly Vector3d[] across;
    private readonly double[] lengths;

    /// <param name="points">The points to go through, two or more.</param>
    /// <param name="standing">The tangent where the curve has none because its points meet.</param>
    public FramedCurve(IReadOnlyList<Vector3d> points, Vector3d standing)
    {
        curve = new CubicThrough(points);
        var count = (curve.Spans * PiecesASpan) + 1;
        (at, along, across, lengths) = (new Vector3d[count], new Vector3d[count], new Vector3d[count], new double[count]);
        var last = Enumerable.Range(0, count).Select(i => curve.DirectionAt(SpanOf(i), ShareOf(i))).FirstOrDefault(found => found is not null) ?? standing;
        for (var i = 0; i < count; i++)
        {
            at[i] = curve.PointAt(SpanOf(i), ShareOf(i));
            along[i] = last = curve.DirectionAt(SpanOf(i), ShareOf(i)) ?? last;
            lengths[i] = i == 0 ? 0 : lengths[i - 1] + (at[i] - at[i - 1]).Length;
        }
    }

    public double Length => lengths[lengths.Length - 1];

    public Vector3d StartAlong => along[0];

    public Vector3d EndAlong => along[along.Length - 1];

    /// <summary>Across the curve's end, as carried from its start.</summary>
    public Vector3d EndAcross => across[across.Length - 1];

    /// <summary>Carries a direction across the start along the curve.</summary>
    public void Frame(Vector3d startAcross)
    {
        across[0] = startAcross;
        for (var i = 1; i < at.Length; i++)
            across[i] = RotationMinimizing.Carry(at[i] - at[i - 1], along[i - 1], across[i - 1], along[i]);
    }

    /// <summary>The point at a length from the start, and the frame there: its first axis along the curve, its second carried. Beyond the end it goes straight on.</summary>
    public (Vector3d Point, Quaterniond Frame) At(double length)
    {
        if (length >= Length)
            return (at[at.Length - 1] + (EndAlong * (length - Length)), FrameOf(EndAlong, EndAcross));
        var (from, to) = (0, at.Length - 1);
        while (to - from > 1)
        {
            var middle = (from + to) / 2;
            if (lengths[middle] <= length)
                from = middle;
            else
                to = middle;
        }

        var share = ShareOf(from) + ((length - lengths[from]) / (lengths[to] - lengths[from]) / PiecesASpan);
        var point = curve.PointAt(SpanOf(from), share);
        var tangent = curve.DirectionAt(SpanOf(from), share) ?? along[from];
        return (point, FrameOf(tangent, RotationMinimizing.Carry(point - at[from], along[from], across[from], tangent)));
    }

    /// <summary>The length from the start at which the curve is nearest to a point.</summary>
    public double LengthNearest(Vector3d point)
    {
        var (nearest, found) = (double.PositiveInfinity, 0.0);
        for (var i = 1; i < at.Length; i++)
        {
            var piece = at[i] - at[i - 1];
            var size = Vector3d.Dot(piece, piece);
            var share = size > Vector3d.Tiny ? Math.Min(Math.Max(Vector3d.Dot(point - at[i - 1], piece) / size, 0), 1) : 0;
            var distance = (point - at[i - 1] - (piece * share)).Length;
            if (distance < nearest)
                (nearest, found) = (distance, lengths[i - 1] + (share * (lengths[i] - lengths[i - 1])));
        }

        return found;
    }

    private static Quaterniond FrameOf(Vector3d along, Vector3d across) => Quaterniond.FromAxes(along, across, Vector3d.Cross(along, across));

    private int SpanOf(int sample) => Math.Min(sample / PiecesASpan, curve.Spans - 1);

    private double ShareOf(int sample) => (sample - (SpanOf(sample) * PiecesASpan)) / (double)PiecesASpan;
}
