using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;

namespace Condyle.Runtime.Tests.Gltf;

public sealed class AppendingTests : IDisposable
{
    private static readonly Quaternion QuarterTurn = Quaternion.CreateFromAxisAngle(Vector3.UnitX, MathF.PI / 2);

    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    public static TheoryData<string, string> Forms => new() { { "leg.glb", "out.glb" }, { "leg.glb", "out.gltf" }, { "leg.gltf", "out.gltf" }, { "leg.gltf", "out.glb" } };

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_bytes_of_every_delivered_accessor_stay(string source, string target)
    {
        var before = Sample(source);
        var after = AppendAndWrite(before, target);
        var accessors = before.ParseJson()["accessors"]!.AsArray().Count;
        for (var i = 0; i < accessors; i++)
            Assert.Equal(BytesOf(before, i), BytesOf(after, i));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void Every_JSON_value_that_the_design_does_not_name_stays_down_to_the_spelling_of_numbers(string source, string target)
    {
        var before = Sample(source).ParseJson();
        var after = AppendAndWrite(Sample(source), target).ParseJson();

        Assert.Equal(before.Select(member => member.Key), after.Select(member => member.Key));
        foreach (var list in (string[])["accessors", "bufferViews", "animations"])
        {
            var (old, now) = (before[list]!.AsArray(), after[list]!.AsArray());
            Assert.True(now.Count > old.Count);
            Assert.Equal(old.Select(Text), now.Take(old.Count).Select(Text));
        }
        foreach (var (name, value) in before)
        {
            if (name is not ("accessors" or "bufferViews" or "animations" or "buffers" or "nodes"))
                Assert.Equal(Text(value), Text(after[name]));
        }
        foreach (var (index, node) in before["nodes"]!.AsArray().Index())
        {
            // The knee is animated and was given as a matrix; the rig is a matrix too, but stands still.
            if (index != SampleFile.Knee)
                Assert.Equal(Text(node), Text(after["nodes"]![index]));
        }
        Assert.Contains("0.10000000000000000555,-0.0,12345678901234567890", Text(after), StringComparison.Ordinal);
    }

    [Fact]
    public void An_animated_matrix_node_becomes_translation_rotation_and_scale_and_stays_where_it_was()
    {
        var before = Sample("leg.glb");
        var after = AppendAndWrite(before, "out.glb");
        var node = after.ParseJson()["nodes"]![SampleFile.Knee]!.AsObject();
        Assert.Equal(["name", "children", "translation", "rotation", "scale"], node.Select(member => member.Key));
        foreach (var (old, now) in GltfSkeleton.Read(before).Joints.Zip(GltfSkeleton.Read(after).Joints))
            Assert.Equal(old, now);
    }

    [Fact]
    public void A_clips_samplers_share_one_time_accessor_with_bounds_and_lie_aligned()
    {
        var json = AppendAndWrite(Sample("leg.glb"), "out.glb").ParseJson();
        foreach (var (clip, times) in new[] { ("kneel", Kneel.Times), ("nod", Nod.Times) })
        {
            var animation = json["animations"]!.AsArray().Single(item => (string?)item!["name"] == clip)!;
            var samplers = animation["samplers"]!.AsArray();
            Assert.All(samplers, sampler => Assert.Equal("LINEAR", (string?)sampler!["interpolation"]));
            var time = json["accessors"]![Assert.Single(samplers.Select(sampler => (int)sampler!["input"]!).Distinct())]!;
            Assert.Equal((double)times[0], (double)time["min"]![0]!);
            Assert.Equal((double)times[^1], (double)time["max"]![0]!);
        }
        foreach (var accessor in json["accessors"]!.AsArray())
        {
            var view = json["bufferViews"]![(int)accessor!["bufferView"]!]!;
            Assert.Equal(0, ((int)view["byteOffset"]! + ((int?)accessor["byteOffset"] ?? 0)) % 4);
        }
    }

    [Fact]
    public void Delivered_clips_stay_and_new_ones_follow_in_order()
    {
        var after = AppendAndWrite(Sample("leg.glb"), "out.glb");
        Assert.Equal(["wave", "kneel", "nod"], after.Model.LogicalAnimations.Select(animation => animation.Name));
    }

    [Fact]
    public void A_clip_of_a_delivered_name_is_refused_or_takes_its_place_when_told_to()
    {
        var file = Sample("leg.glb");
        var wave = Nod with { Name = "wave" };
        Assert.Equal("/animations/0", Assert.Throws<BadInputException>(() => file.Append([wave])).Place);

        var replaced = file.Append([Kneel, wave], replace: true);
        Assert.Equal(["wave", "kneel"], replaced.Model.LogicalAnimations.Select(animation => animation.Name));
        Assert.Single(replaced.Model.LogicalAnimations[0].Channels);
    }

    [Fact]
    public void Clips_can_be_appended_again_and_again_and_the_file_they_came_from_is_unchanged()
    {
        var file = Sample("leg.glb");
        var text = Text(file.ParseJson());
        var twice = file.Append([Kneel]).Append([Nod]);
        Assert.Equal(["wave", "kneel", "nod"], twice.Model.LogicalAnimations.Select(animation => animation.Name));
        Assert.Single(twice.Buffers);
        Assert.Equal(text, Text(file.ParseJson()));

        var apart = Sample("leg.gltf").Append([Kneel]).Append([Nod]);
        Assert.Equal(2, apart.Buffers.Count);
    }

    [Fact]
    public void A_file_without_any_data_gets_its_first_buffer()
    {
        var file = GltfFile.Read(folder.Write("bare.gltf", """{"asset":{"version":"2.0"},"scenes":[{"nodes":[0]}],"nodes":[{"name":"crane"}]}"""));
        var after = file.Append([new GltfClip("slew", [0, 1], [new GltfTrack(0, Rotations: [Quaternion.Identity, QuarterTurn])])]);
        after.Write(folder["crane.glb"]);
        var model = GltfFile.Read(folder["crane.glb"]).Model;
        Assert.Equal(QuarterTurn, model.LogicalNodes[0].GetLocalTransform(model.LogicalAnimations[0], 1).GetDecomposed().Rotation);
    }

    [Fact]
    public void Clips_that_cannot_be_written_are_refused_with_clip_and_node()
    {
        Refuse(Nod with { Name = " " }, "no name");
        Refuse(Nod with { Times = [] }, "no times");
        Refuse(Nod with { Times = [0, 0] }, "key 1");
        Refuse(Nod with { Times = [-1, 0] }, "key 0");
        Refuse(Nod with { Times = [0, float.NaN] }, "key 1");
        Refuse(Nod with { Times = [0, 1, 2] }, "2 values");
        Refuse(Nod with { Tracks = [] }, "moves nothing");
        Refuse(Nod with { Tracks = [new GltfTrack(SampleFile.Ankle)] }, "moves nothing");
        Refuse(Nod with { Tracks = [new GltfTrack(11, [default, default])] }, "11");
        Refuse(Nod with { Tracks = [.. Nod.Tracks, .. Nod.Tracks] }, "two tracks for the rotation");
        Refuse(Nod with { Tracks = [new GltfTrack(SampleFile.Ankle, Rotations: [Quaternion.Identity, default])] }, "'ankle' at clip 'nod' has a rotation of length 0 at key 1");
        Refuse(Nod with { Tracks = [new GltfTrack(SampleFile.Toes, [default, new Vector3(0, float.NaN, 0)])] }, "'node_4' at clip 'nod' has a NaN or infinity in the translation of key 1");
        Refuse(Nod with { Tracks = [new GltfTrack(SampleFile.Toes, Scales: [new Vector3(float.PositiveInfinity), default])] }, "scale of key 0");
        Assert.Contains("two clips", Assert.Throws<BadInputException>(() => Sample("leg.glb").Append([Nod, Nod])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_NaN_is_found_wherever_it_hides_in_a_long_track()
    {
        foreach (var at in (int[])[0, 7, 63, 64, 511, 998, 999])
        {
            var values = new Vector3[1000];
            values[at].Y = float.NaN;
            Refuse(new GltfClip("long", [.. Enumerable.Range(0, 1000).Select(i => i / 30f)], [new GltfTrack(SampleFile.Ankle, values)]), $"key {at}.");
        }
    }

    [Fact]
    public void An_animated_node_with_a_sheared_matrix_is_refused()
    {
        var file = GltfFile.Read(folder.Write("a.gltf", """{"asset":{"version":"2.0"},"nodes":[{"name":"elbow","matrix":[1,0,0,0,0.5,1,0,0,0,0,1,0,0,0,0,1]}]}"""));
        Assert.Equal("elbow", Assert.Throws<BadInputException>(() => file.Append([new GltfClip("nod", [0], [new GltfTrack(0, [default])])])).Node);
    }

    private static GltfClip Kneel => new("kneel", [0, 0.1f, 0.7f],
    [
        new GltfTrack(SampleFile.Pelvis, [new(0, 0.9f, 0), new(0, 0.7f, 0), new(0, 0.45f, 0.1f)]),
        new GltfTrack(SampleFile.Knee, [new(0.1f, -0.45f, 0), new(0.1f, -0.45f, 0), new(0.1f, -0.45f, 0)], [QuarterTurn, Quaternion.Identity, QuarterTurn], [Vector3.One, new(1.1f), Vector3.One]),
    ]);

    private static GltfClip Nod => new("nod", [0.05f, 1.5f], [new GltfTrack(SampleFile.Ankle, Rotations: [Quaternion.Identity, QuarterTurn])]);

    private static string Text(JsonNode? node) => node?.ToJsonString() ?? "null";

    private void Refuse(GltfClip clip, string words) =>
        Assert.Contains(words, Assert.Throws<BadInputException>(() => Sample("leg.glb").Append([clip])).Message, StringComparison.Ordinal);

    private GltfFile Sample(string name) =>
        GltfFile.Read(name.EndsWith(".glb", StringComparison.Ordinal) ? folder.Write(name, SampleFile.Glb()) : folder.Write(name, SampleFile.GltfWithDataUri()));

    private GltfFile AppendAndWrite(GltfFile file, string target)
    {
        file.Append([Kneel, Nod]).Write(folder[target]);
        return GltfFile.Read(folder[target]);
    }

    private static byte[] BytesOf(GltfFile file, int accessor)
    {
        var json = file.ParseJson();
        var (item, view) = (json["accessors"]![accessor]!, json["bufferViews"]![(int)json["accessors"]![accessor]!["bufferView"]!]!);
        Assert.Null(item["byteOffset"]);
        return file.Buffers[(int)view["buffer"]!].Bytes.Slice((int)view["byteOffset"]!, (int)view["byteLength"]!).ToArray();
    }
}
