using Condyle.Host.Commands;
using Condyle.Runtime;
using Spectre.Console;

namespace Condyle.Host.Reporting;

/// <summary>The report for people: coloured on a terminal, plain lines elsewhere.</summary>
internal sealed class Report
{
    /// <summary>Wide enough that nothing is wrapped where other programs read the lines.</summary>
    private const int Unwrapped = 10_000;

    private readonly IAnsiConsole console;
    private readonly bool isTerminal;

    public Report(Surroundings surroundings)
    {
        isTerminal = surroundings.IsTerminal;
        console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Out = new AnsiConsoleOutput(surroundings.Output),
            Ansi = isTerminal ? AnsiSupport.Detect : AnsiSupport.No,
            ColorSystem = isTerminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
            Interactive = isTerminal ? InteractionSupport.Detect : InteractionSupport.No,
        });
        if (!isTerminal)
            console.Profile.Width = Unwrapped;
    }

    /// <summary>The result of a check.</summary>
    public void Show(IReadOnlyList<CheckedRig> rigs)
    {
        foreach (var rig in rigs)
            Show(rig);
    }

    /// <summary>The result of the main job for one rig.</summary>
    public void Show(CheckedRig rig, RigBakeResult? result, IReadOnlyList<Clip> clips, string whyNot)
    {
        Show(rig);
        if (result is not null)
            Show(result, clips);
        else if (rig.IsGood)
            Line($"  not baked: {whyNot}");
    }

    /// <summary>Does the work under a progress bar, if there is somebody to see it.</summary>
    public RigBakeResult WhileBaking(IReadOnlyList<Clip> clips, Func<IProgress<BakeProgress>?, RigBakeResult> bake) => !isTerminal ? bake(null) : console.Progress()
        .AutoClear(true)
        .HideCompleted(false)
        .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn())
        .Start(context =>
        {
            var tasks = clips.ToDictionary(clip => clip.Name, clip => context.AddTask(Markup.Escape(clip.Name), maxValue: 1), StringComparer.Ordinal);
            return bake(new BarProgress(tasks));
        });

    private void Show(CheckedRig rig)
    {
        var errors = rig.Findings.Count(finding => finding.Severity == Severity.Error);
        var verdict = rig.Failure is not null ? "can't be evaluated"
            : rig.Findings.Count == 0 ? "no findings"
            : errors == 0 ? Count(rig.Findings.Count, "finding")
            : $"{Count(errors, "error")} in {Count(rig.Findings.Count, "finding")}";
        Line($"{rig.Name}: {verdict}", rig.IsGood ? "green" : "red");
        foreach (var finding in rig.Findings)
            Line($"  {finding}", finding.Severity switch { Severity.Error => "red", Severity.Warning => "yellow", _ => "blue" });
        if (rig.Failure is not null)
            Line($"  {rig.Failure}", "red");
    }

    private void Show(RigBakeResult result, IReadOnlyList<Clip> clips)
    {
        Line($"  at rest: within {Say.Metres(result.Rest.Largest.Metres.Value)} and {Say.Degrees(result.Rest.Largest.Degrees.Value)} of the delivered skeleton, farthest at '{result.Rest.Largest.Metres.Joint}'");
        if (result.Rest.Moved.Count > 0)
            Line($"  warning: with every control at zero, {Names(result.Rest.Moved)} {(result.Rest.Moved.Count == 1 ? "leaves its" : "leave their")} delivered rest", "yellow");
        if (result.JointsNotInRig.Count > 0)
            Line($"  {Names(result.JointsNotInRig)} of the file {(result.JointsNotInRig.Count == 1 ? "isn't" : "aren't")} in the rig and {(result.JointsNotInRig.Count == 1 ? "keeps its" : "keep their")} rest", "yellow");
        console.Write(Clips(result, clips));
        foreach (var clip in result.Clips.Where(clip => !clip.Holds))
            Line($"  error: '{clip.Clip}' as baked isn't the live motion: on frames it may be off by {Say.Metres(clip.AllowedMetres)} and {Say.Degrees(clip.AllowedDegrees)}", "red");
        Line($"  wrote {result.File}, {Say.Bytes(result.Bytes)}");
    }

    private static Table Clips(RigBakeResult result, IReadOnlyList<Clip> clips)
    {
        var table = new Table().NoBorder().AddColumns("  baked clip", "frames", "length", "off live on frames", "between frames", "most off between frames");
        foreach (var report in result.Clips)
        {
            var worst = report.BetweenFrames.Metres;
            table.AddRow(new[]
            {
                $"  {report.Clip}",
                FormattableString.Invariant($"{report.Frames} at {report.FramesPerSecond}/s"),
                Say.Seconds(report.Seconds),
                $"{Say.Metres(report.OnFrames.Metres.Value)}, {Say.Degrees(report.OnFrames.Degrees.Value)}",
                $"{Say.Metres(worst.Value)}, {Say.Degrees(report.BetweenFrames.Degrees.Value)}",
                $"'{worst.Joint}' at {Say.Seconds(worst.At)}{Moment(clips.First(clip => clip.Name == report.Clip), worst.At)}",
            }.Select(Markup.Escape).ToArray());
        }

        return table;
    }

    private static string Moment(Clip clip, float at) =>
        clip.Markers.Where(marker => marker.At <= at).OrderBy(marker => marker.At).Select(marker => $" ({marker.Name})").LastOrDefault("");

    private static string Names(IReadOnlyList<string> names)
    {
        const int most = 5;
        return string.Join(", ", names.Take(most).Select(name => $"'{name}'")) + (names.Count > most ? $" and {names.Count - most} more" : "");
    }

    private static string Count(int count, string noun) => $"{count} {noun}{(count == 1 ? "" : "s")}";

    private void Line(string text, string? style = null) =>
        console.WriteLine(text, style is null ? Style.Plain : Style.Parse(style));

    private sealed class BarProgress(Dictionary<string, ProgressTask> tasks) : IProgress<BakeProgress>
    {
        public void Report(BakeProgress value) => tasks[value.Clip].Value = value.Done;
    }
}
