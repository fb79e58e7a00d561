using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Runtime.Tests.Baking;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Clips;

/// <summary>Clips from files whose nodes are the controls.</summary>
public sealed class ClipFileTests : IDisposable
{
    private static readonly CompiledRig Rig = DefinedRig.Compile(rig =>
    {
        var (world, crate, hook) = (rig.Control("world").Unlock(Channels.Scale), rig.Control("crate").Lock(Channels.Move | Channels.TurnX), rig.Control("hook"));
        rig.Drive(rig.Skeleton("s").Root("joint")).ByChannels(hook);
        rig.Space(hook).In("world", world).In("crate", crate);
        rig.Response(hook.Dial("lift", -1, 3, atRest: 1).AlsoOn(crate)).Key(0, 0).Key(1, 1).Continued().OntoMove(hook, Axis.Y);
        rig.Label("far", "far").ShownBy(hook.Switch("far"));
    });

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    /// <summary>Against three.js, whose nodes stand as our controls do: all three modes of a sampler, words that are normalised, sparse values, times on keys, between them and outside.</summary>
    [SkippableFact]
    public void A_file_plays_here_as_three_js_plays_it()
    {
        var random = new Random(5);
        var file = new AnimatedFile();
        var nodes = new[] { file.Node("world"), file.Node("hook") };
        float[] times = [0.25f, 0.5f, 1.3f, 2];
        Add("LINEAR", nodes[0], "translation", Storage.Sparse);
        Add("CUBICSPLINE", nodes[0], "rotation", Storage.Floats);
        Add("STEP", nodes[0], "scale", Storage.Floats);
        Add("CUBICSPLINE", nodes[1], "translation", Storage.Floats);
        Add("LINEAR", nodes[1], "rotation", Storage.Words);
        var path = folder.Write("wave.gltf", file.Text());

        var clip = Assert.Single(ClipFile.Read(path, Rig).Clips);
        var player = new ClipPlayer(Rig, clip);
        double[] moments = [0, .. times.Select(time => (double)time), .. Enumerable.Range(0, 40).Select(i => i * 0.055), 3];
        var played = OutsideChecks.Play(path, "wave", moments, nodes);
        var instance = Rig.NewInstance();
        foreach (var (index, time) in moments.Index())
        {
            player.Pose(instance, (float)time);
            foreach (var (i, control) in new[] { Rig.ControlIndex("world"), Rig.ControlIndex("hook") }.Index())
            {
                var ours = Matrix4x4.CreateScale(instance.ControlScale(control)) * Matrix4x4.CreateFromQuaternion(instance.ControlTurn(control)) * Matrix4x4.CreateTranslation(instance.ControlMove(control));
                Near.AssertEqual(played[index][i], ours, 2e-4);
            }
        }

        void Add(string mode, int node, string part, Storage storage)
        {
            var values = new List<float>();
            for (var key = 0; key < times.Length; key++)
            {
                foreach (var isSlope in mode == "CUBICSPLINE" ? new[] { true, false, true } : [false])
                {
                    var turn = Quaternion.Normalize(new Quaternion(Next(), Next(), Next(), Next() + 1.5f));
                    values.AddRange(part != "rotation" ? [Next(), Next() + 1, Next() + 1] : isSlope ? [Next(), Next(), Next(), Next()] : [turn.X, turn.Y, turn.Z, turn.W]);
                }
            }

            file.Track(node, part, mode, times, [.. values], storage);
        }

        float Next() => random.NextSingle() - 0.5f;
    }

    [Fact]
    public void Switches_dials_and_choices_are_nodes_that_move_along_X()
    {
        var file = new AnimatedFile();
        var hook = file.Node("hook");
        file.Track(file.Node("hook.far", parent: hook), "translation", "LINEAR", [0, 2], [0, 9, 9, 1, 9, 9])
            .Track(file.Node("hooklift", parent: hook), "translation", "STEP", [0, 1], [-1, 0, 0, 3.0001f, 0, 0])
            .Track(file.Node("any", new JsonObject { ["condyleChoice"] = "hook.space" }), "translation", "LINEAR", [0, 1], [0.02f, 0, 0, 0.98f, 0, 0]);
        var clip = Read(file);
        Assert.Equal((2, 0.25f), (clip.Seconds, clip.Switches["hook.far"].At(0.5f)));
        Assert.Equal([-1, 3], clip.Dials["hook.lift"].Values);
        Assert.Equal(-1, clip.Dials["hook.lift"].At(0.9f));
        Assert.Equal(["world", "crate"], clip.Choices["hook.space"].Values.Select(option => option.Name));
    }

