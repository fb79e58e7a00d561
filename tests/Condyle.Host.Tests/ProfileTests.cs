using System.Text.Json;
using Condyle.Runtime;

namespace Condyle.Host.Tests;

public sealed class ProfileTests
{
    [Fact]
    public void A_profile_of_the_project_writes_its_files_and_a_manifest()
    {
        using var program = Harbour(typeof(HarbourProfiles));
        Assert.Equal(0, program.Run("bake", "--profile", "game", "--out", program["out"]));
        Assert.Contains("Hoist for game: 100 units to a metre, Z up, keys left out within 1.0 mm and 0.10°", program.Output, StringComparison.Ordinal);
        Assert.Equal(["hoist.game.far.glb", "hoist.game.json", "hoist.game.near.glb", "hoist.gltf"], program.FileNames);
        Assert.Contains("121 frames at 60/s, on frames within ", program.Output, StringComparison.Ordinal);
        Assert.Equal(
            ["hoist.game.near.glb", "hoist.game.far.glb", "hoist.game.json"],
            program.Output.Split('\n').Where(line => line.StartsWith("  wrote ", StringComparison.Ordinal)).Select(line => Path.GetFileName(line.Split(',')[0])));
        Assert.Equal("far", JsonDocument.Parse(File.ReadAllText(program["out/hoist.game.json"])).RootElement.GetProperty("files")[1].GetProperty("level").GetString());
        Assert.Equal(0, program.Run("bake", "--profile", "game", "--out", program["out"], "--json"));
        Assert.Equal("game", JsonDocument.Parse(program.Output).RootElement.GetProperty("profile").GetString());
    }

