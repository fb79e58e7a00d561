using System.Runtime.CompilerServices;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Gltf.Writing;

/// <summary>
/// Adds animations at the level of JSON and bytes. A clip's numbers stand in one buffer view: times, which samplers share, and one array a channel.
/// </summary>
internal sealed class ClipAppender
{
    private readonly GltfFile file;
    private readonly JsonObject json;
    private readonly List<ReadOnlyMemory<byte>> added = [];
    private readonly int bufferIndex;
    private long newLength;

    private ClipAppender(GltfFile file)
    {
        this.file = file;
        json = file.ParseJson();
        var inside = file.Buffers.Index().FirstOrDefault(buffer => buffer.Item.Home == BufferHome.Inside, (file.Buffers.Count, null!));
        bufferIndex = inside.Item1;
        newLength = inside.Item2?.Length ?? 0;
    }

    public static GltfFile Append(GltfFile file, IReadOnlyList<GltfClip> clips, bool replace)
    {
        if (clips.Count == 0)
            return file;
        var appender = new ClipAppender(file);
        var tree = NodeTree.Of(file);
        string?[] names = [.. tree.Nodes.Select(node => node.Node)];
        foreach (var clip in clips)
            ClipChecks.Check(file.Path, clip, names);
        if (clips.GroupBy(clip => clip.Name, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1) is { } twice)
            throw new BadInputException(file.Path, $"two clips are named '{twice.Key}'", "Give each clip its own name");

        foreach (var node in clips.SelectMany(clip => clip.Tracks).Select(track => track.Node).Distinct())
            appender.ReplaceMatrix(node, tree.Nodes[node]);
        foreach (var clip in clips)
            appender.Add(clip, replace);
        return file.With(appender.json, appender.Buffers());
    }

    private void ReplaceMatrix(int index, JsonSpot spot)
    {
        var node = (JsonObject)json["nodes"]![index]!;
        if (node["matrix"] is null)
            return;
        var (t, r, s, _) = NodeTransform.Of(spot);
        node.Remove("matrix");
        node["translation"] = new JsonArray(t.X, t.Y, t.Z);
        node["rotation"] = new JsonArray(r.X, r.Y, r.Z, r.W);
        node["scale"] = new JsonArray(s.X, s.Y, s.Z);
    }

    private void Add(GltfClip clip, bool replace)
    {
        var start = Align(newLength);
        if (start > newLength)
            added.Add(new byte[start - newLength]);
        newLength = start;
        var view = List("bufferViews").Count;
        var (samplers, channels) = (new JsonArray(), new JsonArray());
        var timesOf = new Dictionary<int[], int>(KeyListComparer.Instance);
        int? timesOfAll = null;
        foreach (var track in clip.Tracks)
        {
            AddChannel(track.Node, "translation", track.Translations, track.TranslationKeys, "VEC3");
            AddChannel(track.Node, "rotation", track.Rotations, track.RotationKeys, "VEC4");
            AddChannel(track.Node, "scale", track.Scales, track.ScaleKeys, "VEC3");
            AddChannel(track.Node, "weights", track.Weights, null, "SCALAR");
        }
        List("bufferViews").Add(new JsonObject { ["buffer"] = bufferIndex, ["byteOffset"] = start, ["byteLength"] = newLength - start });
        var animation = new JsonObject { ["name"] = clip.Name, ["channels"] = channels, ["samplers"] = samplers };
        if (clip.Extras is { } extras)
            animation["extras"] = extras.DeepClone();
        Place(animation, clip.Name, replace);

        void AddChannel<T>(int node, string path, T[]? values, int[]? keys, string kind) where T : unmanaged
        {
            if (values is null)
                return;
            var times = Times(keys);
            var output = AddAccessor(view, start, values, kind);
            channels.Add(new JsonObject { ["sampler"] = samplers.Count, ["target"] = new JsonObject { ["node"] = node, ["path"] = path } });
            samplers.Add(new JsonObject { ["input"] = times, ["output"] = output.Index, ["interpolation"] = "LINEAR" });
        }

        // Samplers with keys at the same times share them.
        int Times(int[]? keys)
        {
            if (keys is null)
                return timesOfAll ??= AddTimes(clip.Times);
            if (!timesOf.TryGetValue(keys, out var index))
                timesOf[keys] = index = AddTimes(Array.ConvertAll(keys, key => clip.Times[key]));
            return index;
        }

        int AddTimes(float[] times)
        {
            var accessor = AddAccessor(view, start, times, "SCALAR");
            // Spelt out as doubles, the bounds equal the stored floats however they are read.
            accessor.Json["min"] = new JsonArray((double)times[0]);
            accessor.Json["max"] = new JsonArray((double)times[^1]);
            return accessor.Index;
        }
    }

    private (int Index, JsonObject Json) AddAccessor<T>(int view, long viewStart, T[] values, string kind) where T : unmanaged
    {
        var accessor = new JsonObject
        {
            ["bufferView"] = view,
            ["byteOffset"] = newLength - viewStart,
            ["componentType"] = Accessor.Float,
            ["count"] = values.Length,
            ["type"] = kind,
        };
        added.Add(ArrayBytes<T>.Of(values));
        newLength += (long)values.Length * Unsafe.SizeOf<T>();
        var accessors = List("accessors");
        accessors.Add(accessor);
        return (accessors.Count - 1, accessor);
    }

    private void Place(JsonObject animation, string name, bool replace)
    {
        var animations = List("animations");
        for (var i = 0; i < animations.Count; i++)
        {
            if (animations[i]!["name"] is not JsonValue value || !value.TryGetValue(out string? taken) || taken != name)
                continue;
            if (!replace)
            {
                throw new BadInputException(file.Path, $"the file has an animation '{name}' already", "Name the clip differently, or say that it replaces that one",
                    place: $"/animations/{i}");
            }
            animations[i] = animation;
            return;
        }
        animations.Add(animation);
    }

    private List<GltfBuffer> Buffers()
    {
        if (newLength > Array.MaxLength)
            throw new BadInputException(file.Path, $"with these clips it would hold {newLength} bytes of data, more than {Array.MaxLength}", "Write fewer clips to one file");
        var buffers = file.Buffers.ToList();
        if (bufferIndex < buffers.Count)
        {
            var inside = buffers[bufferIndex];
            buffers[bufferIndex] = inside with { Home = BufferHome.Inside, Added = [.. inside.Added, .. added] };
            json["buffers"]![bufferIndex]!["byteLength"] = newLength;
        }
        else
        {
            buffers.Add(new GltfBuffer(ReadOnlyMemory<byte>.Empty, BufferHome.Inside) { Added = [.. added] });
            List("buffers").Add(new JsonObject { ["byteLength"] = newLength });
        }

        return buffers;
    }

    private JsonArray List(string name)
    {
        if (json[name] is not JsonArray list)
            json[name] = list = [];
        return list;
    }

    private static long Align(long length) => (length + 3) & ~3L;

    private sealed class KeyListComparer : IEqualityComparer<int[]>
    {
        public static readonly KeyListComparer Instance = new();

        public bool Equals(int[]? a, int[]? b) => a.AsSpan().SequenceEqual(b);

        public int GetHashCode(int[] keys)
        {
            var hash = new HashCode();
            foreach (var key in keys)
                hash.Add(key);
            return hash.ToHashCode();
        }
    }
}
