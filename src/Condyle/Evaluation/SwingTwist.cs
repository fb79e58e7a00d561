namespace Condyle.Evaluation;

/// <summary>
/// Splits a rotation into a turn about an axis a of length one and one about an axis across it: q = swing · twist, the twist first (Dobrowolski 2015, "Swing-twist
/// decomposition in Clifford algebra"). The twist is (q.w, (q.xyz · a) a) made a unit; its angle is 2·atan2(q.xyz · a, q.w), the same if the twist comes last.
/// </summary>
/// <remarks>Not continuous where the twist is a half turn, and where the swing is one, which leaves no twist.</remarks>
internal static class SwingTwist
{
    /// <summary>The angle of the twist in radians, above −π and up to π; q and −q, the same rotation, give the same one. None where the swing is a half turn.</summary>
    public static double? Angle(Quaterniond turn, Vector3d axis)
    {
        var (sine, cosine) = (Vector3d.Dot(turn.Vector, axis), turn.W);
        if (cosine < 0 || (cosine == 0 && sine < 0))
            (sine, cosine) = (-sine, -cosine);
        return sine == 0 && cosine == 0 ? null : 2 * Math.Atan2(sine, cosine);
    }
}