    [Theory]
    [InlineData("is no profile of this project. The nearest: 'game'", "--profile", "gane")]
    [InlineData("error: --clip: 'unlode' is no clip of this project. The nearest: 'unload'", "--profile", "game", "--clip", "unlode")]
    [InlineData("--fps is said by the profile.", "--profile", "game", "--fps", "60")]
    [InlineData("--report is for bakes without a profile.", "--profile", "game", "--report")]
    [InlineData("--replace is for bakes without a profile.", "x.glb", "--profile", "game", "--replace")]
    [InlineData("--out: 'all.glb' is one file, and files are written by names of their own. Name a folder", "--profile", "game", "--out", "all.glb")]
    [InlineData("--out: 'all.glb' is one file", "x.glb", "--profile", "game", "--out", "all.glb")]
    public void What_doesnt_go_with_a_profile_is_told(string told, params string[] args)
    {
        using var program = Harbour(typeof(HarbourProfiles));
        Assert.Equal(2, program.Run(["bake", .. args]));
        Assert.Contains(told, program.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Files_of_clips_become_what_the_profile_writes_each_by_its_name_and_one_fails_alone()
    {
        using var program = Harbour(typeof(HarbourProfiles));
        ClipFiles.Write(program, "swing", 40);
        ClipFiles.Write(program, "turn", 20);
        File.WriteAllText(program["clips/broken.glb"], "no file");
        Assert.Equal(1, program.Run("bake", "--profile", "game", program["clips"], "--out", program["out"]));
        var lines = program.Output.TrimEnd().Split('\n');
        Assert.Contains(lines, line => line.Contains("swing.glb: baked, swing 61 frames", StringComparison.Ordinal));
        Assert.StartsWith("2 baked, 0 up to date, 1 failed", lines[^3], StringComparison.Ordinal);
        Assert.Contains("the level 'far' leaves out 'jip_*', which is no joint of this skeleton", lines[^2], StringComparison.Ordinal);
        Assert.Contains("broken.glb: ", lines[^1], StringComparison.Ordinal);
        Assert.Equal(["swing.game.bake.json", "swing.game.far.glb", "swing.game.json", "swing.game.near.glb", "turn.game.bake.json", "turn.game.far.glb", "turn.game.json", "turn.game.near.glb"], program.FileNames.Where(name => name.Contains(".game.", StringComparison.Ordinal)));
        Assert.Equal(["swing"], Runtime.Gltf.GltfFile.Read(program["out/swing.game.near.glb"]).Model.LogicalAnimations.Select(clip => clip.Name));

        Assert.Equal(0, program.Run("bake", "--profile", "game", program["clips/swing.glb"], "--out", program["out"], "--json"));
        var result = JsonDocument.Parse(program.Output).RootElement;
        Assert.Equal("game", result.GetProperty("profile").GetString());
        Assert.Single(result.GetProperty("notes").EnumerateArray());
        Assert.Equal("swing", result.GetProperty("files")[0].GetProperty("clips")[0].GetProperty("clip").GetString());
        Assert.Equal("upToDate", result.GetProperty("files")[0].GetProperty("state").GetString());
    }

    /// <summary>One batch, whatever becomes of the files: jobs, shares, limits that are passed, nodes that are left out, what was done before.</summary>
    [Fact]
    public void A_batch_for_an_engine_does_what_any_batch_does()
    {
        using var program = Harbour(typeof(HarbourProfiles));
        ClipFiles.Write(program, "swing", 120);
        ClipFiles.Write(program, "older", 20, luffs: true);
        for (var share = 0; share < 2; share++)
        {
            Assert.Equal(0, program.Run("bake", "--profile", "game", program["clips"], "--out", program["out"], "--jobs", "2", "--shard", $"{share}/2"));
            Assert.Contains($"(share {share}/2: ", program.Output, StringComparison.Ordinal);
        }

        var before = File.ReadAllBytes(program["out/swing.game.json"]);
        Assert.Equal(0, program.Run("bake", "--profile", "game", program["clips"], "--out", program["out"]));
        Assert.Contains("0 baked, 2 up to date, 0 failed", program.Output, StringComparison.Ordinal);
        Assert.Contains("swing.glb: 'swing' at 0.77 s: 'slew' turns 92° about Y", program.Output, StringComparison.Ordinal);
        Assert.Contains("older.glb: the rig has no 'luff', so what moves there is left out.", program.Output, StringComparison.Ordinal);
        File.AppendAllText(program["out/swing.game.far.glb"], "x");
        Assert.Equal(0, program.Run("bake", "--profile", "game", program["clips"], "--out", program["out"]));
        Assert.Contains("1 baked, 1 up to date, 0 failed", program.Output, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(program["out/swing.game.json"]));
        Assert.Equal(0, program.Run("bake", "--profile", "cinema", program["clips"], "--out", program["out"]));
        Assert.Contains("2 baked, 0 up to date, 0 failed", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bake_of_the_projects_clips_is_no_batch_and_ends_what_one_told_of_its_files()
    {
        using var program = Harbour(typeof(HarbourProfiles));
        ClipFiles.Write(program, "hoist", 40);
        Assert.Equal(0, program.Run("bake", "--profile", "game", program["clips"], "--out", program["out"]));
        Assert.True(File.Exists(program["out/hoist.game.bake.json"]));
        Assert.Equal(0, program.Run("bake", "--profile", "game", "--out", program["out"]));
        Assert.Equal(["hoist.game.far.glb", "hoist.game.json", "hoist.game.near.glb"], Directory.GetFiles(program["out"]).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    /// <summary>It is nothing that a clip could do better.</summary>
    [Theory]
    [InlineData("still", "can't be baked at 0 frames per second. Give a frame rate from 1 to 1000")]
    [InlineData("crumbled", "can't be baked with 65 samples of a frame. Give a number from 1 to 64")]
    [InlineData("backwards", "can't be baked from 2 to 1 s. Give a range that begins at 0 or later and ends after that")]
    [InlineData("endless", "can't be baked from NaN s on. Give a range")]
    [InlineData("exact", "can't be baked with keys within 0 mm and 0.1°. Give at least 0.05 mm and 0.005°")]
    public void What_no_clip_can_be_baked_with_is_told_once(string profile, string told)
    {
        using var program = Harbour(typeof(WrongProfiles));
        ClipFiles.Write(program, "swing", 40);
        foreach (var files in new string[][] { [], [program["clips"]] })
        {
            Assert.Equal(2, program.Run(["bake", "--profile", profile, .. files, "--out", program["out"]]));
            Assert.StartsWith($"error: profile '{profile}': {told}", program.Error, StringComparison.Ordinal);
            Assert.Empty(program.Output);
        }
    }

    [Theory]
    [InlineData("--profile", "lost")]
    [InlineData("--root-motion", "onto:jip")]
    public void A_joint_that_no_file_could_bring_is_told_once(params string[] args)
    {
        using var program = Harbour(typeof(WrongProfiles));
        ClipFiles.Write(program, "swing", 40);
        foreach (var files in new string[][] { [], [program["clips"]] })
        {
            Assert.Equal(2, program.Run(["bake", "--rig", "Hoist", .. args, .. files, "--out", program["out"]]));
            Assert.Contains("there is no joint 'jip' to show the way", program.Error, StringComparison.Ordinal);
            Assert.Empty(program.Output);
        }
    }

    [Fact]
    public void What_a_later_rig_lacks_is_told_before_anything_is_written()
    {
        using var program = Harbour(typeof(Trolley), typeof(TrolleyClips), typeof(WrongProfiles));
        program.Write("trolley.gltf", Hoist.Delivered.Replace("jib", "axle", StringComparison.Ordinal).Replace("hook", "wheel", StringComparison.Ordinal));
        Assert.Equal(2, program.Run("bake", "--profile", "hooked", "--out", program["out"]));
        Assert.Contains("there is no joint 'hook' to show the way", program.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(program["out"]) && Directory.EnumerateFiles(program["out"]).Any());
        Assert.Equal(0, program.Run("bake", "--profile", "hooked", "--rig", "Hoist", "--out", program["out"]));
    }

    [Fact]
    public void Files_beside_the_clips_are_no_clash_and_no_clips()
    {
        using var program = Harbour(typeof(HarbourProfiles));
        ClipFiles.Write(program, "swing", 40);
        Assert.Equal(0, program.Run("bake", "--profile", "game", program["clips"], "--out", program["clips"]));
        Assert.Equal(0, program.Run("bake", "--profile", "game", program["clips"], "--out", program["clips"]));
        Assert.Contains("0 baked, 1 up to date, 0 failed", program.Output, StringComparison.Ordinal);
        Assert.Equal(0, program.Run("bake", "--profile", "cinema", program["clips"], "--out", program["clips"]));
        Assert.Contains("1 baked, 0 up to date, 0 failed", program.Output, StringComparison.Ordinal);
        File.Move(program["clips/swing.glb"], program["clips/swing.cinema.glb"], overwrite: true);
        Assert.Equal(0, program.Run("bake", "--profile", "cinema", program["clips"], "--out", program["clips"]));
        Assert.True(File.Exists(program["clips/swing.cinema.cinema.glb"]));
    }

    [Fact]
    public void A_clip_that_cant_be_baked_fails_alone()
    {
        using var program = new TestProgram(typeof(Mistyped), typeof(MistypedClips), typeof(HarbourProfiles));
        program.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(1, program.Run("bake", "--profile", "game", "--out", program["out"]));
        Assert.Contains("  error: clip 'unload': 'slow' at 0 s is no control of the rig 'Mistyped'", program.Output, StringComparison.Ordinal);
        Assert.Equal(["reel"], Runtime.Gltf.GltfFile.Read(program["out/mistyped.game.near.glb"]).Model.LogicalAnimations.Select(clip => clip.Name));
        Assert.Equal(1, program.Run("bake", "--profile", "game", "--out", program["out"], "--json"));
        Assert.Equal("unload", JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0].GetProperty("failedClips")[0].GetProperty("clip").GetString());
    }

    [Fact]
    public void A_rig_without_clips_of_the_project_is_told()
    {
        using var program = new TestProgram(typeof(Hoist), typeof(HarbourProfiles));
        program.Write("hoist.gltf", Hoist.Delivered);
        Assert.Equal(0, program.Run("bake", "--profile", "game", "--out", program["out"]));
        Assert.Equal("Hoist: not baked, the project has no clips for it", program.Output.Trim());
        Assert.Equal(["hoist.gltf"], program.FileNames);
    }

    [Fact]
    public void A_rig_that_cant_be_baked_is_told_as_json_too()
    {
        using var program = new TestProgram(typeof(Knot), typeof(HarbourProfiles));
        Assert.Equal(1, program.Run("bake", "--profile", "game", "--out", program["out"], "--json"));
        Assert.False(JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0].GetProperty("isGood").GetBoolean());
    }

    [Fact]
    public void A_project_without_profiles_says_what_to_add()
    {
        using var program = Harbour();
        Assert.Equal(2, program.Run("bake", "--profile", "game"));
        Assert.Contains("Add a public class that implements IEngineProfiles", program.Error, StringComparison.Ordinal);
    }

    private static TestProgram Harbour(params Type[] more)
    {
        var program = new TestProgram([typeof(Hoist), typeof(HoistClips), .. more]);
        program.Write("hoist.gltf", Hoist.Delivered);
        return program;
    }
}

public sealed class HarbourProfiles : IEngineProfiles
{
    public IEnumerable<EngineProfile> Profiles() =>
    [
        new("game")
        {
            UnitsPerMetre = 100,
            Up = Axis.Z,
            Bake = new() { FramesPerSecond = 60, Keys = new(0.001, 0.1) },
            Levels = [new("near"), new("far") { LeavesOut = ["hook", "jip_*"] }],
        },
        new("cinema") { Additive = AdditiveReference.Rest },
    ];
}

public sealed class WrongProfiles : IEngineProfiles
{
    public IEnumerable<EngineProfile> Profiles() =>
    [
        new("still") { Bake = new() { FramesPerSecond = 0 } },
        new("crumbled") { Bake = new() { SubFrames = 65 } },
        new("backwards") { Bake = new() { From = 2, To = 1 } },
        new("endless") { Bake = new() { From = float.NaN } },
        new("exact") { Bake = new() { Keys = new(0, 0.1) } },
        new("hooked") { Bake = new() { RootMotion = RootMotion.OntoRoot("hook") } },
        new("lost") { Bake = new() { RootMotion = RootMotion.OntoRoot("jip") } },
    ];
}

/// <summary>Another rig of the harbour, with other joints.</summary>
[SkeletonFile("trolley.gltf")]
public sealed class Trolley : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var axle = rig.Skeleton("trolley").Root("axle", at: new(0, 2, 0));
        rig.Drive(axle.Child("wheel", at: new(0, 0, 1.5f))).ByChannels(rig.Control("roll").PlacedAt(axle));
        rig.Drive(axle).ByChannels(rig.Control("push").PlacedAt(axle));
    }
}

public sealed class TrolleyClips : IClipsFor<Trolley>
{
    public IEnumerable<Clip> Clips() => [new Clip("push", seconds: 1).MoveAlong("push", Axis.Z, (0, 0), (1, 1))];
}
