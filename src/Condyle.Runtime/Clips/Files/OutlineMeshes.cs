using System.Buffers.Binary;
using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Clips.Files;

/// <summary>Line meshes of outlines, each made once for each colour, with their data in one buffer of their own.</summary>
internal sealed class OutlineMeshes(JsonObject json)
{
    private const string Unlit = "KHR_materials_unlit";

    private const int Lines = 1;

    private readonly MemoryStream data = new();
    private readonly int view = (json["bufferViews"] as JsonArray)?.Count ?? 0;
    private readonly Dictionary<(ControlShape, float, Axis, Tint), int> meshes = [];
    private readonly Dictionary<(ControlShape, float, Axis), int> positions = [];
    private readonly Dictionary<Tint, int> materials = [];

    /// <summary>The index of the mesh that shows a control.</summary>
    public int For(ControlLook look)
    {
        if (meshes.TryGetValue((look.Shape, look.Size, look.Facing, look.Tint), out var known))
            return known;
        var primitive = new JsonObject { ["mode"] = Lines, ["attributes"] = new JsonObject { ["POSITION"] = Positions(look) }, ["material"] = Material(look.Tint) };
        return meshes[(look.Shape, look.Size, look.Facing, look.Tint)] = Add("meshes", new JsonObject
        {
            ["name"] = $"{look.Shape}_{look.Tint}".ToLowerInvariant(),
            ["primitives"] = new JsonArray(primitive),
        });
    }

    /// <summary>The data of all of them, for which the JSON has a buffer and a view from now on.</summary>
    public GltfBuffer Buffer()
    {
        var bytes = data.ToArray();
        var buffer = Add("buffers", new JsonObject { ["byteLength"] = bytes.Length, ["uri"] = "data:application/octet-stream;base64," + Convert.ToBase64String(bytes) });
        Add("bufferViews", new JsonObject { ["buffer"] = buffer, ["byteLength"] = bytes.Length, ["byteStride"] = 12, ["target"] = 34962 });
        return new GltfBuffer(bytes, BufferHome.DataUri);
    }

    private int Positions(ControlLook look)
    {
        if (positions.TryGetValue((look.Shape, look.Size, look.Facing), out var known))
            return known;
        var points = Outlines.Of(look.Shape, look.Size, look.Facing);
        var start = data.Length;
        Span<byte> word = stackalloc byte[4];
        foreach (var point in points)
        {
            for (var axis = 0; axis < 3; axis++)
            {
                BinaryPrimitives.WriteSingleLittleEndian(word, point[axis]);
                data.Write(word);
            }
        }

        return positions[(look.Shape, look.Size, look.Facing)] = Add("accessors", new JsonObject
        {
            ["bufferView"] = view,
            ["byteOffset"] = start,
            ["componentType"] = Accessor.Float,
            ["count"] = points.Length,
            ["type"] = "VEC3",
            ["min"] = Numbers(points.Aggregate(Vector3.Min)),
            ["max"] = Numbers(points.Aggregate(Vector3.Max)),
        });
    }

    private int Material(Tint tint)
    {
        if (materials.TryGetValue(tint, out var known))
            return known;
        Use(Unlit);
        var (red, green, blue) = Colour(tint);
        return materials[tint] = Add("materials", new JsonObject
        {
            ["name"] = $"tint_{tint}".ToLowerInvariant(),
            ["pbrMetallicRoughness"] = new JsonObject { ["baseColorFactor"] = new JsonArray(red, green, blue, 1), ["metallicFactor"] = 0 },
            ["extensions"] = new JsonObject { [Unlit] = new JsonObject() },
        });
    }

    /// <summary>Linear light, as glTF has its factors.</summary>
    private static (double Red, double Green, double Blue) Colour(Tint tint) => tint switch
    {
        Tint.Amber => (0.9, 0.45, 0.05),
        Tint.Teal => (0.03, 0.42, 0.4),
        Tint.Violet => (0.3, 0.1, 0.6),
        Tint.Moss => (0.25, 0.32, 0.06),
        Tint.Sand => (0.62, 0.45, 0.26),
        Tint.Coral => (0.85, 0.2, 0.16),
        Tint.Slate => (0.13, 0.18, 0.24),
        Tint.White => (0.9, 0.9, 0.9),
        _ => throw new ArgumentOutOfRangeException(nameof(tint), tint, "It is no tint."),
    };

    private void Use(string extension)
    {
        if (json["extensionsUsed"] is not JsonArray used)
            json["extensionsUsed"] = used = [];
        if (!used.Any(name => name is JsonValue value && value.TryGetValue(out string? text) && text == extension))
            used.Add(extension);
    }

    private int Add(string list, JsonObject item)
    {
        if (json[list] is not JsonArray items)
            json[list] = items = [];
        items.Add(item);
        return items.Count - 1;
    }

    // Spelt out as doubles, the bounds equal the stored floats however they are read.
    private static JsonArray Numbers(Vector3 vector) => new((double)vector.X, (double)vector.Y, (double)vector.Z);
}
