using System.Buffers.Binary;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;

namespace Condyle.Runtime.Tests.Gltf;

/// <summary>
/// A small docker's leg with everything that makes files differ: matrix nodes, a mirrored scale, a moved root, two skins, a bind pose that isn't the rest,
/// a prop and a camera, nodes without names and with one name twice, extras, odd spellings of numbers, clips of its own in all three interpolations,
/// and data whose length is no multiple of four.
/// </summary>
internal sealed class SampleFile
{
    public const int Rig = 0, Pelvis = 1, Knee = 2, Ankle = 3, Toes = 4, OtherKnee = 5, Body = 6, Lamp = 7, Wick = 8, Eye = 9, Boot = 10;

    private readonly MemoryStream data = new();
    private readonly List<string> views = [];
    private readonly List<string> accessors = [];

    private SampleFile() => Json = Text();

    /// <summary>The JSON with %BUFFERS% where the buffers go.</summary>
    private string Json { get; }

    private byte[] Data => data.ToArray();

    public static byte[] Glb()
    {
        var file = new SampleFile();
        return Glb(file.Json.Replace("%BUFFERS%", $$"""{ "byteLength": {{file.Data.Length}} }""", StringComparison.Ordinal), file.Data);
    }

    public static string GltfWithDataUri()
    {
        var file = new SampleFile();
        var uri = "data:application/octet-stream;base64," + Convert.ToBase64String(file.Data);
        return file.Json.Replace("%BUFFERS%", $$"""{ "byteLength": {{file.Data.Length}}, "uri": "{{uri}}" }""", StringComparison.Ordinal);
    }

    public static string GltfWithFile(string uri, out byte[] content)
    {
        var file = new SampleFile();
        content = file.Data;
        return file.Json.Replace("%BUFFERS%", $$"""{ "byteLength": {{file.Data.Length}}, "uri": "{{uri}}" }""", StringComparison.Ordinal);
    }

