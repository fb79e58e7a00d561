using System.Numerics;

namespace Condyle.Runtime.Gltf;

/// <summary>A joint of a delivered skeleton, at rest.</summary>
/// <param name="Name">Unique in the file: the node's own name, or <c>node_12</c> for a node without, or with <c>_12</c> appended when another node has it too.</param>
/// <param name="Node">The node's index in the file.</param>
/// <param name="Parent">The parent's index in <see cref="GltfSkeleton.Joints"/>, or -1 for a root.</param>
/// <param name="Translation">Metres, in the parent's space.</param>
/// <param name="Rotation">Unit length.</param>
/// <param name="Scale">Factors.</param>
/// <param name="MovesSkin">True when a skin of the file lists the joint.</param>
public sealed record GltfJoint(string Name, int Node, int Parent, Vector3 Translation, Quaternion Rotation, Vector3 Scale, bool MovesSkin)
{
    /// <summary>
    /// Whether the file says exactly these three. Not so where a rotation isn't quite of unit length or a matrix is rounded: a player may then show the node
    /// a little differently.
    /// </summary>
    public bool IsExact { get; init; } = true;

    /// <summary>Scale, then rotation, then translation; multiplies row vectors on their right (v · M), as everywhere in System.Numerics.</summary>
    public Matrix4x4 Local => Matrix4x4.CreateScale(Scale) * Matrix4x4.CreateFromQuaternion(Rotation) * Matrix4x4.CreateTranslation(Translation);
}

/// <summary>A skin of a file: which joints move it, and where they stood when it was bound.</summary>
/// <param name="Name">The skin's name, or null.</param>
/// <param name="Joints">Indices in <see cref="GltfSkeleton.Joints"/>, in the skin's order.</param>
/// <param name="InverseBind">From mesh space to each joint's space at bind time; multiplies row vectors on their right. The bind pose may differ from rest.</param>
public sealed record GltfSkin(string? Name, IReadOnlyList<int> Joints, IReadOnlyList<Matrix4x4> InverseBind);
