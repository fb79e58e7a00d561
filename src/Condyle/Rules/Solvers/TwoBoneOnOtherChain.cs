using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY7001: a two-bone IK solves a copy of three joints, and no other.</summary>
internal sealed class TwoBoneOnOtherChain : Rule
{
    public override string Id => "CDY7001";

    public override string Title => "Two-bone IK on a chain that isn't two bones";

    public override Severity Severity => Severity.Error;

    public override string Fix => "without twist joints, or by many-bone IK";

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
                Repairs = RepairsOf(solver, copy.Chain, rig.Model),
            };
        }
    }

    private static string Count(int bones) => bones == 1 ? "one bone" : bones <= 0 ? "no bone" : $"{bones} bones";

    private static IReadOnlyList<Repair> RepairsOf(RigTwoBone solver, RigChain chain, RigModel model) =>
        IsTwoBonesWithTwist(chain.Joints!) ? [TwistJoints.LeftOut(chain, $"Take the twist joints out of {chain.Title}", model) with { LiesElsewhere = true }]
        : chain.Joints!.Count > 3 && HasManyBoneSentence(solver) ? [new CallInstead(solver.Id, nameof(RigDraft.ManyBone), $"Solve {solver.Copy!.Title} as many bones")]
        : [];

    // A many-bone IK neither stretches nor softens, nor is its plane turned.
    private static bool HasManyBoneSentence(RigTwoBone solver) =>
        solver.Stretch.TryKnown(out var stretch) && stretch is null && solver.PlaneTurn.TryKnown(out var turn) && turn is null && solver.Softness.TryKnown(out var softness) && softness == 0;

    private static bool IsTwoBonesWithTwist(IReadOnlyList<RigNode> joints) => joints.Count(joint => !TwistJoints.Is(joint)) == 3;

    private static string Advice(IReadOnlyList<RigNode> joints) =>
        IsTwoBonesWithTwist(joints) ? "Leave its twist joints out: .Without(JointRole.Twist)."
        : joints.Count > 3 ? "Copy a chain of three joints, or solve this one with rig.ManyBone."
        : "Copy a chain of three joints.";
}
