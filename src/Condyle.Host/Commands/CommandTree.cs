using System.CommandLine;
using System.CommandLine.Completions;
using Condyle.Rules;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>The verbs and what they take.</summary>
internal static class CommandTree
{
    public static RootCommand Build(Surroundings surroundings)
    {
        var options = new Options();
        var root = new RootCommand("Checks and evaluates the rigs of this project, bakes their clips into the delivered files and reports. Without a verb it does all of that for every rig.")
        {
            List(surroundings, options),
            Tree(surroundings, options),
            Compare(surroundings, options),
            Check(surroundings, options),
            Bake(surroundings, options),
            Explain(surroundings, options),
            Skeleton(surroundings, options),
            Controls(surroundings, options),
            Match(surroundings, options),
        };
        AddBaking(root, surroundings, options, mayHaveNoFile: true);
        var rigs = new ExampleRigs(surroundings);
        options.Rig.CompletionSources.Add(_ => rigs.Names.Select(name => new CompletionItem(name)));
        HelpWithExamples.AddTo(root, surroundings.Program, rigs);
        return root;
    }

    private static Command List(Surroundings surroundings, Options options)
    {
        var command = new Command("list", "Lists the rigs of the project, what they are made of, and their clips.") { options.Rig, options.Json };
        command.SetAction(parsed => new ListCommand(surroundings).Run(parsed.GetValue(options.Rig), parsed.GetValue(options.Json)));
        return command;
    }

    private static Command Tree(Surroundings surroundings, Options options)
    {
        var output = new Option<string?>("--out") { Description = "A file for one rig: .svg (a picture), .txt (lines) or .json (a model file for compare).", HelpName = "FILE" };
        var command = new Command("tree", "Shows the rigs as trees, with what moves what.") { options.Rig, output, options.Json };
        command.SetAction(parsed => new TreeCommand(surroundings).Run(parsed.GetValue(options.Rig), parsed.GetValue(output), parsed.GetValue(options.Json)));
        return command;
    }

