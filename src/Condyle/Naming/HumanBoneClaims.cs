namespace Condyle.Naming;

/// <summary>
/// Which node of a file is which humanoid bone of VRM 1.0. The file's extension <c>VRMC_vrm</c> maps them, and a node's extras can say it as well, since a file of nodes and skins alone has no
/// extensions: both count, and what they say must agree. The generator and the program read a file alike by this.
/// </summary>
internal sealed class HumanBoneClaims
{
    /// <summary>The member of a node's extras that says which bone it is.</summary>
    public const string Extra = "condyleHumanBone";

    /// <summary>Where the extension has its map.</summary>
    public static readonly IReadOnlyList<string> Map = ["extensions", "VRMC_vrm", "humanoid", "humanBones"];

    private readonly Dictionary<string, int> nodes = new(StringComparer.Ordinal);
    private readonly Dictionary<int, string> bones = [];

    public IReadOnlyDictionary<string, int> Nodes => nodes;

    public IReadOnlyDictionary<int, string> Bones => bones;

    /// <summary>Takes one; what is wrong with it, and what to do, where it goes against another.</summary>
    public (string Problem, string Remedy)? Add(int node, string bone)
    {
        if (bones.TryGetValue(node, out var other) && other != bone)
            return ($"makes one node both '{other}' and '{bone}'", "Give each humanoid bone its own node");
        if (nodes.TryGetValue(bone, out var taken) && taken != node)
            return ($"makes a second node '{bone}'", "Give each humanoid bone one node");
        (bones[node], nodes[bone]) = (bone, node);
        return null;
    }
}
