using System.Numerics;

namespace Condyle.Runtime;

/// <summary>
/// The order of three angles about a control's own axes. <see cref="XYZ"/> turns about X first, then about the Y axis as it lies after that turn,
/// then about the Z axis as it lies after both: the product X · Y · Z of quaternions.
/// </summary>
public enum TurnOrder
{
    /// <summary>X, then Y, then Z.</summary>
    XYZ,

    /// <summary>X, then Z, then Y.</summary>
    XZY,

    /// <summary>Y, then X, then Z.</summary>
    YXZ,

    /// <summary>Y, then Z, then X.</summary>
    YZX,

    /// <summary>Z, then X, then Y.</summary>
    ZXY,

    /// <summary>Z, then Y, then X.</summary>
    ZYX,
}

/// <summary>Angles as people type them, as the quaternions that a rig reads.</summary>
internal static class Turns
{
    public static Quaternion About(Axis axis, float degrees)
    {
        var (sine, cosine) = Math.SinCos(degrees * (Math.PI / 360));
        return axis switch
        {
            Axis.X => new Quaternion((float)sine, 0, 0, (float)cosine),
            Axis.Y => new Quaternion(0, (float)sine, 0, (float)cosine),
            Axis.Z => new Quaternion(0, 0, (float)sine, (float)cosine),
            _ => throw new ArgumentOutOfRangeException(nameof(axis), axis, "An axis is X, Y or Z."),
        };
    }

    public static Quaternion Of(float x, float y, float z, TurnOrder order)
    {
        var (a, b, c) = (About(Axis.X, x), About(Axis.Y, y), About(Axis.Z, z));
        return order switch
        {
            TurnOrder.XYZ => a * b * c,
            TurnOrder.XZY => a * c * b,
            TurnOrder.YXZ => b * a * c,
            TurnOrder.YZX => b * c * a,
            TurnOrder.ZXY => c * a * b,
            TurnOrder.ZYX => c * b * a,
            _ => throw new ArgumentOutOfRangeException(nameof(order), order, "A turn order names each axis once."),
        };
    }
}
