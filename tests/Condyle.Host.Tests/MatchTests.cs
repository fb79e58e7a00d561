using System.Text.Json;
using Condyle.Runtime;

namespace Condyle.Host.Tests;

/// <summary>Motion that is put onto the controls of a rig from the command line.</summary>
public sealed class MatchTests
{
    private const string TurningLoad = "HIERARCHY\nROOT arm\n{\nOFFSET 0 200 0\nCHANNELS 3 Zrotation Xrotation Yrotation\nJOINT load\n{\nOFFSET 0 0 150\nCHANNELS 3 Zrotation Xrotation Yrotation\n}\n}\nMOTION\nFrames: 2\nFrame Time: 0.5\n0 0 0 0 0 0\n0 0 50 0 40 0\n";

    private static readonly string[] Mapped = ["--joint", "arm=jib", "load=hook"];

    [Fact]
    public void It_says_which_dials_the_motion_needs_and_takes_what_it_asks_for()
    {
        using var program = new TestProgram(typeof(Winch));
        program.Write("hoist.gltf", Hoist.Delivered);
        program.Write("turn.bvh", TurningLoad);
        Assert.Equal(0, program.Run(["match", program["turn.bvh"], .. Mapped, "--out", program.Path]));
        Assert.Matches("'hook' within .*40°, at 0\\.5 s", program.Output); // it is off in degrees alone, and most at the end
        Assert.Contains("'slew.crank' stays at its default, 0°, and 40° would bring 'hook' nearest at 0.5 s: a match turns no dials by itself. Set it by --dial slew.crank=40", program.Output, StringComparison.Ordinal);
        Assert.Equal(0, program.Run(["match", program["turn.bvh"], .. Mapped, "--out", program.Path, "--json"]));
        var needed = Assert.Single(JsonDocument.Parse(program.Output).RootElement.GetProperty("neededDials").EnumerateArray());
        Assert.Equal("slew.crank", needed.GetProperty("dial").GetString());
        Assert.Equal(40, needed.GetProperty("value").GetDouble(), 0.01);

        // All along it is right at the end alone, and by two keys all the way.
        Assert.Equal(0, program.Run(["match", program["turn.bvh"], .. Mapped, "--out", program.Path, "--dial", "slew.crank=40"]));
        Assert.DoesNotContain("stays at its default", program.Output, StringComparison.Ordinal);
        Assert.Matches("'hook' within .*40°, at 0 s", program.Output);
        Assert.Equal(0, program.Run(["match", program["turn.bvh"], .. Mapped, "--out", program.Path, "--dial", "slew.crank=0", "--dial", "slew.crank=40@0.5"]));
        Assert.DoesNotContain("stays at its default", program.Output, StringComparison.Ordinal);
        Assert.Matches("^Winch: turn, 0\\.5 s, within 0[^ ]* mm and 0[^ ]*° of the motion", program.Output);
        var written = ClipFile.Read(program["winch_turn_controls.glb"], RigCompiler.Compile(Rig.Build(new Winch()))).Clips.Single();
        Assert.Equal([0f, 40f], new[] { 0, 0.5f }.Select(written.Dials["slew.crank"].At));
    }

