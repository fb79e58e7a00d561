using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>A frame without scale and shear.</summary>
internal readonly struct Rigid(Vector3 origin, Quaternion turn)
{
    public readonly Vector3 Origin = origin;
    public readonly Quaternion Turn = turn;

    public static Rigid operator *(in Rigid outer, in Rigid inner) =>
        new(outer.Origin + Vector3.Transform(inner.Origin, outer.Turn), outer.Turn * inner.Turn);

    /// <summary>What is left of a frame without its scale and shear.</summary>
    public static Rigid Of(in Affine frame) => new(frame.Origin, Rotation.Of(frame, Vector3.One));

    /// <summary>This frame as it is seen in another one: outer⁻¹ · this.</summary>
    public Rigid In(in Rigid outer)
    {
        var back = Quaternion.Conjugate(outer.Turn);
        return new(Vector3.Transform(Origin - outer.Origin, back), back * Turn);
    }

    public Affine ToAffine() => Affine.Of(Origin, Turn, Vector3.One);
}
