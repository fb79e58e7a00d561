namespace Condyle.Evaluation;

/// <summary>Takes a distance that differs from the one at rest by nothing but rounding as that one: the height of a straight limb goes with the root of the difference.</summary>
internal static class RestDistance
{
    /// <summary>As a share of how far from the world's origin things are.</summary>
    private const double Rounding = 1e-14;

    public static double Settle(double distance, double atRest, double farOut) => Math.Abs(distance - atRest) <= Rounding * farOut ? atRest : distance;
}
