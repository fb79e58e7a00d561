using System.Globalization;

namespace Condyle.Rules;

/// <summary>Says lengths as people do: millimetres below a metre, tenths of them below a centimetre.</summary>
internal static class Lengths
{
    public static string Of(double metres) => metres switch
    {
        < 0.00995 => (metres * 1000).ToString("0.#", CultureInfo.InvariantCulture) + " mm",
        < 0.9995 => (metres * 1000).ToString("0", CultureInfo.InvariantCulture) + " mm",
        _ => metres.ToString("0.##", CultureInfo.InvariantCulture) + " m",
    };
}
