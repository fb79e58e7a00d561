using System.Numerics;
using Condyle.Runtime.Kernels;
using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Runtime.Tests.Evaluation;

public class CompilerTests
{
    [Fact]
    public void No_rule_fails_on_a_random_rig() =>
        Gen.Int.Sample(seed => Assert.DoesNotContain(Rig.Examine(new RandomRig(seed)).Findings, finding => finding.Message.Contains("the rule failed", StringComparison.Ordinal)), iter: 300);

    [Fact]
    public void A_loop_of_drives_is_an_error_that_names_its_path()
    {
        var fault = Assert.Throws<RigCompileException>(() => DefinedRig.Compile(rig =>
        {
            var joint = rig.Skeleton("s").Root("joint");
            var (first, second) = (rig.Control("first"), rig.Control("second"));
            rig.Drive(first).ByChannels(second);
            rig.Drive(second).ByChannels(first);
            rig.Drive(joint).ByChannels(first);
        }));
        Assert.Contains("'first' -> 'second' -> 'first'", fault.Message);
        Assert.Contains("'DefinedRig'", fault.Message);
    }

    [Fact]
    public void A_goal_under_its_own_chain_is_a_loop() => Assert.Contains(
        "'ik_a' -> 'goal' -> ",
        Assert.Throws<RigCompileException>(() => DefinedRig.Compile(rig =>
        {
            var ik = BentChain(rig).Copy("ik");
            rig.TwoBone(ik).Reach(rig.Control("goal").Under(ik.Tip));
        })).Message);

    [Fact]
    public void A_joint_of_a_solver_that_follows_by_matrix_is_an_error_that_names_both() => Assert.Contains(
        "'ik_b' is a joint of the two-bone IK of copy 'ik' of the chain from 'a' to 'c' and follows 'other' by matrix",
        Assert.Throws<RigCompileException>(() => DefinedRig.Compile(rig =>
        {
            var chain = BentChain(rig);
            var ik = chain.Copy("ik");
            rig.TwoBone(ik).Reach(rig.Control("goal").PlacedAt(chain.Tip));
            rig.Drive(ik.Of(chain[1])).ByMatrix(rig.Control("other"));
        })).Message);

    [Fact]
    public void A_straight_chain_without_a_bend_has_no_pole_point() => Assert.Contains(
        ".Bending(",
        Assert.Throws<RigCompileException>(() => DefinedRig.Compile(rig =>
        {
            var root = rig.Skeleton("s").Root("a");
            var tip = root.Child("b", at: Vector3.UnitX).Child("c", at: Vector3.UnitX);
            rig.Control("pole").PlacedAt(rig.Chain(root, tip).PolePoint(0.3f));
        })).Message);

    [Fact]
    public void A_weight_with_too_many_terms_is_an_error_that_says_where() => Assert.Contains(
        "The weight of 'source' in the blend of 'joint' isn't known.",
        Assert.Throws<RigCompileException>(() => DefinedRig.Compile(rig =>
        {
            var joint = rig.Skeleton("s").Root("joint");
            var source = rig.Control("source");
            Weight weight = 1f;
            for (var i = 0; i < 7; i++)
                weight *= source.Switch($"s{i}").Inverse;
            rig.Blend(joint).From(source, weight);
        })).Message);

    [Fact]
    public void Two_controls_of_one_name_are_an_error_because_a_clip_finds_them_by_name() => Assert.Contains(
        "more than one control named 'hand'",
        Assert.Throws<RigCompileException>(() => DefinedRig.Compile(rig =>
        {
            rig.Control("hand");
            rig.Control("hand");
        })).Message);

    [Fact]
    public void Unfinished_sentences_move_nothing()
    {
        var rig = DefinedRig.Compile(draft =>
        {
            var chain = BentChain(draft);
            draft.Drive(chain.Root);
            draft.Blend(chain);
            draft.TwoBone(chain.Copy("ik"));
        });
        Assert.Empty(rig.Layout.Schedule.Batches);
    }

