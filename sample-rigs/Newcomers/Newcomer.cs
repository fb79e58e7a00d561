using Condyle;
using Condyle.Runtime.Gltf;

namespace Newcomers;

/// <summary>
/// A rig for a character that nobody here made, built from its file alone: every joint gets a control that turns it, and every limb a goal and a pole
/// besides, with a switch between the two.
/// </summary>
internal sealed class Newcomer(GltfFile file, GltfSkeleton skeleton) : IRigDefinition
{
    private readonly Anatomy anatomy = Anatomy.Of(skeleton);

    public IReadOnlyList<Limb> Limbs => anatomy.Limbs;

    /// <summary>The joints that no control moves.</summary>
    public IReadOnlyList<string> StillJoints => [.. skeleton.Joints.Where((_, joint) => IsStill(joint)).Select(joint => joint.Name)];

    public void Define(RigDraft rig)
    {
        var names = new Names(skeleton.Joints.Select(joint => joint.Name));
        var world = rig.Control(names.Take("world")).LimitMoves(anatomy.Extent / 10);
        var body = new Body(rig, names, Declare(rig), rig.Group(names.Take("systems_group")), world);

        for (var joint = 0; joint < skeleton.Joints.Count; joint++)
        {
            var above = skeleton.Joints[joint].Parent;
            if (IsStill(joint))
                body.LeaveStill(joint, above);
            else if (anatomy.LimbFrom(joint) is { } limb)
                body.AddLimb(limb, above);
            else if (!anatomy.IsInLimb(joint))
                body.AddTurn(joint, above);
        }
    }

    /// <summary>A node that shows a skinned mesh is where its joints put it, so the standard wants no motion of its own; what is flat can't be posed.</summary>
    private bool IsStill(int joint) => anatomy.IsFlat(joint) || file.Model.LogicalNodes[skeleton.Joints[joint].Node].Skin is not null;

    private Joint[] Declare(RigDraft rig)
    {
        var delivered = rig.Skeleton("newcomer");
        var joints = new Joint[skeleton.Joints.Count];
        foreach (var (index, joint) in skeleton.Joints.Index())
        {
            joints[index] = joint.Parent < 0
                ? delivered.Root(joint.Name, anatomy.RoleOf(index), joint.Translation, joint.Rotation, joint.Scale)
                : joints[joint.Parent].Child(joint.Name, anatomy.RoleOf(index), joint.Translation, joint.Rotation, joint.Scale);
        }

        return joints;
    }
}
