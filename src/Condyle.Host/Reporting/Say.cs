using System.Globalization;
using Condyle.Runtime;

namespace Condyle.Host.Reporting;

/// <summary>Numbers as people read them.</summary>
internal static class Say
{
    public static string Metres(double metres) => $"{Short(metres * 1000)} mm";

    public static string Degrees(double degrees) => $"{Short(degrees)}°";

    /// <summary>A distance and an angle that something lies within; what is below a ten-thousandth is rounded up to it.</summary>
    public static string Both(Deviation deviation) => $"{Metres(deviation.Metres.Value)} and {Degrees(deviation.Degrees.Value)}";

    public static string Seconds(double seconds) => string.Create(CultureInfo.InvariantCulture, $"{seconds:0.##} s");

    public static string Bytes(long bytes) => bytes switch
    {
        < 1000 => $"{bytes} B",
        < 1_000_000 => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e3:0} kB"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.0} MB"),
    };

    /// <summary>Two digits that count, at most four decimals.</summary>
    private static string Short(double value)
    {
        if (value == 0)
            return "0";
        if (value < 1e-4)
            return "0.0001";
        var decimals = Math.Clamp(1 - (int)Math.Floor(Math.Log10(value)), 0, 4);
        return value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
