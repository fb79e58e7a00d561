namespace Condyle.Runtime.Matching;

/// <summary>Makes distances and turns numbers that can be compared: 1 mm tells as much as 0.1°, as tolerances do.</summary>
internal static class Weigh
{
    public static double Metres(double metres) => metres * 1000;

    public static double Degrees(double degrees) => degrees * 10;

    public static double Both(double metres, double degrees) => Math.Max(Metres(metres), Degrees(degrees));
}
