using Condyle.Runtime.Gltf;

namespace Newcomers;

/// <summary>Which joints are bones. Everything else is a twist, the marker of a bone's end, or a helper.</summary>
internal sealed class JointKinds
{
    private readonly IReadOnlyList<GltfJoint> joints;
    private readonly bool hasSkin;
    private readonly bool[] isAboveBone;

    public JointKinds(IReadOnlyList<GltfJoint> joints)
    {
        this.joints = joints;
        hasSkin = joints.Any(joint => joint.MovesSkin);
        isAboveBone = new bool[joints.Count];
        for (var joint = joints.Count - 1; joint > 0; joint--)
        {
            if (joints[joint].Parent is >= 0 and var above)
                isAboveBone[above] |= isAboveBone[joint] || IsBone(joint);
        }
    }

    /// <summary>Moves skin, and is no twist; in a file without skins every joint counts as one that does.</summary>
    public bool IsBone(int joint) => (joints[joint].MovesSkin || !hasSkin) && !IsTwist(joint);

    /// <summary>Carries a share of a bone's roll, by its name: nothing else in a file tells.</summary>
    public bool IsTwist(int joint) => joints[joint].MovesSkin && joints[joint].Name.Contains("twist", StringComparison.OrdinalIgnoreCase);

    /// <summary>Moves nothing and has only its like below: exporters mark so where the last bone ends.</summary>
    public bool IsEnd(int joint) => !IsBone(joint) && !IsTwist(joint) && !isAboveBone[joint];

    /// <summary>The nearest bone above, or -1.</summary>
    public int BoneAbove(int joint)
    {
        var above = joints[joint].Parent;
        while (above >= 0 && !IsBone(above))
            above = joints[above].Parent;
        return above;
    }
}