    [Fact]
    public void Nodes_that_reach_neither_an_exported_joint_nor_a_label_are_dropped()
    {
        static void Needed(RigDraft rig)
        {
            var joint = rig.Skeleton("s").Root("joint");
            rig.Drive(joint).ByChannels(rig.Control("used"));
        }

        var rig = DefinedRig.Compile(Needed);
        var withMore = DefinedRig.Compile(draft =>
        {
            Needed(draft);
            var idle = draft.Control("idle");
            draft.Drive(draft.Group("idle_group").Under(idle)).ByChannels(draft.Control("other").Under(idle));
        });
        Assert.Equal(rig.Layout.AtRest.Worlds.Count, withMore.Layout.AtRest.Worlds.Count);
        Assert.Equal(rig.Layout.Schedule.Batches.Count, withMore.Layout.Schedule.Batches.Count);

        var labelled = DefinedRig.Compile(draft =>
        {
            Needed(draft);
            draft.Label("label", "here").Under(draft.Control("carrier"));
        });
        Assert.Equal(rig.Layout.AtRest.Worlds.Count + 1, labelled.Layout.AtRest.Worlds.Count);
    }

    [Fact]
    public void A_control_that_was_dropped_can_still_be_set()
    {
        var rig = DefinedRig.Compile(draft =>
        {
            draft.Skeleton("s").Root("joint");
            draft.Control("idle");
        });
        var instance = rig.NewInstance();
        instance.SetMove(rig.ControlIndex("idle"), Vector3.One);
        instance.Evaluate();
        Assert.Equal(Vector3.Zero, instance.JointWorld(0).Translation);
    }

    [Fact]
    public void Equal_weights_are_one_slot_and_constant_ones_are_not_worked_out()
    {
        var rig = DefinedRig.Compile(draft =>
        {
            var joint = draft.Skeleton("s").Root("joint");
            var (left, right) = (draft.Control("left"), draft.Control("right"));
            var amount = left.Switch("amount");
            draft.Blend(joint).From(left, amount.Inverse).From(right, amount).From(right, 0.25f);
            draft.Blend(joint.Child("next")).From(left, ((Weight)amount).Inverse.Inverse).From(right, amount.Inverse);
            draft.Label("label", "left").ShownBy(amount.Inverse);
        });
        Assert.Equal(3, rig.Layout.AtRest.Weights.Count);
        Assert.Single(Assert.IsType<LinearWeightBatch>(rig.Layout.Schedule.Batches[0]).Items);
    }

    [Fact]
    public void Nodes_that_stand_still_are_folded_and_a_drive_by_matrix_costs_nothing()
    {
        var rig = DefinedRig.Compile(draft =>
        {
            var joint = draft.Skeleton("s").Root("joint");
            var control = draft.Control("control");
            var follower = draft.Group("follower_group");
            draft.Drive(follower).ByMatrix(control);
            var below = draft.Group("below_group").Under(draft.Group("between_group").Under(follower));
            draft.Drive(joint).ByChannels(below);
        });

        // The control, the joint.
        Assert.Collection(
            rig.Layout.Schedule.Batches,
            batch => Assert.IsType<ChannelFrameBatch>(batch),
            batch => Assert.IsType<FollowBatch>(batch));
    }

    [Fact]
    public void Nodes_that_do_not_wait_for_each_other_share_a_batch()
    {
        var rig = DefinedRig.Compile(draft =>
        {
            var root = draft.Skeleton("s").Root("root");
            for (var i = 0; i < 20; i++)
                draft.Drive(root.Child($"joint_{i}")).ByChannels(draft.Control($"control_{i}"));
        });
        Assert.Equal(2, rig.Layout.Schedule.Batches.Count);
    }

    [Fact]
    public void The_sentence_begun_last_has_the_node()
    {
        var rig = DefinedRig.Compile(draft =>
        {
            var joint = draft.Skeleton("s").Root("joint");
            var (first, last) = (draft.Control("first"), draft.Control("last"));
            draft.Blend(joint).From(first, 1f);
            draft.Drive(joint).ByChannels(last);
        });
        var instance = rig.NewInstance();
        instance.SetMove(rig.ControlIndex("first"), Vector3.UnitX);
        instance.SetMove(rig.ControlIndex("last"), Vector3.UnitY);
        instance.Evaluate();
        Assert.Equal(Vector3.UnitY, instance.JointTranslation(0));
    }

