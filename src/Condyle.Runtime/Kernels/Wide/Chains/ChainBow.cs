using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Bows a chain evenly in the plane of its bend, or straightens it, to bring its ends nearer to each other or further apart.</summary>
internal readonly ref struct ChainBow(ChainRoom room, int count, Lane length, WidePlane plane)
{
    /// <summary>Halvings of the interval in which the bow is looked for: a float tells no more apart.</summary>
    private const int Halvings = 24;

    private readonly WidePlane plane = plane;

    /// <summary>The length of the longest bone, the first of several, and which it is.</summary>
    public (Lane Length, Lane Index) Longest()
    {
        var (longest, index) = (room.Lengths.Wide(0), Lane.Zero);
        for (var i = 1; i < count; i++)
        {
            var one = room.Lengths.Wide(i);
            index = Lanes.ConditionalSelect(Lanes.LessThan(longest, one), Lanes.Create((float)i), index);
            longest = Lanes.MaxNative(longest, one);
        }

        return (longest, index);
    }

    /// <summary>The nearest that the ends can come to each other; a distance that they have counts, whatever rounding says.</summary>
    public Lane Inner(Lane longest, Lane atRest) => Lanes.MinNative(Lanes.MaxNative(Lane.Zero, longest + longest - length), atRest);

    /// <summary>
    /// The angle by which to bow a chain that is to begin with its ends at another distance: about half of what a straight chain needs for it,
    /// and less the nearer the chain is to being folded, so that it isn't bowed past itself.
    /// </summary>
    public Lane AngleFor(Lane distance, Lane atRest)
    {
        var inner = Inner(Longest().Length, atRest);
        var openness = Lanes.MinNative(Lanes.Create(1f), (atRest - inner) / (length - inner));
        openness = Lanes.ConditionalSelect(Lanes.LessThan(inner, length), openness, Lane.Zero);
        return (openness + openness) * (Turn(distance / length) - Turn(atRest / length));
    }

    /// <summary>Bows bones further: from the first to the last they turn by an angle in all, half of it at the first, towards the side of the bend.</summary>
    public void Bow(Vectors bones, Lane angle, Vectors bowed)
    {
        var (before, half) = (Lane.Zero, Lanes.Create(0.5f));
        for (var i = 0; i < count; i++)
        {
            var middle = Lanes.FusedMultiplyAdd(room.Lengths.Wide(i), half, before) / length;
            bowed.Set(i, WideTurn.Exp(plane.Normal * (angle * (half - middle) * half)).Rotate(bones.Wide(i)));
            before += room.Lengths.Wide(i);
        }
    }

    /// <summary>
    /// Brings the ends of bones to a distance that they nearly have, and into the plane's line: too far apart, they are bowed; too near, all lean towards the line
    /// between the ends, or, where one of them points back along it, are bowed the other way.
    /// </summary>
    /// <param name="distance">The distance.</param>
    /// <param name="isOpen">Whose ends are not there yet; the bones of others stay.</param>
    public void Close(Lane distance, Lane isOpen)
    {
        var tip = Tip(room.Bones);
        var line = Along(tip);
        var isFar = isOpen & Lanes.LessThanOrEqual(distance, tip.Length);
        var isNear = Lanes.AndNot(isOpen, isFar);
        Change(Way.Bows, isFar, line, distance);
        var isUnbowed = Change(Way.Unbows, isNear & PointsBack(line), line, distance);
        Change(Way.Leans, Lanes.AndNot(isNear, isUnbowed), line, distance);
    }

    /// <summary>Where bones end.</summary>
    public WideVector Tip(Vectors bones)
    {
        var tip = WideVector.Zero;
        for (var i = 0; i < count; i++)
            tip = WideVector.MultiplyAdd(bones.Wide(i), room.Lengths.Wide(i), tip);
        return tip;
    }

    /// <summary>The angle whose cosine is a share from 0 to 1.</summary>
    private static Lane Turn(Lane share) => Lanes.Sqrt(Arc.Squared(Lanes.MaxNative(Lane.Zero, Lanes.Create(1f) - share) * Lanes.Create(0.5f)));

    private WideVector Along(in WideVector tip)
    {
        var direction = tip.Direction(out var isThere);
        return WideVector.Choose(isThere, direction, plane.Line);
    }

    private Lane PointsBack(in WideVector line)
    {
        var pointsBack = Lane.Zero;
        for (var i = 0; i < count; i++)
            pointsBack |= Lanes.LessThan(WideVector.Dot(room.Bones.Wide(i), line), Lane.Zero);
        return pointsBack;
    }

    /// <summary>Changes bones by as much as brings their ends to a distance; says where some change does.</summary>
    private Lane Change(Way way, Lane isMeant, in WideVector line, Lane distance)
    {
        if (!Rigs.Any(isMeant))
            return isMeant;
        var (from, to) = (Lane.Zero, Lanes.Create((float)Evaluation.ChainBow.FirstTry));
        for (var isOpen = isMeant & IsStill(to, line, distance, way); Rigs.Any(isOpen); isOpen &= IsStill(to, line, distance, way))
        {
            var isBeyond = isOpen & Lanes.LessThanOrEqual(Lanes.Create(1f), to);
            isOpen = Lanes.AndNot(isOpen, isBeyond);
            isMeant = Lanes.AndNot(isMeant, isBeyond);
            from = Lanes.ConditionalSelect(isOpen, to, from);
            to = Lanes.ConditionalSelect(isOpen, to + to, to);
        }

        var half = Lanes.Create(0.5f);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (from + to) * half;
            var isStill = IsStill(middle, line, distance, way);
            from = Lanes.ConditionalSelect(isStill, middle, from);
            to = Lanes.ConditionalSelect(isStill, to, middle);
        }

        Try((from + to) * half, line, way);
        var swing = WideTurn.Between(Along(Tip(room.Tried)), plane.Line, plane.Normal);
        for (var i = 0; i < count; i++)
            room.Bones.Set(i, WideVector.Choose(isMeant, swing.Rotate(room.Tried.Wide(i)), room.Bones.Wide(i)));
        return isMeant;
    }

    private Lane IsStill(Lane by, in WideVector line, Lane distance, Way way)
    {
        Try(by, line, way);
        var isNear = Lanes.LessThan(Tip(room.Tried).Length, distance);
        return way == Way.Bows ? Lanes.OnesComplement(isNear) : isNear;
    }

    private void Try(Lane by, in WideVector line, Way way)
    {
        if (way != Way.Leans)
        {
            Bow(room.Bones, by * Lanes.Create(way == Way.Bows ? MathF.PI : -MathF.PI), room.Tried);
            return;
        }

        for (var i = 0; i < count; i++)
        {
            var leaning = WideVector.MultiplyAdd(line, by, room.Bones.Wide(i) * (Lanes.Create(1f) - by)).Direction(out var isThere);
            room.Tried.Set(i, WideVector.Choose(isThere, leaning, line));
        }
    }

    private enum Way
    {
        Bows,
        Unbows,
        Leans,
    }
}
