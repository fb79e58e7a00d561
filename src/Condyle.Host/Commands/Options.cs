using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>The options that several verbs share.</summary>
internal sealed class Options
{
    private const double TurnUnlessSaid = 0.1;

    public Option<string?> Rig { get; } = new("--rig") { Description = "Only the rig of this name.", HelpName = "NAME" };

    public Option<bool> Json { get; } = new("--json") { Description = "Print the result as JSON." };

    public Option<string[]> Clips { get; } = new("--clip")
    {
        Description = "Only the clips of these names.",
        HelpName = "NAME",
        AllowMultipleArgumentsPerToken = true,
        DefaultValueFactory = _ => [],
    };

    public Option<float?> FramesPerSecond { get; } = Number("--fps", "Frames per second, from 1 to 1000; 30 when it isn't said.", "a number of frames per second");

    public Option<int> SubFrames { get; } = new("--sub-frames")
    {
        Description = "Samples of each frame, from 1 to 64.",
        HelpName = "N",
        DefaultValueFactory = _ => 1,
        CustomParser = given => Whole(given, "--sub-frames") ?? 1,
    };

    public Option<float?> From { get; } = Number("--from", "Where in the clip the bake begins, in seconds.", "seconds");

    public Option<float?> To { get; } = Number("--to", "Where in the clip the bake ends, in seconds.", "seconds");

    public Option<bool> Loop { get; } = new("--loop") { Description = "The motion loops: its last sample is made its first. Refused for motion that doesn't end where it begins." };

    public Option<RootMotion?> RootMotion { get; } = new("--root-motion")
    {
        Description = "What becomes of the way that the character goes: onto:JOINT puts the way of that joint onto the root above it, in-place or in-place:JOINT takes it off.",
        HelpName = "HOW",
        CustomParser = given => given.Tokens[0].Value.Split(':') switch
        {
            ["as-posed"] => Runtime.RootMotion.AsPosed,
            ["in-place"] => Runtime.RootMotion.InPlace(),
            ["in-place", { Length: > 0 } joint] => Runtime.RootMotion.InPlace(joint),
            ["onto", { Length: > 0 } joint] => Runtime.RootMotion.OntoRoot(joint),
            _ => Refused<RootMotion?>(given, $"--root-motion takes as-posed, in-place, in-place:JOINT or onto:JOINT, not '{given.Tokens[0].Value}'."),
        },
    };

    public Option<BakeTolerance?> Keys { get; } = Tolerance("--keys", "Leave out keys as long as no joint is further off in the world than this on any frame.");

    public Option<BakeTolerance?> Between { get; } = Tolerance("--between", "Take more samples where a joint is further off between two of them than this.");

    public Option<bool> Report { get; } = new("--report") { Description = "Write beside each file how its motion compares with the live motion, as text, as JSON and as a page with curves." };

    public Option<string> Folder { get; } = new("--out")
    {
        Description = "The folder that files are written to; where one file is written, its name will do.",
        HelpName = "DIR",
        DefaultValueFactory = _ => "out",
    };

    public Option<string?> Skeleton { get; } = new("--skeleton")
    {
        Description = "The delivered file, instead of the one that the rig names.",
        HelpName = "FILE",
    };

    public Option<bool> Replace { get; } = new("--replace") { Description = "Put a clip in the place of a delivered animation of the same name." };

    /// <summary>The options that say how to bake.</summary>
    public IEnumerable<Option> OfSettings => [FramesPerSecond, SubFrames, From, To, Loop, RootMotion, Keys, Between];

    public IEnumerable<Option> OfBake => [Rig, Clips, FramesPerSecond, SubFrames, From, To, Loop, RootMotion, Keys, Between, Folder, Skeleton, Replace, Report, Json];

