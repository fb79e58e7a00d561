using System.Numerics;
using System.Text.Json;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Tests.Baking;
using Condyle.Runtime.Tests.Evaluation;
using Condyle.Runtime.Tests.Gltf;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Clips;

/// <summary>The controls of a rig as nodes of a file, and what comes back from a program that animates nodes.</summary>
public sealed class ControlsFileTests : IDisposable
{
    private static readonly CompiledRig Arm = CargoArm.Compiled();

    private static readonly CompiledRig Hook = DefinedRig.Compile(rig =>
    {
        var (world, crate) = (rig.Control("world").Unlock(Channels.Scale).Shaped(ControlShape.Square, 0.5f, Axis.X).Tinted(Tint.Coral).OnLayer("roots"), rig.Control("crate").Lock(Channels.Move));
        var boom = rig.Skeleton("s").Root("boom", at: new Vector3(0, 2, 0), turned: Turns.About(Axis.Z, 30));
        var tip = boom.Child("hook", at: new Vector3(0, 0, 1.5f));
        var hook = rig.Control("hook").PlacedAt(tip).LimitTurn(Axis.Y, -45, float.PositiveInfinity).LimitMove(Axis.X, -1, 2);
        rig.Control("hook_right").Under(hook).Mirroring(hook);
        rig.Drive(tip).ByChannels(hook);
        rig.Space(hook).In("world", world).In("crate", crate);
        rig.Response(hook.Dial("lift", -1, 3, atRest: 1, unit: DialUnit.Metres).AlsoOn(crate)).Key(0, 0).Key(1, 1).Continued().OntoMove(hook, Axis.Y);
        rig.Label("far", "far").ShownBy(hook.Switch("far"));
    });

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Each_control_is_a_node_at_zero_that_stands_where_the_control_rests()
    {
        foreach (var rig in new[] { Arm, Hook })
        {
            var file = Written(rig, "controls.glb");
            var nodes = file.Model.LogicalNodes.Where(node => node.Extras?["condyleControl"] is not null).ToDictionary(node => node.Extras!["condyleControl"]!.GetValue<string>());
            Assert.Equal(rig.Controls.Select(control => control.Name).Order(StringComparer.Ordinal), nodes.Keys.Order(StringComparer.Ordinal));
            foreach (var control in rig.LimbTable.Controls)
            {
                var node = nodes[control.Name.ToString()];
                Assert.Equal(Matrix4x4.Identity, node.LocalMatrix);
                var (wanted, stands) = (rig.LimbTable.Rest.WorldOf(control), node.WorldMatrix);
                foreach (var point in new[] { Vector3.Zero, Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ })
                    Assert.True(Vector3.Distance(wanted.Apply(point).ToSingle(), Vector3.Transform(point, stands)) < 1e-5f, $"{control.Name}: {stands}");
                Assert.Equal(SharpGLTF.Schema2.PrimitiveType.LINES, node.Mesh.Primitives[0].DrawPrimitiveType);
            }
        }
    }

    [Fact]
    public void What_an_animator_should_know_stands_in_the_extras()
    {
        var nodes = Written(Hook, "controls.gltf").Model.LogicalNodes;
        Assert.Equal(
            """{"condyleControl":"world","condyleLayer":"roots","condyleShape":"square","condyleTint":"coral"}""",
            Extras("condyleControl", "world"));
        Assert.Equal(
            """{"condyleControl":"hook","condyleLocked":["scale X","scale Y","scale Z"],"condyleLimits":[{"channel":"turn Y","from":-45},{"channel":"move X","from":-1,"to":2}],"condyleShape":"box","condyleTint":"teal"}""",
            Extras("condyleControl", "hook"));
        Assert.Equal("""{"condyleSwitch":"hook.far","condyleFrom":0,"condyleTo":1,"condyleAtRest":0,"condyleValue":0}""", Extras("condyleSwitch", "hook.far"));
        Assert.Equal("""{"condyleDial":"hook.lift","condyleFrom":-1,"condyleTo":3,"condyleUnit":"metres","condyleAtRest":1,"condyleValue":1,"condyleAlsoKnownAs":["crate.lift"]}""", Extras("condyleDial", "hook.lift"));
        Assert.Equal("""{"condyleChoice":"hook.space","condyleOptions":["world","crate"],"condyleAtRest":0,"condyleValue":0}""", Extras("condyleChoice", "hook.space"));
        Assert.Equal(1, nodes.Single(node => node.Name == "hook.lift").LocalTransform.Translation.X);
        Assert.Equal("hook_control", nodes.Single(node => node.Extras?["condyleControl"]?.GetValue<string>() == "hook").Name); // the character has a joint of that name

        string Extras(string member, string name) => nodes.Select(node => node.Extras).Single(extras => extras?[member]?.GetValue<string>() == name)!.ToJsonString();
    }

