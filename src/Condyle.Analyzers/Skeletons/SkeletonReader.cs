using System.Text.Json;
using Condyle.Naming;

namespace Condyle.Analyzers.Skeletons;

/// <summary>Reads the joints of a glTF 2.0 file: nodes and skins, nothing else.</summary>
internal static class SkeletonReader
{
    /// <summary>The joints, each after its parent, otherwise in the file's order.</summary>
    /// <exception cref="SkeletonFileException">The file can't be read.</exception>
    public static IReadOnlyList<SkeletonJoint> Read(Utf8File file, SkeletonNaming naming, CancellationToken cancel)
    {
        using var document = file.Parse();
        try
        {
            var root = new JsonPlace(document.RootElement, "", "");
            CheckVersion(root);
            return Joints(root, naming, cancel);
        }
        catch (InvalidOperationException)
        {
            // The parser refuses half characters only when it compares the name of a member.
            throw new SkeletonFileException("the name of a member is a text with half a character. Export the file again", pointer: "");
        }
    }

    private static void CheckVersion(JsonPlace root)
    {
        const string remedy = "Export the file as glTF 2.0";
        if (root.Find("asset") is not { } asset || asset.Find("version") is not { } version)
            throw root.Wrong("has no asset version, so it is no glTF", remedy);
        if (!version.Text().StartsWith("2.", StringComparison.Ordinal))
            throw version.Wrong($"is '{version.Text()}', but only glTF 2 can be read", remedy);
    }

    private static IReadOnlyList<SkeletonJoint> Joints(JsonPlace root, SkeletonNaming naming, CancellationToken cancel)
    {
        var nodes = root.List("nodes", "node");
        if (nodes.Count == 0)
            throw root.Wrong("has no nodes, so there is no skeleton", "Export the file with its skeleton");
        var delivered = nodes.Select(static node => node.Find("name")?.Text()).ToArray();
        var names = JointNames.Unique(delivered);
        var named = nodes.Select((node, i) => node with { Words = $"{node.Words} '{names[i]}'" }).ToArray();

        var tree = new NodeTree(named);
        var movesSkin = MovesSkin(root, nodes.Count);
        var inSkeleton = tree.Skeleton(movesSkin);
        var bones = HumanBones.Of(root, named);
        var joints = new List<SkeletonJoint>();
        foreach (var node in tree.ParentsFirst.Where(node => inSkeleton[node]))
        {
            cancel.ThrowIfCancellationRequested();
            var role = !movesSkin[node] ? JointRole.Helper : MarkedRole(named[node]) ?? naming.RoleOf(names[node]);
            joints.Add(new SkeletonJoint(node, tree.Parents[node], names[node], role, RestReader.Read(named[node]), bones.TryGetValue(node, out var bone) ? bone : null));
        }

        return joints;
    }

    private static bool[] MovesSkin(JsonPlace root, int nodes)
    {
        var movesSkin = new bool[nodes];
        foreach (var skin in root.List("skins", "skin"))
        {
            var joints = skin.List("joints", "joint");
            if (joints.Count == 0)
                throw skin.Wrong("has no joints", "Export the file again with its skeleton");
            foreach (var joint in joints)
                movesSkin[joint.IndexInto(nodes, "nodes")] = true;
        }

        return movesSkin;
    }

    private static JointRole? MarkedRole(JsonPlace node) =>
        NodeTree.Extras(node) is { } extras && extras.Find("condyleRole") is { Element.ValueKind: JsonValueKind.String } role
            ? role.Text() switch
            {
                "twist" => JointRole.Twist,
                "helper" => JointRole.Helper,
                "deform" => JointRole.Deform,
                _ => null,
            }
            : null;
}
