using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>
/// The plane in which two bones bend, for each of several rigs: the line from root to tip, the side to which they bend, and the normal, line × side;
/// each of length one and across the others.
/// </summary>
internal struct WidePlane
{
    public WideVector Line;
    public WideVector Side;
    public WideVector Normal;

    /// <summary>The plane through a line and a direction beside it; some plane, always the same, where they are no two directions.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static WidePlane Spanned(in WideVector line, in WideVector beside)
    {
        var one = Lanes.Create(1f);
        var zero = Lanes.Create(0f);
        var along = line.Direction(out var isLine);
        along = WideVector.Choose(isLine, along, new(zero, one, zero));
        var side = beside.Across(along).Direction(out var isSide);
        if (!Rigs.Every(isSide))
            side = WideVector.Choose(isSide, side, along.AnyAcross());
        return new() { Line = along, Side = side, Normal = WideVector.Cross(along, side) };
    }

    /// <summary>The plane towards a goal whose bend faces a pole; not there, as the mask says, with the goal nearer to the root or the pole nearer to the line than <paramref name="near"/>.</summary>
    /// <inheritdoc cref="Towards"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WidePlane Facing(in WideVector toGoal, Lane distance, in WideVector toPole, Lane near, Lane farOut, out Lane isThere)
    {
        var closeness = Lanes.Create(1f) / distance;
        var across = WideVector.Cross(toGoal, toPole); // which doesn't wait for the line
        var beside = across.Length;
        isThere = IsGoal(distance, near) & Lanes.LessThan(TellsFrom(toPole, closeness, near, farOut) * distance, beside);
        return Of(toGoal * closeness, across * (Lanes.Create(1f) / beside));
    }

    /// <summary>
    /// The plane towards a goal. Its bend faces the pole; without one, or with the pole nearer to the line than <paramref name="near"/>,
    /// the bend is carried along by the smallest turn of the line. A goal nearer than that leaves the line as it is.
    /// </summary>
    /// <param name="toGoal">From the root to the goal.</param>
    /// <param name="distance">Its length.</param>
    /// <param name="toPole">From the root to the pole; nothing without one.</param>
    /// <param name="near">A share of the bones' length.</param>
    /// <param name="farOut">How far root and goal are from the world's origin: what rounding of places moves the pole beside the line by is no side to face.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public readonly WidePlane Towards(in WideVector toGoal, Lane distance, in WideVector toPole, Lane near, Lane farOut)
    {
        var isGoal = IsGoal(distance, near);
        var towards = WideVector.Choose(isGoal, toGoal, Line);
        var length = Lanes.ConditionalSelect(isGoal, distance, Lanes.Create(1f));
        var closeness = Lanes.Create(1f) / length;
        var across = WideVector.Cross(towards, toPole);
        var beside = across.Length;
        var isFaced = Lanes.LessThan(TellsFrom(toPole, Lanes.ConditionalSelect(isGoal, closeness, Lanes.Create(0f)), near, farOut) * length, beside);
        var plane = Of(towards * closeness, across * (Lanes.Create(1f) / beside));
        if (Rigs.Every(isFaced))
            return plane;
        var carried = Spanned(plane.Line, WideTurn.Between(Line, plane.Line, Normal).Rotate(Side));
        return new() { Line = plane.Line, Side = WideVector.Choose(isFaced, plane.Side, carried.Side), Normal = WideVector.Choose(isFaced, plane.Normal, carried.Normal) };
    }

    /// <summary>The plane turned about its line.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    public readonly WidePlane Turned(Lane radians)
    {
        var (sine, cosine) = Lanes.SinCos(radians);
        return Of(Line, WideVector.MultiplyAdd(Normal, cosine, Side * -sine));
    }

    /// <summary>A vector as it is seen in this plane: along its line, to its side and beside it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideVector Seen(in WideVector vector) => new() { X = WideVector.Dot(vector, Line), Y = WideVector.Dot(vector, Side), Z = WideVector.Dot(vector, Normal) };

    /// <summary>A vector that is given in this plane.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideVector Out(in WideVector vector) =>
        WideVector.MultiplyAdd(Line, vector.X, WideVector.MultiplyAdd(Side, vector.Y, Normal * vector.Z));

    /// <summary>The rotation of the frame whose axes are line, side and normal.</summary>
    public readonly WideTurn Frame
    {
        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        get => WideTurn.FromAxes(Line, Side, Normal);
    }

    /// <summary>The same, longer than one.</summary>
    /// <param name="squared">The square of its length.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public readonly WideTurn LongFrame(out Lane squared) => WideTurn.FromAxes(Line, Side, Normal, out squared);

    /// <summary>How far beside the line a pole is that a float of the places tells from one on it; the line strays with one over the goal's distance.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane TellsFrom(in WideVector toPole, Lane closeness, Lane near, Lane farOut)
    {
        var span = toPole.Span;
        return Lanes.FusedMultiplyAdd((farOut + span) * Lanes.Create(RestDistance.Rounding), Lanes.FusedMultiplyAdd(span, closeness, Lanes.Create(1f)), near);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane IsGoal(Lane distance, Lane near) => Lanes.LessThan(near, distance) & Lanes.LessThan(Lanes.Create(Rotation.Tiny), distance);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WidePlane Of(in WideVector line, in WideVector normal) => new() { Line = line, Side = WideVector.Cross(normal, line), Normal = normal };
}
