using System.Globalization;

namespace Condyle.Runtime.Baking.Reports;

/// <summary>Numbers as people read them: two digits that count, at most four decimals; what is below that is rounded up to it.</summary>
internal static class Figures
{
    private const double Least = 1e-4;

    public static string Metres(double metres) => $"{Short(metres * 1000)} mm";

    public static string Degrees(double degrees) => $"{Short(degrees)}°";

    public static string Both(Deviation deviation) => $"{Metres(deviation.Metres.Value)} and {Degrees(deviation.Degrees.Value)}";

    /// <summary>Where a deviation is largest, and where in degrees if that is another joint; <paramref name="moment"/> says what goes on then.</summary>
    public static string MostAt(Deviation deviation, Func<Peak, string>? moment = null)
    {
        var (metres, degrees) = deviation;
        return $"most at {At(metres)}" + (degrees.Joint == metres.Joint ? "" : $"; in degrees at {At(degrees)}");

        string At(Peak peak) => $"'{peak.Joint}', {Seconds(peak.At)}{moment?.Invoke(peak)}";
    }

    public static string Seconds(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.##} s");

    public static string Short(double value)
    {
        if (value == 0)
            return "0";
        if (value < Least)
            return "0.0001";
        var decimals = Math.Clamp(1 - (int)Math.Floor(Math.Log10(value)), 0, 4);
        return value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
