using System.Globalization;
using System.Numerics;

namespace Condyle.Model;

/// <summary>Prints values the same way on every machine.</summary>
internal static class Invariant
{
    public static string Print<T>(T value) => value switch
    {
        null => "none",
        float number => number.ToString("R", CultureInfo.InvariantCulture),
        double number => number.ToString("R", CultureInfo.InvariantCulture),
        Vector3 v => $"({Print(v.X)} {Print(v.Y)} {Print(v.Z)})",
        Quaternion q => $"({Print(q.X)} {Print(q.Y)} {Print(q.Z)} {Print(q.W)})",
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>A number for people: at most two decimals.</summary>
    public static string Short(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
