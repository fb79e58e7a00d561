using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>A bone of a limb as it is unsolved, seen in the plane in which the limb bends: along its line, to its side and beside it.</summary>
internal struct WideBone
{
    /// <summary>Of length one; the line's where the bone has no length.</summary>
    public WideVector Direction;

    public Lane Length;

    /// <summary>One over the length; zero where the bone has none.</summary>
    public Lane Over;

    /// <param name="bone">The bone in its plane.</param>
    /// <param name="near">A bone that is no longer than this has no length.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideBone Of(in WideVector bone, Lane near)
    {
        var length = bone.Length;
        var over = Lanes.ConditionalSelect(Lanes.LessThan(near, length), Lanes.Create(1f) / length, Lanes.Create(0f));
        return new() { Direction = Pointing(bone, over), Length = length, Over = over };
    }

    /// <summary>The direction of a bone in the plane of a limb.</summary>
    /// <param name="bone">The bone as it is solved.</param>
    /// <param name="over">One over its length; zero where it has none.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideVector Pointing(in WideVector bone, Lane over)
    {
        var isBone = Lanes.LessThan(Lanes.Create(0f), over);
        var along = Lanes.ConditionalSelect(isBone, bone.X * over, Lanes.Create(1f));
        return new() { X = along, Y = bone.Y * over, Z = bone.Z * over };
    }

    /// <summary>The rotation of a frame whose first axis is a direction in a plane and whose third is nearest to the plane's normal.</summary>
    /// <param name="plane">The rotation of the plane's own frame, of any length.</param>
    /// <param name="squared">The square of that.</param>
    /// <param name="direction">The direction in the plane, of length one.</param>
    /// <param name="leans">Whether it may point out of the plane.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static WideTurn Frame(in WideTurn plane, Lane squared, in WideVector direction, bool leans)
    {
        if (!leans)
            return plane.AboutThird(Halved(direction.Y, direction.X, ref squared)).OfLength(squared);
        var level = Lanes.Sqrt(Lanes.FusedMultiplyAdd(direction.X, direction.X, direction.Y * direction.Y));
        var isLevel = Lanes.LessThan(Lanes.Create(Rotation.Tiny), level);
        var over = Lanes.Create(1f) / level;
        var (x, y) = (Lanes.ConditionalSelect(isLevel, direction.X * over, Lanes.Create(1f)), Lanes.ConditionalSelect(isLevel, direction.Y * over, Lanes.Create(0f)));
        var turned = plane.AboutThird(Halved(y, x, ref squared));
        return turned.AboutSecond(Halved(-direction.Z, level, ref squared)).OfLength(squared); // out of the plane is against its second axis
    }

    /// <summary>Sine and cosine of half an angle times a number, from those of the angle, from minus a half turn to one: 1 + |cos α| goes with the larger of the two, |sin α| with the other.</summary>
    /// <param name="sine">The sine of the angle.</param>
    /// <param name="cosine">Its cosine.</param>
    /// <param name="squared">The square of that number is multiplied to it.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static (Lane Sine, Lane Cosine) Halved(Lane sine, Lane cosine, ref Lane squared)
    {
        var large = Lanes.Abs(cosine) + Lanes.Create(1f);
        var small = Lanes.Abs(sine);
        squared *= large + large;
        var isAhead = Lanes.LessThanOrEqual(Lanes.Create(0f), cosine);
        return (Lanes.ConditionalSelect(isAhead, small, large) | (sine & Lanes.Create(-0f)), Lanes.ConditionalSelect(isAhead, large, small));
    }
}
