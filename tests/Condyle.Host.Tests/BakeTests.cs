using System.Text.Json;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Tests;

public sealed class BakeTests
{
    [Fact]
    public void The_main_job_checks_bakes_and_reports_in_plain_lines()
    {
        using var program = Harbour(typeof(Hoist), typeof(Untidy));
        Assert.Equal(0, program.Run("--out", program["out"]));
        Assert.Equal("", program.Error);
        Assert.DoesNotContain('\u001b', program.Output);
        Assert.DoesNotMatch(@"[\u2500-\u259f]", program.Output);
        Assert.Contains("Hoist: no findings", program.Output, StringComparison.Ordinal);
        Assert.Matches(@"at rest, every joint is within \S+ mm and \S+° of the delivered skeleton", program.Output);
        Assert.Contains("range_of_motion: 97 frames at 30/s, 3.2 s", program.Output, StringComparison.Ordinal);
        Assert.Contains("unload: 61 frames at 30/s, 2 s", program.Output, StringComparison.Ordinal);
        Assert.Matches(@"on frames, baked motion is live motion within \S+ mm and \S+°", program.Output);
        Assert.Matches(@"between frames, .* within \S+ mm and \S+° \(most at '\w+', \S+ s, \w+ move [XYZ](; in degrees at .*)?\)", program.Output);
        Assert.Matches(@"wrote .*hoist\.glb, \d+ kB", program.Output);
        Assert.Contains("not baked: it names no delivered file", program.Output, StringComparison.Ordinal);
        Assert.Equal(["hoist.glb", "hoist.gltf"], program.FileNames);
        Assert.Equal(["range_of_motion", "unload"], Clips(program));
    }