    /// <summary>A container around any JSON and data, padded as the standard wants it.</summary>
    public static byte[] Glb(string json, byte[]? binary)
    {
        var text = Encoding.UTF8.GetBytes(json);
        var textLength = (text.Length + 3) & ~3;
        var binaryLength = ((binary?.Length ?? 0) + 3) & ~3;
        var bytes = new byte[20 + textLength + (binary is null ? 0 : 8 + binaryLength)];
        "glTF"u8.CopyTo(bytes);
        Word(4, 2);
        Word(8, bytes.Length);
        Word(12, textLength);
        "JSON"u8.CopyTo(bytes.AsSpan(16));
        bytes.AsSpan(20, textLength).Fill((byte)' ');
        text.CopyTo(bytes, 20);
        if (binary is null)
            return bytes;
        Word(20 + textLength, binaryLength);
        "BIN\0"u8.CopyTo(bytes.AsSpan(24 + textLength));
        binary.CopyTo(bytes, 28 + textLength);
        return bytes;

        void Word(int at, int value) => BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(at), value);
    }

    private int Floats(string type, float[] values, string further = "") => Add(type, 5126, values.Length / Components(type), MemoryMarshal.AsBytes(values.AsSpan()), further);

    private int Bytes(string type, byte[] values) => Add(type, 5121, values.Length / Components(type), values, "");

    private int Add(string type, int componentType, int count, ReadOnlySpan<byte> bytes, string further)
    {
        data.Write(new byte[-(int)data.Length & 3]);
        views.Add($$"""{ "buffer": 0, "byteOffset": {{data.Length}}, "byteLength": {{bytes.Length}} }""");
        data.Write(bytes);
        accessors.Add($$"""{ "bufferView": {{views.Count - 1}}, "componentType": {{componentType}}, "count": {{count}}, "type": "{{type}}"{{further}} }""");
        return accessors.Count - 1;
    }

    private int Times(params float[] seconds) =>
        Floats("SCALAR", seconds, string.Create(CultureInfo.InvariantCulture, $", \"min\": [{(double)seconds[0]}], \"max\": [{(double)seconds[^1]}]"));

    private static int Components(string type) => type switch { "SCALAR" => 1, "VEC3" => 3, "VEC4" => 4, _ => 16 };

    private string Text()
    {
        var position = Floats("VEC3", [0, 0, 0, 0.25f, 0, 0, 0, 0.5f, 0], """, "min": [0, 0, 0], "max": [0.25, 0.5, 0]""");
        var weights = Floats("VEC4", [1, 0, 0, 0, 0.5f, 0.5f, 0, 0, 1, 0, 0, 0]);
        var legBind = Floats("MAT4", [.. Moved(0, -0.95f, 0), .. Moved(-0.1f, -0.5f, 0), .. Moved(-0.1f, -0.05f, 0.02f)]);
        var bootBind = Floats("MAT4", [.. Moved(-0.1f, -0.05f, 0), .. Moved(-0.1f, 0, -0.12f)]);
        var keys = Times(0, 0.4f, 1.1f);
        var turns = Floats("VEC4", [0, 0, 0, 1, 0, 0.6f, 0, 0.8f, 0.6f, 0, 0, 0.8f]);
        var steps = Floats("VEC3", [0, 0.9f, 0, 0.1f, 0.95f, 0, 0, 0.9f, 0.2f]);
        var curve = Floats("VEC3", [0, 0, 0, 0, -0.4f, 0, 0.1f, 0, 0, 0, 0.1f, 0, 0, -0.35f, 0.1f, 0, 0, 0.2f, 0, 0, 0, 0, -0.4f, 0, 0, 0, 0]);
        var joints = Bytes("VEC4", [0, 0, 0, 0, 0, 1, 0, 0, 2, 0, 0, 0]);
        var bootJoints = Bytes("VEC4", [0, 0, 0, 0, 0, 1, 0, 0, 1, 0, 0, 0]);
        data.WriteByte(7);

        return $$"""
        {
          "asset": { "version": "2.0", "generator": "a modeller's exporter", "extras": { "batch": [1.0, 2e-1, 0.10000000000000000555, -0.0, 12345678901234567890] } },
          "scene": 0,
          "scenes": [ { "name": "quay", "nodes": [0, 6, 10] } ],
          "nodes": [
            { "name": "rig", "matrix": [0.0, 0, -2, 0, 0, 2, 0, 0, 2, 0, 0, 0, 3, 0.25, -1.0, 1], "children": [1] },
            { "name": "pelvis", "translation": [0, 0.90, 0], "rotation": [0.5, -0.5, 0.5, 0.5], "children": [2, 5, 9], "extras": { "team": "dôck", "é\"\n": null } },
            { "name": "knee", "matrix": [1, 0, 0, 0, 0, 0.8, 0.6, 0, 0, -0.6, 0.8, 0, 0.1, -0.45, 0, 1], "children": [3] },
            { "name": "ankle", "translation": [0, -4.5e-1, 2E-2], "scale": [1, -1, 1], "children": [4, 7] },
            { "translation": [0, 0, 0.12] },
            { "name": "knee", "translation": [-0.1, -0.45, 0], "rotation": [0, 0, 0.6, 0.8] },
            { "name": "body", "mesh": 0, "skin": 0 },
            { "name": "lamp", "mesh": 1, "translation": [0, 0.1, 0], "children": [8], "extras": 5 },
            { "name": "wick", "translation": [0, 0.05, 0] },
            { "name": "eye", "camera": 0, "translation": [0, 1, -3] },
            { "name": "boot", "mesh": 2, "skin": 1 }
          ],
          "cameras": [ { "type": "perspective", "perspective": { "yfov": 0.7, "znear": 0.1 } } ],
          "skins": [
            { "name": "leg", "joints": [1, 2, 3], "inverseBindMatrices": {{legBind}}, "skeleton": 1 },
            { "joints": [3, 4], "inverseBindMatrices": {{bootBind}} }
          ],
          "meshes": [
            { "name": "skin", "primitives": [ { "attributes": { "POSITION": {{position}}, "JOINTS_0": {{joints}}, "WEIGHTS_0": {{weights}} } } ] },
            { "name": "glass", "primitives": [ { "attributes": { "POSITION": {{position}} } } ] },
            { "name": "leather", "primitives": [ { "attributes": { "POSITION": {{position}}, "JOINTS_0": {{bootJoints}}, "WEIGHTS_0": {{weights}} } } ] }
          ],
          "animations": [ {
            "name": "wave",
            "channels": [
              { "sampler": 0, "target": { "node": 3, "path": "rotation" } },
              { "sampler": 1, "target": { "node": 1, "path": "translation" } },
              { "sampler": 2, "target": { "node": 5, "path": "translation" } }
            ],
            "samplers": [
              { "input": {{keys}}, "output": {{turns}} },
              { "input": {{keys}}, "output": {{steps}}, "interpolation": "STEP" },
              { "input": {{keys}}, "output": {{curve}}, "interpolation": "CUBICSPLINE" }
            ]
          } ],
          "accessors": [ {{string.Join(", ", accessors)}} ],
          "bufferViews": [ {{string.Join(", ", views)}} ],
          "buffers": [ %BUFFERS% ]
        }
        """;
    }

    private static float[] Moved(float x, float y, float z) => [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, x, y, z, 1];
}
