using System.Globalization;
using System.Text;

namespace Condyle.Runtime.Baking.Reports;

/// <summary>A report in lines.</summary>
internal static class ReportText
{
    public static string Of(BakeReport report)
    {
        var text = new StringBuilder();
        void Line(string line) => text.Append(line).Append('\n');
        Line($"{report.Clip}: {Length(report)}");
        foreach (var line in Summary(report))
            Line($"  {line}");
        var width = Math.Max("joint".Length, report.Joints.Max(joint => joint.Joint.Length));
        Line("");
        Line($"  {"joint".PadRight(width)}  {"on samples",24}  {"between samples",24}");
        foreach (var joint in report.Joints.OrderByDescending(joint => Between(joint).Metres.Value).ThenBy(joint => joint.Joint, StringComparer.Ordinal))
            Line($"  {joint.Joint.PadRight(width)}  {Columns(joint.OnFrames)}  {Columns(Between(joint))}");
        return text.ToString();
    }

    public static string Length(BakeReport report) =>
        string.Create(CultureInfo.InvariantCulture, $"{report.Frames} frames at {report.FramesPerSecond}/s, {Figures.Seconds(report.Seconds)}");

    /// <summary>What holds and what doesn't, a line each.</summary>
    public static IEnumerable<string> Summary(BakeReport report)
    {
        yield return $"on frames, baked motion is live motion within {Figures.Both(report.OnFrames)}"
            + (report.Holds ? "" : $": more than the {Figures.Metres(report.AllowedMetres)} and {Figures.Degrees(report.AllowedDegrees)} that are allowed");
        var between = report.Between;
        yield return $"between frames, where the engine interpolates, within {Figures.Both(between)} ({Figures.MostAt(between)})";
        var bound = report.BetweenBound;
        var what = bound.IsAsked ? "what was asked for" : "what the frame rate allows";
        if (!bound.Holds)
            yield return $"that is beyond {what}, which for '{bound.Joint}' at {Figures.Seconds(bound.At)} is {Figures.Metres(bound.Metres)} and {Figures.Degrees(bound.Degrees)}";
        else if (bound.Joint.Length > 0)
            yield return $"that is within {what}; '{bound.Joint}' comes nearest to it, at {Figures.Seconds(bound.At)}, where it is {Figures.Metres(bound.Metres)} and {Figures.Degrees(bound.Degrees)}";
        if (report.AroundChanges is { } changes)
            yield return $"within a frame of a change of a switch or choice, within {Figures.Both(changes)}";
        if (report.Keys < report.KeysOfEveryFrame)
            yield return string.Create(CultureInfo.InvariantCulture, $"{report.Keys} keys instead of {report.KeysOfEveryFrame}, within {Figures.Metres(report.AllowedMetres)} and {Figures.Degrees(report.AllowedDegrees)} of the live motion");
    }

    public static Deviation Between(JointDeviation joint) => Deviation.Largest([joint.BetweenFrames, joint.AtRandom, joint.AroundChanges]);

    private static string Columns(Deviation deviation) => $"{Figures.Metres(deviation.Metres.Value),12}{Figures.Degrees(deviation.Degrees.Value),12}";
}
