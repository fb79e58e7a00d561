using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class BlendTests
{
    [Fact]
    public void Weights_that_do_not_add_up_to_one_are_normalised()
    {
        var rig = Between(2f, 1f);
        Near.Equal(new Vector3d(1, 0, 0), rig.Evaluate(Apart(rig)).WorldOf(rig["target_group"]).Origin);
    }

    [Fact]
    public void A_weight_below_zero_counts_as_zero()
    {
        var rig = Between(-1f, 0.5f);
        Near.Equal(new Vector3d(3, 0, 0), rig.Evaluate(Apart(rig)).WorldOf(rig["target_group"]).Origin);
    }

    [Fact]
    public void Without_any_weight_the_target_stays_at_rest()
    {
        var rig = Between(0f, 0f);
        Near.Equal(Affine3d.Identity, rig.Evaluate(Apart(rig)).WorldOf(rig["target_group"]));
    }

    [Fact]
    public void A_blend_without_sources_does_nothing()
    {
        var rig = new TestRig(draft => draft.Blend(draft.Control("a")));
        var moved = Trs.Identity with { Translation = new(1, 2, 3) };

        Near.Equal(moved.ToAffine(), rig.Evaluate(new Pose().Set(rig["a"].Id, moved)).WorldOf(rig["a"]));
    }

    [Fact]
    public void A_lone_node_goes_by_mean_and_slerp_in_its_own_space() =>
        Gen.Select(Any.Channels, Any.Channels, Any.Channels, Gen.Double[0, 1]).Sample((above, a, b, t) =>
        {
            var (holder, one, two) = (above with { Scale = Vector3d.One }, a with { Scale = Vector3d.One }, b with { Scale = Vector3d.One });
            var rig = new TestRig(draft =>
            {
                var amount = draft.Control("first").Switch("to_second");
                draft.Blend(draft.Group("target_group").Under(draft.Control("holder"))).From(draft.Control("one"), amount.Inverse).From(draft.Control("two"), amount);
            });
            var pose = rig.Evaluate(new Pose().Set(rig["holder"].Id, holder).Set(rig["one"].Id, one).Set(rig["two"].Id, two).SetSwitch(rig.SwitchId("to_second"), t));
            var world = pose.WorldOf(rig["target_group"]);
            Near.Equal(Vector3d.Lerp(one.Translation, two.Translation, t), world.Origin, 1e-8);
            if (Math.Abs(Quaterniond.Dot(one.Rotation, two.Rotation)) > 0.01)
                Near.Equal(Slerp.Between(one.Rotation, two.Rotation, t), world.Rotation, 1e-7);
        });

    [Fact]
    public void Three_sources_meet_in_the_middle()
    {
        var rig = new TestRig(draft =>
        {
            var blend = draft.Blend(draft.Group("target_group"));
            foreach (var name in new[] { "x", "y", "z" })
                blend = blend.From(draft.Control(name), 1f / 3);
        });
        var pose = new Pose();
        foreach (var (name, axis) in new[] { ("x", Vector3d.UnitX), ("y", Vector3d.UnitY), ("z", Vector3d.UnitZ) })
            pose.Set(rig[name].Id, new Trs(axis * 3, Quaterniond.About(axis, 0.8), Vector3d.One));
        var world = rig.Evaluate(pose).WorldOf(rig["target_group"]);

        // By symmetry the average turns about the diagonal.
        Near.Equal(Vector3d.One, world.Origin, 1e-6);
        Near.Equal(new Vector3d(1, 1, 1).Direction!.Value, world.Rotation.Vector.Direction!.Value, 1e-6);
    }

    [Fact]
    public void A_joint_that_a_copy_leaves_out_stays_at_rest()
    {
        var rig = new TestRig(draft =>
        {
            var root = draft.Skeleton("s").Root("a");
            var middle = root.Child("b", JointRole.Twist, at: new Vector3(0, 1, 0));
            var tip = middle.Child("c", at: new Vector3(0, 1, 0));
            var chain = draft.Chain(root, tip);
            var copy = chain.Without(JointRole.Twist).Copy("fk");
            draft.Drive(copy.Root).ByChannels(draft.Control("turn").PlacedAt(root));
            draft.Blend(chain).From(copy, 1f);
        });
        rig.AssertRestHolds();
        var turn = Quaterniond.About(Vector3d.UnitX, 1);
        var pose = rig.Evaluate(new Pose().Set(rig["turn"].Id, Trs.Identity with { Rotation = turn }));

        Near.Equal(RestPose.ChannelsOf(rig["b"]), pose.ChannelsOf(rig["b"]));
        Near.Equal(turn.Rotate(new(0, 2, 0)), pose.WorldOf(rig["c"]).Origin);
    }

    private static TestRig Between(float a, float b) => new(draft =>
        draft.Blend(draft.Group("target_group")).From(draft.Control("a"), a).From(draft.Control("b"), b));

    private static Pose Apart(TestRig rig) => new Pose().Set(rig["b"].Id, Trs.Identity with { Translation = new(3, 0, 0) });
}
