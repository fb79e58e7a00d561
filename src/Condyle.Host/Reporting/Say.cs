using System.Globalization;
using Condyle.Runtime;
using Condyle.Runtime.Baking.Reports;

namespace Condyle.Host.Reporting;

/// <summary>Numbers as people read them.</summary>
internal static class Say
{
    private const int MostNames = 5;

    public static string Metres(double metres) => Figures.Metres(metres);

    public static string Degrees(double degrees) => Figures.Degrees(degrees);

    /// <summary>A distance and an angle that something lies within.</summary>
    public static string Both(Deviation deviation) => Figures.Both(deviation);

    /// <summary>The same, and when: of a joint both needn't be largest at one time.</summary>
    public static string BothAt(Deviation deviation) => Seconds(deviation.Metres.At) == Seconds(deviation.Degrees.At)
        ? $"{Both(deviation)}, at {Seconds(deviation.Metres.At)}"
        : $"{Metres(deviation.Metres.Value)}, at {Seconds(deviation.Metres.At)}, and {Degrees(deviation.Degrees.Value)}, at {Seconds(deviation.Degrees.At)}";

    public static string Seconds(double seconds) => Figures.Seconds(seconds);

    public static string Count(int count, string one, string? many = null) => count == 1 ? $"1 {one}" : $"{count} {many ?? one + "s"}";

    /// <summary>The first few of some names, and how many more there are.</summary>
    public static string Names(IReadOnlyList<string> names) =>
        string.Join(", ", names.Take(MostNames).Select(name => $"'{name}'")) + (names.Count > MostNames ? $" and {names.Count - MostNames} more" : "");

    /// <summary>What is told of a level of detail that leaves out what isn't there.</summary>
    public static string NotInSkeleton(string? level, IReadOnlyList<string> names) => $"the level '{level}' leaves out {Names(names)}, which {(names.Count == 1 ? "is no joint" : "are no joints")} of this skeleton";

    public static string Bytes(long bytes) => bytes switch
    {
        < 1000 => $"{bytes} B",
        < 1_000_000 => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e3:0} kB"),
        _ => string.Create(CultureInfo.InvariantCulture, $"{bytes / 1e6:0.0} MB"),
    };
}