    /// <summary>KHR_animation_pointer (Khronos Group): a track may point to any value of the file.</summary>
    [Fact]
    public void Pointers_move_controls_and_the_values_in_extras()
    {
        var file = new AnimatedFile();
        file.Pointer($"/nodes/{file.Node("far", new JsonObject { ["condyleSwitch"] = "hook.far", ["condyleValue"] = 0 })}/extras/condyleValue", "CUBICSPLINE", [0, 1], [0, 0, 2, 0, 1, 0]);
        var clip = Read(file);
        Assert.Equal(SplineTests.Formula(0, 2, 1, 0, 1, 0.3), clip.Switches["hook.far"].At(0.3f), 1e-5);
    }

    [Fact]
    public void A_marked_control_that_isnt_animated_keeps_its_pose_and_the_extras_come_before_the_name()
    {
        var file = new AnimatedFile();
        var posed = file.Node("hook", new JsonObject { ["condyleControl"] = "world" });
        file[posed]["translation"] = new JsonArray(1, 2, 3);
        file[file.Node("crate")]["rotation"] = new JsonArray(0, 1, 0, 0);
        file[file.Node("a", new JsonObject { ["condyleDial"] = "hook.lift" })]["translation"] = new JsonArray(2, 0, 0);
        file.Track(file.Node("hook.far"), "translation", "LINEAR", [0], [1, 0, 0]);
        var clip = Read(file);
        Assert.Equal([new Vector3(1, 2, 3)], clip.Moves["world"].Values);
        Assert.Equal([2], clip.Dials["hook.lift"].Values);
        Assert.Empty(clip.Turned);
    }

    [Fact]
    public void Of_two_nodes_that_are_one_control_the_animated_one_counts()
    {
        var file = new AnimatedFile();
        file.Track(file.Node("a", new JsonObject { ["condyleControl"] = "hook" }), "translation", "LINEAR", [0, 1], [0, 0, 0, 0, 0, 1]);
        file[file.Node("copy", new JsonObject { ["condyleControl"] = "hook" })]["translation"] = new JsonArray(5, 5, 5);
        Assert.Equal([Vector3.Zero, Vector3.UnitZ], Read(file).Moves["hook"].Values);
    }

    [Fact]
    public void What_moves_beside_the_rig_is_named_and_animations_without_a_control_are_passed_over()
    {
        var file = new AnimatedFile();
        file.Track(file.Node("hook"), "translation", "LINEAR", [0, 1], [0, 0, 0, 1, 0, 0]).Track(file.Node("lamp"), "translation", "LINEAR", [0], [0, 0, 0]).Track(file.Node("joint"), "translation", "LINEAR", [0], [0, 0, 0]);
        file.Animation["extras"] = JsonNode.Parse("""{ "markers": [ { "at": 0.5, "name": "grip" } ] }""");
        var read = ClipFile.Read(folder.Write("f.gltf", file.Text()), Rig);
        Assert.Equal(["lamp"], read.NodesNotInRig);
        Assert.Equal([new Marker(0.5f, "grip")], read.Clips[0].Markers);
    }

    [Fact]
    public void What_rounding_leaves_on_a_locked_channel_is_taken_off()
    {
        var file = new AnimatedFile();
        var crate = file.Node("crate");
        var turn = Turns.Of(0.001f, 20, 30, TurnOrder.XYZ);
        file.Track(crate, "translation", "LINEAR", [0, 1], [1e-6f, 0, 0, 0, -1e-6f, 0]).Track(crate, "rotation", "LINEAR", [0], [turn.X, turn.Y, turn.Z, turn.W]).Track(crate, "scale", "LINEAR", [0], [1, 1.000001f, 1]);
        var clip = Read(file);
        Assert.Empty(clip.Moves);
        Assert.Empty(clip.Scales);
        Assert.Single(clip.Turned);
    }

    [Theory]
    [InlineData(0, 91, 0)]
    [InlineData(0, -170, 0)]
    [InlineData(0, 180, 0)]
    [InlineData(0, 120, 30)]
    public void A_turn_past_a_quarter_leaves_what_is_locked_alone(float x, float y, float z)
    {
        var file = new AnimatedFile();
        var turn = Turns.Of(x, y, z, TurnOrder.XYZ);
        file.Track(file.Node("crate"), "rotation", "LINEAR", [0], [turn.X, turn.Y, turn.Z, turn.W]);
        Assert.Equal(1, Math.Abs(Quaternion.Dot(turn, Read(file).Turned["crate"].Values[0])), 6);
    }

