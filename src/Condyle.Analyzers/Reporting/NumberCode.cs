using System.Globalization;

namespace Condyle.Analyzers.Reporting;

/// <summary>A number as it is written in code that takes a <see cref="float"/>: without a point and <c>f</c> where it does without them.</summary>
internal static class NumberCode
{
    public static string Of(float value) =>
        value == 0 ? "0" : value == Math.Floor(value) && Math.Abs(value) < 1e6 ? value.ToString("0", CultureInfo.InvariantCulture) : value.ToString("R", CultureInfo.InvariantCulture) + "f";
}
