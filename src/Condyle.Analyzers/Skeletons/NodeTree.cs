using System.Text.Json;

namespace Condyle.Analyzers.Skeletons;

/// <summary>Who hangs below whom.</summary>
internal sealed class NodeTree
{
    private readonly IReadOnlyList<JsonPlace> nodes;
    private readonly int[][] children;

    /// <exception cref="SkeletonFileException">A node has two parents or is its own ancestor.</exception>
    public NodeTree(IReadOnlyList<JsonPlace> nodes)
    {
        this.nodes = nodes;
        children = new int[nodes.Count][];
        Parents = [.. nodes.Select(static _ => -1)];
        for (var i = 0; i < nodes.Count; i++)
            children[i] = Adopt(i);

        ParentsFirst = [.. Enumerable.Range(0, nodes.Count).Where(node => Parents[node] < 0).SelectMany(Below)];
        if (ParentsFirst.Count < nodes.Count)
            throw Loop();
    }

    /// <summary>The parent of each node, -1 for a root.</summary>
    public int[] Parents { get; }

    /// <summary>All nodes, each after its parent, otherwise in the file's order.</summary>
    public IReadOnlyList<int> ParentsFirst { get; }

    /// <summary>A node's extras when they are an object; the standard allows them to be anything.</summary>
    public static JsonPlace? Extras(JsonPlace node) => node.Find("extras") is { Element.ValueKind: JsonValueKind.Object } extras ? extras : null;

    /// <summary>
    /// Which nodes are joints: all that move skin, their ancestors, and what hangs below them up to the first node that carries a mesh or camera
    /// (a prop). Without skins, all nodes.
    /// </summary>
    public bool[] Skeleton(bool[] movesSkin)
    {
        if (!movesSkin.Contains(true))
            return [.. movesSkin.Select(static _ => true)];
        var isJoint = (bool[])movesSkin.Clone();
        foreach (var node in ParentsFirst)
            isJoint[node] |= Parents[node] >= 0 && isJoint[Parents[node]] && !Carries(nodes[node]);
        foreach (var node in ParentsFirst.Reverse())
        {
            if (isJoint[node] && Parents[node] >= 0)
                isJoint[Parents[node]] = true;
        }

        return isJoint;
    }

    /// <summary>A skeleton file has lost its meshes and cameras, but remembers in the extras where they were.</summary>
    private static bool Carries(JsonPlace node) =>
        node.Find("mesh") is not null || node.Find("camera") is not null || Extras(node)?.Find("condyleCarries") is not null;

    private int[] Adopt(int parent)
    {
        var adopted = new List<int>();
        foreach (var item in nodes[parent].List("children", "child"))
        {
            var child = item.IndexInto(nodes.Count, "nodes");
            if (Parents[child] >= 0)
                throw item.Wrong($"is {nodes[child].Words}, which is already a child of {nodes[Parents[child]].Words}", "Give each node one parent");
            Parents[child] = parent;
            adopted.Add(child);
        }

        return [.. adopted];
    }

    private SkeletonFileException Loop()
    {
        var reached = new HashSet<int>(ParentsFirst);
        var node = Enumerable.Range(0, nodes.Count).First(candidate => !reached.Contains(candidate));
        // Every node that no root reaches hangs below a loop; going up far enough ends inside it.
        for (var i = 0; i < nodes.Count; i++)
            node = Parents[node];
        var loop = new List<string> { nodes[node].Words };
        for (var above = Parents[node]; above != node && loop.Count < 8; above = Parents[above])
            loop.Insert(0, nodes[above].Words);
        return nodes[node].Wrong($"is its own ancestor ({string.Join(" > ", loop)})", "Break the loop where the file was made");
    }

    /// <summary>The node and everything below it. A stack instead of recursion: files may nest as deep as they like.</summary>
    private IEnumerable<int> Below(int top)
    {
        var waiting = new Stack<int>([top]);
        while (waiting.Count > 0)
        {
            var node = waiting.Pop();
            yield return node;
            for (var i = children[node].Length - 1; i >= 0; i--)
                waiting.Push(children[node][i]);
        }
    }
}
