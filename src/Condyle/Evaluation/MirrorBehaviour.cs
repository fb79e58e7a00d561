namespace Condyle.Evaluation;

/// <summary>
/// How the frames of a left and a right node mirror over the plane x = 0: by which signs the left's channel values turn into
/// the right's values that make the mirror image.
/// </summary>
/// <remarks>
/// With M the reflection in x, the mirror image of a motion Q of the left is M·Q·M. In the frames L and R that is the change of basis
/// A = R⁻¹·M·L: translations go through A, rotation axes, being pseudovectors, through det(A)·A. It is clear when A is a diagonal of signs.
/// Of a mirrored frame L or R is left-handed; det(A) is −1 where both or neither are.
/// </remarks>
internal readonly record struct MirrorBehaviour(int X, int Y, int Z)
{
    /// <summary>Whether equal turns on both sides make the mirror image.</summary>
    public bool TurnsAreEqual => X == Y && Y == Z;

    /// <summary>The sign with which a translation along an axis goes over to the other side.</summary>
    public int MoveSign(Axis axis) => axis switch { Axis.X => X, Axis.Y => Y, _ => Z };

    /// <summary>The sign with which a turn about an axis goes over to the other side.</summary>
    public int TurnSign(Axis axis) => X * Y * Z * MoveSign(axis);

    /// <summary>How two rest frames mirror; none where they don't along their axes.</summary>
    public static MirrorBehaviour? Between(Affine3d left, Affine3d right)
    {
        var (l, back) = (left.Frame, right.Rotation.Inverse);
        Vector3d Across(Vector3d axis) => back.Rotate(new Vector3d(-axis.X, axis.Y, axis.Z));
        var handed = left.Determinant < 0 == right.Determinant < 0 ? 1 : -1; // frames have lost their mirroring on Z
        return Sign(Across(l.X).X) is { } x && Sign(Across(l.Y).Y) is { } y && Sign(Across(l.Z).Z) is { } z ? new MirrorBehaviour(x, y, z * handed) : null;
    }

    private static int? Sign(double alignment) => Math.Abs(alignment) >= LocalAxis.Clear ? Math.Sign(alignment) : null;
}
