using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Condyle.Host.Commands;

/// <summary>The help of a verb, with examples below it that can be copied.</summary>
internal sealed class HelpWithExamples(HelpAction help, string program, ExampleRigs rigs) : SynchronousCommandLineAction
{
    /// <summary>For each verb what one may want, and how to say it; RIG is a rig of the project, rig the same in small letters, ACTOR one with limbs and the joints that are mapped: an example that no rig fits is left out.</summary>
    private static readonly Dictionary<string, (string Wanted, string Said)[]> Examples = new(StringComparer.Ordinal)
    {
        [""] =
        [
            ("everything: check, bake and prove all rigs", ""),
            ("what a rig is made of, and what moves what", "tree --rig RIG"),
            ("the page of a rule", "explain CDY2001"),
            ("the help of a verb", "bake --help"),
        ],
        ["list"] = [("for a script", "list --json")],
        ["tree"] = [("a picture of a rig", "tree --rig RIG --out rig.svg"), ("a model file to compare with later", "tree --rig RIG --out rig.json")],
        ["compare"] = [("what changed since a model file was written", "compare rig.json"), ("what differs between two model files", "compare monday.json friday.json --json")],
        ["check"] = [("one rig", "check --rig RIG"), ("for a script; the exit code is 1 when there are errors", "check --json")],
        ["bake"] =
        [
            ("one clip, finer", "bake --rig RIG --clip range_of_motion --fps 60"),
            ("files of clips, four at a time, with reports", "bake clips/*.glb --out build --jobs 4 --report"),
            ("the third of eight machines' shares", "bake clips --out build --shard 2/8"),
            ("fewer keys, within 0.5 mm and 0.1° of the live motion", "bake --keys 0.5/0.1"),
            ("the motion as an engine profile of the project says", "bake --profile game --out build"),
            ("a walk in place that loops", "bake walk.glb --root-motion in-place:pelvis --loop"),
        ],
        ["explain"] = [("all rules", "explain"), ("one of them", "explain CDY3001")],
        ["skeleton"] = [("what a class of joints is generated from", "skeleton character.glb --out character.gltf")],
        ["match"] =
        [
            ("an actor's walk, on a controls file that bake takes too", "match walk.bvh --rig ACTOR --joint hips=pelvis leftUpperArm=shoulder_left"),
            ("a clip of an older skeleton", "match old.glb --rig RIG --rest KeepTurns"),
        ],
        ["controls"] = [("the desk of an animator", "controls --rig RIG --out out"), ("with a clip on it, to be worked on", "controls --rig RIG --clip range_of_motion")],
    };

    /// <summary>Puts the examples below the help of all verbs.</summary>
    public static void AddTo(RootCommand root, string program, ExampleRigs rigs)
    {
        foreach (var option in root.Options.OfType<HelpOption>())
        {
            if (option.Action is HelpAction plain)
                option.Action = new HelpWithExamples(plain, program, rigs);
        }
    }

    public override int Invoke(ParseResult parseResult)
    {
        var exitCode = help.Invoke(parseResult);
        var command = parseResult.CommandResult.Command;
        if (Examples.TryGetValue(command is RootCommand ? "" : command.Name, out var examples))
        {
            var output = parseResult.InvocationConfiguration.Output;
            output.WriteLine("Examples:");
            foreach (var (wanted, said) in examples)
            {
                if (Named(said) is { } line)
                    output.WriteLine($"  {$"{program} {line}".TrimEnd()}\n      {wanted}");
            }
        }

        return exitCode;
    }

    private string? Named(string said)
    {
        var words = said.Split(' ');
        var rig = words.Contains("ACTOR") ? rigs.ForActor([.. words.Select(word => word.Split('=')).Where(pair => pair.Length == 2).Select(pair => pair[1])]) : rigs.Names.FirstOrDefault() ?? "NAME";
        return rig is null ? null : string.Join(' ', words.Select(word => word is "RIG" or "ACTOR" ? rig : word.StartsWith("rig.", StringComparison.Ordinal) ? rig.ToLowerInvariant() + word[3..] : word));
    }
}
