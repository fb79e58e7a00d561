using System.Globalization;
using Condyle.Naming;
using Condyle.Runtime.Gltf;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Baking;

/// <summary>Which nodes of a delivered file show the meshes whose morph targets a rig sets, found by name.</summary>
internal sealed class MorphMatch
{
    /// <summary>What leaves its rest by no more than this stays at rest.</summary>
    private const float Rest = 1e-6f;

    private readonly List<MorphedNode> nodes = [];

    private MorphMatch()
    {
    }

    /// <exception cref="BadInputException">A mesh, a node that shows it or a target of it isn't in the file, so that its motion would be lost.</exception>
    public static MorphMatch Of(CompiledRig rig, GltfFile file)
    {
        var match = new MorphMatch();
        if (rig.Morphs.Count == 0)
            return match;
        var root = new JsonSpot(file.Path, "", file.ParseJson());
        var (all, meshes) = (root["nodes"].Items, root["meshes"].Items);
        var names = meshes.Select(mesh => mesh["name"].Text ?? "").ToList();
        foreach (var morphs in rig.Morphs.GroupBy(morph => morph.Mesh, StringComparer.Ordinal))
        {
            if (!names.Contains(morphs.Key))
                throw Lost(file, rig, morphs.First(), $"mesh '{morphs.Key}'", names);
            var before = match.nodes.Count;
            foreach (var (index, node) in all.Index())
            {
                if (node["mesh"] is { Exists: true } mesh && mesh.IndexInto(meshes.Length, "meshes") is var shown && names[shown] == morphs.Key)
                    match.nodes.Add(Node(index, node, meshes[shown], morphs, file, rig));
            }

            if (match.nodes.Count == before)
                throw Lost(file, rig, morphs.First(), $"node that shows mesh '{morphs.Key}'", []);
        }

        return match;
    }

    /// <summary>The tracks of a clip's morph targets: all weights of a mesh at each time, as the standard has them; none of a mesh that stays at rest.</summary>
    public IEnumerable<GltfTrack> Tracks(BakedClip clip)
    {
        foreach (var node in nodes)
        {
            var weights = new float[clip.Times.Count * node.Rest.Length];
            for (var time = 0; time < clip.Times.Count; time++)
            {
                for (var target = 0; target < node.Rest.Length; target++)
                    weights[(time * node.Rest.Length) + target] = node.Morphs[target] is { } morph ? clip.Morphs[morph][time] : node.Rest[target];
            }

            if (weights.Index().Any(weight => !(Math.Abs(weight.Item - node.Rest[weight.Index % node.Rest.Length]) <= Rest)))
                yield return new GltfTrack(node.Index) { Weights = weights };
        }
    }

    private static MorphedNode Node(int index, JsonSpot node, JsonSpot mesh, IEnumerable<CompiledMorph> set, GltfFile file, CompiledRig rig)
    {
        var count = mesh["primitives"].Items is [var primitive, ..] ? primitive["targets"].Items.Length : 0;
        var names = mesh["extras"] is { Value: System.Text.Json.Nodes.JsonObject } extras ? extras["targetNames"].Items.Select(name => name.Text).ToList() : [];
        var rest = (node["weights"].Exists ? node : mesh)["weights"] is { Exists: true } weights ? weights.Numbers(count).Select(weight => (float)weight).ToArray() : new float[count];
        var morphs = new int?[count];
        foreach (var morph in set)
        {
            var target = names.IndexOf(morph.Target);
            if (target < 0 && (!int.TryParse(morph.Target, NumberStyles.None, CultureInfo.InvariantCulture, out target) || target < names.Count))
                target = -1;
            if (target < 0 || target >= count)
                throw Lost(file, rig, morph, $"morph target '{morph.Target}' of mesh '{morph.Mesh}'", names.OfType<string>());
            morphs[target] = morph.Index;
        }

        return new MorphedNode(index, rest, morphs);
    }

    private static BadInputException Lost(GltfFile file, CompiledRig rig, CompiledMorph morph, string missing, IEnumerable<string> known)
    {
        var near = NearestNames.To(missing.Split('\'')[1], known, 3).Select(name => $"'{name}'").ToList();
        return new BadInputException(
            file.Path,
            $"the rig '{rig.Name}' sets '{morph.Target}' of mesh '{morph.Mesh}', and the file has no {missing}{(near.Count > 0 ? $" (nearest: {string.Join(", ", near)})" : "")}, so that motion would be lost",
            "Name the file that holds the mesh, or respond onto a morph target that it has");
    }

    /// <param name="Index">The node's index in the file.</param>
    /// <param name="Rest">The weights of its mesh's targets where no clip sets them.</param>
    /// <param name="Morphs">For each target the rig's morph target; none where the rig leaves it alone.</param>
    private sealed record MorphedNode(int Index, float[] Rest, int?[] Morphs);
}