    [Theory]
    [InlineData(1e-5f, 1)]
    [InlineData(0, 0)]
    public void The_least_weight_has_the_node_and_none_leaves_it_at_rest(float amount, float moved)
    {
        var rig = DefinedRig.Compile(draft =>
        {
            var source = draft.Control("source");
            draft.Blend(draft.Skeleton("s").Root("joint")).From(source, source.Switch("amount"));
        });
        var instance = rig.NewInstance();
        instance.SetMove(0, Vector3.UnitX);
        instance.SetSwitch(0, amount);
        instance.Evaluate();
        Assert.Equal(new Vector3(moved, 0, 0), instance.JointTranslation(0));
    }

    [Fact]
    public void A_drive_can_take_one_joint_from_a_solver_and_leave_it_the_others()
    {
        var rig = DefinedRig.Compile(draft =>
        {
            var chain = BentChain(draft);
            var ik = chain.Copy("ik");
            draft.TwoBone(ik).Reach(draft.Control("goal").PlacedAt(chain.Tip));
            draft.Drive(ik.Tip).ByChannels(draft.Control("tip"));
            draft.Blend(chain).From(ik, 1f);
        });
        var instance = rig.NewInstance();
        instance.SetMove(rig.ControlIndex("tip"), new Vector3(5, 6, 7));
        instance.SetMove(rig.ControlIndex("goal"), new Vector3(0, 0.1f, 0));
        instance.Evaluate();
        Assert.True((instance.JointWorld(2).Translation - new Vector3(5, 6, 7)).Length() < 1e-5f);
        Assert.True((instance.JointWorld(1).Translation - rig.NewInstance().JointWorld(1).Translation).Length() > 1e-3f);
    }

    [Fact]
    public void What_a_rig_says_of_its_controls_switches_joints_and_labels_is_there_by_name_and_index()
    {
        var rig = RigCompiler.Compile(Rig.Build(new LimbRig(2)));
        Assert.Equal("LimbRig", rig.Name);
        Assert.Equal(["pelvis", "shoulder", "shoulder_twist", "elbow", "wrist", "finger"], rig.Joints.Select(joint => joint.Name));
        Assert.Equal([-1, 0, 1, 1, 3, 4], rig.Joints.Select(joint => joint.Parent));
        Assert.Equal(JointRole.Twist, rig.Joints[rig.JointIndex("shoulder_twist")].Role);
        Assert.Equal("hand.fk", Assert.Single(rig.Switches).Name);
        Assert.Equal(0, rig.SwitchIndex("hand.fk"));
        Assert.Equal(0, rig.SwitchIndex("limb_root.fk"));
        Assert.Equal("pole", rig.Controls[rig.ControlIndex("pole")].Name);
        Assert.Equal(["IK", "FK", "limb"], rig.Labels.Select(label => label.Text));
        Assert.True(rig.NewInstance().LabelVisible(0));
        Assert.False(rig.NewInstance().LabelVisible(1));
        Assert.True(rig.NewInstance().LabelVisible(2));
    }

    [Fact]
    public void Locks_and_limits_reach_the_compiled_rig()
    {
        var control = Assert.Single(DefinedRig.Compile(rig =>
            rig.Control("knee").Lock(Channels.Move).LimitTurn(Axis.X, 0, 150).LimitMove(Axis.Y, -0.1f, 0.2f)).Controls);
        Assert.Equal(Channels.Move | Channels.Scale, control.Locked);
        Assert.Equal([new CompiledLimit(true, Axis.X, 0, 150), new CompiledLimit(false, Axis.Y, -0.1f, 0.2f)], control.Limits);
    }

    [Fact]
    public void A_name_that_is_not_there_is_answered_with_the_nearest_ones()
    {
        var rig = RigCompiler.Compile(Rig.Build(new LimbRig(2)));
        Assert.Contains("There is no joint 'sholder' in this rig. The nearest: 'shoulder'", Assert.Throws<ArgumentException>(() => rig.JointIndex("sholder")).Message);
        Assert.Contains("'hand.fk'", Assert.Throws<ArgumentException>(() => rig.SwitchIndex("hand.ik")).Message);
        Assert.Contains("no control at all", Assert.Throws<ArgumentException>(() => DefinedRig.Compile(_ => { }).ControlIndex("hand")).Message);
    }

    private static Chain BentChain(RigDraft rig)
    {
        var root = rig.Skeleton("s").Root("a");
        return rig.Chain(root, root.Child("b", at: new(1, 0, 0)).Child("c", at: new(0.5f, 0.5f, 0)));
    }
}
