namespace Condyle.Runtime.Gltf.Reading;

/// <summary>Nodes form trees, stand at finite places, and everything that points at nodes finds them.</summary>
internal static class HierarchyChecks
{
    /// <summary>The validator of the standard allows this much, for rotations stored in eight bits.</summary>
    private const double LengthTolerance = 0.00769;

    /// <summary>Readers of glTF walk the hierarchy by recursion; this depth is safe for all and far beyond any character.</summary>
    private const int MostLevels = 1000;

    public static void Check(JsonSpot root, Accessor[] accessors)
    {
        var nodes = root["nodes"].Items;
        for (var i = 0; i < nodes.Length; i++)
            nodes[i] = nodes[i].AsNode(i);

        CheckTrees(nodes);
        var skins = root["skins"].Items;
        var (meshes, cameras) = (root["meshes"].Items.Length, root["cameras"].Items.Length);
        foreach (var node in nodes)
        {
            CheckTransform(node);
            CheckIndex(node["mesh"], meshes, "meshes");
            CheckIndex(node["camera"], cameras, "cameras");
            CheckIndex(node["skin"], skins.Length, "skins");
        }
        foreach (var skin in skins)
            CheckSkin(skin, nodes.Length, accessors);

        var scenes = root["scenes"].Items;
        CheckIndex(root["scene"], scenes.Length, "scenes");
        foreach (var member in scenes.SelectMany(scene => scene["nodes"].Items))
            CheckIndex(member, nodes.Length, "nodes");
    }

    private static void CheckTrees(JsonSpot[] nodes)
    {
        var parents = new int[nodes.Length];
        Array.Fill(parents, -1);
        for (var i = 0; i < nodes.Length; i++)
        {
            foreach (var item in nodes[i]["children"].Items)
            {
                var child = item.IndexInto(nodes.Length, "nodes");
                if (parents[child] >= 0)
                    throw item.Wrong($"makes '{nodes[child].Node}' a child of '{nodes[parents[child]].Node}' and of '{nodes[i].Node}'", "Give each node one parent");
                parents[child] = i;
            }
        }

        // Every node has one parent at most, so what can't be reached from a root hangs in or below a loop.
        var depths = new int[nodes.Length];
        var waiting = new Stack<int>(Enumerable.Range(0, nodes.Length).Where(node => parents[node] < 0));
        while (waiting.TryPop(out var node))
        {
            depths[node] = parents[node] < 0 ? 1 : depths[parents[node]] + 1;
            if (depths[node] > MostLevels)
                throw nodes[node].Wrong($"lies more than {MostLevels} levels deep", "Flatten the hierarchy");
            foreach (var child in nodes[node]["children"].Items)
                waiting.Push(child.IndexInto(nodes.Length, "nodes"));
        }
        if (Array.IndexOf(depths, 0) is var lost and >= 0)
            throw nodes[lost].Wrong("is its own ancestor, or hangs below a loop of nodes", "Break the loop where the file was made");
    }

    private static void CheckTransform(JsonSpot node)
    {
        if (node["matrix"] is { Exists: true } matrix)
        {
            matrix.Numbers(16);
            if (node["translation"].Exists || node["rotation"].Exists || node["scale"].Exists)
                throw matrix.Wrong("stands beside a translation, rotation or scale", "Keep one of the two");
        }
        foreach (var part in (ReadOnlySpan<string>)["translation", "scale"])
        {
            if (node[part] is { Exists: true } vector)
                vector.Numbers(3);
        }
        if (node["rotation"] is not { Exists: true } rotation)
            return;
        var length = Math.Sqrt(rotation.Numbers(4).Sum(x => x * x));
        if (length == 0)
            throw rotation.Wrong("is a zero quaternion, which turns nowhere", "Write [0, 0, 0, 1] for no rotation");
        if (Math.Abs(length - 1) > LengthTolerance)
            throw rotation.Wrong($"is a quaternion of length {length:0.####}, not 1", "Normalise it");
    }

    private static void CheckSkin(JsonSpot skin, int nodes, Accessor[] accessors)
    {
        var joints = skin["joints"].Items;
        if (joints.Length == 0)
            throw skin.Wrong("has no joints", "Export the file again with its skeleton");
        foreach (var joint in joints)
            joint.IndexInto(nodes, "nodes");
        CheckIndex(skin["skeleton"], nodes, "nodes");
        if (skin["inverseBindMatrices"] is not { Exists: true } index)
            return;
        var matrices = accessors[index.IndexInto(accessors.Length, "accessors")];
        if (matrices is not { Kind: "MAT4", IsFloat: true })
            throw index.Wrong("is no accessor of float matrices", "Export the file again");
        if (matrices.Count < joints.Length)
            throw index.Wrong($"has {matrices.Count} matrices for {joints.Length} joints", "Export the file again");
    }

    private static void CheckIndex(JsonSpot index, int count, string things)
    {
        if (index.Exists)
            index.IndexInto(count, things);
    }
}