    public Argument<string[]> Files { get; } = new("clips")
    {
        Description = "Files of clips whose nodes are the rig's controls, by name, by pattern or by their folder: each is baked into a file of its own. Without any, the clips of the project.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    public Option<int?> Jobs { get; } = new("--jobs")
    {
        Description = "How many files are baked at a time; as many as there are processors when it isn't said.",
        HelpName = "N",
        CustomParser = given => Whole(given, "--jobs"),
    };

    public Option<string?> Shard { get; } = new("--shard")
    {
        Description = "Only one share of the files, for a batch that is split over machines: 0/8 to 7/8. In /8 the number is JOB_COMPLETION_INDEX.",
        HelpName = "I/N",
    };

    public Option<string?> Profile { get; } = new("--profile")
    {
        Description = "Write the skeleton and its motion alone, as this engine profile of the project says, with a manifest.",
        HelpName = "NAME",
    };

    /// <summary>How to bake, as the command line says.</summary>
    public BakeSettings Settings(ParseResult parsed) => new()
    {
        FramesPerSecond = parsed.GetValue(FramesPerSecond) ?? new BakeSettings().FramesPerSecond,
        SubFrames = parsed.GetValue(SubFrames),
        From = parsed.GetValue(From) ?? 0,
        To = parsed.GetValue(To),
        Loop = parsed.GetValue(Loop),
        RootMotion = parsed.GetValue(RootMotion) ?? Runtime.RootMotion.AsPosed,
        Keys = parsed.GetValue(Keys),
        Between = parsed.GetValue(Between),
        ReplaceClips = parsed.GetValue(Replace),
    };

    /// <summary>What to bake, as the command line says.</summary>
    public BakeRequest Request(ParseResult parsed, bool mayHaveNoFile) => new(
        parsed.GetValue(Rig),
        parsed.GetValue(Clips) ?? [],
        Settings(parsed),
        parsed.GetValue(Folder)!,
        parsed.GetValue(Skeleton),
        mayHaveNoFile,
        parsed.GetValue(Report),
        parsed.GetValue(Json));

    public static Option<float?> Number(string name, string description, string what) => new(name)
    {
        Description = description,
        HelpName = "N",
        CustomParser = given => float.TryParse(given.Tokens[0].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : Refused<float?>(given, $"{name} takes {what}, not '{given.Tokens[0].Value}'."),
    };

    /// <summary>One of a few values, in any letter case; the first of them unless it is said.</summary>
    /// <param name="name">The option's name.</param>
    /// <param name="description">What it is for.</param>
    /// <param name="among">The values; all of their kind when none are given.</param>
    public static Option<T> OneOf<T>(string name, string description, params ReadOnlySpan<T> among)
        where T : struct, Enum
    {
        T[] values = among.Length > 0 ? [.. among] : Enum.GetValues<T>();
        string[] names = [.. values.Select(value => value.ToString())];
        var option = new Option<T>(name)
        {
            Description = description,
            HelpName = string.Join('|', names),
            DefaultValueFactory = _ => values[0],
            CustomParser = given => Array.FindIndex(names, known => known.Equals(given.Tokens[0].Value, StringComparison.OrdinalIgnoreCase)) is >= 0 and var index
                ? values[index]
                : Refused<T>(given, $"{name} takes {string.Join(", ", names[..^1])} or {names[^1]}, not '{given.Tokens[0].Value}'."),
        };
        option.CompletionSources.Add(names);
        return option;
    }

    private static int? Whole(ArgumentResult given, string name) => int.TryParse(given.Tokens[0].Value, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
        ? number
        : Refused<int?>(given, $"{name} takes a whole number, not '{given.Tokens[0].Value}'.");

    private static Option<BakeTolerance?> Tolerance(string name, string description) => new(name)
    {
        Description = $"{description} Millimetres, and degrees after a slash; {TurnUnlessSaid}° unless they are said.",
        HelpName = "MM[/DEGREES]",
        CustomParser = given =>
        {
            var parts = given.Tokens[0].Value.Split('/');
            var degrees = TurnUnlessSaid;
            if (parts.Length > 2
                || !double.TryParse(parts[0], NumberStyles.Float, CultureInfo.InvariantCulture, out var millimetres)
                || (parts.Length == 2 && !double.TryParse(parts[1], NumberStyles.Float, CultureInfo.InvariantCulture, out degrees)))
            {
                return Refused<BakeTolerance?>(given, $"{name} takes millimetres, or millimetres/degrees, not '{given.Tokens[0].Value}'.");
            }

            var tolerance = new BakeTolerance(millimetres / 1000, degrees);
            return tolerance.CanBe
                ? tolerance
                : Refused<BakeTolerance?>(given, $"{name} takes {BakeTolerance.Least}, not '{given.Tokens[0].Value}'.");
        },
    };

    private static T? Refused<T>(ArgumentResult given, string why)
    {
        given.AddError(why);
        return default;
    }
}
