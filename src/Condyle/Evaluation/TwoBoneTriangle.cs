namespace Condyle.Evaluation;

/// <summary>The triangle of two bones and the line from root to tip: how far along that line the middle joint stands, and how far beside it.</summary>
/// <remarks>
/// By the law of cosines (Euclid, Elements II.12–13) the foot is (a² − b² + d²) / 2d; the height is twice the area over d, with the area by
/// Heron's formula (Metrica I.8), which loses no digits of an almost straight limb and is zero where the reach ends.
/// Continuous in all of its arguments but where d is 0 with equal bones, which has no foot: there it is 0.
/// </remarks>
internal readonly record struct TwoBoneTriangle(double Foot, double Height)
{
    /// <param name="first">The length a of the first bone, not negative.</param>
    /// <param name="second">The length b of the second bone, not negative.</param>
    /// <param name="distance">The distance d between root and tip; no triangle has one beyond |a − b| or a + b.</param>
    public static TwoBoneTriangle Solve(double first, double second, double distance) => Solve(first, second, distance, first + second - distance);

    /// <inheritdoc cref="Solve(double, double, double)"/>
    /// <param name="shortBy">What the distance is short of a + b.</param>
    public static TwoBoneTriangle Solve(double first, double second, double distance, double shortBy)
    {
        if (distance <= Vector3d.Tiny)
            return new(0, first);
        var (sum, difference) = (first + second, first - second);
        var area = (sum + distance) * shortBy * (distance + difference) * (distance - difference);
        return new(((difference * (sum / distance)) + distance) / 2, Math.Sqrt(Math.Max(0, area)) / (2 * distance));
    }
}
