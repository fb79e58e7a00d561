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
    public void Explain_lists_the_rules()
    {
        using var program = new TestProgram();
        Assert.Equal(0, program.Run("explain"));
        Assert.Matches(@"CDY1001 +\w+ +\w+", program.Output);
    }

    [Fact]
    public void Explain_says_which_rules_there_are_when_one_is_unknown()
    {
        using var program = new TestProgram();
        Assert.Equal(2, program.Run("explain", "CDY0000"));
        Assert.Contains("'CDY0000' there is no such rule. The rules: CDY1001, CDY1002", program.Error, StringComparison.Ordinal);
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

        using var stiff = new TestProgram(typeof(StiffHoist));
        stiff.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(1, stiff.Run("controls", "--out", stiff.Path));
        Assert.Contains("StiffHoist: not written, it has findings that are errors", stiff.Error, StringComparison.Ordinal);
    }

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
        Assert.All(new[] { "check", "bake", "explain", "skeleton", "controls" }, verb => Assert.Contains(verb, program.Output, StringComparison.Ordinal));
    }

    [Fact]
    public void A_verb_that_isnt_there_is_told()
    {
        using var program = new TestProgram(typeof(Hoist));
        Assert.Equal(2, program.Run("bakk"));
        Assert.Contains("bakk", program.Error, StringComparison.Ordinal);
        Assert.Contains("--help", program.Error, StringComparison.Ordinal);
    }
}
