using Condyle.Host.Commands;
using Condyle.Rules;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Tests;

public sealed class OtherVerbsTests
{
    [Theory]
    [InlineData("CDY2001")]
    [InlineData("cdy2001")]
    public void Explain_prints_the_page_of_a_rule(string id)
    {
        using var program = new TestProgram();
        Assert.Equal(0, program.Run("explain", id));
        Assert.Equal(RuleBook.Find("CDY2001")!.Page.Trim(), program.Output.Trim());
    }

    [Fact]
    public void Explain_prints_the_page_of_what_the_build_says_besides()
    {
        using var program = new TestProgram();
        Assert.Equal(0, program.Run("explain", "CDY9101"));
        Assert.Equal(BuildProblem.Find("CDY9101")!.Page.Trim(), program.Output.Trim());
    }

    [Theory]
    [InlineData("The nearest: 'check'. Run it with --help", "chek")]
    [InlineData("The nearest: '--json'. Run it with --help", "list", "--jsn")]
    public void A_word_that_it_does_not_know_is_told_with_the_nearest_that_it_does(string expected, params string[] arguments)
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(2, program.Run(arguments));
        Assert.Contains(expected, program.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_help_lists_the_verbs_in_lines_that_a_terminal_holds()
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(0, program.Run("--help"));
        Assert.Matches(@"explain <rule> +Prints the page", program.Output);
        Assert.Matches(@"
  list {2,30}Lists the rigs", program.Output);
    }

    [Fact]
    public void Explain_lists_the_rules()
    {
        using var program = new TestProgram();
        Assert.Equal(0, program.Run("explain"));
        Assert.Matches(@"CDY1001 +\w+ +\w+", program.Output);
    }

    [Fact]
    public void Explain_says_which_rules_are_nearest_when_one_is_unknown()
    {
        using var program = new TestProgram();
        Assert.Equal(2, program.Run("explain", "CDY0000"));
        Assert.Contains("'CDY0000' is no rule. The nearest: 'CDY1001', 'CDY1002', 'CDY1003'; explain alone lists all.", program.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Skeleton_writes_nodes_and_skins_and_keeps_what_holds_more()
    {
        using var program = new TestProgram(typeof(Hoist));
        program.Write("hoist.gltf", Hoist.Delivered);
        program.Run("bake", "--out", program.Path);
        Assert.Equal(0, program.Run("skeleton", program["hoist.glb"], "--out", program["skeleton.gltf"]));
        Assert.Equal($"wrote {program["skeleton.gltf"]}", program.Output.Trim());
        var file = GltfFile.Read(program["skeleton.gltf"]);
        Assert.Equal(["jib", "hook"], GltfSkeleton.Read(file).Joints.Select(joint => joint.Name));
        Assert.Empty(file.Model.LogicalAnimations);

        Assert.Equal(0, program.Run("skeleton", program["hoist.glb"]));
        Assert.Equal(0, program.Run("skeleton", program["hoist.glb"]));
        program.Run("bake", "--out", program.Path);
        GltfFile.Read(program["hoist.glb"]).Write(program["hoist.gltf"]);
        Assert.Equal(2, program.Run("skeleton", program["hoist.glb"]));
        Assert.Contains("it holds more than a skeleton, which would be lost. Name another file with --out", program.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Controls_writes_the_controls_beside_the_character()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(Cleat));
        program.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(0, program.Run("controls", "--out", program.Path));
        Assert.Equal($"Cleat: not written, it names no delivered file\nHoist: wrote {program["hoist_controls.glb"]}, 2 controls", program.Output.ReplaceLineEndings("\n").Trim());
        var names = GltfFile.Read(program["hoist_controls.glb"]).Model.LogicalNodes.Select(node => node.Name);
        Assert.Equal(["jib", "hook", "condyle_controls", "slew_placement", "slew", "drop_placement", "drop"], names);

        Assert.Equal(0, program.Run("controls", "--rig", "Hoist", "--out", program["desk.gltf"]));
        Assert.True(File.Exists(program["desk.gltf"]));
        Assert.Equal(2, program.Run("controls", "--out", program["desk.glb"]));
        Assert.Contains("is one file, and there are 2 to write. Name a folder", program.Error, StringComparison.Ordinal);
        Directory.CreateDirectory(program["folder.glb"]);
        Assert.Equal(0, program.Run("controls", "--rig", "Hoist", "--out", program["folder.glb"]));
        Assert.True(File.Exists(program["folder.glb/hoist_controls.glb"]));

        using var withClip = new TestProgram(typeof(Hoist), typeof(HoistClips));
        withClip.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(0, withClip.Run("controls", "--out", withClip.Path, "--clip", "unload"));
        Assert.Equal(["unload"], GltfFile.Read(withClip["hoist_controls.glb"]).Model.LogicalAnimations.Select(animation => animation.Name));
        Assert.Equal(2, withClip.Run("controls", "--out", withClip.Path, "--clip", "unlod"));
        Assert.Contains("'unlod' is no clip of this project. The nearest: 'unload'", withClip.Error, StringComparison.Ordinal);

        using var stiff = new TestProgram(typeof(StiffHoist));
        stiff.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(1, stiff.Run("controls", "--out", stiff.Path));
        Assert.Contains("StiffHoist: not written, it has findings that are errors", stiff.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--rest takes KeepDirections, KeepTurns or KeepFrames, not 'Keep'.", "match", "x.bvh", "--rest", "Keep")]
    [InlineData("--limbs takes Turned or Solved, not 'bent'.", "match", "x.bvh", "--limbs", "bent")]
    [InlineData("--up takes Y or Z, not 'X'.", "match", "x.bvh", "--up", "X")]
    [InlineData("--sub-frames takes a whole number, not 'few'.", "bake", "--sub-frames", "few")]
    [InlineData("<file> is given nothing.", "match", "")]
    [InlineData("<file> is given nothing.", "skeleton", "")]
    [InlineData("<before> is given nothing.", "compare", "")]
    [InlineData("--out is given nothing.", "tree", "--out", "")]
    [InlineData("--skeleton is given nothing.", "bake", "--skeleton", "")]
    [InlineData("--skeleton is given nothing.", "--skeleton", "")]
    [InlineData("--joint is given nothing.", "match", "x.bvh", "--joint", "a=b", "")]
    public void A_value_that_cant_be_is_told_in_one_line_with_those_that_can(string told, params string[] arguments)
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(2, program.Run(arguments));
        Assert.Equal($"error: {told} Run it with --help to see what it takes.", program.Error.TrimEnd());
    }

    /// <summary>The delivered file itself, a copy of it such as a build lays beside the program, and the motion that is matched.</summary>
    [Fact]
    public void A_file_that_is_read_is_not_written_over()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(HoistClips));
        program.Write("hoist.gltf", Hoist.Delivered);
        program.Write("copy.gltf", Hoist.Delivered);
        Assert.Equal(0, program.Run("bake", "--out", program["baked.glb"]));
        var before = program.FileNames.ToDictionary(name => name, name => File.ReadAllBytes(program[name]));
        foreach (var lost in new[] { "hoist.gltf", "copy.gltf" })
        {
            foreach (var verb in new string[][] { ["bake"], ["controls"], ["match", program["baked.glb"], "--animation", "unload"] })
            {
                Assert.Equal(2, program.Run([.. verb, "--out", program[lost]]));
                Assert.Contains($"{program[lost]}: it is what is read as ", program.Error, StringComparison.Ordinal);
            }
        }

        Assert.Equal(2, program.Run("match", program["baked.glb"], "--animation", "unload", "--out", program["baked.glb"]));
        Assert.All(before, file => Assert.Equal(file.Value, File.ReadAllBytes(program[file.Key])));
        Assert.Equal(0, program.Run("match", program["baked.glb"], "--animation", "unload", "--limbs", "solved", "--rest", "keepframes", "--up", "y", "--out", program["desk.glb"]));
    }

    [Theory]
    [InlineData("walk", "walk")]
    [InlineData("week 3: haul/lift", "week 3_ haul_lift")]
    [InlineData("a\\b|c\n", "a_b_c_")]
    public void A_motion_is_a_part_of_a_files_name_on_every_system(string motion, string part) => Assert.Equal(part, Condyle.Host.Commands.OutputPlace.NameFor(motion));

    [Fact]
    public void A_program_without_rigs_says_what_to_add()
    {
        using var program = new TestProgram(typeof(HoistClips));
        Assert.Equal(2, program.Run());
        Assert.Equal("error: Harbour: it has no rig. Add a public class that implements IRigDefinition and has a constructor without parameters.", program.Error.Trim());
    }

    [Fact]
    public void Help_lists_the_verbs()
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(0, program.Run("--help"));
        Assert.All(new[] { "check", "bake", "explain", "skeleton", "controls", "match" }, verb => Assert.Contains(verb, program.Output, StringComparison.Ordinal));
    }

    [Fact]
    public void A_verb_that_isnt_there_is_told()
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(2, program.Run("bakk"));
        Assert.Contains("bakk", program.Error, StringComparison.Ordinal);
        Assert.Contains("--help", program.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("list")]
    [InlineData("tree")]
    [InlineData("compare")]
    [InlineData("check")]
    [InlineData("bake")]
    [InlineData("explain")]
    [InlineData("skeleton")]
    [InlineData("controls")]
    [InlineData("match")]
    public void The_help_of_every_verb_has_examples_that_parse(string verb)
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(0, program.Run(verb.Length == 0 ? ["--help"] : [verb, "--help"]));
        var examples = program.Output.Split("Examples:")[1].Split('\n').Select(line => line.TrimEnd()).Where(line => line.StartsWith("  Harbour", StringComparison.Ordinal)).ToList();
        Assert.NotEmpty(examples);
        Assert.DoesNotContain("RIG", string.Concat(examples), StringComparison.Ordinal);
        Assert.All(examples.Where(example => example.Contains("--rig ", StringComparison.Ordinal)), example => Assert.Contains("--rig Hoist", example, StringComparison.Ordinal));
        foreach (var example in examples)
            Assert.Empty(CommandTree.Build(new Surroundings("Harbour", [typeof(Hoist)], TextWriter.Null, TextWriter.Null, false, ".")).Parse(example.Trim()["Harbour".Length..].Trim()).Errors);
    }

