using Condyle.Model;

namespace Condyle.Runtime.Matching;

/// <summary>Distances and angles as notes tell them.</summary>
internal static class Figures
{
    public static string Millimetres(double metres) => $"{Invariant.Short(metres * 1000)} mm";

    public static string Degrees(double degrees) => $"{Invariant.Short(degrees)}°";
}
