using System.Numerics;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Profiles;

/// <summary>
/// Takes a skeleton and its motion into an engine's unit and up axis: every translation is scaled, and what hangs under nothing is turned. So each world place
/// is the delivered one, scaled and turned, and all other joints keep their rotations and scales.
/// </summary>
internal sealed class EngineSpace(EngineProfile profile)
{
    private static readonly Quaternion YToZ = new(MathF.Sqrt(0.5f), 0, 0, MathF.Sqrt(0.5f));

    private readonly Quaternion turn = profile.Up == Axis.Z ? YToZ : Quaternion.Identity;

    /// <summary>The skeleton of a file, in a file of its own.</summary>
    public GltfFile Skeleton(GltfFile delivered)
    {
        var json = JsonText.Parse(delivered.Path, System.Text.Encoding.UTF8.GetBytes(SkeletonFile.Extract(delivered))).AsObject();
        var tree = NodeTree.Of(delivered);
        foreach (var (index, item) in (json["nodes"] as JsonArray ?? []).Index())
        {
            var (node, (t, r, s, _)) = ((JsonObject)item!, NodeTransform.Of(tree.Nodes[index]));
            node.Remove("matrix");
            var isRoot = tree.Parents[index] < 0;
            Set(node, "translation", Translation(t, isRoot) is var move && move != Vector3.Zero ? [move.X, move.Y, move.Z] : null);
            Set(node, "rotation", Rotation(r, isRoot) is var turned && turned != Quaternion.Identity ? [turned.X, turned.Y, turned.Z, turned.W] : null);
            Set(node, "scale", s != Vector3.One ? [s.X, s.Y, s.Z] : null);
        }

        // Without bind matrices a skin would be bound elsewhere than it is.
        json.Remove("skins");
        return new GltfFile(delivered.Path, JsonText.Compact(json), [], new Dictionary<int, GltfBuffer>(), []);
    }

    /// <param name="track">A track of the delivered skeleton.</param>
    /// <param name="isRoot">Whether its node hangs under nothing.</param>
    /// <param name="isDifference">Whether it is the difference from a pose: that pose is turned already.</param>
    public GltfTrack Track(GltfTrack track, bool isRoot, bool isDifference) => track with
    {
        Translations = track.Translations is { } moves ? Array.ConvertAll(moves, move => Translation(move, isRoot)) : null,
        Rotations = track.Rotations is { } turns && isRoot && !isDifference ? Array.ConvertAll(turns, turned => Rotation(turned, isRoot)) : track.Rotations,
    };

    /// <summary>A way over the ground.</summary>
    public Vector3 Way(Vector3 metres) => Translation(metres, isRoot: true);

    private Vector3 Translation(Vector3 metres, bool isRoot) => (isRoot ? Vector3.Transform(metres, turn) : metres) * profile.UnitsPerMetre;

    private Quaternion Rotation(Quaternion rotation, bool isRoot) => isRoot && turn != Quaternion.Identity ? Quaternion.Normalize(turn * rotation) : rotation;

    private static void Set(JsonObject node, string member, float[]? numbers)
    {
        node.Remove(member);
        if (numbers is not null)
            node[member] = new JsonArray([.. numbers.Select(number => (JsonNode)number)]);
    }
}
