using System.Runtime.CompilerServices;

namespace Condyle.Runtime.Kernels;

/// <summary>A frame for each of several rigs, which may carry scale and shear. A point p of it stands at X·p.X + Y·p.Y + Z·p.Z + Origin.</summary>
internal readonly struct WideAffine<TLane>(WideVector<TLane> x, WideVector<TLane> y, WideVector<TLane> z, WideVector<TLane> origin)
    where TLane : struct, ILane<TLane>
{
    public readonly WideVector<TLane> X = x;
    public readonly WideVector<TLane> Y = y;
    public readonly WideVector<TLane> Z = z;
    public readonly WideVector<TLane> Origin = origin;

    /// <summary>The frame that <paramref name="inner"/> is when it is given in <paramref name="outer"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideAffine<TLane> operator *(in WideAffine<TLane> outer, in WideAffine<TLane> inner) =>
        new(outer.Direction(inner.X), outer.Direction(inner.Y), outer.Direction(inner.Z), outer.Point(inner.Origin));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideAffine<TLane> All(in Affine frame) =>
        new(WideVector<TLane>.All(frame.X), WideVector<TLane>.All(frame.Y), WideVector<TLane>.All(frame.Z), WideVector<TLane>.All(frame.Origin));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> Direction(in WideVector<TLane> local) =>
        WideVector<TLane>.MultiplyAdd(X, local.X, WideVector<TLane>.MultiplyAdd(Y, local.Y, Z * local.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> Point(in WideVector<TLane> local) =>
        WideVector<TLane>.MultiplyAdd(X, local.X, WideVector<TLane>.MultiplyAdd(Y, local.Y, WideVector<TLane>.MultiplyAdd(Z, local.Z, Origin)));

    /// <summary>A point of the world as a frame without scale and shear sees it.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector<TLane> SeenRigidly(in WideVector<TLane> point)
    {
        var from = point - Origin; // first, so that far from the world's origin no digits are lost
        return new(WideVector<TLane>.Dot(X, from), WideVector<TLane>.Dot(Y, from), WideVector<TLane>.Dot(Z, from));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideAffine<TLane> Scaled(in WideVector<TLane> scale) => new(X * scale.X, Y * scale.Y, Z * scale.Z, Origin);

    /// <summary>
    /// The rotation of a frame whose scale has these signs. Its axes are made orthonormal in the order X, Y, Z (Gram and Schmidt) and Z is X × Y,
    /// so shear is dropped from Y and Z and a mirrored frame loses its mirroring on Z.
    /// </summary>
    public WideTurn<TLane> TurnFor(in WideVector<TLane> scale)
    {
        var zero = TLane.All(0);
        var first = WideVector<TLane>.Choose(TLane.Less(scale.X, zero), -X, X);
        var second = WideVector<TLane>.Choose(TLane.Less(scale.Y, zero), -Y, Y);
        var x = first.Direction(out var isX);
        var y = Independent(second, x, out var isY);
        if (!TLane.Every(TLane.Both(isX, isY)))
            (x, y) = FlatAxes(x, isX, second, WideVector<TLane>.Choose(TLane.Less(scale.Z, zero), -Z, Z));
        return WideTurn<TLane>.FromAxes(x, y, WideVector<TLane>.Cross(x, y));
    }

    public WideTurn<TLane> Turn => TurnFor(new(TLane.All(1), TLane.All(1), TLane.All(1)));

    /// <summary>The lengths of the axes: X's and Y's with the signs of a known scale, Z's so that a mirrored frame stays mirrored.</summary>
    public WideVector<TLane> ScaleFor(in WideVector<TLane> signs)
    {
        var zero = TLane.All(0);
        var volume = WideVector<TLane>.Dot(X, WideVector<TLane>.Cross(Y, Z));
        var signX = TLane.Choose(TLane.Less(signs.X, zero), TLane.All(-1), TLane.All(1));
        var signY = TLane.Choose(TLane.Less(signs.Y, zero), TLane.All(-1), TLane.All(1));
        var signZ = TLane.Choose(TLane.Less(volume, zero), -(signX * signY), signX * signY);
        return new(X.Length * signX, Y.Length * signY, Z.Length * signZ);
    }

    /// <summary>This frame as it is seen in another one: outer⁻¹ · this. A flat frame, which has no inverse, counts without its scale and shear.</summary>
    public WideAffine<TLane> In(in WideAffine<TLane> outer)
    {
        var one = TLane.All(1);
        var ux = outer.X.Direction(out var isX);
        var uy = outer.Y.Direction(out var isY);
        var uz = outer.Z.Direction(out var isZ);
        var across = WideVector<TLane>.Cross(uy, uz);
        var volume = WideVector<TLane>.Dot(ux, across);
        var isWhole = TLane.Both(TLane.Both(isX, isY), TLane.Both(isZ, TLane.Less(TLane.All(Rotation.Flat), TLane.Abs(volume))));

        // The rows of the inverse are the cross products of the axes over the volume that they span.
        var over = one / volume;
        var rowX = across * (over / outer.X.Length);
        var rowY = WideVector<TLane>.Cross(uz, ux) * (over / outer.Y.Length);
        var rowZ = WideVector<TLane>.Cross(ux, uy) * (over / outer.Z.Length);
        if (!TLane.Every(isWhole))
        {
            var rigid = outer.Turn.At(outer.Origin);
            rowX = WideVector<TLane>.Choose(isWhole, rowX, rigid.X);
            rowY = WideVector<TLane>.Choose(isWhole, rowY, rigid.Y);
            rowZ = WideVector<TLane>.Choose(isWhole, rowZ, rigid.Z);
        }

        // The origins are subtracted before anything else, so that far from the world's origin no digits are lost.
        return new(Rows(X), Rows(Y), Rows(Z), Rows(Origin - outer.Origin));

        WideVector<TLane> Rows(in WideVector<TLane> v) => new(WideVector<TLane>.Dot(rowX, v), WideVector<TLane>.Dot(rowY, v), WideVector<TLane>.Dot(rowZ, v));
    }

    // Frames that lost an axis: the others make up for it, else any direction, always the same.
    private static (WideVector<TLane> X, WideVector<TLane> Y) FlatAxes(in WideVector<TLane> x, TLane isX, in WideVector<TLane> second, in WideVector<TLane> third)
    {
        var normal = WideVector<TLane>.Cross(second, third).Direction(out var isNormal);
        var first = WideVector<TLane>.Choose(isX, x, WideVector<TLane>.Choose(isNormal, normal, second.AnyAcross()));
        var y = Independent(second, first, out var isY);
        var other = Independent(WideVector<TLane>.Cross(third, first), first, out var isOther);
        return (first, WideVector<TLane>.Choose(isY, y, WideVector<TLane>.Choose(isOther, other, first.AnyAcross())));
    }

    private static WideVector<TLane> Independent(in WideVector<TLane> axis, in WideVector<TLane> first, out TLane isThere)
    {
        var across = axis.Direction(out var isAxis).Across(first);
        var direction = across.Direction(out _);
        isThere = TLane.Both(isAxis, TLane.Less(TLane.All(Rotation.Flat), across.Length));
        return direction;
    }
}
