using System.Text.Json;
using Condyle.Host.Batch;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Writing;
using CsCheck;

namespace Condyle.Host.Tests;

public sealed class BatchTests
{
    [Fact]
    public void Each_file_of_clips_becomes_a_file_with_its_bake_and_a_manifest()
    {
        using var program = Harbour("wave", "haul", "turn");
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"], "--jobs", "2"));
        Assert.Contains("3 baked, 0 up to date, 0 failed", program.Output, StringComparison.Ordinal);
        Assert.Equal(["[1/3]", "[2/3]", "[3/3]"], program.Output.Split('\n').Take(3).Select(line => line.Split(' ')[0]));
        foreach (var name in new[] { "wave", "haul", "turn" })
        {
            var model = GltfFile.Read(program[$"build/{name}.glb"]).Model;
            Assert.Equal([name], model.LogicalAnimations.Select(clip => clip.Name));
            var manifest = JsonDocument.Parse(File.ReadAllText(program[$"build/{name}.bake.json"])).RootElement;
            Assert.Equal($"{name}.glb", manifest.GetProperty("input").GetString());
            Assert.Equal(FileHash.Of(program[$"build/{name}.glb"]), manifest.GetProperty("files")[0].GetProperty("sha256").GetString());
        }
    }

    [Fact]
    public void What_passes_a_limit_is_baked_and_told()
    {
        using var program = Harbour("wave");
        ClipFiles.Write(program, "swing", 120);
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Contains("2 baked", program.Output, StringComparison.Ordinal);
        Assert.Contains("swing.glb: 'swing' at 0.77 s: 'slew' turns 92° about Y, and its limits are -90° and 90°.", program.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("'wave' at", program.Output, StringComparison.Ordinal);
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Contains("'slew' turns 92° about Y", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_node_that_the_rig_has_not_is_told_and_the_rest_is_baked()
    {
        using var program = Harbour("wave");
        ClipFiles.Write(program, "older", 20, luffs: true);
        for (var run = 0; run < 2; run++)
        {
            Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
            Assert.Contains("older.glb: the rig has no 'luff', so what moves there is left out.", program.Output, StringComparison.Ordinal);
            Assert.DoesNotContain("wave.glb: the rig has no", program.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_pattern_names_its_files_and_no_others()
    {
        using var program = Harbour("wave_left", "wave_right", "haul");
        Assert.Equal(0, program.Run("bake", program["clips/wave*.glb"], "--out", program["build"]));
        Assert.Contains("2 baked", program.Output, StringComparison.Ordinal);
        Assert.False(File.Exists(program["build/haul.glb"]));
    }

    [Fact]
    public void What_was_baked_is_left_as_it_is_until_something_of_it_changes()
    {
        using var program = Harbour("wave", "haul");
        string Bake(params string[] more)
        {
            Assert.Equal(0, program.Run(["bake", program["clips"], "--out", program["build"], .. more]));
            return program.Output.TrimEnd().Split('\n')[^1].TrimEnd();
        }

        Assert.StartsWith("2 baked", Bake(), StringComparison.Ordinal);
        var before = File.GetLastWriteTimeUtc(program["build/wave.glb"]);
        Assert.Equal("0 baked, 2 up to date, 0 failed", Bake());
        Assert.Equal(before, File.GetLastWriteTimeUtc(program["build/wave.glb"]));
        Assert.StartsWith("2 baked", Bake("--fps", "60"), StringComparison.Ordinal);
        ClipFiles.Write(program, "wave", 50);
        Assert.StartsWith("1 baked, 1 up to date", Bake("--fps", "60"), StringComparison.Ordinal);
        File.AppendAllText(program["build/haul.glb"], "x");
        Assert.StartsWith("1 baked, 1 up to date", Bake("--fps", "60"), StringComparison.Ordinal);
        File.WriteAllText(program["build/haul.bake.json"], "{ \"work\": 3");
        Assert.StartsWith("1 baked, 1 up to date", Bake("--fps", "60"), StringComparison.Ordinal);
        program.Write("hoist.gltf", Hoist.Delivered.Replace("\"scene\": 0,", "\"scene\": 0, \"extras\": { \"week\": 30 },", StringComparison.Ordinal));
        Assert.StartsWith("2 baked", Bake("--fps", "60"), StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_work_leaves_the_same_bytes_however_many_are_baked_at_a_time()
    {
        using var program = Harbour("wave", "haul", "turn", "lower");
        program.Run("bake", program["clips"], "--out", program["one"], "--jobs", "1", "--report");
        program.Run("bake", program["clips"], "--out", program["many"], "--jobs", "4", "--report");
        var files = Directory.GetFiles(program["one"]).Select(Path.GetFileName).Order().ToList();
        Assert.Equal(4 * 5, files.Count);
        Assert.Equal(files, Directory.GetFiles(program["many"]).Select(Path.GetFileName).Order());
        Assert.All(files, file => Assert.Equal(File.ReadAllBytes(program[$"one/{file}"]), File.ReadAllBytes(program[$"many/{file}"])));
    }

    [Fact]
    public void A_file_that_fails_fails_alone_and_is_listed_at_the_end_with_its_reason()
    {
        using var program = Harbour("wave", "haul");
        ClipFiles.Write(program, "turn", 60);
        File.WriteAllText(program["clips/broken.glb"], "glTF, or so it says");
        Assert.Equal(1, program.Run("bake", program["clips"], program["clips/nowhere.glb"], "--out", program["build"]));
        var lines = program.Output.TrimEnd().Split('\n').Select(line => line.TrimEnd()).ToList();
        Assert.Equal("3 baked, 0 up to date, 2 failed", lines[^3]);
        Assert.StartsWith($"  {program["clips/broken.glb"]}: ", lines[^2], StringComparison.Ordinal);
        Assert.Equal($"  {program["clips/nowhere.glb"]}: the file isn't there. Check the path.", lines[^1]);
        Assert.True(File.Exists(program["build/wave.glb"]));
        Assert.False(File.Exists(program["build/broken.glb"]));

        // What failed is tried again.
        ClipFiles.Write(program, "broken", 20);
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Contains("1 baked, 3 up to date", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_killed_program_left_is_cleared_away_and_the_work_is_done_again()
    {
        using var program = Harbour("wave");
        Directory.CreateDirectory(program["build"]);
        program.Write($"build/.wave.glb.{Guid.NewGuid():N}.tmp", "half");
        program.Write($"build/.wave.bake.json.{Guid.NewGuid():N}.tmp", "half");
        program.Write($"build/.wave.left.glb.{Guid.NewGuid():N}.tmp", "somebody else's");
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Equal(["wave.bake.json", "wave.glb"], Directory.GetFiles(program["build"]).Select(file => Path.GetFileName(file)!).Where(file => !file.StartsWith(".wave.left", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Single(Directory.GetFiles(program["build"], ".wave.left*"));
    }

    [Fact]
    public void What_another_program_is_writing_is_left_to_it()
    {
        using var program = Harbour("wave");
        string? seen = null;
        AtomicFile.Write(program["build/wave.glb"], _ =>
        {
            AtomicFile.DiscardLeftOvers(program["build"], ["wave.glb"]);
            seen = Assert.Single(Directory.GetFiles(program["build"], ".wave.glb.*"));
        });
        Assert.NotNull(seen);
        Assert.Equal(["wave.glb"], Directory.GetFiles(program["build"]).Select(Path.GetFileName));
    }

    [Theory]
    [InlineData("\"files\": [", "\"files\": [ null,")]
    [InlineData("\"clips\": [", "\"clips\": [ null,")]
    [InlineData("\"name\": \"wave.glb\"", "\"name\": \"wave\\u0000.glb\"")]
    [InlineData("\"name\": \"wave.glb\"", "\"name\": \"\"")]
    public void A_damaged_manifest_tells_nothing_and_the_work_is_done_again(string good, string bad)
    {
        using var program = Harbour("wave");
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        var whole = File.ReadAllText(program["build/wave.bake.json"]);
        Assert.Contains(good, whole, StringComparison.Ordinal);
        File.WriteAllText(program["build/wave.bake.json"], whole.Replace(good, bad, StringComparison.Ordinal));
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Contains("1 baked", program.Output, StringComparison.Ordinal);
        Assert.Equal(whole, File.ReadAllText(program["build/wave.bake.json"]));
    }

    [Fact]
    public void Names_that_are_empty_are_told()
    {
        using var program = Harbour("wave");
        Assert.Equal(2, program.Run("bake", "", "--out", program["build"]));
        Assert.Contains("<clips> is given nothing.", program.Error, StringComparison.Ordinal);
        Assert.Equal(2, program.Run("bake", program["clips"], "--out", ""));
        Assert.Contains("--out is given nothing.", program.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_input_is_in_exactly_one_share_whatever_the_order() => Gen.Select(Gen.String[Gen.Char.AlphaNumeric, 1, 12].Array[1, 60], Gen.Int[1, 12]).Sample((names, count) =>
        names.All(name => Enumerable.Range(0, count).Count(index => new Shard(index, count).Holds(name)) == 1));

    [Fact]
    public void Shares_are_about_as_large_and_stay_the_same()
    {
        var names = Enumerable.Range(0, 1000).Select(clip => $"clip_{clip}").ToList();
        Assert.All(Enumerable.Range(0, 8), index => Assert.InRange(names.Count(new Shard(index, 8).Holds), 90, 160));
        Assert.Equal([3, 3, 2], new[] { "wave", "haul", "carry" }.Select(name => Enumerable.Range(0, 4).Single(index => new Shard(index, 4).Holds(name))));
    }

    [Fact]
    public void Shares_on_several_machines_make_the_whole_batch()
    {
        string[] names = ["wave", "haul", "turn", "lower", "greet", "carry"];
        using var program = Harbour(names);
        program.Variables[Shard.CompletionIndex] = "2";
        for (var share = 0; share < 2; share++)
            Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"], "--shard", $"{share}/3"));
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"], "--shard", "/3"));
        Assert.Matches(@"\(share 2/3: \d of 6 files\)", program.Output);
        Assert.Equal(names.Order(StringComparer.Ordinal), Directory.GetFiles(program["build"], "*.glb").Select(file => Path.GetFileNameWithoutExtension(file)).Order(StringComparer.Ordinal));
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Contains("0 baked, 6 up to date", program.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_that_cant_be_baked_is_told_as_json_too()
    {
        using var program = new TestProgram(typeof(Knot));
        ClipFiles.Write(program, "wave", 30);
        Assert.Equal(1, program.Run("bake", program["clips"], "--out", program["build"], "--json"));
        Assert.False(JsonDocument.Parse(program.Output).RootElement.GetProperty("rigs")[0].GetProperty("isGood").GetBoolean());
    }

    [Theory]
    [InlineData("--shard", "3/3", "'3/3' is no share of a batch. Write which one, counted from 0")]
    [InlineData("--shard", "1", "'1' is no share")]
    [InlineData("--shard", "-1/3", "'-1/3' is no share")]
    [InlineData("--shard", "/3", "leaves the share's number to JOB_COMPLETION_INDEX, which isn't set")]
    [InlineData("--fps", "0", "error: bake: can't be baked at 0 frames per second")]
    [InlineData("--from", "-1", "error: bake: can't be baked from -1 s on")]
    [InlineData("--jobs", "0", "0 at a time can't be")]
    [InlineData("--jobs", "many", "--jobs takes a whole number, not 'many'.")]
    [InlineData("--skeleton", "", "--skeleton is given nothing.")]
    [InlineData("--clip", "wave", "--clip chooses among the clips of the project")]
    [InlineData("--out", "clips", "a bake would be written over it")]
    [InlineData("--out", "all.glb", "is one file, and files are written by names of their own. Name a folder")]
    public void What_cant_be_is_told_before_anything_is_written(string option, string value, string told)
    {
        using var program = Harbour("wave");
        var before = program.FileNames;
        Assert.Equal(2, program.Run("bake", program["clips"], option, option == "--out" ? program[value] : value));
        Assert.Contains(told, program.Error, StringComparison.Ordinal);
        Assert.Equal(before, program.FileNames);
    }

    [Fact]
    public void Only_files_that_would_be_lost_are_refused()
    {
        using var program = Harbour();
        ClipFiles.Write(program, "wave", 30);
        GltfFile.Read(program["clips/wave.glb"]).Write(program["clips/wave.gltf"]);
        File.Delete(program["clips/wave.glb"]);
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["clips"]));
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["clips"]));
        Assert.Contains("0 baked, 1 up to date, 0 failed", program.Output, StringComparison.Ordinal);
        File.Delete(program["clips/wave.gltf"]);
        Assert.Equal(2, program.Run("bake", program["clips"], "--out", program["clips"]));
        Assert.Contains("there is no .glb or .gltf file but what a bake wrote", program.Error, StringComparison.Ordinal);

        // What lies there otherwise than a bake wrote it is somebody's clip.
        ClipFiles.Write(program, "wave", 50);
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
    }

    [Theory]
    [InlineData("link", "clips", "clips", "link")]
    [InlineData("link", "clips", "link", "clips")]
    [InlineData("link", ".", "clips", "link/clips")]
    [InlineData("build/wave.glb", "../clips/wave.glb", "build", "clips")]
    public void A_file_that_is_read_is_not_lost_by_way_of_a_link(string link, string target, string read, string output)
    {
        using var program = Harbour("wave");
        Directory.CreateDirectory(program["build"]);
        File.CreateSymbolicLink(program[link], target);
        var before = FileHash.Of(program["clips/wave.glb"]);
        Assert.Equal(2, program.Run("bake", program[read], "--out", program[output]));
        Assert.Contains("a bake would be written over it", program.Error, StringComparison.Ordinal);
        Assert.Equal(before, FileHash.Of(program["clips/wave.glb"]));
    }

    [Fact]
    public void A_link_that_lies_where_a_bake_goes_is_replaced_and_what_it_leads_to_stays()
    {
        using var program = Harbour("wave");
        Directory.CreateDirectory(program["build"]);
        File.CreateSymbolicLink(program["build/wave.glb"], "../clips/wave.glb");
        var before = FileHash.Of(program["clips/wave.glb"]);
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Null(new FileInfo(program["build/wave.glb"]).LinkTarget);
        Assert.Equal(before, FileHash.Of(program["clips/wave.glb"]));
    }

    [Fact]
    public void Links_that_lead_round_are_told_and_end()
    {
        using var program = Harbour("wave");
        File.CreateSymbolicLink(program["there"], "back/on");
        File.CreateSymbolicLink(program["back"], "there");
        Assert.Equal(2, program.Run("bake", program["clips"], "--out", program["back/on"]));
        Assert.Contains("the folder can't be used", program.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("taken")]
    [InlineData("taken/deeper")]
    public void A_folder_that_cant_be_made_is_told_once_and_before_the_work(string output)
    {
        using var program = Harbour("wave", "haul");
        program.Write("taken", "a file");
        Assert.Equal(2, program.Run("bake", program["clips"], "--out", program[output]));
        Assert.Contains($"{output}: the folder can't be used: ", program.Error, StringComparison.Ordinal);
        Assert.Empty(program.Output);
    }

    [Fact]
    public void Reports_go_with_the_bake_that_they_are_of()
    {
        using var program = Harbour("wave", "haul");
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"], "--report"));
        program.Write("build/haul.report.txt", "put there by hand");
        Assert.Equal(0, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Equal(["haul.bake.json", "haul.glb", "haul.report.txt", "wave.bake.json", "wave.glb"], Directory.GetFiles(program["build"]).Select(Path.GetFileName).Order(StringComparer.Ordinal));

        // A bake of the project's clips into the same file is no batch's any more.
        ClipFiles.Write(program, "hoist", 30);
        Assert.Equal(0, program.Run("bake", program["clips/hoist.glb"], "--out", program["build"], "--report"));
        Assert.Equal(0, program.Run("bake", "--out", program["build"]));
        Assert.Equal(["hoist.glb"], Directory.GetFiles(program["build"], "hoist*").Select(Path.GetFileName));
    }

    [Fact]
    public void Two_files_of_one_name_and_jobs_without_files_are_told()
    {
        using var program = Harbour("wave");
        Directory.CreateDirectory(program["more"]);
        File.Copy(program["clips/wave.glb"], program["more/Wave.glb"]);
        Assert.Equal(2, program.Run("bake", program["clips"], program["more"], "--out", program["build"]));
        Assert.Contains("it would be written to the same file as", program.Error, StringComparison.Ordinal);
        Assert.Equal(2, program.Run("bake", "--jobs", "2", "--out", program["build"]));
        Assert.Contains("--jobs and --shard are for files of clips, and none is named.", program.Error, StringComparison.Ordinal);
        Assert.Equal(2, program.Run("bake", program["empty*.glb"]));
        Assert.Contains("there is no .glb or .gltf file", program.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Json_lists_every_file_with_what_became_of_it()
    {
        using var program = Harbour("wave");
        File.WriteAllText(program["clips/broken.glb"], "");
        Assert.Equal(1, program.Run("bake", program["clips"], "--out", program["build"], "--json"));
        var files = JsonDocument.Parse(program.Output).RootElement.GetProperty("files");
        Assert.Equal(["failed", "baked"], files.EnumerateArray().Select(file => file.GetProperty("state").GetString()));
        Assert.Contains("the file is empty", files[0].GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(31, files[1].GetProperty("clips")[0].GetProperty("frames").GetInt32());
    }

    [Fact]
    public void A_rig_with_errors_bakes_nothing_and_says_why()
    {
        using var program = Harbour("wave");
        program.Types = [typeof(StiffHoist)];
        Assert.Equal(1, program.Run("bake", program["clips"], "--out", program["build"]));
        Assert.Contains("CDY3001", program.Output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(program["build"]));
    }

    private static TestProgram Harbour(params string[] clips)
    {
        var program = new TestProgram(typeof(Hoist));
        program.Write("hoist.gltf", Hoist.Delivered);
        foreach (var (index, name) in clips.Index())
            ClipFiles.Write(program, name, 20 + (10 * index));
        return program;
    }
}
