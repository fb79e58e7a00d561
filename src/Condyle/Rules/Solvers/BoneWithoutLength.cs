namespace Condyle.Rules;

/// <summary>CDY7005: a bone of no length has no direction that a solver could turn.</summary>
internal sealed class BoneWithoutLength : Rule
{
    /// <summary>A bone shorter than this share of its chain has none: delivered numbers are rounded to that.</summary>
    private const double None = 1e-5;

    public override string Id => "CDY7005";

    public override string Title => "Bone of no length in a solved chain";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "without twist joints";

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        foreach (var chain in rig.SolvedChains)
        {
            var at = Enumerable.Range(1, chain.Joints.Count - 1).FirstOrDefault(i => (chain.Joints[i] - chain.Joints[i - 1]).Length <= None * chain.Length);
            if (at == 0)
                continue;
            var joints = chain.Copy.Chain.Joints!;
            var (above, below) = (joints[at - 1], joints[at]);
            var isTwist = new[] { above, below }.Any(TwistJoints.Is);
            yield return new Finding(
                this,
                chain.By,
                $"'{above.Name}' and '{below.Name}' rest in the same place, so {chain.By.Title} has a bone of no length there: it can't turn it, and the limb bends at the other joints alone. {(isTwist ? "Leave twist joints out of the chain: .Without(JointRole.Twist)." : $"Leave one of them out of the chain, or move '{below.Name}' in the skeleton.")}",
                chain.By.Place)
            {
                ActsOn = below,
                Related = [chain.Copy.Chain.Place, below.Place],
                Repairs = isTwist ? [TwistJoints.LeftOut(chain.Copy.Chain, $"Take the twist joints out of {chain.Copy.Chain.Title}", rig.Model) with { LiesElsewhere = true }] : [],
            };
        }
    }
}
