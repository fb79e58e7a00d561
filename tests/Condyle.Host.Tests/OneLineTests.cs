using Condyle.Runtime;

namespace Condyle.Host.Tests;

/// <summary>What is told stays a line of its own, whatever stands in the names that others gave: a build's log is read line by line.</summary>
public sealed class OneLineTests
{
    private const string Broken = "haul\nerror: away\u001b[2J", Shown = @"haul\nerror: away\u001b[2J";

    [Theory]
    [InlineData(0, "list")]
    [InlineData(0, "bake")]
    [InlineData(0, "bake", "--profile", "game")]
    [InlineData(0, "bake", "--clip", Broken)]
    [InlineData(1, "bake", Broken)]
    public void A_name_with_a_break_of_lines_is_told_on_one(int exitCode, params string[] args)
    {
        using var program = new TestProgram(typeof(Hoist), typeof(FoldedClips), typeof(HarbourProfiles));
        program.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(exitCode, program.Run(args[0] == "list" ? args : [.. args, "--out", program["out"]]));
        AssertOneLine(program.Output + program.Error);
    }

    [Fact]
    public void So_are_files_of_clips_that_are_baked_and_that_fail()
    {
        using var program = new TestProgram(typeof(Hoist));
        program.Write("hoist.gltf", Hoist.Delivered);
        File.Move(ClipFiles.Write(program, "swing", 120, clip: Broken), program[$"clips/{Broken}.glb"]);
        File.WriteAllText(program[$"clips/not {Broken}.glb"], "no file");
        Assert.Equal(1, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Contains("1 baked, 0 up to date, 1 failed", program.Output, StringComparison.Ordinal);
        AssertOneLine(program.Output);
    }

    private static void AssertOneLine(string told)
    {
        Assert.Contains(Shown, told, StringComparison.Ordinal);
        Assert.DoesNotContain("\nerror: away", told, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', told);
    }

    private sealed class FoldedClips : IClipsFor<Hoist>
    {
        public IEnumerable<Clip> Clips() => [new Clip(Broken, seconds: 1).TurnAbout("slew", Axis.Y, (0, 0), (1, 30))];
    }
}
