using System.Text;

namespace Condyle.Runtime.Baking.Reports;

/// <summary>Reports as a page: a section for each clip, with the largest deviation over time and a line for each joint.</summary>
internal static class ReportPage
{
    private const string Style = """
        :root { color-scheme: light dark; --ink: light-dark(#1d2b33, #dfe8ec); --dim: light-dark(#5f7480, #93a5ae); --line: light-dark(#d5dee3, #33444d); --sheet: light-dark(#fbfcfc, #172026); --between: light-dark(#b4541f, #f0935a); --on: light-dark(#14707c, #53bcc9); }
        body { font: 15px/1.45 system-ui, sans-serif; color: var(--ink); background: var(--sheet); max-width: 1080px; margin: 24px auto; padding: 0 20px; }
        h1 { font-size: 22px; margin-bottom: 4px; } h2 { font-size: 18px; margin: 36px 0 4px; } p, li { color: var(--ink); margin: 4px 0; } .dim { color: var(--dim); }
        .bad { color: #c02f2f; font-weight: 600; } ul { padding-left: 18px; }
        svg { width: 100%; height: auto; display: block; } svg text { font-size: 11px; fill: var(--dim); } .grid { stroke: var(--line); }
        polyline { fill: none; stroke-width: 1.4; stroke-linejoin: round; } .between { stroke: var(--between); } .on { stroke: var(--on); }
        .key { display: inline-block; width: 18px; height: 0; border-top: 3px solid; margin: 0 6px 4px 0; } .key.between { border-color: var(--between); } .key.on { border-color: var(--on); margin-left: 16px; }
        table { border-collapse: collapse; width: 100%; margin-top: 8px; } th { text-align: left; font-weight: 600; color: var(--dim); } td, th { padding: 3px 10px 3px 0; border-bottom: 1px solid var(--line); white-space: nowrap; }
        td.number, th.number { text-align: right; font-variant-numeric: tabular-nums; } svg.small { width: 320px; height: 26px; }
        """;

    public static string Of(string rig, IReadOnlyList<BakeReport> reports)
    {
        var page = new StringBuilder();
        page.Append($"<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<title>{Chart.Escaped(rig)}: baked against live</title>\n<style>\n{Style}\n</style>\n</head>\n<body>\n");
        page.Append($"<h1>{Chart.Escaped(rig)}: baked motion against live motion</h1>\n");
        page.Append("<p class=\"dim\">How far each exported joint is, in the world, from where the rig has it: on the samples that were baked, and between them, where an engine interpolates each joint by itself.</p>\n");
        foreach (var report in reports)
            Section(page, report);
        return page.Append("</body>\n</html>\n").ToString();
    }

    private static void Section(StringBuilder page, BakeReport report)
    {
        page.Append($"<h2>{Chart.Escaped(report.Clip)}</h2>\n<p class=\"dim\">{ReportText.Length(report)}</p>\n<ul>\n");
        foreach (var line in ReportText.Summary(report))
            page.Append($"<li{(line.Contains("more than the", StringComparison.Ordinal) || line.Contains("beyond", StringComparison.Ordinal) ? " class=\"bad\"" : "")}>{Chart.Escaped(line)}</li>\n");
        page.Append("</ul>\n");
        if (report.Curves.Count == 0)
            return;
        var (on, between) = (Largest(report.Curves, curve => curve.OnFrames), Largest(report.Curves, curve => curve.Between));
        page.Append("<p><span class=\"key between\"></span>between samples, the joint that is furthest off</p>\n");
        page.Append(Chart.WithAxes(1040, 220, report.Seconds, "mm", (between, "between")));
        page.Append("\n<p><span class=\"key on\" style=\"margin-left:0\"></span>on samples, the joint that is furthest off</p>\n");
        page.Append(Chart.WithAxes(1040, 130, report.Seconds, "mm", (on, "on")));
        page.Append("\n<table>\n<tr><th>joint</th><th class=\"number\">on samples</th><th class=\"number\"></th><th class=\"number\">between samples</th><th class=\"number\"></th><th>between samples over time, all to one scale</th></tr>\n");
        var curves = report.Curves.ToDictionary(curve => curve.Joint, StringComparer.Ordinal);
        var top = between.Max();
        foreach (var joint in report.Joints.OrderByDescending(joint => ReportText.Between(joint).Metres.Value).ThenBy(joint => joint.Joint, StringComparer.Ordinal))
        {
            page.Append($"<tr><td>{Chart.Escaped(joint.Joint)}</td>{Numbers(joint.OnFrames)}{Numbers(ReportText.Between(joint))}<td>");
            page.Append(Chart.Small(320, 26, top, [.. curves[joint.Joint].Between.Select(metres => metres * 1000.0)], "between"));
            page.Append("</td></tr>\n");
        }

        page.Append("</table>\n");
    }

    private static string Numbers(Deviation deviation) => $"<td class=\"number\">{Figures.Metres(deviation.Metres.Value)}</td><td class=\"number\">{Figures.Degrees(deviation.Degrees.Value)}</td>";

    /// <summary>In millimetres.</summary>
    private static double[] Largest(IReadOnlyList<JointCurve> curves, Func<JointCurve, IReadOnlyList<float>> of) =>
        [.. Enumerable.Range(0, of(curves[0]).Count).Select(step => curves.Max(curve => of(curve)[step]) * 1000.0)];
}