    [Theory]
    [InlineData("'slew.crank' doesn't say what a dial is set to. Write NAME=VALUE, or NAME=VALUE@SECONDS for a key at a time.", "slew.crank")]
    [InlineData("'slew.crank=1@soon' doesn't say what a dial is set to. Write NAME=VALUE, or NAME=VALUE@SECONDS for a key at a time.", "slew.crank=1@soon")]
    [InlineData("'slew.krank' is no dial of the rig 'Winch'. The nearest: 'slew.crank'.", "slew.krank=1")]
    [InlineData("'slew.crank' can't be set to 721. It goes from -720° to 720°.", "slew.crank=721")]
    [InlineData("'slew.crank' can't be set to NaN. It goes from -720° to 720°.", "slew.crank=NaN")]
    [InlineData("'slew.crank' is set by a number of degrees, not '2m'. It goes from -720° to 720°.", "slew.crank=2m")]
    [InlineData("'slew.crank=1@9' comes after the motion, which ends at 0.5 s. Give a time within it.", "slew.crank=1@9")]
    public void A_dial_that_cant_be_set_is_told(string told, string dial)
    {
        using var program = new TestProgram(typeof(Winch));
        program.Write("hoist.gltf", Hoist.Delivered);
        program.Write("turn.bvh", TurningLoad);
        Assert.Equal(2, program.Run(["match", program["turn.bvh"], .. Mapped, "--dial", dial]));
        Assert.Equal($"error: --dial: {told}", program.Error.Trim());
    }

