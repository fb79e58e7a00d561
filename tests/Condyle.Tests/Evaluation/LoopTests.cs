using System.Numerics;

namespace Condyle.Tests.Evaluation;

public sealed class LoopTests
{
    [Fact]
    public void Drives_that_need_each_other_are_an_error_that_prints_the_path()
    {
        var rig = new TestRig(draft =>
        {
            var (a, b) = (draft.Control("a"), draft.Control("b"));
            draft.Drive(a).ByChannels(b);
            draft.Drive(b).ByMatrix(a);
        });
        Assert.Contains("'a' -> 'b' -> 'a'", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message);
    }

    [Fact]
    public void A_node_driven_by_what_hangs_under_it_is_a_loop()
    {
        var rig = new TestRig(draft =>
        {
            var top = draft.Group("top_group");
            draft.Drive(top).ByChannels(draft.Control("below").Under(top));
        });
        Assert.Contains("'top_group' -> 'below' -> 'top_group'", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message);
    }

    [Fact]
    public void A_goal_under_its_own_chain_is_a_loop()
    {
        var rig = new TestRig(draft =>
        {
            var hip = draft.Skeleton("leg").Root("hip");
            var copy = draft.Chain(hip, hip.Child("knee", at: new Vector3(0, -1, 0.1f)).Child("ankle", at: new Vector3(0, -1, -0.1f))).Copy("ik");
            draft.TwoBone(copy).Reach(draft.Control("foot").Under(copy.Tip));
        });
        Assert.Contains("'ik_hip' -> 'foot' -> 'ik_ankle' -> 'ik_knee' -> 'ik_hip'", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message);
    }

    [Fact]
    public void A_loop_through_a_source_without_weight_is_a_loop_all_the_same()
    {
        var rig = new TestRig(draft =>
        {
            var target = draft.Control("target");
            var below = draft.Control("below").Under(target);
            var amount = target.Switch("ride");
            draft.Blend(target).From(draft.Control("free"), amount.Inverse).From(below, amount);
        });
        Assert.Contains("'target' -> 'below' -> 'target'", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message);
    }
}
