using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>
/// A smooth curve through nodes: between two neighbours a cubic in Hermite form, whose parameter is the distance between them (chord length), and whose slope
/// at each node is that of the parabola through it and its neighbours (Bessel's; de Boor 1978, "A Practical Guide to Splines", chapter IV).
/// </summary>
internal readonly struct CubicThrough
{
    private readonly ChainRoom room;

    /// <param name="room">Where the nodes are and the slopes go.</param>
    /// <param name="nodes">How many, two or more.</param>
    public CubicThrough(ChainRoom room, int nodes)
    {
        this.room = room;
        Spans = nodes - 1;
        for (var i = 1; i < Spans; i++)
            room.Slopes.Set(i, Weighted(ChordOf(i - 1, out var before), ChordOf(i, out var after), before, after));

        // A parabola's slope over a span has its chord as the mean of its ends.
        var (first, last) = (ChordOf(0, out _), ChordOf(Spans - 1, out _));
        room.Slopes.Set(0, first + first - (Spans > 1 ? room.Slopes.Wide(1) : first));
        room.Slopes.Set(Spans, last + last - room.Slopes.Wide(Spans - 1));
    }

    public int Spans { get; }

    public CubicSpan this[int span]
    {
        get
        {
            var (from, to) = (room.Nodes.Wide(span), room.Nodes.Wide(span + 1));
            var length = (to - from).Length;
            return new() { From = from, To = to, FromSlope = room.Slopes.Wide(span) * length, ToSlope = room.Slopes.Wide(span + 1) * length };
        }
    }

    private static WideVector Weighted(in WideVector a, in WideVector b, Lane lengthOfA, Lane lengthOfB)
    {
        var sum = lengthOfA + lengthOfB;
        var slope = WideVector.MultiplyAdd(a, lengthOfB, b * lengthOfA) * (Lanes.Create(1f) / sum);
        return WideVector.Choose(Lanes.LessThan(Lanes.Create(Rotation.Tiny), sum), slope, WideVector.Zero);
    }

    private WideVector ChordOf(int span, out Lane length)
    {
        var chord = room.Nodes.Wide(span + 1) - room.Nodes.Wide(span);
        length = chord.Length;
        return chord.Direction(out _);
    }
}

/// <summary>The curve between two nodes. Slopes are those over the whole of it.</summary>
internal struct CubicSpan
{
    public WideVector From;
    public WideVector To;
    public WideVector FromSlope;
    public WideVector ToSlope;

    public static CubicSpan Choose(Lane mask, in CubicSpan a, in CubicSpan b) => new()
    {
        From = WideVector.Choose(mask, a.From, b.From),
        To = WideVector.Choose(mask, a.To, b.To),
        FromSlope = WideVector.Choose(mask, a.FromSlope, b.FromSlope),
        ToSlope = WideVector.Choose(mask, a.ToSlope, b.ToSlope),
    };

    /// <summary>The point at a share of the chord.</summary>
    public readonly WideVector PointAt(Lane share)
    {
        var one = Lanes.Create(1f);
        var (rest, twice) = (one - share, share + share);
        var (ofTo, ofFrom) = (share * share * (Lanes.Create(3f) - twice), rest * rest * (one + twice));
        var slopes = WideVector.MultiplyAdd(FromSlope, share * rest * rest, ToSlope * -(share * share * rest));
        return WideVector.MultiplyAdd(From, ofFrom, WideVector.MultiplyAdd(To, ofTo, slopes));
    }

    /// <summary>The direction there; none, as the mask says, where the curve stands still.</summary>
    public readonly WideVector DirectionAt(Lane share, out Lane isThere)
    {
        var rest = Lanes.Create(1f) - share;
        var slopes = WideVector.MultiplyAdd(FromSlope, rest * (rest - share - share), ToSlope * (share * (share - rest - rest)));
        return WideVector.MultiplyAdd(To - From, Lanes.Create(6f) * share * rest, slopes).Direction(out isThere);
    }
}