    [Fact]
    public void A_dial_of_a_rig_without_dials_and_one_that_is_set_twice_are_told()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(Winch), typeof(Lever));
        program.Write("hoist.gltf", Hoist.Delivered);
        program.Write("turn.bvh", TurningLoad);
        Assert.Equal(2, program.Run(["match", program["turn.bvh"], "--rig", "Hoist", .. Mapped, "--dial", "slew.crank=1"]));
        Assert.Equal("error: --dial: 'slew.crank' is no dial of the rig 'Hoist'. The rig has no dial at all.", program.Error.Trim());
        Assert.Equal(2, program.Run(["match", program["turn.bvh"], "--rig", "Lever", .. Mapped, "--dial", "slew.fk=1"]));
        Assert.Equal("error: --dial: 'slew.fk' is no dial of the rig 'Lever'. It is a switch, and --limbs says which way those of limbs go.", program.Error.Trim());
        Assert.Equal(2, program.Run(["match", program["turn.bvh"], "--rig", "Winch", .. Mapped, "--dial", "slew.crank=1", "slew.crank=2"]));
        Assert.Contains("clip '--dial': 'slew.crank' at 0 s has two keys at the same time. Keep one of them.", program.Error, StringComparison.Ordinal);
    }

    /// <summary>What is within nothing of the motion may be one joint of many.</summary>
    [Fact]
    public void It_says_how_many_of_the_rigs_joints_the_motion_has()
    {
        using var program = new TestProgram(typeof(Hoist));
        program.Write("hoist.gltf", Hoist.Delivered);
        program.Write("turn.bvh", TurningLoad);
        Assert.Equal(0, program.Run("match", program["turn.bvh"], "--joint", "arm=jib", "--out", program.Path));
        Assert.Matches("^Hoist: turn, 0\\.5 s, within [^,]* of the motion, which has 1 of the rig's 2 joints\r?\n", program.Output);
        Assert.Equal(0, program.Run(["match", program["turn.bvh"], .. Mapped, "--out", program.Path]));
        Assert.DoesNotContain("which has", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_several_animations_is_told_with_the_option_that_says_which()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(HoistClips));
        program.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(0, program.Run("bake", "--out", program["baked.glb"]));
        Assert.Equal(2, program.Run("match", program["baked.glb"]));
        Assert.Equal($"error: {program["baked.glb"]}: it has 2 animations. Say which, in the program by --animation: 'range_of_motion', 'unload'.", program.Error.Trim());
        Assert.Equal(2, program.Run("match", program["baked.glb"], "--animation", "unlod"));
        Assert.Contains("it has no animation 'unlod'. Say which, in the program by --animation: 'range_of_motion', 'unload'.", program.Error, StringComparison.Ordinal);
    }

    /// <summary>An actor's walk goes onto a rig with limbs, and onto joints that it has; where there is none, the help doesn't say so.</summary>
    [Fact]
    public void The_example_of_its_help_is_for_a_rig_that_an_actor_can_move()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(Leak), typeof(Rigger));
        Assert.Equal(0, program.Run("match", "--help"));
        Assert.Contains("Harbour match walk.bvh --rig Rigger --joint hips=pelvis leftUpperArm=shoulder_left", program.Output, StringComparison.Ordinal);
        Assert.Contains("--dial <NAME=VALUE[@SECONDS]>", program.Output, StringComparison.Ordinal);
        using var without = new TestProgram(typeof(Hoist), typeof(Leak));
        Assert.Equal(0, without.Run("match", "--help"));
        Assert.DoesNotContain("walk.bvh", without.Output, StringComparison.Ordinal);
        Assert.Contains("Harbour match old.glb --rig Hoist", without.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void It_puts_motion_onto_the_controls_and_bake_takes_the_result()
    {
        using var program = new TestProgram(typeof(Hoist));
        program.Write("hoist.gltf", Hoist.Delivered);
        program.Write("turn.bvh", "HIERARCHY\nROOT arm\n{\nOFFSET 0 200 0\nCHANNELS 3 Zrotation Xrotation Yrotation\nJOINT load\n{\nOFFSET 0 0 150\nCHANNELS 3 Zrotation Xrotation Yrotation\n}\n}\nMOTION\nFrames: 2\nFrame Time: 0.5\n0 0 0 0 0 0\n0 0 50 0 0 0\n");
        Assert.Equal(0, program.Run("match", program["turn.bvh"], "--joint", "arm=jib", "load=hook", "--out", program.Path, "--fps", "30"));
        Assert.StartsWith("Hoist: turn, 0.5 s, within 0", program.Output, StringComparison.Ordinal);
        Assert.Contains($"wrote {program["hoist_turn_controls.glb"]}", program.Output, StringComparison.Ordinal);
        Assert.Equal(0, program.Run("bake", program["hoist_turn_controls.glb"], "--out", program["build"]));
        Assert.DoesNotContain("stays at its default", program.Output, StringComparison.Ordinal);
        Assert.Equal(0, program.Run("match", program["turn.bvh"], "--joint", "arm=jib", "load=hook", "--out", program["matched.glb"]));
        Assert.Contains($"wrote {program["matched.glb"]}", program.Output, StringComparison.Ordinal);

        // Each animation of a file becomes a file: it is called after the motion.
        Assert.Equal(0, program.Run("match", program["build/hoist_turn_controls.glb"], "--animation", "turn", "--out", program["again"]));
        Assert.Contains($"wrote {program["again/hoist_turn_controls.glb"]}", program.Output, StringComparison.Ordinal);

        Assert.Equal(2, program.Run("match", program["turn.bvh"], "--joint", "arm"));
        Assert.Contains("--joint: 'arm' doesn't say which joint is which. Write FROM=TO", program.Error, StringComparison.Ordinal);
        foreach (var wrong in new[] { "hand.space", "hand.space=chest@soon", "hand.space=@1", "hand.space=base@1,5" })
        {
            Assert.Equal(2, program.Run("match", program["turn.bvh"], "--joint", "arm=jib", "load=hook", "--choice", wrong));
            Assert.Contains($"--choice: '{wrong}' doesn't say which option a choice has. Write NAME=OPTION", program.Error, StringComparison.Ordinal);
        }

        Assert.Equal(2, program.Run("match", program["turn.bvh"], "--joint", "arm=jib", "load=hook", "--choice", "hand.space=base@9"));
        Assert.Contains("'hand.space=base@9' comes after the motion, which ends at 0.5 s. Give a time within it.", program.Error, StringComparison.Ordinal);
        Assert.Equal(2, program.Run("match", program["turn.bvh"], "--joint", "arm=jib", "load=hook", "--choice", "hand.space=chest"));
        Assert.Contains("hand.space", program.Error, StringComparison.Ordinal);
        Assert.Equal(2, program.Run("match", program["turn.bvh"], "--out", program.Path));
        Assert.Contains("has no joint of the rig 'Hoist'. Say by a JointMap, or by --joint, which is which.", program.Error, StringComparison.Ordinal);
    }
}