    [Fact]
    public void The_delivered_file_stays_as_it_was_within()
    {
        var delivered = GltfFile.Read(folder.Write("leg.glb", SampleFile.Glb()));
        var rig = DefinedRig.Compile(rig => rig.Drive(rig.Skeleton("s").Root("rig")).ByChannels(rig.Control("pelvis")));
        ControlsFile.Write(rig, delivered.Path, folder["out.glb"]);
        var written = GltfFile.Read(folder["out.glb"]);
        Assert.True(written.Buffers[0].Bytes.Span.StartsWith(delivered.Buffers[0].Bytes.Span));
        foreach (var (name, value) in delivered.ParseJson())
        {
            if (name is "buffers" or "scenes")
                continue;
            var now = written.ParseJson()[name]!;
            if (value is not JsonArray list)
                Assert.Equal(value!.ToJsonString(), now.ToJsonString());
            else
                Assert.All(list.Index(), item => Assert.Equal(item.Item!.ToJsonString(), now[item.Index]!.ToJsonString()));
        }
    }

    [Fact]
    public void A_file_without_clips_says_so()
    {
        Written(Hook, "controls.glb");
        var problem = Assert.Throws<BadInputException>(() => ClipFile.Read(folder["controls.glb"], Hook));
        Assert.Contains("it holds no animation. Animate the controls", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Clips_go_along_and_come_back_as_they_were()
    {
        var clip = new Clip("unload", 2)
            .Move("hook", 0).Move("hook", 1, 0.5f, 0.2f).MoveSlope("hook", 1, y: 2, side: KeySide.After).Turn("hook", 0.5f).Turn("hook", 2, 10, 40, -20)
            .Scale("world", 0).Scale("world", 2, 1.5f, 1.5f, 1.5f).Stepped("world").Switch("hook.far", (0, 0), (2, 1)).Splined("hook.far")
            .Dial("crate.lift", (0, 1), (2, 3)).Choice("hook.space", 1, "crate").Mark(1, "down");
        var over = new Clip("over", 2).Layer(clip).Layer(new Clip("up", 2).Move("hook", 0, y: 1), weight: 0.5f, blend: LayerBlend.Additive).Mark(1, "down");
        ControlsFile.Write(Hook, folder.Write("delivered.gltf", DeliveredFile.Of(Hook).ToJsonString()), folder["clips.glb"], [clip, over]);
        var read = ClipFile.Read(folder["clips.glb"], Hook).Clips;
        Assert.Equal(["unload", "over"], read.Select(one => one.Name));
        Assert.All(read, one => Assert.Equal(clip.Markers, one.Markers));
        foreach (var (was, now, times) in new[] { (clip, read[0], Enumerable.Range(0, 41).Select(i => i * 0.05f)), (over, read[1], Enumerable.Range(0, 61).Select(i => i / 30f)) })
        {
            var (before, after) = (Hook.NewInstance(), Hook.NewInstance());
            foreach (var time in times)
            {
                new ClipPlayer(Hook, was).Pose(before, time);
                new ClipPlayer(Hook, now).Pose(after, time);
                before.Evaluate();
                after.Evaluate();
                foreach (var control in Hook.Controls)
                {
                    Assert.True(Vector3.Distance(before.ControlMove(control.Index), after.ControlMove(control.Index)) < 1e-5f, $"{was.Name} {control.Name} {time}");
                    Assert.True(MathF.Abs(Quaternion.Dot(before.ControlTurn(control.Index), after.ControlTurn(control.Index))) > 1 - 1e-6f, $"{was.Name} {control.Name} {time}");
                    Assert.Equal(before.ControlScale(control.Index), after.ControlScale(control.Index));
                }

                Assert.True(Vector3.Distance(before.JointWorld(1).Translation, after.JointWorld(1).Translation) < 1e-5f, $"{was.Name} {time}");
            }
        }
    }

    /// <summary>Against gltf-validator.</summary>
    [SkippableFact]
    public void The_standards_validator_finds_nothing()
    {
        foreach (var (rig, name) in new[] { (Arm, "arm.glb"), (Hook, "hook.gltf") })
        {
            Written(rig, name);
            var report = OutsideChecks.Validate(folder[name]);
            Assert.True(report is { Errors: 0, Warnings: 0 }, string.Join("\n", report.Messages));
        }

        ControlsFile.Write(Arm, folder["delivered_arm.glb.gltf"], folder["clips.glb"], [CargoArm.Lift(), RangeOfMotion.Of(Arm)]);
        var withClips = OutsideChecks.Validate(folder["clips.glb"]);
        Assert.True(withClips is { Errors: 0, Warnings: 0 }, string.Join("\n", withClips.Messages));
    }

    /// <summary>There and back through three.js: it loads the controls, keys them and saves them, renaming nodes as it does; and its AnimationMixer plays what it saved.</summary>
    [SkippableFact]
    public void What_a_program_made_of_the_controls_plays_as_the_program_plays_it()
    {
        Written(Hook, "controls.glb");
        var turn = Turns.Of(10, 40, -20, TurnOrder.XYZ);
        var tracks = new object[]
        {
            new { node = "hook_control", path = "position", mode = "linear", times = new[] { 0, 0.5, 2 }, values = new[] { 0, 0, 0, 0.5, 0.2, 0, 0, 0, 1 } },
            new { node = "hook_control", path = "quaternion", mode = "linear", times = new[] { 0, 2.0 }, values = new[] { 0, 0, 0, 1, turn.X, turn.Y, turn.Z, turn.W } },
            new { node = "world", path = "scale", mode = "step", times = new[] { 0, 1.0 }, values = new[] { 1, 1, 1, 1.5, 1.5, 1.5 } },
            new { node = "hook.lift", path = "position", mode = "linear", times = new[] { 0, 2.0 }, values = new[] { 1, 0, 0, 3.0, 0, 0 } },
            new { node = "hook.far", path = "position", mode = "step", times = new[] { 0, 1.0 }, values = new[] { 0, 0, 0, 1.0, 0, 0 } },
            new { node = "hook.space", path = "position", mode = "step", times = new[] { 0, 1.5 }, values = new[] { 0, 0, 0, 1.0, 0, 0 } },
        };
        OutsideChecks.Run("desk.mjs", JsonSerializer.Serialize(new { clip = "unload", tracks }), folder["controls.glb"], folder["back.gltf"]);

        var read = ClipFile.Read(folder["back.gltf"], Hook);
        var clip = Assert.Single(read.Clips);
        Assert.Equal(("unload", 2), (clip.Name, clip.Seconds));
        Assert.Empty(read.NodesNotInRig);
        var names = GltfFile.Read(folder["back.gltf"]).Model.LogicalNodes.Select(node => (node.LogicalIndex, Extras: node.Extras as JsonObject)).ToList();
        int[] nodes = [Index("condyleControl", "hook"), Index("condyleControl", "world"), Index("condyleDial", "hook.lift"), Index("condyleSwitch", "hook.far"), Index("condyleChoice", "hook.space")];
        double[] times = [0, 0.2, 0.5, 0.9, 1.1, 1.4, 1.6, 2];
        var played = OutsideChecks.Play(folder["back.gltf"], "unload", times, [.. nodes, .. nodes.Select(Parent)]);
        var player = new ClipPlayer(Hook, clip);
        var instance = Hook.NewInstance();
        foreach (var (index, time) in times.Index())
        {
            player.Pose(instance, (float)time);
            var locals = nodes.Select((_, i) => Local(played[index][i], played[index][i + nodes.Length])).ToList();
            Assert.True(Vector3.Distance(locals[0].Translation, instance.ControlMove(Hook.ControlIndex("hook"))) < 1e-5f, $"{time}");
            Assert.True(MathF.Abs(Quaternion.Dot(Quaternion.CreateFromRotationMatrix(locals[0]), instance.ControlTurn(Hook.ControlIndex("hook")))) > 1 - 1e-5f, $"{time}");
            Assert.Equal(locals[1].M11, instance.ControlScale(Hook.ControlIndex("world")).X, 1e-5);
            Assert.Equal(locals[2].M41, clip.Dials["hook.lift"].At((float)time), 1e-5);
            Assert.Equal(locals[3].M41, clip.Switches["hook.far"].At((float)time), 1e-5);
            Assert.Equal(locals[4].M41 > 0.5f ? "crate" : "world", clip.Choices["hook.space"].At((float)time).Name);
        }

        int Index(string member, string name) => names.Single(node => node.Extras?[member]?.GetValue<string>() == name).LogicalIndex;
        int Parent(int node) => GltfFile.Read(folder["back.gltf"]).Model.LogicalNodes[node].VisualParent.LogicalIndex;
        static Matrix4x4 Local(double[] world, double[] parent) => Matrix4x4.Invert(ToMatrix(parent), out var inverse) ? ToMatrix(world) * inverse : throw new InvalidOperationException("It is flat.");
    }

    /// <summary>The file that the rig's skeleton was delivered in, with its controls.</summary>
    private GltfFile Written(CompiledRig rig, string name)
    {
        ControlsFile.Write(rig, folder.Write($"delivered_{name}.gltf", DeliveredFile.Of(rig).ToJsonString()), folder[name]);
        return GltfFile.Read(folder[name]);
    }

    private static Matrix4x4 ToMatrix(double[] m) => new(
        (float)m[0], (float)m[1], (float)m[2], (float)m[3], (float)m[4], (float)m[5], (float)m[6], (float)m[7],
        (float)m[8], (float)m[9], (float)m[10], (float)m[11], (float)m[12], (float)m[13], (float)m[14], (float)m[15]);
}
