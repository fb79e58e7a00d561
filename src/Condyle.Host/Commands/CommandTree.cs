using System.CommandLine;

namespace Condyle.Host.Commands;

/// <summary>The verbs and what they take.</summary>
internal static class CommandTree
{
    public static RootCommand Build(Surroundings surroundings)
    {
        var options = new Options();
        var root = new RootCommand("Checks and evaluates the rigs of this project, bakes their clips into the delivered files and reports. Without a verb it does all of that for every rig.")
        {
            Check(surroundings, options),
            Bake(surroundings, options),
            Explain(surroundings),
            Skeleton(surroundings),
            Controls(surroundings, options),
        };
        AddBaking(root, surroundings, options, mayHaveNoFile: true);
        return root;
    }

    private static Command Check(Surroundings surroundings, Options options)
    {
        var command = new Command("check", "Lists what the rules find in the rigs, with the place in the code.") { options.Rig, options.Json };
        command.SetAction(parsed => new CheckCommand(surroundings).Run(parsed.GetValue(options.Rig), parsed.GetValue(options.Json)));
        return command;
    }

    private static Command Bake(Surroundings surroundings, Options options)
    {
        var command = new Command("bake", "Bakes clips into the delivered files, and compares the result with the live motion.") { options.Files, options.Jobs, options.Shard };
        AddBaking(command, surroundings, options, mayHaveNoFile: false);
        command.SetAction((parsed, cancellation) => Task.Run(
            () => parsed.GetValue(options.Files) is { Length: > 0 } files
                ? new BatchCommand(surroundings, new BatchRequest(options.Request(parsed, mayHaveNoFile: false), files, parsed.GetValue(options.Jobs), parsed.GetValue(options.Shard))).Run(cancellation)
                : new BakeCommand(surroundings, options.Request(parsed, mayHaveNoFile: false)).Run(cancellation),
            cancellation));
        command.Validators.Add(given =>
        {
            if (given.GetResult(options.Files) is { Tokens.Count: > 0 } files)
            {
                // What looks like an option and is none would be taken as a file.
                foreach (var file in files.Tokens.Where(file => file.Value.StartsWith('-')))
                    given.AddError($"There is no option '{file.Value}'.");
                if (given.GetResult(options.Clips) is { Implicit: false })
                    given.AddError("--clip chooses among the clips of the project, and files of clips are named.");
            }
            else if (given.GetResult(options.Jobs) is { Implicit: false } || given.GetResult(options.Shard) is { Implicit: false })
            {
                given.AddError("--jobs and --shard are for files of clips, and none is named.");
            }
        });
        return command;
    }

    private static void AddBaking(Command command, Surroundings surroundings, Options options, bool mayHaveNoFile)
    {
        foreach (var option in options.OfBake)
            command.Options.Add(option);
        command.SetAction((parsed, cancellation) => Task.Run(() => new BakeCommand(surroundings, options.Request(parsed, mayHaveNoFile)).Run(cancellation), cancellation));
    }

    private static Command Controls(Surroundings surroundings, Options options)
    {
        var command = new Command("controls", "Writes the controls of the rigs as nodes of glTF files, beside the characters: an animator moves them in any program that animates nodes, and bake takes what comes back.")
        {
            options.Rig, options.Folder, options.Skeleton,
        };
        command.SetAction(parsed => new ControlsCommand(surroundings).Run(parsed.GetValue(options.Rig), parsed.GetValue(options.Folder)!, parsed.GetValue(options.Skeleton)));
        return command;
    }

    private static Command Explain(Surroundings surroundings)
    {
        var rule = new Argument<string?>("rule") { Description = "The rule's id, for instance CDY2001; without it the rules are listed.", Arity = ArgumentArity.ZeroOrOne };
        var command = new Command("explain", "Prints the page of a rule: what it flags, why it hurts, and how to fix or accept it.") { rule };
        command.SetAction(parsed => ExplainCommand.Run(surroundings, parsed.GetValue(rule)));
        return command;
    }

    private static Command Skeleton(Surroundings surroundings)
    {
        var file = new Argument<string>("file") { Description = "A .gltf or .glb file." };
        var output = new Option<string?>("--out") { Description = "The .gltf file to write; without it, beside the file under its name.", HelpName = "FILE" };
        var command = new Command("skeleton", "Writes the small .gltf with nodes and skins only from which a skeleton class is generated.") { file, output };
        command.SetAction(parsed => SkeletonCommand.Run(surroundings, parsed.GetValue(file)!, parsed.GetValue(output)));
        return command;
    }
}
