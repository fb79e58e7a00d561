using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A frame for each of several rigs, which may carry scale and shear. A point p of it stands at X·p.X + Y·p.Y + Z·p.Z + Origin.</summary>
[method: MethodImpl(MethodImplOptions.AggressiveInlining)]
internal readonly struct WideAffine(WideVector x, WideVector y, WideVector z, WideVector origin)
{
    public readonly WideVector X = x;
    public readonly WideVector Y = y;
    public readonly WideVector Z = z;
    public readonly WideVector Origin = origin;

    /// <summary>The frame that <paramref name="inner"/> is when it is given in <paramref name="outer"/>.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideAffine operator *(in WideAffine outer, in WideAffine inner) =>
        new(outer.Direction(inner.X), outer.Direction(inner.Y), outer.Direction(inner.Z), outer.Point(inner.Origin));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideAffine All(in Affine frame) =>
        new(WideVector.All(frame.X), WideVector.All(frame.Y), WideVector.All(frame.Z), WideVector.All(frame.Origin));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideAffine Choose(Lane mask, in WideAffine a, in WideAffine b) => new(
        WideVector.Choose(mask, a.X, b.X),
        WideVector.Choose(mask, a.Y, b.Y),
        WideVector.Choose(mask, a.Z, b.Z),
        WideVector.Choose(mask, a.Origin, b.Origin));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector Direction(in WideVector local) =>
        WideVector.MultiplyAdd(X, local.X, WideVector.MultiplyAdd(Y, local.Y, Z * local.Z));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideVector Point(in WideVector local) =>
        WideVector.MultiplyAdd(X, local.X, WideVector.MultiplyAdd(Y, local.Y, WideVector.MultiplyAdd(Z, local.Z, Origin)));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public WideAffine Scaled(in WideVector scale) => new(X * scale.X, Y * scale.Y, Z * scale.Z, Origin);

    /// <summary>
    /// The rotation of a frame whose scale has these signs. Its axes are made orthonormal in the order X, Y, Z (Gram and Schmidt) and Z is X × Y,
    /// so shear is dropped from Y and Z and a mirrored frame loses its mirroring on Z.
    /// </summary>
    public WideTurn TurnFor(in WideVector scale)
    {
        var zero = Lanes.Create(0f);
        var first = WideVector.Choose(Lanes.LessThan(scale.X, zero), -X, X);
        var second = WideVector.Choose(Lanes.LessThan(scale.Y, zero), -Y, Y);
        var x = first.Direction(out var isX);
        var y = Independent(second, x, out var isY);
        if (!Rigs.Every((isX & isY)))
            (x, y) = FlatAxes(x, isX, second, WideVector.Choose(Lanes.LessThan(scale.Z, zero), -Z, Z));
        return WideTurn.FromAxes(x, y, WideVector.Cross(x, y));
    }

    public WideTurn Turn => TurnFor(new(Lanes.Create(1f), Lanes.Create(1f), Lanes.Create(1f)));

    /// <summary>The lengths of the axes: X's and Y's with the signs of a known scale, Z's so that a mirrored frame stays mirrored.</summary>
    public WideVector ScaleFor(in WideVector signs)
    {
        var zero = Lanes.Create(0f);
        var volume = WideVector.Dot(X, WideVector.Cross(Y, Z));
        var signX = Lanes.ConditionalSelect(Lanes.LessThan(signs.X, zero), Lanes.Create(-1f), Lanes.Create(1f));
        var signY = Lanes.ConditionalSelect(Lanes.LessThan(signs.Y, zero), Lanes.Create(-1f), Lanes.Create(1f));
        var signZ = Lanes.ConditionalSelect(Lanes.LessThan(volume, zero), -(signX * signY), signX * signY);
        return new(X.Length * signX, Y.Length * signY, Z.Length * signZ);
    }

    /// <summary>This frame as it is seen in another one: outer⁻¹ · this. A flat frame, which has no inverse, counts without its scale and shear.</summary>
    public WideAffine In(in WideAffine outer)
    {
        var one = Lanes.Create(1f);
        var ux = outer.X.Direction(out var isX);
        var uy = outer.Y.Direction(out var isY);
        var uz = outer.Z.Direction(out var isZ);
        var across = WideVector.Cross(uy, uz);
        var volume = WideVector.Dot(ux, across);
        var isWhole = ((isX & isY) & (isZ & Lanes.LessThan(Lanes.Create(Rotation.Flat), Lanes.Abs(volume))));

        // The rows of the inverse are the cross products of the axes over the volume that they span.
        var over = one / volume;
        var rowX = across * (over / outer.X.Length);
        var rowY = WideVector.Cross(uz, ux) * (over / outer.Y.Length);
        var rowZ = WideVector.Cross(ux, uy) * (over / outer.Z.Length);
        if (!Rigs.Every(isWhole))
        {
            var rigid = outer.Turn.At(outer.Origin);
            rowX = WideVector.Choose(isWhole, rowX, rigid.X);
            rowY = WideVector.Choose(isWhole, rowY, rigid.Y);
            rowZ = WideVector.Choose(isWhole, rowZ, rigid.Z);
        }

        // The origins are subtracted before anything else, so that far from the world's origin no digits are lost.
        return new(Rows(X), Rows(Y), Rows(Z), Rows(Origin - outer.Origin));

        WideVector Rows(in WideVector v) => new(WideVector.Dot(rowX, v), WideVector.Dot(rowY, v), WideVector.Dot(rowZ, v));
    }

    // Frames that lost an axis: the others make up for it, else any direction, always the same.
    private static (WideVector X, WideVector Y) FlatAxes(in WideVector x, Lane isX, in WideVector second, in WideVector third)
    {
        var normal = WideVector.Cross(second, third).Direction(out var isNormal);
        var first = WideVector.Choose(isX, x, WideVector.Choose(isNormal, normal, second.AnyAcross()));
        var y = Independent(second, first, out var isY);
        var other = Independent(WideVector.Cross(third, first), first, out var isOther);
        return (first, WideVector.Choose(isY, y, WideVector.Choose(isOther, other, first.AnyAcross())));
    }

    private static WideVector Independent(in WideVector axis, in WideVector first, out Lane isThere)
    {
        var across = axis.Direction(out var isAxis).Across(first);
        var direction = across.Direction(out _);
        isThere = (isAxis & Lanes.LessThan(Lanes.Create(Rotation.Flat), across.Length));
        return direction;
    }
}
