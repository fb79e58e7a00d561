using Condyle.Model;

namespace Condyle.Rules;

/// <summary>CDY8004: a rig whose numbers can't be worked out can't be played.</summary>
internal sealed class NumbersThatCannotBe : EvaluatedRule
{
    public override string Id => "CDY8004";

    public override string Title => "Numbers that can't be";

    public override Severity Severity => Severity.Error;

    // A loop has a rule of its own, and so has a solver of a straight chain that isn't told to which side it bends, or of a chain that isn't two bones.
    public override IEnumerable<Finding> Check(CheckedRig rig) =>
        from fault in rig.Faults
        where fault.About is not null && !StraightChainWithoutBend.In(rig).Any(chain => chain.Spot == fault.About) && !IsOfOtherThanTwoBones(fault.About, rig.Model)
        select new Finding(this, fault.About!, $"{Wording.First(fault.Message)} As it is, the rig can't be played or baked.", fault.About!.Place);

    private static bool IsOfOtherThanTwoBones(RigElement about, RigModel model) =>
        about is RigPolePoint { Chain: { Joints.Count: < 3 } chain } && model.TwoBones.Exists(solver => solver.Copy?.Chain == chain);
}
