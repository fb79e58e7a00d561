using Condyle.Evaluation;
using Condyle.Model;

namespace Condyle.Rules;

/// <summary>How far a frame is from where it should be.</summary>
/// <param name="Metres">The distance.</param>
/// <param name="Degrees">The angle.</param>
/// <param name="Times">How many times its size it has: the factor that is furthest from one.</param>
internal readonly record struct Departure(double Metres, double Degrees, double Times)
{
    /// <summary>A tenth of a millimetre: below it nobody sees anything, and above it is more than the rounding of what was delivered.</summary>
    public const double LeastMetres = 1e-4;

    private const double LeastDegrees = 0.05;

    private const double LeastGrowth = 1e-3;

    /// <summary>So far from a joint, in metres, its turn is weighed against its distance.</summary>
    private const double Lever = 0.1;

    private bool Moves => Metres > LeastMetres;

    private bool Turns => Degrees > LeastDegrees;

    private bool Grows => Math.Abs(Times - 1) > LeastGrowth;

    /// <summary>Whether it is anything that counts; what is no number doesn't.</summary>
    public bool Counts => Moves || Turns || Grows;

    /// <summary>How bad it is, in metres.</summary>
    public double Weight => Metres + (Degrees * (Math.PI / 180) * Lever) + (Math.Abs(Times - 1) * Lever);

    public static Departure Between(Affine3d from, Affine3d to)
    {
        var times = new[] { Ratio(to.X, from.X), Ratio(to.Y, from.Y), Ratio(to.Z, from.Z) };
        return new(
            (to.Origin - from.Origin).Length,
            Quaterniond.Angle(from.Rotation, to.Rotation) * (180 / Math.PI),
            times.OrderByDescending(ratio => Math.Abs(ratio - 1)).First());
    }

    /// <summary>As people say it: "83 mm and 12°".</summary>
    public override string ToString()
    {
        var parts = new List<string>();
        if (Moves)
            parts.Add(Lengths.Of(Metres));
        if (Turns)
            parts.Add(Degrees < 9.95 ? $"{Degrees.ToString("0.#", System.Globalization.CultureInfo.InvariantCulture)}°" : $"{Degrees.ToString("0", System.Globalization.CultureInfo.InvariantCulture)}°");
        if (Grows)
            parts.Add($"{Invariant.Short(Times)} times the size");
        return string.Join(" and ", parts);
    }

    private static double Ratio(Vector3d to, Vector3d from) => from.Length > Vector3d.Tiny ? to.Length / from.Length : 1;
}
