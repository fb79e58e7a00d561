using System.CommandLine;
using System.Globalization;

namespace Condyle.Host.Commands;

/// <summary>The options that several verbs share.</summary>
internal sealed class Options
{
    public Option<string?> Rig { get; } = new("--rig") { Description = "Only the rig of this name.", HelpName = "NAME" };

    public Option<bool> Json { get; } = new("--json") { Description = "Print the result as JSON." };

    public Option<string[]> Clips { get; } = new("--clip")
    {
        Description = "Only the clips of these names.",
        HelpName = "NAME",
        AllowMultipleArgumentsPerToken = true,
        DefaultValueFactory = _ => [],
    };

    public Option<float> FramesPerSecond { get; } = new("--fps")
    {
        Description = "Frames per second, from 1 to 1000.",
        HelpName = "N",
        DefaultValueFactory = _ => new Runtime.BakeSettings().FramesPerSecond,
        CustomParser = given =>
        {
            if (!float.TryParse(given.Tokens[0].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var rate))
                given.AddError($"--fps takes a number of frames per second, not '{given.Tokens[0].Value}'.");
            return rate;
        },
    };

    public Option<string> Folder { get; } = new("--out") { Description = "The folder that files are written to.", HelpName = "DIR", DefaultValueFactory = _ => "out" };

    public Option<string?> Skeleton { get; } = new("--skeleton")
    {
        Description = "The delivered file, instead of the one that the rig names.",
        HelpName = "FILE",
    };

    public Option<bool> Replace { get; } = new("--replace") { Description = "Put a clip in the place of a delivered animation of the same name." };

    public IEnumerable<Option> OfBake => [Rig, Clips, FramesPerSecond, Folder, Skeleton, Replace, Json];
}
