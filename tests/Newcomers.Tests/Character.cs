using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json.Nodes;

namespace Newcomers.Tests;

/// <summary>A glTF file in the making: a body of a spine, an arm and a leg, and whatever a modeller or an exporter makes different about it.</summary>
internal sealed class Character
{
    /// <summary>Joint, the joint above it, and its place there in metres.</summary>
    private static readonly (string Name, string? Above, float X, float Y, float Z)[] Bones =
    [
        ("pelvis", null, 0, 1, 0.02f),
        ("chest", "pelvis", 0, 0.35f, 0.01f),
        ("head", "chest", 0, 0.35f, 0.02f),
        ("collar_left", "chest", 0.05f, 0.2f, 0),
        ("shoulder_left", "collar_left", 0.12f, 0, 0),
        ("elbow_left", "shoulder_left", 0.28f, 0, -0.01f),
        ("wrist_left", "elbow_left", 0.26f, 0, 0.01f),
        ("hip_right", "pelvis", -0.09f, -0.05f, 0),
        ("knee_right", "hip_right", 0, -0.43f, 0.02f),
        ("ankle_right", "knee_right", 0, -0.43f, -0.02f),
    ];

    private readonly MemoryStream data = new();

    public JsonObject Json { get; } = new()
    {
        ["asset"] = new JsonObject { ["version"] = "2.0" },
        ["scene"] = 0,
        ["scenes"] = new JsonArray(new JsonObject { ["nodes"] = new JsonArray() }),
    };

    /// <summary>The nodes of the body that was added last, by the names of its bones.</summary>
    public Dictionary<string, int> Body { get; private set; } = [];

    public JsonArray Nodes => List("nodes");

    private byte[] Data => data.ToArray();

    /// <summary>A body and a skin that all of it moves.</summary>
    public static Character Whole(Action<string, JsonObject>? change = null)
    {
        var character = new Character().AddBody(change: change);
        character.AddSkin(character.Body.Values);
        return character;
    }

    /// <summary>Adds a node under another one, or to the scene.</summary>
    public int AddNode(JsonObject node, int? under = null)
    {
        Nodes.Add(node);
        var index = Nodes.Count - 1;
        var owner = (JsonObject)(under is { } parent ? Nodes[parent]! : Json["scenes"]![0]!);
        var member = under is null ? "nodes" : "children";
        if (owner[member] is not JsonArray list)
            owner[member] = list = [];
        list.Add(index);
        return index;
    }

    /// <summary>Adds the bones.</summary>
    /// <param name="under">The node that the pelvis hangs under.</param>
    /// <param name="unit">How many of the file's units a metre is.</param>
    /// <param name="change">Told each bone and its node.</param>
    public Character AddBody(int? under = null, float unit = 1, Action<string, JsonObject>? change = null)
    {
        Body = [];
        foreach (var (name, above, x, y, z) in Bones)
        {
            var node = new JsonObject { ["name"] = name, ["translation"] = Numbers(x * unit, y * unit, z * unit) };
            change?.Invoke(name, node);
            Body[name] = AddNode(node, above is null ? under : Body[above]);
        }

        return this;
    }

    /// <summary>Adds a mesh of one small triangle a joint, the skin that moves it, and a node that shows it (or lets one show it that is there).</summary>
    public Character AddSkin(IEnumerable<int> joints, int? under = null, int? shownBy = null, bool withBind = true)
    {
        int[] all = [.. joints];
        var positions = all.SelectMany((_, i) => (float[])[i, 0, 0, i + 0.5f, 0, 0, i, 0.5f, 0]).ToArray();
        var attributes = new JsonObject
        {
            ["POSITION"] = Floats("VEC3", positions, (Numbers(0, 0, 0), Numbers(all.Length - 0.5f, 0.5f, 0))),
            ["JOINTS_0"] = Accessor("VEC4", 5121, all.Length * 3, [.. all.SelectMany((_, i) => Enumerable.Repeat<byte[]>([(byte)i, 0, 0, 0], 3).SelectMany(one => one))]),
            ["WEIGHTS_0"] = Floats("VEC4", [.. Enumerable.Repeat<float[]>([1, 0, 0, 0], all.Length * 3).SelectMany(one => one)]),
        };
        List("meshes").Add(new JsonObject { ["primitives"] = new JsonArray(new JsonObject { ["attributes"] = attributes }) });
        var skin = new JsonObject { ["joints"] = new JsonArray([.. all.Select(joint => (JsonNode)joint)]) };
        if (withBind)
            skin["inverseBindMatrices"] = Floats("MAT4", [.. all.SelectMany(_ => (float[])[1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1])]);
        List("skins").Add(skin);
        var shown = (JsonObject)Nodes[shownBy ?? AddNode(new JsonObject { ["name"] = $"skin_{List("skins").Count}" }, under)]!;
        (shown["mesh"], shown["skin"]) = (List("meshes").Count - 1, List("skins").Count - 1);
        return this;
    }

