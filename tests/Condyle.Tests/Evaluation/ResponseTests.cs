using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class ResponseTests
{
    [Fact]
    public void At_rest_every_joint_stays_whatever_the_curves_say_there() =>
        Gen.Select(Any.Channels, Any.Channels, Gen.Float[-1, 1], Gen.Float[-50, 50], Gen.Float[-50, 50]).Sample((root, child, atRest, from, to) =>
            Turned(root, child, (rig, joint) =>
            {
                var response = rig.Response(rig.Control("hand").Dial("curl", -1, 1, atRest)).Key(-1, from).Key(1, to);
                foreach (var axis in new[] { Axis.X, Axis.Y, Axis.Z })
                    response.OntoTurn(joint, axis).OntoMove(joint, axis).OntoScale(joint, axis);
            }).AssertRestHolds(1e-5));

    [Fact]
    public void Turns_add_up_by_axis_and_go_about_the_joint_s_own_axes_X_first() =>
        Gen.Select(Any.Channels, Any.Channels, Any.Vector).Sample((root, child, dials) =>
        {
            var rig = Turned(root, child, (draft, joint) =>
            {
                var hand = draft.Control("hand");
                draft.Response(hand.Dial("z", -9, 9)).Key(0, 0, slope: 7).Continued().OntoTurn(joint, Axis.Z);
                draft.Response(hand.Dial("x", -9, 9)).Key(0, 0, slope: 20).Continued().OntoTurn(joint, Axis.X).OntoTurn(joint, Axis.Y);
                draft.Response(hand.Dial("y", -9, 9)).Key(0, 0, slope: 30).Continued().OntoTurn(joint, Axis.Y);
            });
            var pose = Dialled(rig, ("x", dials.X), ("y", dials.Y), ("z", dials.Z));
            var rest = RestPose.ChannelsOf(rig["b"]);
            Quaterniond Turn(Axis axis, double degrees) => Quaterniond.About(Vector3d.Unit(axis), degrees * Math.PI / 180);
            Near.Equal(
                rest with { Rotation = rest.Rotation * Turn(Axis.X, 20 * dials.X) * Turn(Axis.Y, (20 * dials.X) + (30 * dials.Y)) * Turn(Axis.Z, 7 * dials.Z) },
                rig.Evaluate(pose).ChannelsOf(rig["b"]));
        });

    [Fact]
    public void A_move_goes_along_the_joint_s_own_axis_as_it_rests_and_a_scale_counts_from_the_factor_at_rest() =>
        Gen.Select(Any.Channels, Any.Channels, Gen.Enum<Axis>(), Gen.Double[0, 1]).Sample((root, child, axis, amount) =>
        {
            var rig = Turned(root with { Scale = Vector3d.One }, child, (draft, joint) =>
            {
                var reach = draft.Control("hand").Dial("reach", 0, 1);
                draft.Response(reach).Key(0, 0).Key(1, 0.3f).OntoMove(joint, axis);
                draft.Response(reach).Key(0, 1).Key(1, 1.5f).OntoScale(joint, axis);
            });
            var (before, after) = (rig.Rest.WorldOf(rig["b"]), rig.Evaluate(Dialled(rig, ("reach", amount))).WorldOf(rig["b"]));
            Near.Equal(before.Rotation.Rotate(Vector3d.Unit(axis)) * (0.3f * amount), after.Origin - before.Origin, 1e-6);
            Near.Equal(before.Rotation, after.Rotation, 1e-6);
            Vector3d Lengths(Affine3d frame) => new(frame.X.Length, frame.Y.Length, frame.Z.Length);
            var (was, now) = (Lengths(before), Lengths(after));
            var factor = Vector3d.One + (Vector3d.Unit(axis) * (0.5 * amount));
            Near.Equal(new(was.X * factor.X, was.Y * factor.Y, was.Z * factor.Z), now, 1e-6);
        });

    [Fact]
    public void On_a_control_it_comes_on_top_of_what_the_animator_sets_and_on_a_driven_joint_on_top_of_the_drive()
    {
        var rig = new TestRig(draft =>
        {
            var joint = draft.Skeleton("s").Root("finger", at: new Vector3(0, 1, 0));
            var control = draft.Control("turn").PlacedAt(joint);
            draft.Drive(joint).ByChannels(control);
            draft.Response(control.Dial("curl", 0, 1)).Key(0, 0).Key(1, 30).OntoTurn(control, Axis.X).OntoTurn(joint, Axis.X);
        });
        var tenDegrees = Trs.Identity with { Rotation = Quaterniond.About(Vector3d.UnitX, 10 * Math.PI / 180) };
        var pose = rig.Evaluate(Dialled(rig, ("curl", 1)).Set(rig["turn"].Id, tenDegrees));
        Near.Equal(Quaterniond.About(Vector3d.UnitX, 40 * Math.PI / 180), pose.WorldOf(rig["turn"]).Rotation);
        Near.Equal(Quaterniond.About(Vector3d.UnitX, 70 * Math.PI / 180), pose.ChannelsOf(rig["finger"]).Rotation);
    }

    [Fact]
    public void The_weight_of_a_morph_target_is_the_sum_of_its_responses_counted_from_zero()
    {
        var rig = new TestRig(draft =>
        {
            var face = draft.Control("face");
            draft.Response(face.Switch("smile", 0.25f)).Key(0, 0.5f).Key(1, 1).OntoMorph("head", "smile");
            draft.Response(face.Dial("laugh", 0, 1)).Key(0, 0).Key(1, 2).OntoMorph("head", "smile").OntoMorph("head", "squint");
        });
        Near.Equal(0.625, rig.Evaluate().MorphWeight("head", "smile"));
        var laughing = rig.Evaluate(Dialled(rig, ("laugh", 0.5)).SetSwitch(rig.SwitchId("smile"), 1));
        Near.Equal(2, laughing.MorphWeight("head", "smile"));
        Near.Equal(1, laughing.MorphWeight("head", "squint"));
    }

    [Fact]
    public void What_carries_a_control_may_respond_to_the_control_s_own_angle()
    {
        // A collar that rises with the arm: the group responds to the angle of the control that it carries.
        var rig = new TestRig(draft =>
        {
            var collar = draft.Group("collar_group");
            var arm = draft.Control("turn_arm").Under(collar);
            draft.Response(draft.Angle(arm).About(Axis.Z)).Key(0, 0).Key(90, 20).OntoTurn(collar, Axis.Z);
        });
        var raised = Trs.Identity with { Rotation = Quaterniond.About(Vector3d.UnitZ, Math.PI / 4) };
        Near.Equal(Quaterniond.About(Vector3d.UnitZ, 55 * Math.PI / 180), rig.Evaluate(new Pose().Set(rig["turn_arm"].Id, raised)).WorldOf(rig["turn_arm"]).Rotation);
    }

    [Fact]
    public void A_node_that_responds_to_its_own_angle_is_a_loop()
    {
        var rig = new TestRig(draft =>
        {
            var hand = draft.Control("hand");
            draft.Response(draft.Angle(hand).About(Axis.X)).Key(0, 0).Key(90, 90).OntoTurn(hand, Axis.X);
        });
        Assert.Contains("'hand' -> 'hand'", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_response_without_keys_or_without_targets_sets_nothing()
    {
        var rig = new TestRig(draft =>
        {
            var joint = draft.Skeleton("s").Root("a");
            var curl = draft.Control("hand").Dial("curl", 0, 1);
            draft.Response(curl).OntoTurn(joint, Axis.X);
            draft.Response(curl).Key(0, 0).Key(1, 90);
        });
        Near.Equal(Affine3d.Identity, rig.Evaluate(Dialled(rig, ("curl", 1))).WorldOf(rig["a"]));
    }

    private static Pose Dialled(TestRig rig, params (string Name, double Value)[] dials)
    {
        var pose = new Pose();
        foreach (var (name, value) in dials)
            pose.SetDial(rig.Model.Dials.Single(dial => dial.Name.ToString() == name).Id, value);
        return pose;
    }

    private static TestRig Turned(Trs root, Trs child, Action<RigDraft, Joint> respond) => new(draft => respond(draft, draft.Skeleton("s")
        .Root("a", at: root.Translation.ToSingle(), turned: root.Rotation.ToSingle(), scaled: root.Scale.ToSingle())
        .Child("b", at: child.Translation.ToSingle(), turned: child.Rotation.ToSingle(), scaled: child.Scale.ToSingle())));
}
