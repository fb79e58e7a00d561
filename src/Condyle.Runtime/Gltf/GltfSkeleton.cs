using System.Numerics;
using Condyle.Naming;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Gltf;

/// <summary>
/// The skeleton of a file: every node that a skin lists as a joint, all their ancestors, and the descendants of joints up to the first that carries a
/// mesh or camera (props hang there, they are no joints). A file without skins: all its nodes.
/// </summary>
public sealed class GltfSkeleton
{
    private readonly Dictionary<string, int> byName;

    private GltfSkeleton(IReadOnlyList<GltfJoint> joints, IReadOnlyList<GltfSkin> skins, IReadOnlyDictionary<string, int> humanBones)
    {
        HumanBones = humanBones;
        Joints = joints;
        Skins = skins;
        byName = joints.Index().ToDictionary(joint => joint.Item.Name, joint => joint.Index, StringComparer.Ordinal);
    }

    /// <summary>The joints, parents before their children, otherwise in the file's order.</summary>
    public IReadOnlyList<GltfJoint> Joints { get; }

    /// <summary>The file's skins, in its order.</summary>
    public IReadOnlyList<GltfSkin> Skins { get; }

    /// <summary>
    /// The joints that the file maps to humanoid bones (VRM 1.0, extension <c>VRMC_vrm</c>, or <c>condyleHumanBone</c> in a node's extras), by the bone's name such as <c>leftUpperArm</c>: their indices in <see cref="Joints"/>.
    /// Empty for a file that doesn't say.
    /// </summary>
    public IReadOnlyDictionary<string, int> HumanBones { get; }

    /// <summary>The joint that is a humanoid bone, whatever it is called.</summary>
    /// <param name="bone">The bone's name in VRM 1.0, for instance <c>leftUpperArm</c>.</param>
    /// <returns>The joint.</returns>
    /// <exception cref="ArgumentException">The file maps no joint to this bone; the message gives the nearest names.</exception>
    public GltfJoint HumanBone(string bone) => HumanBones.TryGetValue(bone, out var joint)
        ? Joints[joint]
        : throw new ArgumentException(
            HumanBones.Count == 0 ? $"The file says of no joint which humanoid bone it is, so there is no '{bone}'."
            : $"The file has no joint for the humanoid bone '{bone}'. The nearest that it has: {string.Join(", ", NearestNames.To(bone, HumanBones.Keys, 3).Select(near => $"'{near}'"))}.",
            nameof(bone));

    /// <summary>The index of the joint with this name, or -1.</summary>
    public int IndexOf(string name) => byName.GetValueOrDefault(name, -1);

    /// <summary>The joints' world matrices at rest, in the order of <see cref="Joints"/>; they multiply row vectors on their right (v · M).</summary>
    public Matrix4x4[] RestWorld()
    {
        var world = new Matrix4x4[Joints.Count];
        for (var i = 0; i < world.Length; i++)
            world[i] = Joints[i].Parent < 0 ? Joints[i].Local : Joints[i].Local * world[Joints[i].Parent];
        return world;
    }

    /// <summary>Reads the skeleton of a file.</summary>
    /// <exception cref="BadInputException">A joint is given as a matrix that is sheared or flattens an axis, or the file has no nodes.</exception>
    public static GltfSkeleton Read(GltfFile file)
    {
        var root = new JsonSpot(file.Path, "", file.ParseJson());
        var tree = new NodeTree(root);
        if (tree.Nodes.Count == 0)
            throw new BadInputException(file.Path, "the file has no nodes, so there is no skeleton", "Export the file with its skeleton", place: "/nodes");

        var names = JointNames.Unique([.. tree.Nodes.Select(node => node["name"].Text)]);
        var indexOf = new int[tree.Nodes.Count];
        Array.Fill(indexOf, -1);
        var joints = new List<GltfJoint>();
        foreach (var node in tree.ParentsFirst.Where(tree.IsInSkeleton))
        {
            var rest = NodeTransform.Of(tree.Nodes[node] with { Node = names[node] });
            var parent = tree.Parents[node] < 0 ? -1 : indexOf[tree.Parents[node]];
            indexOf[node] = joints.Count;
            joints.Add(new GltfJoint(names[node], node, parent, rest.Translation, rest.Rotation, rest.Scale, tree.MovesSkin(node)) { IsExact = rest.IsExact });
        }
        var bones = Reading.HumanBones.Of(root, tree.Nodes.Count)
            .Where(bone => indexOf[bone.Value] >= 0)
            .ToDictionary(bone => bone.Key, bone => indexOf[bone.Value], StringComparer.Ordinal);
        return new GltfSkeleton(joints, [.. file.Model.LogicalSkins.Select(skin => new GltfSkin(
            string.IsNullOrEmpty(skin.Name) ? null : skin.Name,
            [.. skin.Joints.Select(joint => indexOf[joint.LogicalIndex])],
            [.. skin.InverseBindMatrices]))], bones);
    }
}