    private static Command Compare(Surroundings surroundings, Options options)
    {
        var before = new Argument<string>("before") { Description = "A model file that tree --out wrote." };
        var after = new Argument<string?>("after") { Description = "Another one; without it, the rig of this project.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("compare", "Says what changed between two builds of a rig: nodes, drives, weights, rest poses.") { before, after, options.Rig, options.Json };
        command.SetAction(parsed => new CompareCommand(surroundings).Run(parsed.GetValue(before)!, parsed.GetValue(after), parsed.GetValue(options.Rig), parsed.GetValue(options.Json)));
        return command;
    }

    private static Command Check(Surroundings surroundings, Options options)
    {
        var command = new Command("check", "Lists what the rules find in the rigs, with the place in the code.") { options.Rig, options.Json };
        command.SetAction(parsed => new CheckCommand(surroundings).Run(parsed.GetValue(options.Rig), parsed.GetValue(options.Json)));
        return command;
    }

    private static Command Bake(Surroundings surroundings, Options options)
    {
        var command = new Command("bake", "Bakes clips into the delivered files, and compares the result with the live motion.") { options.Files, options.Jobs, options.Shard, options.Profile };
        AddBaking(command, surroundings, options, mayHaveNoFile: false);
        command.SetAction((parsed, cancellation) => Task.Run(
            () => (Files(parsed), parsed.GetValue(options.Profile)) switch
            {
                ({ } files, _) => new BatchCommand(surroundings, files).Run(cancellation),
                (null, { } profile) => new ProfileCommand(surroundings, options.Request(parsed, mayHaveNoFile: false), profile).Run(cancellation),
                _ => new BakeCommand(surroundings, options.Request(parsed, mayHaveNoFile: false)).Run(cancellation),
            },
            cancellation));
        command.Validators.Add(given =>
        {
            if (given.GetResult(options.Profile) is { Implicit: false })
            {
                foreach (var fixedByProfile in options.OfSettings.Where(option => given.GetResult(option) is { Implicit: false }))
                    given.AddError($"{fixedByProfile.Name} is said by the profile.");
                foreach (var alone in new Option[] { options.Report, options.Replace }.Where(option => given.GetResult(option) is { Implicit: false }))
                    given.AddError($"{alone.Name} is for bakes without a profile.");
            }

            if (given.GetResult(options.Files) is { Tokens.Count: > 0 } files)
            {
                // What looks like an option and is none would be taken as a file.
                foreach (var file in files.Tokens.Where(file => file.Value.StartsWith('-')))
                    given.AddError($"There is no option '{file.Value}'. {Nearest.To(file.Value, command.Options.Select(option => option.Name), most: 1)}.");
                if (given.GetResult(options.Clips) is { Implicit: false })
                    given.AddError("--clip chooses among the clips of the project, and files of clips are named.");
            }
            else if (given.GetResult(options.Jobs) is { Implicit: false } || given.GetResult(options.Shard) is { Implicit: false })
            {
                given.AddError("--jobs and --shard are for files of clips, and none is named.");
            }
        });
        return command;

        BatchRequest? Files(ParseResult parsed) => parsed.GetValue(options.Files) is { Length: > 0 } files
            ? new BatchRequest(options.Request(parsed, mayHaveNoFile: false), files, parsed.GetValue(options.Jobs), parsed.GetValue(options.Shard), parsed.GetValue(options.Profile))
            : null;
    }

    private static void AddBaking(Command command, Surroundings surroundings, Options options, bool mayHaveNoFile)
    {
        foreach (var option in options.OfBake)
            command.Options.Add(option);
        command.SetAction((parsed, cancellation) => Task.Run(() => new BakeCommand(surroundings, options.Request(parsed, mayHaveNoFile)).Run(cancellation), cancellation));
    }

    private static Command Controls(Surroundings surroundings, Options options)
    {
        var clips = new Option<string[]>("--clip") { Description = "Clips of the project that go along as animations, to be worked on.", HelpName = "NAME", AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => [] };
        var command = new Command("controls", "Writes the controls of the rigs as nodes of glTF files, beside the characters: an animator moves them in any program that animates nodes, and bake takes what comes back.")
        {
            options.Rig, options.Folder, options.Skeleton, clips, options.Json,
        };
        command.SetAction(parsed => new ControlsCommand(surroundings).Run(parsed.GetValue(options.Rig), parsed.GetValue(options.Folder)!, parsed.GetValue(options.Skeleton), parsed.GetValue(clips) ?? [], parsed.GetValue(options.Json)));
        return command;
    }

    private static Command Match(Surroundings surroundings, Options options)
    {
        var file = new Argument<string>("file") { Description = "A .bvh file of motion capture, or a .gltf or .glb file with an animation of joints." };
        var animation = new Option<string?>("--animation") { Description = "The animation of a glTF file; without it, the file has one only.", HelpName = "NAME" };
        var joints = new Option<string[]>("--joint") { Description = "Which joint of the motion is which of the rig, as FROM=TO; joints of one name needn't be said.", HelpName = "FROM=TO", AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => [] };
        var choices = new Option<string[]>("--choice") { Description = "Which option a choice has, from a time in seconds on or all along: what rides by it, such as a hand by its space, is set so that the motion stays as it is.", HelpName = "NAME=OPTION[@SECONDS]", AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => [] };
        var dials = new Option<string[]>("--dial") { Description = "What a dial is set to, in its unit, all along or by keys at times with lines between: a match turns no dials by itself, and sets the controls so that the motion stays as it is.", HelpName = "NAME=VALUE[@SECONDS]", AllowMultipleArgumentsPerToken = true, DefaultValueFactory = _ => [] };
        var rest = Options.OneOf<RestPolicy>("--rest", "What is kept where the skeletons don't rest alike.");
        var limbs = Options.OneOf<LimbCopy>("--limbs", "Which copy of limbs is shown; both are set.");
        var up = Options.OneOf("--up", "The axis of a BVH file that points up: Y or Z.", Axis.Y, Axis.Z);
        var rate = Options.Number("--fps", "Frames per second, from 1 to 1000; without it, those of the motion, or 30.", "a number of frames per second");
        var command = new Command("match", "Puts motion capture, or a clip of an older skeleton, onto the controls of a rig, says how far each joint is off, and writes the controls with the clip for an animator or for bake.")
        {
            file, animation, options.Rig, joints, choices, dials, rest, limbs, up, rate, options.Keys, options.Skeleton, options.Folder, options.Json,
        };
        command.SetAction((parsed, cancellation) => Task.Run(
            () => new MatchCommand(surroundings, new MatchRequest(
                parsed.GetValue(file)!,
                parsed.GetValue(animation),
                parsed.GetValue(options.Rig),
                parsed.GetValue(joints) ?? [],
                parsed.GetValue(choices) ?? [],
                parsed.GetValue(dials) ?? [],
                new MotionMatchSettings { Rest = parsed.GetValue(rest), Limbs = parsed.GetValue(limbs), FramesPerSecond = parsed.GetValue(rate), Keys = parsed.GetValue(options.Keys) },
                parsed.GetValue(up),
                parsed.GetValue(options.Skeleton),
                parsed.GetValue(options.Folder)!,
                parsed.GetValue(options.Json))).Run(cancellation),
            cancellation));
        return command;
    }

    private static Command Explain(Surroundings surroundings, Options options)
    {
        var rule = new Argument<string?>("rule") { Description = "The rule's id, for instance CDY2001; without it the rules are listed.", HelpName = "rule", Arity = ArgumentArity.ZeroOrOne };
        rule.CompletionSources.Add(_ => RuleBook.All.Select(known => new CompletionItem(known.Id)));
        var command = new Command("explain", "Prints the page of a rule: what it flags, why it hurts, and how to fix or accept it.") { rule, options.Json };
        command.SetAction(parsed => ExplainCommand.Run(surroundings, parsed.GetValue(rule), parsed.GetValue(options.Json)));
        return command;
    }

    private static Command Skeleton(Surroundings surroundings, Options options)
    {
        var file = new Argument<string>("file") { Description = "A .gltf or .glb file." };
        var output = new Option<string?>("--out") { Description = "The .gltf file to write; without it, beside the file under its name.", HelpName = "FILE" };
        var command = new Command("skeleton", "Writes the small .gltf with nodes and skins only from which a skeleton class is generated.") { file, output, options.Json };
        command.SetAction(parsed => SkeletonCommand.Run(surroundings, parsed.GetValue(file)!, parsed.GetValue(output), parsed.GetValue(options.Json)));
        return command;
    }
}
