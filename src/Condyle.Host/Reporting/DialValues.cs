using System.Globalization;
using Condyle.Runtime;

namespace Condyle.Host.Reporting;

/// <summary>Values of dials as people read and write them.</summary>
internal static class DialValues
{
    private const int Decimals = 3;

    /// <summary>With its unit; of a share or of nothing in particular the number alone.</summary>
    public static string Say(CompiledDial dial, float value) => Write(value) + dial.Unit switch
    {
        DialUnit.Degrees => "°",
        DialUnit.Metres => " m",
        _ => "",
    };

    /// <summary>The number alone, in the dial's unit, as a command line takes it.</summary>
    public static string Write(float value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A value that was found, as one would type it.</summary>
    public static float Round(CompiledDial dial, float value) => Math.Clamp(MathF.Round(value, Decimals), dial.From, dial.To);
}
