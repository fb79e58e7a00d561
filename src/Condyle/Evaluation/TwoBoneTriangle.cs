namespace Condyle.Evaluation;

/// <summary>The triangle of two bones whose ends are given: where the middle joint and the tip are.</summary>
/// <remarks>
/// By the law of cosines (Euclid, Elements II.12–13): the foot of the middle joint on the line from root to goal lies
/// x = (a² − b² + d²) / 2d from the root, and its height is √(a² − x²).
/// Beyond reach, outer (d > a + b) or inner (d &lt; |a − b|), the tip stops at the nearest point that it can reach.
/// Continuous in all of its arguments but where d is 0 with equal bones, which has no foot: there x is 0.
/// </remarks>
internal readonly record struct TwoBoneTriangle(Vector3d Middle, Vector3d Tip)
{
    /// <param name="root">Where the first bone begins.</param>
    /// <param name="first">The length a of the first bone, not negative.</param>
    /// <param name="second">The length b of the second bone, not negative.</param>
    /// <param name="direction">The direction from the root to the goal, of length one.</param>
    /// <param name="distance">How far the goal is from the root.</param>
    /// <param name="side">To where the middle joint goes, of length one, across the direction.</param>
    public static TwoBoneTriangle Solve(Vector3d root, double first, double second, Vector3d direction, double distance, Vector3d side)
    {
        var reach = Math.Min(Math.Max(distance, Math.Abs(first - second)), first + second);
        var foot = reach > Vector3d.Tiny ? (((first - second) * ((first + second) / reach)) + reach) / 2 : 0;
        var height = Math.Sqrt(Math.Max(0, (first - foot) * (first + foot)));
        return new(root + (direction * foot) + (side * height), root + (direction * reach));
    }
}
