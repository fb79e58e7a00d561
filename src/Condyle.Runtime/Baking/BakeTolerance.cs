using System.Globalization;

namespace Condyle.Runtime;

/// <summary>How far a joint may be off, in the world: at the tip of a chain, where the errors of all joints above add up, as well as at its root.</summary>
/// <param name="Metres">The distance, in metres: at least <see cref="LeastMetres"/>.</param>
/// <param name="Degrees">The angle, in degrees: at least <see cref="LeastDegrees"/>.</param>
public sealed record BakeTolerance(double Metres, double Degrees)
{
    /// <summary>Below this a tolerance would be rounding.</summary>
    public const double LeastMetres = 5e-5;

    /// <summary>Below this a tolerance would be rounding.</summary>
    public const double LeastDegrees = 0.005;

    internal static string Least => string.Create(CultureInfo.InvariantCulture, $"at least {LeastMetres * 1000} mm and {LeastDegrees}°");

    internal bool CanBe => Metres >= LeastMetres && Degrees >= LeastDegrees && double.IsFinite(Metres) && double.IsFinite(Degrees);
}
