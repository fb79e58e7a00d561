using System.Globalization;
using System.Net;
using System.Text;

namespace Condyle.Runtime.Baking.Reports;

/// <summary>Curves over time as a picture in SVG.</summary>
internal static class Chart
{
    private const int Left = 84, Right = 12, Top = 14, Bottom = 30;

    /// <summary>A large one with axes.</summary>
    /// <param name="width">Its width in pixels.</param>
    /// <param name="height">Its height.</param>
    /// <param name="seconds">How long the clip is.</param>
    /// <param name="unit">What the curves are measured in.</param>
    /// <param name="curves">Values, a step each, and how they are drawn; the first lies at the back.</param>
    public static string WithAxes(int width, int height, double seconds, string unit, params ReadOnlySpan<(IReadOnlyList<double> Values, string Style)> curves)
    {
        var top = 0.0;
        foreach (var (values, _) in curves)
            top = Math.Max(top, values.Max());
        var step = RoundStep(top, 4);
        top = step * Math.Max(1, Math.Ceiling(top / step));
        var svg = new StringBuilder(string.Create(CultureInfo.InvariantCulture, $"<svg viewBox=\"0 0 {width} {height}\" role=\"img\">"));
        var (inner, tall) = (width - Left - Right, height - Top - Bottom);
        for (var value = 0.0; value <= top * 1.0001; value += step)
        {
            var y = Top + (tall * (1 - (value / top)));
            svg.Append(string.Create(CultureInfo.InvariantCulture, $"<line class=\"grid\" x1=\"{Left}\" x2=\"{width - Right}\" y1=\"{y:0.#}\" y2=\"{y:0.#}\"/>"));
            svg.Append(string.Create(CultureInfo.InvariantCulture, $"<text x=\"{Left - 6}\" y=\"{y + 4:0.#}\" text-anchor=\"end\">{value:0.##########} {unit}</text>"));
        }

        var second = RoundStep(seconds, 8);
        for (var value = 0.0; value <= seconds * 1.0001; value += second)
            svg.Append(string.Create(CultureInfo.InvariantCulture, $"<text x=\"{Left + (inner * value / seconds):0.#}\" y=\"{height - 8}\" text-anchor=\"middle\">{value:0.####} s</text>"));
        foreach (var (values, style) in curves)
            svg.Append(Steps(values, style, Left, Top, inner, tall, top));
        return svg.Append("</svg>").ToString();
    }

    /// <summary>A small one in a line of a table.</summary>
    public static string Small(int width, int height, double top, IReadOnlyList<double> values, string style) =>
        string.Create(CultureInfo.InvariantCulture, $"<svg class=\"small\" viewBox=\"0 0 {width} {height}\">") + Steps(values, style, 0, 1, width, height - 2, top) + "</svg>";

    public static string Escaped(string text) => WebUtility.HtmlEncode(text);

    private static string Steps(IReadOnlyList<double> values, string style, double left, double top, double width, double height, double most)
    {
        var points = new StringBuilder();
        for (var i = 0; i < values.Count; i++)
        {
            var y = top + (height * (1 - (most > 0 ? values[i] / most : 0)));
            points.Append(string.Create(CultureInfo.InvariantCulture, $"{left + (width * (i + 0.5) / values.Count):0.#},{y:0.#} "));
        }

        return $"<polyline class=\"{style}\" points=\"{points.ToString().TrimEnd()}\"/>";
    }

    /// <summary>A step of 1, 2 or 5 times a power of ten, so that about so many of them reach the top.</summary>
    private static double RoundStep(double top, int count)
    {
        if (top <= 0)
            return 1;
        var raw = top / count;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        return power * ((raw / power) switch { <= 1 => 1, <= 2 => 2, <= 5 => 5, _ => 10 });
    }
}
