using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>
/// Rotations that lie near each other, as neighbouring samples do, and baked and live motion: the power series of sine and squared arc sine instead of the functions
/// (Abramowitz and Stegun 1964, 4.3.65; for the latter Borwein and Chamberland 2007, "Integer powers of arcsin", equation 1).
/// </summary>
internal static class NearRotations
{
    /// <summary>Up to this squared distance between quaternions, some four degrees of turn, what the series leave out is below a double's rounding.</summary>
    private const double Near = 1e-3;

    /// <summary><see cref="Slerp.Between"/>: with θ the angle between the quaternions, sin(kθ) / sin θ of the second, where k is the amount, and as much of the first.</summary>
    public static Quaterniond Between(Quaterniond from, Quaterniond to, double amount)
    {
        var near = Quaterniond.Dot(from, to) < 0 ? -to : to;
        var chord = DistanceSquared(from, near);
        if (!(chord <= Near))
            return Slerp.Between(from, to, amount);
        var (squared, rest) = (ArcSquared(chord), 1 - amount);
        var over = 1 / SineOver(squared);
        return (from * (rest * SineOver(rest * rest * squared) * over)) + (near * (amount * SineOver(amount * amount * squared) * over));
    }

    /// <summary><see cref="Quaterniond.Angle"/> of two unit quaternions: twice the angle between them.</summary>
    public static double Angle(Quaterniond a, Quaterniond b)
    {
        var chord = DistanceSquared(a, Quaterniond.Dot(a, b) < 0 ? -b : b);
        return chord <= Near ? 2 * Math.Sqrt(ArcSquared(chord)) : Quaterniond.Angle(a, b);
    }

    private static double DistanceSquared(Quaterniond a, Quaterniond b) => Quaterniond.Dot(a - b, a - b);

    /// <summary>θ² from the squared chord c = 4 sin²(θ/2): 4·arcsin²(√c / 2).</summary>
    private static double ArcSquared(double c) => c * (1 + (c * ((1.0 / 12) + (c * ((1.0 / 90) + (c * ((1.0 / 560) + (c / 3150))))))));

    /// <summary>sin θ / θ from θ².</summary>
    private static double SineOver(double squared) => 1 - (squared / 6 * (1 - (squared / 20 * (1 - (squared / 42)))));
}