    /// <summary>Adds an animation of one channel with three keys.</summary>
    public Character AddClip(string? name, int node, string path, string interpolation, params float[] values)
    {
        var times = Floats("SCALAR", [0, 0.5f, 1.25f], (Numbers(0), Numbers(1.25f)));
        var kind = path == "weights" ? "SCALAR" : path == "rotation" ? "VEC4" : "VEC3";
        var clip = new JsonObject
        {
            ["channels"] = new JsonArray(new JsonObject { ["sampler"] = 0, ["target"] = new JsonObject { ["node"] = node, ["path"] = path } }),
            ["samplers"] = new JsonArray(new JsonObject { ["input"] = times, ["output"] = Floats(kind, values), ["interpolation"] = interpolation }),
        };
        if (name is not null)
            clip["name"] = name;
        List("animations").Add(clip);
        return this;
    }

    /// <summary>Adds numbers as an accessor and gives its index.</summary>
    public int Floats(string kind, float[] values, (JsonArray Least, JsonArray Greatest)? bounds = null)
    {
        var components = kind switch { "SCALAR" => 1, "VEC3" => 3, "VEC4" => 4, _ => 16 };
        var index = Accessor(kind, 5126, values.Length / components, MemoryMarshal.AsBytes(values.AsSpan()).ToArray());
        if (bounds is { } given)
            (List("accessors")[index]!["min"], List("accessors")[index]!["max"]) = (given.Least, given.Greatest);
        return index;
    }

    /// <summary>Adds bytes as a buffer view and gives its index.</summary>
    public int View(byte[] bytes)
    {
        data.Write(new byte[-(int)data.Length & 3]);
        List("bufferViews").Add(new JsonObject { ["buffer"] = 0, ["byteOffset"] = data.Length, ["byteLength"] = bytes.Length });
        data.Write(bytes);
        return List("bufferViews").Count - 1;
    }

    public JsonArray List(string name)
    {
        if (Json[name] is not JsonArray list)
            Json[name] = list = [];
        return list;
    }

    public byte[] Glb()
    {
        if (data.Length > 0)
            Json["buffers"] = new JsonArray(new JsonObject { ["byteLength"] = data.Length });
        var text = Encoding.UTF8.GetBytes(Json.ToJsonString());
        var (textLength, dataLength) = ((text.Length + 3) & ~3, ((int)data.Length + 3) & ~3);
        using var glb = new MemoryStream();
        using var writer = new BinaryWriter(glb);
        writer.Write("glTF"u8);
        writer.Write(2);
        writer.Write(28 + textLength + dataLength);
        writer.Write(textLength);
        writer.Write("JSON"u8);
        writer.Write(text);
        writer.Write([.. Enumerable.Repeat((byte)' ', textLength - text.Length)]);
        writer.Write(dataLength);
        writer.Write("BIN\0"u8);
        writer.Write(Data);
        writer.Write(new byte[dataLength - data.Length]);
        return glb.ToArray();
    }

    /// <summary>The text of a .gltf whose buffer is a data URI.</summary>
    public string Gltf() => Gltf("data:application/octet-stream;base64," + Convert.ToBase64String(Data), out _);

    /// <summary>The text of a .gltf whose buffer is a file.</summary>
    public string Gltf(string uri, out byte[] buffer)
    {
        buffer = Data;
        Json["buffers"] = new JsonArray(new JsonObject { ["byteLength"] = data.Length, ["uri"] = uri });
        return Json.ToJsonString();
    }

    public static JsonArray Numbers(params float[] values) => new([.. values.Select(value => (JsonNode)(double)value)]);

    private int Accessor(string kind, int componentType, int count, byte[] bytes)
    {
        List("accessors").Add(new JsonObject { ["bufferView"] = View(bytes), ["componentType"] = componentType, ["count"] = count, ["type"] = kind });
        return List("accessors").Count - 1;
    }
}
