using Condyle.Host.Catalogue;
using Condyle.Host.Commands;
using Condyle.Model;
using Condyle.Runtime;
using Condyle.Runtime.Baking.Reports;
using Spectre.Console;

namespace Condyle.Host.Reporting;

/// <summary>The report for people: coloured on a terminal, plain lines elsewhere.</summary>
internal sealed class Report
{
    /// <summary>Wide enough that no line is broken: terminals wrap by themselves, and a path that is copied stays whole.</summary>
    private const int Unbroken = 10_000;

    private readonly IAnsiConsole console;
    private readonly IAnsiConsole? bars;

    public Report(Surroundings surroundings)
    {
        console = Console(surroundings);
        console.Profile.Width = Unbroken;
        bars = surroundings.IsTerminal ? Console(surroundings) : null;
    }

    /// <summary>The result of a check.</summary>
    public void Show(IReadOnlyList<CheckedRig> rigs)
    {
        foreach (var rig in rigs)
            Show(rig);
    }

    /// <summary>The result of the main job for one rig.</summary>
    public void Show(CheckedRig rig, RigBakeResult? result, IReadOnlyList<Clip> clips, IReadOnlyList<ClipFailure> failures, string whyNot)
    {
        Show(rig);
        if (result is not null)
            Show(result, clips);
        else if (rig.IsGood)
            Line($"  not baked: {whyNot}");
        foreach (var failure in failures)
            Line($"  error: {failure.Reason}", "red");
    }

    /// <summary>Does the work under a progress bar, if there is somebody to see it.</summary>
    public RigBakeResult? WhileBaking(IReadOnlyList<Clip> clips, Func<IProgress<BakeProgress>?, RigBakeResult?> bake) => bars is null ? bake(null) : bars.Progress()
        .AutoClear(true)
        .HideCompleted(false)
        .Columns(new TaskDescriptionColumn(), new ProgressBarColumn(), new PercentageColumn())
        .Start(context =>
        {
            var tasks = clips.ToDictionary(clip => clip.Name, clip => context.AddTask(OnBar(clip.Name), maxValue: 1), StringComparer.Ordinal);
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
        Line($"  at rest, every joint is within {Say.Both(result.Rest.Largest)} of the delivered skeleton");
        if (result.Rest.Moved.Count > 0)
            Line($"  warning: with every control at zero, {Names(result.Rest.Moved)} {(result.Rest.Moved.Count == 1 ? "leaves its" : "leave their")} delivered rest, by up to {Say.Both(result.Rest.Largest)}", "yellow");
        if (result.JointsNotInRig.Count > 0)
            Line($"  {Names(result.JointsNotInRig)} of the file {(result.JointsNotInRig.Count == 1 ? "isn't in the rig and keeps its" : "aren't in the rig and keep their")} rest", "yellow");
        foreach (var report in result.Clips)
            Show(report, clips.First(clip => clip.Name == report.Clip));
        Line($"  wrote {result.File}, {Say.Bytes(result.Bytes)}");
    }

    private void Show(BakeReport report, Clip clip)
    {
        Line($"  {report.Clip}: {ReportText.Length(report)}");
        Line($"    on frames, baked motion is live motion within {Say.Both(report.OnFrames)}");
        Line($"    between frames, where the engine interpolates, within {Say.Both(report.Between)} ({Figures.MostAt(report.Between, peak => Moment(clip, peak.At))})");
        if (report.Keys < report.KeysOfEveryFrame)
            Line(FormattableString.Invariant($"    {report.Keys} keys instead of {report.KeysOfEveryFrame}"));
        if (!report.BetweenBound.Holds)
            Line($"    warning: {BeyondBound(report.BetweenBound)}", "yellow");
        if (!report.Holds)
            Line($"    error: the baked motion is not the live motion. On frames it may be off by {Say.Metres(report.AllowedMetres)} and {Say.Degrees(report.AllowedDegrees)}, and '{report.OnFrames.Metres.Joint}' is, at {Say.Seconds(report.OnFrames.Metres.At)}.", "red");
    }

    private static string BeyondBound(BetweenBound bound) => bound.IsAsked
        ? $"between frames '{bound.Joint}' is off by more than was asked for, at {Say.Seconds(bound.At)}, however many samples are taken there"
        : $"between frames '{bound.Joint}' is off by more than the frame rate shows, at {Say.Seconds(bound.At)}: something happens there that falls between two frames. Bake it with --between or a higher --fps";

    private static string Moment(Clip clip, float at) =>
        clip.Markers.Where(marker => marker.At <= at).OrderBy(marker => marker.At).Select(marker => $", {marker.Name}").LastOrDefault("");

    private static string Names(IReadOnlyList<string> names)
    {
        const int most = 5;
        return string.Join(", ", names.Take(most).Select(name => $"'{name}'")) + (names.Count > most ? $" and {names.Count - most} more" : "");
    }

    private static string Count(int count, string noun) => $"{count} {noun}{(count == 1 ? "" : "s")}";

    private void Line(string text, string? style = null) =>
        console.WriteLine(Messages.OnOneLine(text), style is null ? Style.Plain : Style.Parse(style));

    /// <summary>A name as a progress bar shows it.</summary>
    public static string OnBar(string name) => Markup.Escape(Messages.OnOneLine(name));

    /// <summary>A console over the program's output.</summary>
    public static IAnsiConsole Console(Surroundings surroundings) => AnsiConsole.Create(new AnsiConsoleSettings
    {
        Out = new AnsiConsoleOutput(surroundings.Output),
        Ansi = surroundings.IsTerminal ? AnsiSupport.Detect : AnsiSupport.No,
        ColorSystem = surroundings.IsTerminal ? ColorSystemSupport.Detect : ColorSystemSupport.NoColors,
        Interactive = surroundings.IsTerminal ? InteractionSupport.Detect : InteractionSupport.No,
    });

    private sealed class BarProgress(Dictionary<string, ProgressTask> tasks) : IProgress<BakeProgress>
    {
        public void Report(BakeProgress value) => tasks[value.Clip].Value = value.Done;
    }
}
