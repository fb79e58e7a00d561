namespace Condyle.Evaluation;

/// <summary>
/// The rotation on the way from one to another along the shorter arc, at even speed (Shoemake 1985, "Animating rotation with quaternion curves": slerp).
/// </summary>
/// <remarks>
/// A rotation has two quaternions of opposite sign; the second is taken with the sign for which the dot product isn't negative.
/// Not continuous where the two are half a turn apart: there both arcs are as short, the dot product is zero and the signs stay as given.
/// </remarks>
internal static class Slerp
{
    public static Quaterniond Between(Quaterniond from, Quaterniond to, double t)
    {
        if (Quaterniond.Dot(from, to) < 0)
            to = -to;

        // The angle from difference and sum is exact near 0, where an arc cosine isn't.
        var angle = 2 * Math.Atan2((to - from).Length, (to + from).Length);
        var sine = Math.Sin(angle);
        return sine < 1e-12
            ? ((from * (1 - t)) + (to * t)).Normalized()
            : ((from * (Math.Sin((1 - t) * angle) / sine)) + (to * (Math.Sin(t * angle) / sine))).Normalized();
    }
}
