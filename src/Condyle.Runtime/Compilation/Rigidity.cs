using Condyle.Evaluation;

namespace Condyle.Runtime.Compilation;

/// <summary>Whether constant frames have neither scale nor shear, so that their rotations are products and their inverses transposes.</summary>
internal static class Rigidity
{
    // What double precision leaves of axes that were turned and turned back.
    private const double Rounding = 1e-9;

    public static bool Of(Affine3d frame) =>
        IsOne(frame.X.Length) && IsOne(frame.Y.Length) && IsOne(frame.Z.Length) && IsOne(frame.Determinant) && frame.Shear < Rounding;

    private static bool IsOne(double length) => Math.Abs(length - 1) < Rounding;
}