    [Theory]
    [InlineData("--rig", "Hoist", "check")]
    [InlineData("--out", "x", "bake")]
    [InlineData("--json", "list")]
    public void An_option_before_a_verb_is_told_and_not_lost(params string[] args)
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(2, program.Run(args));
        Assert.Equal($"error: {args[0]} stands before '{args[^1]}', which wouldn't see it. Write it after.", program.Error.Trim());
    }

    [Fact]
    public void Explain_and_skeleton_print_json_when_asked()
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(0, program.Run("explain", "CDY2001", "--json"));
        Assert.Equal("CDY2001", System.Text.Json.JsonDocument.Parse(program.Output).RootElement.GetProperty("id").GetString());
        Assert.Equal(0, program.Run("explain", "--json"));
        Assert.True(System.Text.Json.JsonDocument.Parse(program.Output).RootElement.GetProperty("rules").GetArrayLength() > 30);
        var file = program.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(0, program.Run("skeleton", file, "--out", program["bones.gltf"], "--json"));
        Assert.Equal(program["bones.gltf"], System.Text.Json.JsonDocument.Parse(program.Output).RootElement.GetProperty("file").GetString());
    }

    [Fact]
    public void Names_of_rigs_and_rules_are_completed()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(Untidy));
        Assert.Equal(0, program.Run("[suggest:14]", "check --rig Ho"));
        Assert.Equal("Hoist", program.Output.Trim());
        Assert.Equal(0, program.Run("[suggest:13]", "explain CDY20"));
        Assert.Contains("CDY2001", program.Output, StringComparison.Ordinal);
    }
}
