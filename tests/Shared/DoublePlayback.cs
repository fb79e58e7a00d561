using System.Buffers.Binary;
using System.Text.Json.Nodes;

namespace Condyle.Tests.Shared;

/// <summary>
/// Plays a file's animations in double precision, straight from the text of the glTF 2.0 specification (appendix C, "Animation sampler interpolation
/// modes", and section 3.5.3, "Transformations"). Written for the tests, on its own, so that it can't share a mistake with what it checks.
/// It reads .glb and .gltf (data URIs, files beside it); accessors are floats without sparse values.
/// </summary>
internal sealed class DoublePlayback
{
    private readonly JsonNode json;
    private readonly List<byte[]> buffers = [];
    private readonly Dictionary<int, double[][]> numbers = [];
    private readonly int[] parents;

    private DoublePlayback(JsonNode json) => (this.json, parents) = (json, ParentsOf(json));

    public int NodeCount => parents.Length;

    public int NodeNamed(string name) => Array.FindIndex([.. List(json, "nodes")], node => node["name"]?.GetValue<string>() == name);

    public static DoublePlayback Open(string path)
    {
        var bytes = File.ReadAllBytes(path);
        byte[] binary = [];
        if (bytes.AsSpan().StartsWith("glTF"u8))
        {
            var length = BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(12));
            binary = bytes.Length > 28 + length ? bytes[(28 + length)..] : [];
            bytes = bytes[20..(20 + length)];
        }
        var playback = new DoublePlayback(JsonNode.Parse(bytes)!);
        foreach (var buffer in List(playback.json, "buffers"))
        {
            var uri = buffer["uri"]?.GetValue<string>();
            playback.buffers.Add(uri is null ? binary
                : uri.StartsWith("data:", StringComparison.Ordinal) ? Convert.FromBase64String(uri[(uri.IndexOf(',') + 1)..])
                : File.ReadAllBytes(Path.Combine(Path.GetDirectoryName(path)!, Uri.UnescapeDataString(uri))));
        }
        return playback;
    }

    /// <summary>The world matrix of every node at a time of a clip (null: at rest): 16 numbers, column after column.</summary>
    public double[][] World(string? clip, double time)
    {
        var channels = new Dictionary<(int Node, string Path), double[]>();
        if (clip is not null)
        {
            var animation = List(json, "animations").First(item => item["name"]?.GetValue<string>() == clip);
            foreach (var channel in List(animation, "channels"))
            {
                var path = channel["target"]!["path"]!.GetValue<string>();
                var sampler = animation["samplers"]![channel["sampler"]!.GetValue<int>()]!;
                if (path != "weights")
                    channels[(channel["target"]!["node"]!.GetValue<int>(), path)] = Sample(sampler, path == "rotation", time);
            }
        }

        var world = new double[parents.Length][];
        for (var node = 0; node < parents.Length; node++)
            Resolve(node);
        return world;

        double[] Resolve(int node) => world[node] ??= parents[node] < 0 ? Local(node, channels) : Product(Resolve(parents[node]), Local(node, channels));
    }

    private double[] Local(int node, Dictionary<(int Node, string Path), double[]> channels)
    {
        var item = json["nodes"]![node]!;
        if (item["matrix"] is JsonArray matrix)
            return [.. matrix.Select(number => number!.GetValue<double>())];
        var t = Channel("translation", [0, 0, 0]);
        var q = Channel("rotation", [0, 0, 0, 1]);
        var s = Channel("scale", [1, 1, 1]);
        var length = Math.Sqrt(q.Sum(c => c * c));
        var (x, y, z, w) = (q[0] / length, q[1] / length, q[2] / length, q[3] / length);
        return
        [
            s[0] * (1 - 2 * (y * y + z * z)), s[0] * 2 * (x * y + z * w), s[0] * 2 * (x * z - y * w), 0,
            s[1] * 2 * (x * y - z * w), s[1] * (1 - 2 * (x * x + z * z)), s[1] * 2 * (y * z + x * w), 0,
            s[2] * 2 * (x * z + y * w), s[2] * 2 * (y * z - x * w), s[2] * (1 - 2 * (x * x + y * y)), 0,
            t[0], t[1], t[2], 1,
        ];

        double[] Channel(string path, double[] absent) => channels.TryGetValue((node, path), out var animated) ? animated
            : item[path] is JsonArray rest ? [.. rest.Select(number => number!.GetValue<double>())] : absent;
    }

    private double[] Sample(JsonNode sampler, bool isRotation, double time)
    {
        var times = Floats(sampler["input"]!.GetValue<int>());
        var values = Floats(sampler["output"]!.GetValue<int>());
        var mode = sampler["interpolation"]?.GetValue<string>() ?? "LINEAR";
        double At(int key) => times[key][0];
        double[] Value(int key) => mode == "CUBICSPLINE" ? values[3 * key + 1] : values[key];

        if (time <= At(0))
            return Value(0);
        if (time >= At(times.Length - 1))
            return Value(times.Length - 1);
        var next = Enumerable.Range(0, times.Length).First(key => At(key) > time);
        var span = At(next) - At(next - 1);
        var u = (time - At(next - 1)) / span;
        return mode switch
        {
            "STEP" => Value(next - 1),
            "CUBICSPLINE" => Hermite(Value(next - 1), values[3 * (next - 1) + 2], Value(next), values[3 * next], u, span),
            _ when isRotation => Slerp(Value(next - 1), Value(next), u),
            _ => Mix(Value(next - 1), 1 - u, Value(next), u),
        };
    }

    private double[][] Floats(int index)
    {
        if (numbers.TryGetValue(index, out var known))
            return known;
        var accessor = json["accessors"]![index]!;
        var view = json["bufferViews"]![accessor["bufferView"]!.GetValue<int>()]!;
        var components = accessor["type"]!.GetValue<string>() switch { "SCALAR" => 1, "VEC3" => 3, _ => 4 };
        var start = (view["byteOffset"]?.GetValue<int>() ?? 0) + (accessor["byteOffset"]?.GetValue<int>() ?? 0);
        var stride = view["byteStride"]?.GetValue<int>() ?? 4 * components;
        var bytes = buffers[view["buffer"]!.GetValue<int>()];
        return numbers[index] = [.. Enumerable.Range(0, accessor["count"]!.GetValue<int>()).Select(element => Enumerable.Range(0, components)
            .Select(component => (double)BinaryPrimitives.ReadSingleLittleEndian(bytes.AsSpan(start + element * stride + 4 * component))).ToArray())];
    }

    private static double[] Slerp(double[] a, double[] b, double u)
    {
        var dot = a.Zip(b, (x, y) => x * y).Sum();
        var sign = dot < 0 ? -1 : 1;
        var angle = Math.Acos(Math.Min(1, Math.Abs(dot)));
        return angle < 1e-9 ? Mix(a, 1 - u, b, sign * u) : Mix(a, Math.Sin((1 - u) * angle) / Math.Sin(angle), b, sign * Math.Sin(u * angle) / Math.Sin(angle));
    }

    private static double[] Hermite(double[] a, double[] outTangent, double[] b, double[] inTangent, double u, double span)
    {
        var (u2, u3) = (u * u, u * u * u);
        var points = Mix(a, 2 * u3 - 3 * u2 + 1, b, 3 * u2 - 2 * u3);
        var tangents = Mix(outTangent, span * (u3 - 2 * u2 + u), inTangent, span * (u3 - u2));
        return Mix(points, 1, tangents, 1);
    }

    private static double[] Mix(double[] a, double wa, double[] b, double wb) => [.. a.Zip(b, (x, y) => wa * x + wb * y)];

    private static double[] Product(double[] a, double[] b) => [.. Enumerable.Range(0, 16)
        .Select(i => Enumerable.Range(0, 4).Sum(k => a[4 * k + i % 4] * b[4 * (i / 4) + k]))];

    private static int[] ParentsOf(JsonNode json)
    {
        var nodes = List(json, "nodes").ToList();
        var parents = Enumerable.Repeat(-1, nodes.Count).ToArray();
        for (var node = 0; node < parents.Length; node++)
        {
            foreach (var child in nodes[node]["children"] as JsonArray ?? [])
                parents[child!.GetValue<int>()] = node;
        }
        return parents;
    }

    private static IEnumerable<JsonNode> List(JsonNode owner, string name) => (owner[name] as JsonArray ?? []).Select(item => item!);
}
