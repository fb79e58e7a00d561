using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>A point of a curve with its tangent, a direction across that is carried along without turning about the curve, and its length from the start.</summary>
internal struct CurveSample
{
    public Vector3 At;
    public Vector3 Along;
    public Vector3 Across;
    public float Length;
}

/// <summary>
/// A curve with its length and with rotation-minimizing frames by double reflection (Wang, Jüttler, Zheng and Liu 2008, "Computation of rotation minimizing frames",
/// ACM TOG 27(1), section 4), from <see cref="PiecesASpan"/> pieces between two points: lengths are those of the pieces' chords.
/// </summary>
internal readonly ref struct FramedCurve
{
    public const int PiecesASpan = Evaluation.FramedCurve.PiecesASpan;

    private readonly CubicThrough curve;
    private readonly Span<CurveSample> samples;

    /// <param name="curve">The curve.</param>
    /// <param name="room">Room for the samples.</param>
    /// <param name="standing">The tangent where the curve has none because its points meet.</param>
    public FramedCurve(in CubicThrough curve, Span<CurveSample> room, Vector3 standing)
    {
        this.curve = curve;
        samples = room[..((curve.Spans * PiecesASpan) + 1)];
        var last = FirstDirection(standing);
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i].At = curve.PointAt(SpanOf(i), ShareOf(i));
            if (curve.TryDirectionAt(SpanOf(i), ShareOf(i), out var direction))
                last = direction;
            samples[i].Along = last;
            samples[i].Length = i == 0 ? 0 : samples[i - 1].Length + (samples[i].At - samples[i - 1].At).Length();
        }
    }

    public float Length => samples[^1].Length;

    public Vector3 StartAlong => samples[0].Along;

    public Vector3 EndAlong => samples[^1].Along;

    public Vector3 EndAcross => samples[^1].Across;

    /// <summary>Carries a direction across the start along the curve.</summary>
    public void Frame(Vector3 startAcross)
    {
        samples[0].Across = startAcross;
        for (var i = 1; i < samples.Length; i++)
            samples[i].Across = Carry(samples[i - 1], samples[i].At, samples[i].Along);
    }

    /// <summary>The point at a length from the start, and the frame there: its first axis along the curve, its second carried. Beyond the end it goes straight on.</summary>
    public (Vector3 Point, Quaternion Frame) At(float length)
    {
        if (length >= Length)
            return (samples[^1].At + (EndAlong * (length - Length)), FrameOf(EndAlong, EndAcross));
        var (from, to) = (0, samples.Length - 1);
        while (to - from > 1)
        {
            var middle = (from + to) / 2;
            if (samples[middle].Length <= length)
                from = middle;
            else
                to = middle;
        }

        var start = samples[from];
        var share = ShareOf(from) + ((length - start.Length) / (samples[to].Length - start.Length) / PiecesASpan);
        var point = curve.PointAt(SpanOf(from), share);
        if (!curve.TryDirectionAt(SpanOf(from), share, out var along))
            along = start.Along;
        return (point, FrameOf(along, Carry(start, point, along)));
    }

    /// <summary>Carries the direction across a sample on to a point.</summary>
    private static Vector3 Carry(in CurveSample from, Vector3 point, Vector3 along)
    {
        if (!Rotation.TryDirection(point - from.At, out var halfway) || Vector3.Dot(halfway, from.Along + along) < Evaluation.RotationMinimizing.Along)
            return Square(Vector3.Transform(from.Across, Rotation.Between(from.Along, along, from.Across)), along);
        var (mirroredAcross, mirroredAlong) = (Mirror(from.Across, halfway), Mirror(from.Along, halfway));
        return Square(Rotation.TryDirection(along - mirroredAlong, out var second) ? Mirror(mirroredAcross, second) : mirroredAcross, along);
    }

    private static Vector3 Mirror(Vector3 v, Vector3 normal) => v - (normal * (2 * Vector3.Dot(v, normal)));

    // Takes out what rounding left along the curve.
    private static Vector3 Square(Vector3 across, Vector3 along) =>
        Rotation.TryDirection(Rotation.Across(across, along), out var square) ? square : Rotation.AnyAcross(along);

    private static Quaternion FrameOf(Vector3 along, Vector3 across) => Rotation.FromAxes(along, across, Vector3.Cross(along, across));

    private Vector3 FirstDirection(Vector3 standing)
    {
        for (var i = 0; i < samples.Length; i++)
        {
            if (curve.TryDirectionAt(SpanOf(i), ShareOf(i), out var direction))
                return direction;
        }

        return standing;
    }

    private int SpanOf(int sample) => Math.Min(sample / PiecesASpan, curve.Spans - 1);

    private float ShareOf(int sample) => (sample - (SpanOf(sample) * PiecesASpan)) / (float)PiecesASpan;
}