    [Fact]
    public void A_terminal_gets_colours_and_no_bar_is_left_behind()
    {
        using var program = Harbour(typeof(Hoist));
        Assert.Equal(0, program.Run(isTerminal: true, "--out", program["out"]));
        Assert.Contains("Hoist: no findings", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Clips_and_frame_rate_can_be_chosen()
    {
        using var program = Harbour(typeof(Hoist));
        Assert.Equal(0, program.Run("bake", "--clip", "unload", "--fps", "60", "--out", program["out"]));
        Assert.Equal(["unload"], Clips(program));
        Assert.Contains("unload: 121 frames at 60/s", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Range_samples_and_keys_can_be_chosen_and_reports_lie_beside_the_file()
    {
        using var program = Harbour(typeof(Hoist));
        Assert.Equal(0, program.Run("bake", "--clip", "unload", "--from", "0.5", "--to", "1.5", "--sub-frames", "2", "--keys", "1/0.5", "--between", "2", "--root-motion", "in-place:jib", "--report", "--out", program["out"]));
        Assert.Contains("unload: 61 frames at 30/s, 1 s", program.Output, StringComparison.Ordinal);
        Assert.Matches(@"\d+ keys instead of \d+", program.Output);
        Assert.Equal(["hoist.glb", "hoist.gltf", "hoist.report.html", "hoist.report.json", "hoist.report.txt"], program.FileNames);
        Assert.Equal("unload", JsonDocument.Parse(File.ReadAllText(program["out/hoist.report.json"])).RootElement[0].GetProperty("clip").GetString());
    }

    [Theory]
    [InlineData("--keys takes millimetres, or millimetres/degrees, not 'few'.", "--keys", "few")]
    [InlineData("--keys takes at least 0.05 mm and 0.005°, not '-1'.", "--keys", "-1")]
    [InlineData("--between takes at least 0.05 mm and 0.005°, not '1/0'.", "--between", "1/0")]
    [InlineData("There is no option '--kyes'. The nearest: '--keys'.", "--kyes", "1")]
    [InlineData("--root-motion takes as-posed, in-place, in-place:JOINT or onto:JOINT, not 'away'.", "--root-motion", "away")]
    [InlineData("can't be baked from 1 to 0.5 s", "--from", "1", "--to", "0.5")]
    [InlineData("there is no joint 'jip' to show the way", "--root-motion", "in-place:jip")]
    public void A_setting_that_cant_be_is_told(string told, params string[] args)
    {
        using var program = Harbour(typeof(Hoist));
        Assert.Equal(2, program.Run(["bake", "--clip", "unload", "--out", program["out"], .. args]));
        Assert.Contains(told, program.Error, StringComparison.Ordinal);
        Assert.Equal(["hoist.gltf"], program.FileNames);
    }

    [Fact]
    public void Json_has_the_report_of_every_clip()
    {
        using var program = Harbour(typeof(Hoist));
        Assert.Equal(0, program.Run("bake", "--json", "--out", program["out"]));
        var bake = JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0].GetProperty("bake");
        Assert.EndsWith("hoist.glb", bake.GetProperty("file").GetString(), StringComparison.Ordinal);
        Assert.Equal(new FileInfo(program["out/hoist.glb"]).Length, bake.GetProperty("bytes").GetInt64());
        var unload = bake.GetProperty("clips")[1];
        Assert.Equal("unload", unload.GetProperty("clip").GetString());
        Assert.True(unload.GetProperty("holds").GetBoolean());
        Assert.InRange(unload.GetProperty("onFrames").GetProperty("metres").GetProperty("value").GetDouble(), 0, 2e-5);
        Assert.Equal(2, unload.GetProperty("joints").GetArrayLength());
    }

    [Fact]
    public void A_rig_with_errors_is_not_baked_but_the_others_are()
    {
        using var program = Harbour(typeof(Hoist), typeof(StiffHoist));
        Assert.Equal(1, program.Run("--out", program["out"]));
        Assert.Contains("CDY3001", program.Output, StringComparison.Ordinal);
        Assert.Equal(["hoist.glb", "hoist.gltf"], program.FileNames);
    }

    [Fact]
    public void Clips_that_cannot_be_made_are_one_line_with_the_place_and_all_others_are_baked()
    {
        using var program = Harbour(typeof(Hoist), typeof(Becalmed), typeof(BecalmedClips), typeof(BecalmedRowing));
        Assert.Equal(1, program.Run("--out", program["out"]));
        Assert.Matches(@"\n  error: 'BecalmedClips' has clips that can't be made, this one and what comes after it: NotSupportedException: there is no wind \(.*Rigs\.cs:\d+\)\s", program.Output);
        Assert.Equal(["becalmed.glb", "hoist.glb", "hoist.gltf"], program.FileNames);
        Assert.Equal(["range_of_motion", "unload", "row"], Clips(program, "becalmed"));

        // Who asks for one that is there needn't care.
        Assert.Equal(0, program.Run("bake", "--rig", "Becalmed", "--clip", "row", "--out", program["out"]));
        Assert.Equal(2, program.Run("bake", "--rig", "Becalmed", "--clip", "drift", "--out", program["out"]));
        Assert.Contains("'drift' is none of the clips that could be made. 'BecalmedClips' has clips that can't be made", program.Error, StringComparison.Ordinal);

        Assert.Equal(1, program.Run("list"));
        Assert.Contains("clips: unload, row\n  error: 'BecalmedClips' has clips", program.Output.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        Assert.Equal(1, program.Run("list", "--json"));
        var becalmed = JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0];
        Assert.Equal("BecalmedClips", becalmed.GetProperty("failedClips")[0].GetProperty("source").GetString());
        Assert.Equal(0, program.Run("controls", "--rig", "Becalmed", "--out", program["out"]));
        Assert.Equal(0, program.Run("check"));
    }

    [Fact]
    public void A_clip_that_cant_be_baked_fails_alone_with_its_name_and_place()
    {
        using var program = Harbour(typeof(Hoist), typeof(Overladen));
        Assert.Equal(1, program.Run("--out", program["out"]));
        Assert.Equal(["range_of_motion", "unload", "turn"], Clips(program));
        var errors = program.Output.ReplaceLineEndings("\n").Split('\n').Where(line => line.StartsWith("  error: ", StringComparison.Ordinal)).ToList();
        Assert.Equal(3, errors.Count);
        Assert.Contains("clip 'heavy': has more than 1000 layers", errors[0], StringComparison.Ordinal);
        Assert.Contains("clip 'astray': 'slow' at 0 s is no control of the rig 'Hoist'. The nearest: 'slew', 'drop' (in Overladen)", errors[1], StringComparison.Ordinal);
        Assert.Contains("two clips are named 'turn'", errors[2], StringComparison.Ordinal);
        Assert.Equal(1, program.Run("bake", "--json", "--out", program["out"]));
        var rig = JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0];
        Assert.False(rig.GetProperty("isGood").GetBoolean());
        Assert.Equal(["heavy", "astray", "turn"], rig.GetProperty("failedClips").EnumerateArray().Select(failed => failed.GetProperty("clip").GetString()));
        Assert.Equal(0, program.Run("bake", "--clip", "unload", "--out", program["out"]));
        Assert.Equal(0, program.Run("controls", "--clip", "unload", "--out", program["out"]));
    }

    [Theory]
    [InlineData()]
    [InlineData("--clip", "unload")]
    [InlineData("--clip", "unload", "reel")]
    [InlineData("--clip", "unload", "--profile", "game")]
    public void It_is_work_that_failed_whether_it_was_asked_for_by_name_or_not(params string[] asked)
    {
        using var program = Harbour(typeof(Mistyped), typeof(MistypedClips), typeof(HarbourProfiles));
        Assert.Equal(1, program.Run(["bake", .. asked, "--out", program["out"]]));
        Assert.Contains("  error: clip 'unload': 'slow' at 0 s is no control of the rig 'Mistyped'. The nearest: 'slew'", program.Output, StringComparison.Ordinal);
        Assert.Empty(program.Error);
        Assert.Equal(!asked.Contains("unload") || asked.Contains("reel"), File.Exists(program["out/mistyped.glb"]));
    }

    /// <summary>A loop that doesn't close shows only when it is sampled.</summary>
    [Fact]
    public void A_clip_that_fails_while_it_is_baked_fails_alone_too()
    {
        using var program = Harbour(typeof(Hoist));
        Assert.Equal(1, program.Run("bake", "--loop", "--out", program["out"]));
        Assert.Matches(@"\n  error: clip 'unload': .*loop.* \(in HoistClips\)\s", program.Output);
        Assert.Equal(["range_of_motion"], Clips(program));
    }

    [Fact]
    public void Reports_of_an_earlier_bake_go_with_it_and_what_others_put_there_stays()
    {
        using var program = Harbour(typeof(Hoist));
        Assert.Equal(0, program.Run("bake", "--report", "--out", program["out"]));
        Assert.Equal(0, program.Run("bake", "--out", program["out"]));
        Assert.Equal(["hoist.glb", "hoist.gltf"], program.FileNames);
        program.Write("out/hoist.report.json", "[ { \"weather\": \"fair\" } ]");
        program.Write("out/hoist.report.txt", "fair");
        Assert.Equal(0, program.Run("bake", "--out", program["out"]));
        Assert.Equal(["hoist.glb", "hoist.gltf", "hoist.report.json", "hoist.report.txt"], program.FileNames);
    }

    [Fact]
    public void One_rig_is_written_to_a_file_that_is_named_and_several_are_not()
    {
        using var program = Harbour(typeof(Hoist), typeof(Mistyped));
        Assert.Equal(0, program.Run("bake", "--rig", "Hoist", "--report", "--out", program["out/crane.gltf"]));
        Assert.Equal(["crane.gltf", "crane.report.html", "crane.report.json", "crane.report.txt", "hoist.gltf"], program.FileNames);
        Assert.Equal(2, program.Run("bake", "--out", program["all.glb"]));
        Assert.Contains("is one file, and there are 2 to write. Name a folder", program.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_without_anything_to_animate_says_so()
    {
        using var program = Harbour(typeof(Bollard));
        Assert.Equal(0, program.Run("--out", program["out"]));
        Assert.Contains("not baked: there is nothing to animate. Give it a control", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_delivered_file_can_be_named_on_the_command_line()
    {
        using var program = new TestProgram(typeof(Hoist));
        var file = program.Write("elsewhere.gltf", Hoist.Delivered);
        Assert.Equal(0, program.Run("bake", "--skeleton", file, "--out", program["out"]));
        Assert.Equal(2, program.Run("bake", "--skeleton", program["nowhere.gltf"], "--out", program["out"]));
        Assert.StartsWith($"error: {program["nowhere.gltf"]}:", program.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_delivered_animation_of_the_same_name_is_replaced_only_when_asked()
    {
        using var program = Harbour(typeof(Hoist));
        program.Run("bake", "--out", program["first"]);
        string[] again = ["bake", "--skeleton", program["first/hoist.glb"], "--out", program["out"]];
        Assert.Equal(2, program.Run(again));
        Assert.Contains("has an animation 'range_of_motion' already", program.Error, StringComparison.Ordinal);
        Assert.Equal(0, program.Run([.. again, "--replace"]));
    }

    public static TheoryData<string, string> BadInputs => new()
    {
        { "no file", "hoist.gltf:" },
        { "malformed", "hoist.gltf:" },
        { "other skeleton", "1 joint of the rig 'Hoist' isn't in the file: 'hook' (nearest: 'hoop')" },
        { "other rest", "'hook' at /nodes/1 rests elsewhere in the file than in the rig: 100 mm apart" },
        { "zero quaternion", "'hook'" },
        { "not a number", "hoist.gltf:" },
        { "no such clip", "--clip: 'unlaod' is no clip of this project. The nearest: 'unload'" },
        { "no such rig", "--rig: 'Hoits' is no rig of this project. The nearest: 'Hoist'" },
        { "frame rate", "can't be baked at 0 frames per second" },
        { "frame rate text", "--fps takes a number of frames per second, not 'many'." },
        { "folder", "out/hoist.glb: it can't be written" },
        { "no file named", "rig 'Untidy': it isn't known which file its skeleton was delivered in" },
        { "unknown option", "'--speed'" },
    };

    [Theory]
    [MemberData(nameof(BadInputs))]
    public void Bad_input_is_one_message_with_exit_code_2_and_nothing_is_written(string what, string told)
    {
        using var program = new TestProgram(what == "no file named" ? [typeof(Untidy)] : [typeof(Hoist), typeof(HoistClips)]);
        if (what != "no file")
        {
            program.Write("hoist.gltf", what switch
            {
                "malformed" => Hoist.Delivered[..100],
                "other skeleton" => Hoist.Delivered.Replace("\"hook\"", "\"hoop\"", StringComparison.Ordinal),
                "other rest" => Hoist.Delivered.Replace("1.5", "1.6", StringComparison.Ordinal),
                "zero quaternion" => Hoist.Delivered.Replace("[0, 0, 1.5]", "[0, 0, 1.5], \"rotation\": [0, 0, 0, 0]", StringComparison.Ordinal),
                "not a number" => Hoist.Delivered.Replace("1.5", "NaN", StringComparison.Ordinal),
                _ => Hoist.Delivered,
            });
        }

        if (what == "folder")
            program.Write("out", "a file where a folder should be");
        var before = program.FileNames;
        Assert.Equal(2, program.Run(["bake", "--out", program["out"], .. what switch
        {
            "no such clip" => ["--clip", "unlaod"],
            "no such rig" => ["--rig", "Hoits"],
            "frame rate" => ["--fps", "0"],
            "frame rate text" => ["--fps", "many"],
            "unknown option" => ["--speed", "3"],
            _ => Array.Empty<string>(),
        }]));
        Assert.StartsWith("error: ", program.Error, StringComparison.Ordinal);
        Assert.Single(program.Error.TrimEnd().Split('\n'));
        Assert.Contains(told, program.Error, StringComparison.Ordinal);
        Assert.Equal("", program.Output);
        Assert.Equal(before, program.FileNames);
    }

    private static TestProgram Harbour(params Type[] rigs)
    {
        var program = new TestProgram([.. rigs, typeof(HoistClips)]);
        program.Write("hoist.gltf", Hoist.Delivered);
        return program;
    }

    private static IEnumerable<string> Clips(TestProgram program, string rig = "hoist") => GltfFile.Read(program[$"out/{rig}.glb"]).Model.LogicalAnimations.Select(clip => clip.Name);
}
