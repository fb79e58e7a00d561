namespace Condyle.Runtime.Gltf.Reading;

/// <summary>The nodes of a checked file, who hangs below whom, and which of them make up the skeleton.</summary>
internal sealed class NodeTree
{
    private readonly bool[] movesSkin;
    private readonly bool[] isInSkeleton;

    public NodeTree(JsonSpot root)
    {
        var nodes = root["nodes"].Items;
        for (var i = 0; i < nodes.Length; i++)
            nodes[i] = nodes[i].AsNode(i);
        Nodes = nodes;
        Parents = new int[nodes.Length];
        Array.Fill(Parents, -1);
        for (var i = 0; i < nodes.Length; i++)
        {
            foreach (var child in ChildrenOf(i))
                Parents[child] = i;
        }

        ParentsFirst = [.. Enumerable.Range(0, nodes.Length).Where(node => Parents[node] < 0).SelectMany(Below)];
        movesSkin = new bool[nodes.Length];
        foreach (var joint in root["skins"].Items.SelectMany(skin => skin["joints"].Items))
            movesSkin[joint.IndexInto(nodes.Length, "nodes")] = true;
        isInSkeleton = FindSkeleton();
    }

    public IReadOnlyList<JsonSpot> Nodes { get; }

    /// <summary>The parent of each node, -1 for a root.</summary>
    public int[] Parents { get; }

    /// <summary>All nodes, each after its parent, otherwise in the file's order.</summary>
    public IReadOnlyList<int> ParentsFirst { get; }

    public static NodeTree Of(GltfFile file) => new(new JsonSpot(file.Path, "", file.ParseJson()));

    public bool HasSkins => movesSkin.Contains(true);

    public bool MovesSkin(int node) => movesSkin[node];

    public bool IsInSkeleton(int node) => isInSkeleton[node];

    private bool[] FindSkeleton()
    {
        var found = new bool[Nodes.Count];
        if (!HasSkins)
        {
            Array.Fill(found, true);
            return found;
        }

        var hangsBelowJoint = new bool[Nodes.Count];
        foreach (var node in ParentsFirst)
        {
            var parent = Parents[node];
            hangsBelowJoint[node] = movesSkin[node] || (parent >= 0 && hangsBelowJoint[parent] && !Carries(Nodes[node]));
        }
        foreach (var node in ParentsFirst.Reverse())
        {
            found[node] |= hangsBelowJoint[node];
            if (found[node] && Parents[node] >= 0)
                found[Parents[node]] = true;
        }
        return found;
    }

    /// <summary>A skeleton file has no meshes and cameras any more; it remembers where they were.</summary>
    private static bool Carries(JsonSpot node) =>
        node["mesh"].Exists || node["camera"].Exists || (node["extras"] is { Value: System.Text.Json.Nodes.JsonObject } extras && extras[SkeletonFile.CarriesMember].Exists);

    private IEnumerable<int> ChildrenOf(int node) => Nodes[node]["children"].Items.Select(child => child.IndexInto(Nodes.Count, "nodes"));

    /// <summary>The node and everything below it. A list instead of recursion: files may nest as deep as they like.</summary>
    private IEnumerable<int> Below(int top)
    {
        var waiting = new Stack<int>([top]);
        while (waiting.TryPop(out var node))
        {
            yield return node;
            foreach (var child in ChildrenOf(node).Reverse())
                waiting.Push(child);
        }
    }
}
