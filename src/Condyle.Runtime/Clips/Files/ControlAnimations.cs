using System.Buffers.Binary;
using System.Text.Json.Nodes;
using Condyle.Runtime.Baking;
using Condyle.Runtime.Gltf;

namespace Condyle.Runtime.Clips.Files;

/// <summary>Writes clips as animations of the nodes that stand for controls, switches, dials and choices. Keys and slopes are the clip's own; tracks of the same times share them.</summary>
internal sealed class ControlAnimations(JsonObject json, CompiledRig rig, Func<NodeUse, int, int> nodeOf)
{
    private readonly MemoryStream data = new();
    private readonly List<(float[] Times, int Accessor)> times = [];
    private int view;

    /// <summary>Adds the clips; gives the data of all of them, for which the JSON has a buffer and a view from then on, or none where there are no clips.</summary>
    public GltfBuffer? Add(IReadOnlyList<Clip> clips)
    {
        if (clips.Count == 0)
            return null;
        view = List("bufferViews").Count;
        List("bufferViews").Add(null); // its place, until its length is known
        foreach (var clip in clips)
            Add(clip.Layers.Count > 0 ? ClipSampling.Flat(rig, clip) : clip);
        var bytes = data.ToArray();
        List("bufferViews")[view] = new JsonObject { ["buffer"] = List("buffers").Count, ["byteLength"] = bytes.Length };
        List("buffers").Add(new JsonObject { ["byteLength"] = bytes.Length, ["uri"] = "data:application/octet-stream;base64," + Convert.ToBase64String(bytes) });
        return new GltfBuffer(bytes, BufferHome.DataUri);
    }

    private void Add(Clip clip)
    {
        var (channels, samplers) = (new JsonArray(), new JsonArray());
        foreach (var (name, track) in clip.Moves)
            Track(NodeUse.Control, rig.ControlIndex(name), "translation", track, value => [value.X, value.Y, value.Z]);
        foreach (var (name, track) in clip.Turned)
            Track(NodeUse.Control, rig.ControlIndex(name), "rotation", track, value => [value.X, value.Y, value.Z, value.W]);
        foreach (var (name, track) in clip.Scales)
            Track(NodeUse.Control, rig.ControlIndex(name), "scale", track, value => [value.X, value.Y, value.Z]);
        foreach (var (name, track) in clip.Switches)
            Track(NodeUse.Switch, rig.SwitchIndex(name), "translation", track, value => [value, 0, 0]);
        foreach (var (name, track) in clip.Dials)
            Track(NodeUse.Dial, rig.DialIndex(name), "translation", track, value => [value, 0, 0]);
        foreach (var (name, track) in clip.Choices)
            Channel(NodeUse.Choice, rig.ChoiceIndex(name), "translation", track.Times, OptionsOf(rig.ChoiceIndex(name), track), "VEC3", Interpolation.Step);

        var animation = new JsonObject { ["name"] = clip.Name, ["channels"] = channels, ["samplers"] = samplers };
        if (clip.Markers.Count > 0)
            animation["extras"] = new JsonObject { [ClipExtras.Markers] = ClipExtras.Listed(clip.Markers) };
        List("animations").Add(animation);

        void Track<T>(NodeUse use, int index, string path, CurveTrack<T> track, Func<T, float[]> numbers)
            where T : struct
        {
            var values = Enumerable.Range(0, track.Times.Count).SelectMany(key => track.Interpolation == Interpolation.Spline
                ? [.. numbers(track.SlopeInto(key)), .. numbers(track.Values[key]), .. numbers(track.SlopeOutOf(key))]
                : numbers(track.Values[key]));
            Channel(use, index, path, track.Times, values, path == "rotation" ? "VEC4" : "VEC3", track.Interpolation);
        }

        void Channel(NodeUse use, int index, string path, IReadOnlyList<float> at, IEnumerable<float> values, string kind, Interpolation mode)
        {
            channels.Add(new JsonObject { ["sampler"] = samplers.Count, ["target"] = new JsonObject { ["node"] = nodeOf(use, index), ["path"] = path } });
            samplers.Add(new JsonObject { ["input"] = Times([.. at]), ["output"] = Accessor([.. values], kind), ["interpolation"] = mode switch { Interpolation.Step => "STEP", Interpolation.Spline => "CUBICSPLINE", _ => "LINEAR" } });
        }
    }

    private IEnumerable<float> OptionsOf(int choice, Track<PickedOption> track) =>
        track.Values.SelectMany(picked => new float[] { rig.Choices[choice].Options.Index().First(option => option.Item == picked.Name).Index, 0, 0 });

    private int Times(float[] at)
    {
        if (times.Find(known => known.Times.AsSpan().SequenceEqual(at)) is { Times: not null } known)
            return known.Accessor;
        var accessor = Accessor(at, "SCALAR");
        // Spelt out as doubles, the bounds equal the stored floats however they are read.
        List("accessors")[accessor]!["min"] = new JsonArray((double)at[0]);
        List("accessors")[accessor]!["max"] = new JsonArray((double)at[^1]);
        times.Add((at, accessor));
        return accessor;
    }

    private int Accessor(float[] numbers, string kind)
    {
        List("accessors").Add(new JsonObject
        {
            ["bufferView"] = view,
            ["byteOffset"] = data.Length,
            ["componentType"] = Gltf.Reading.Accessor.Float,
            ["count"] = numbers.Length / Gltf.Reading.Accessor.ComponentsOf(kind),
            ["type"] = kind,
        });
        Span<byte> word = stackalloc byte[4];
        foreach (var number in numbers)
        {
            BinaryPrimitives.WriteSingleLittleEndian(word, number);
            data.Write(word);
        }

        return List("accessors").Count - 1;
    }

    private JsonArray List(string name)
    {
        if (json[name] is not JsonArray list)
            json[name] = list = [];
        return list;
    }
}