    public static TheoryData<string, Action<AnimatedFile>> Wrong => new()
    {
        { " 'crate' at /animations/0/samplers/0 gives 'crate' 0.5 for its move Y at 1 s, which the rig 'DefinedRig' locks, as it does turn X of 'crate'. Clear those channels where the clip was made, or unlock them in the rig.", file => file.Track(file.Node("crate"), "translation", "LINEAR", [0, 1], [0, 0, 0, 0, 0.5f, 0]).Track(0, "rotation", "LINEAR", [0], [0.70710678f, 0, 0, 0.70710678f]) },
        { " 'hook' at /accessors/0 has times that don't increase, at element 2. Export the animation again.", file => file.Track(file.Node("hook"), "translation", "LINEAR", [0, 1, 1], [0, 0, 0, 0, 0, 0, 0, 0, 0]) },
        { " 'hook' at /accessors/0 has times below zero or that don't increase, at element 0. Export the animation again.", file => file.Track(file.Node("hook"), "translation", "LINEAR", [-1, 1], [0, 0, 0, 0, 0, 0]) },
        { " 'crate' at /animations/0/samplers/0 gives 'crate' 0.5 for its move Y at 1 s, which the rig 'DefinedRig' locks. Clear that channel where the clip was made, or unlock it in the rig.", file => file.Track(file.Node("crate"), "translation", "LINEAR", [0, 1], [0, 0, 0, 0, 0.5f, 0]) },
        { " 'crate' at /animations/0/samplers/0 gives 'crate' 90° for its turn X at 0 s, which the rig 'DefinedRig' locks. Clear that channel where the clip was made, or unlock it in the rig.", file => file.Track(file.Node("crate"), "rotation", "LINEAR", [0], [0.70710678f, 0, 0, 0.70710678f]) },
        { " 'hook.far' at /animations/0/samplers/0 sets 'hook.far' to 1.5 at 0 s. A switch goes from 0 to 1.", file => file.Track(file.Node("hook.far"), "translation", "LINEAR", [0], [1.5f, 0, 0]) },
        { " 'hook.lift' at /animations/0/samplers/0 sets 'hook.lift' to 4 at 0 s. The dial goes from -1 to 3.", file => file.Track(file.Node("hook.lift"), "translation", "LINEAR", [0], [4, 0, 0]) },
        { " 'hook.space' at /animations/0/samplers/0 picks option 2 of 'hook.space' at 0 s. They are 0: 'world', 1: 'crate'.", file => file.Track(file.Node("hook.space"), "translation", "STEP", [0], [2, 0, 0]) },
        { " no animation moves a control of the rig 'DefinedRig'; what moves is 'hok' (nearest: 'hook'). Name the nodes after the controls, or start from the controls file of the rig.", file => file.Track(file.Node("hok"), "translation", "LINEAR", [0], [0, 0, 0]) },
        { " at /animations/0/samplers/1 moves 'hook.far' by the value of node 0 'a', and so does node 0 'a'. Animate one of them.", file => file.Track(file.Node("a", new JsonObject { ["condyleSwitch"] = "hook.far", ["condyleValue"] = 0 }), "translation", "LINEAR", [0], [0, 0, 0]).Pointer("/nodes/0/extras/condyleValue", "LINEAR", [0], [1]) },
        { " at /animations/0/samplers/1 moves 'hook' by the translation of node 1 'b', and so does node 0 'a'. Animate one of them.", file => file.Track(file.Node("a", new JsonObject { ["condyleControl"] = "hook" }), "translation", "LINEAR", [0], [0, 0, 0]).Track(file.Node("b", new JsonObject { ["condyleControl"] = "hook" }), "translation", "LINEAR", [0], [0, 0, 0]) },
    };

    [Theory]
    [MemberData(nameof(Wrong))]
    public void What_cant_be_used_is_told_with_file_node_and_place(string message, Action<AnimatedFile> make)
    {
        var file = new AnimatedFile();
        make(file);
        var path = folder.Write("wrong.gltf", file.Text());
        Assert.Equal($"{path}:{message}", Assert.Throws<BadInputException>(() => ClipFile.Read(path, Rig)).Message);
    }

    [Fact]
    public void A_clip_from_a_file_bakes()
    {
        var rig = CargoArm.Compiled();
        var file = new AnimatedFile("lift");
        var turn = Turns.Of(20, 10, 5, TurnOrder.XYZ);
        file.Track(file.Node("waist"), "rotation", "CUBICSPLINE", [0, 1], [0, 0, 0, 0, 0, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, turn.X, turn.Y, turn.Z, turn.W, 0, 0, 0, 0]);
        var report = Bake.Run(rig, ClipFile.Read(folder.Write("lift.gltf", file.Text()), rig).Clips[0]).Report;
        Assert.Equal(("lift", 31), (report.Clip, report.Frames));
        Assert.True(report.Holds);
    }

    private Clip Read(AnimatedFile file) => Assert.Single(ClipFile.Read(folder.Write("clip.gltf", file.Text()), Rig).Clips);
}
