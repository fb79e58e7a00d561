using System.Runtime.InteropServices;
using System.Text.Json.Nodes;

namespace Condyle.Runtime.Tests.Clips;

/// <summary>How numbers are stored in a file.</summary>
public enum Storage
{
    Floats,

    /// <summary>Signed words, normalised to −1 to 1.</summary>
    Words,

    /// <summary>An accessor without data of its own whose elements are all replaced one by one.</summary>
    Sparse,
}

/// <summary>A glTF file of nodes and one animation, as a program that animates nodes might save it.</summary>
public sealed class AnimatedFile(string clip = "wave")
{
    private readonly JsonArray nodes = [], accessors = [], views = [], samplers = [], channels = [];
    private readonly MemoryStream data = new();

    public JsonObject Animation { get; } = new() { ["name"] = clip };

    public int Node(string name, JsonObject? extras = null, int? parent = null)
    {
        var node = new JsonObject { ["name"] = name };
        if (extras is not null)
            node["extras"] = extras;
        nodes.Add(node);
        if (parent is { } above)
        {
            if (nodes[above]!["children"] is not JsonArray)
                nodes[above]!["children"] = new JsonArray();
            nodes[above]!["children"]!.AsArray().Add(nodes.Count - 1);
        }

        return nodes.Count - 1;
    }

    public JsonObject this[int node] => nodes[node]!.AsObject();

    public AnimatedFile Track(int node, string path, string interpolation, float[] times, float[] values, Storage storage = Storage.Floats) =>
        Track(new JsonObject { ["node"] = node, ["path"] = path }, path == "rotation" ? "VEC4" : "VEC3", interpolation, times, values, storage);

    public AnimatedFile Pointer(string pointer, string interpolation, float[] times, float[] values) => Track(
        new JsonObject { ["path"] = "pointer", ["extensions"] = new JsonObject { ["KHR_animation_pointer"] = new JsonObject { ["pointer"] = pointer } } }, "SCALAR", interpolation, times, values, Storage.Floats);

    public string Text()
    {
        if (channels.Count > 0)
            (Animation["channels"], Animation["samplers"]) = (channels.DeepClone(), samplers.DeepClone());
        var children = nodes.SelectMany(node => node!["children"]?.AsArray() ?? []).Select(child => child!.GetValue<int>()).ToHashSet();
        return new JsonObject
        {
            ["asset"] = new JsonObject { ["version"] = "2.0" },
            ["extensionsUsed"] = new JsonArray("KHR_animation_pointer"),
            ["scene"] = 0,
            ["scenes"] = new JsonArray(new JsonObject { ["nodes"] = new JsonArray([.. Enumerable.Range(0, nodes.Count).Where(node => !children.Contains(node)).Select(node => (JsonNode)node)]) }),
            ["nodes"] = nodes.DeepClone(),
            ["animations"] = channels.Count > 0 ? new JsonArray(Animation.DeepClone()) : new JsonArray(),
            ["accessors"] = accessors.DeepClone(),
            ["bufferViews"] = views.DeepClone(),
            ["buffers"] = new JsonArray(new JsonObject { ["byteLength"] = data.Length, ["uri"] = "data:application/octet-stream;base64," + Convert.ToBase64String(data.ToArray()) }),
        }.ToJsonString();
    }

    private AnimatedFile Track(JsonObject target, string kind, string interpolation, float[] times, float[] values, Storage storage)
    {
        var input = Accessor("SCALAR", 1, times, Storage.Floats);
        accessors[input]!["min"] = new JsonArray((double)times[0]);
        accessors[input]!["max"] = new JsonArray((double)times[^1]);
        var output = Accessor(kind, kind == "SCALAR" ? 1 : kind == "VEC3" ? 3 : 4, values, storage);
        channels.Add(new JsonObject { ["sampler"] = samplers.Count, ["target"] = target });
        samplers.Add(new JsonObject { ["input"] = input, ["output"] = output, ["interpolation"] = interpolation });
        return this;
    }

    private int Accessor(string kind, int components, float[] values, Storage storage)
    {
        var accessor = new JsonObject { ["componentType"] = storage == Storage.Words ? 5122 : 5126, ["count"] = values.Length / components, ["type"] = kind };
        switch (storage)
        {
            case Storage.Floats:
                accessor["bufferView"] = View(MemoryMarshal.AsBytes(values.AsSpan()));
                break;
            case Storage.Words:
                accessor["normalized"] = true;
                accessor["bufferView"] = View(MemoryMarshal.AsBytes(Array.ConvertAll(values, value => (short)MathF.Round(value * 32767)).AsSpan()));
                break;
            case Storage.Sparse:
                var indices = Enumerable.Range(0, values.Length / components).Select(index => (ushort)index).ToArray();
                accessor["sparse"] = new JsonObject
                {
                    ["count"] = indices.Length,
                    ["indices"] = new JsonObject { ["bufferView"] = View(MemoryMarshal.AsBytes(indices.AsSpan())), ["componentType"] = 5123 },
                    ["values"] = new JsonObject { ["bufferView"] = View(MemoryMarshal.AsBytes(values.AsSpan())) },
                };
                break;
        }

        accessors.Add(accessor);
        return accessors.Count - 1;
    }

    private int View(ReadOnlySpan<byte> bytes)
    {
        data.Write(new byte[-(int)data.Length & 3]);
        views.Add(new JsonObject { ["buffer"] = 0, ["byteOffset"] = data.Length, ["byteLength"] = bytes.Length });
        data.Write(bytes);
        return views.Count - 1;
    }
}
