using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY7001: a two-bone IK solves a copy of three joints, and no other.</summary>
internal sealed class TwoBoneOnOtherChain : Rule
{
    public override string Id => "CDY7001";

    public override string Title => "Two-bone IK on a chain that isn't two bones";

    public override Severity Severity => Severity.Error;

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        foreach (var solver in rig.Model.TwoBones)
        {
            if (solver.Copy is not { IsUnknown: false, Chain.Joints: { } joints } copy || joints.Count == 3)
                continue;
            yield return new Finding(
                this,
                solver,
                $"The {copy.Title} has {Count(joints.Count - 1)}, and a two-bone IK solves two: this limb isn't solved and stands still at rest. {Advice(joints)}",
                solver.Place)
            {
                ActsOn = joints.Count > 0 ? joints[0] : null,
                Related = [copy.Place, copy.Chain.Place],
            };
        }
    }

    private static string Count(int bones) => bones == 1 ? "one bone" : bones <= 0 ? "no bone" : $"{bones} bones";

    private static string Advice(IReadOnlyList<RigNode> joints) =>
        joints.Count(joint => !joint.Role.TryKnown(out var role) || role != JointRole.Twist) == 3 ? "Leave its twist joints out: .Without(JointRole.Twist)."
        : joints.Count > 3 ? "Copy a chain of three joints, or solve this one with rig.ManyBone."
        : "Copy a chain of three joints.";
}
