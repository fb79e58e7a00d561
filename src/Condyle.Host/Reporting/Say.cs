using System.Globalization;

namespace Condyle.Host.Reporting;

/// <summary>Numbers as people read them.</summary>
internal static class Say
{
    public static string Metres(double metres) => $"{Short(metres * 1000)} mm";

    public static string Degrees(double degrees) => $"{Short(degrees)}°";

    public static string Seconds(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.##} s");

    public static string Bytes(long bytes) => bytes switch
    {
        < 1000 => $"{bytes} B",
        < 1_000_000 => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e3:0} kB"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.0} MB"),
    };

    /// <summary>Two digits that count, at most six decimals.</summary>
    private static string Short(double value)
    {
        if (value < 5e-7)
            return "0";
        var decimals = Math.Clamp(1 - (int)Math.Floor(Math.Log10(value)), 0, 6);
        return value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
