using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>
/// A curve with its length and with rotation-minimizing frames by double reflection (Wang, Jüttler, Zheng and Liu 2008, "Computation of rotation minimizing frames",
/// ACM TOG 27(1), section 4), from some pieces between two nodes: lengths are those of the pieces' chords.
/// </summary>
internal readonly struct FramedCurve
{
    private const int Pieces = Evaluation.FramedCurve.PiecesASpan;

    private readonly CubicThrough curve;
    private readonly ChainRoom room;
    private readonly int last;

    /// <param name="curve">The curve.</param>
    /// <param name="room">Room for the samples.</param>
    /// <param name="standing">The tangent where the curve has none because its nodes meet.</param>
    public FramedCurve(CubicThrough curve, ChainRoom room, in WideVector standing)
    {
        this.curve = curve;
        this.room = room;
        last = curve.Spans * Pieces;
        var (along, length) = (FirstDirection(standing), Lane.Zero);
        for (var i = 0; i <= last; i++)
        {
            var span = curve[SpanOf(i)];
            var (point, direction) = (span.PointAt(ShareOf(i)), span.DirectionAt(ShareOf(i), out var isThere));
            along = WideVector.Choose(isThere, direction, along);
            if (i > 0)
                length += (point - room.Points.Wide(i - 1)).Length;
            room.Points.Set(i, point);
            room.Along.Set(i, along);
            room.Ways.Set(i, length);
        }
    }

    public Lane Length => room.Ways.Wide(last);

    public WideVector StartAlong => room.Along.Wide(0);

    public WideVector EndAlong => room.Along.Wide(last);

    public WideVector EndAcross => room.Across.Wide(last);

    /// <summary>Carries a direction across the start along the curve.</summary>
    public void Frame(in WideVector startAcross)
    {
        room.Across.Set(0, startAcross);
        for (var i = 1; i <= last; i++)
            room.Across.Set(i, SampleOf(i - 1).Carry(room.Points.Wide(i), room.Along.Wide(i)));
    }

    /// <summary>The point at a length from the start, and the frame there: its first axis along the curve, its second carried. Beyond the end it goes straight on.</summary>
    public (WideVector Point, WideTurn Frame) At(Lane length)
    {
        // The last sample that isn't beyond the length, and the span that it begins or lies in.
        var (span, sample, from, to, share) = (curve[0], SampleOf(0), Lane.Zero, room.Ways.Wide(1), Lane.Zero);
        for (var i = 1; i < last; i++)
        {
            var isPast = Lanes.LessThanOrEqual(room.Ways.Wide(i), length);
            if (!Rigs.Any(isPast))
                break;
            if (i % Pieces == 0)
                span = CubicSpan.Choose(isPast, curve[SpanOf(i)], span);
            sample = CurveSample.Choose(isPast, SampleOf(i), sample);
            from = Lanes.ConditionalSelect(isPast, room.Ways.Wide(i), from);
            to = Lanes.ConditionalSelect(isPast, room.Ways.Wide(i + 1), to);
            share = Lanes.ConditionalSelect(isPast, ShareOf(i), share);
        }

        share += (length - from) / (to - from) * Lanes.Create(1f / Pieces);
        var (point, along) = (span.PointAt(share), span.DirectionAt(share, out var isThere));
        along = WideVector.Choose(isThere, along, sample.Along);
        var across = sample.Carry(point, along);

        var isBeyond = Lanes.LessThanOrEqual(Length, length);
        if (Rigs.Any(isBeyond))
        {
            point = WideVector.Choose(isBeyond, WideVector.MultiplyAdd(EndAlong, length - Length, room.Points.Wide(last)), point);
            along = WideVector.Choose(isBeyond, EndAlong, along);
            across = WideVector.Choose(isBeyond, EndAcross, across);
        }

        return (point, WideTurn.FromAxes(along, across, WideVector.Cross(along, across)));
    }

    private WideVector FirstDirection(in WideVector standing)
    {
        var (first, isFound) = (standing, Lane.Zero);
        for (var i = 0; i <= last && !Rigs.Every(isFound); i++)
        {
            var direction = curve[SpanOf(i)].DirectionAt(ShareOf(i), out var isThere);
            first = WideVector.Choose(Lanes.AndNot(isThere, isFound), direction, first);
            isFound |= isThere;
        }

        return first;
    }

    private CurveSample SampleOf(int i) => new() { At = room.Points.Wide(i), Along = room.Along.Wide(i), Across = room.Across.Wide(i) };

    private int SpanOf(int sample) => Math.Min(sample / Pieces, curve.Spans - 1);

    private Lane ShareOf(int sample) => Lanes.Create((sample - (SpanOf(sample) * Pieces)) / (float)Pieces);
}

/// <summary>A point of a curve with its tangent, and a direction across that is carried along without turning about the curve.</summary>
internal struct CurveSample
{
    public WideVector At;
    public WideVector Along;
    public WideVector Across;

    public static CurveSample Choose(Lane mask, in CurveSample a, in CurveSample b) => new()
    {
        At = WideVector.Choose(mask, a.At, b.At),
        Along = WideVector.Choose(mask, a.Along, b.Along),
        Across = WideVector.Choose(mask, a.Across, b.Across),
    };

    /// <summary>Carries the direction across on to a point, where the curve goes along another direction.</summary>
    public readonly WideVector Carry(in WideVector point, in WideVector along)
    {
        var halfway = (point - At).Direction(out var isStep);
        var isAlong = isStep & Lanes.LessThanOrEqual(Lanes.Create((float)Evaluation.RotationMinimizing.Along), WideVector.Dot(halfway, Along + along));
        var (across, before) = (Mirror(Across, halfway), Mirror(Along, halfway));
        var second = (along - before).Direction(out var isSecond);
        across = WideVector.Choose(isSecond, Mirror(across, second), across);
        if (!Rigs.Every(isAlong))
            across = WideVector.Choose(isAlong, across, WideTurn.Between(Along, along, Across).Rotate(Across));

        // Takes out what rounding left along the curve.
        var square = across.Across(along).Direction(out var isSquare);
        return Rigs.Every(isSquare) ? square : WideVector.Choose(isSquare, square, along.AnyAcross());
    }

    private static WideVector Mirror(in WideVector v, in WideVector normal) => WideVector.MultiplyAdd(normal, WideVector.Dot(v, normal) * Lanes.Create(-2f), v);
}
