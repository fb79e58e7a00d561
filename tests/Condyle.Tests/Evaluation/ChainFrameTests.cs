using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class ChainFrameTests
{
    [Fact]
    public void A_leg_along_its_own_axis_tells_its_bone_its_bend_and_the_axis_of_the_bend()
    {
        var frame = Leg(Quaternion.CreateFromAxisAngle(Vector3.UnitX, -0.2f), Quaternion.CreateFromAxisAngle(Vector3.UnitX, 0.5f), null);

        Assert.Equal("−Y", frame.BoneAxis.ToString());
        Assert.Equal("+X", frame.BendAxis.ToString());
        Near.Equal(0.5, frame.PreferredBend, 1e-6);
        Assert.False(frame.IsStraight);
        Assert.True(frame.Direction!.Value.Z > 0.9, "A knee bends forwards.");
    }

    [Fact]
    public void A_positive_turn_about_the_bend_axis_bends_further() =>
        ArmSetting.Any.Sample(setting =>
        {
            var rig = ArmRig.Of(setting with { Scale = Vector3d.One });
            var frame = ChainFrame.Of(rig.Model.Chains[^1], rig.Rest)!;
            if (frame.BendAxis is not { } axis)
                return;
            var turn = new[] { Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ }[(int)axis.Axis] * (axis.IsNegative ? -1 : 1);
            var pose = rig.Evaluate(new Pose().Set(rig["turn_elbow"].Id, Trs.Identity with { Rotation = Quaterniond.About(turn, 0.1) }).SetSwitch(rig.SwitchId("fk"), 1));
            var (a, b, c) = (pose.WorldOf(rig["shoulder"]).Origin, pose.WorldOf(rig["elbow"]).Origin, pose.WorldOf(rig["wrist"]).Origin);
            Assert.True(Math.Acos(Vector3d.Dot((b - a).Direction!.Value, (c - b).Direction!.Value)) > frame.PreferredBend);
        });

    [Fact]
    public void What_a_straight_rest_leaves_unclear_is_none_until_it_is_declared()
    {
        var (silent, declared) = (Leg(Quaternion.Identity, Quaternion.Identity, null), Leg(Quaternion.Identity, Quaternion.Identity, Vector3.UnitZ));

        Assert.True(silent.IsStraight);
        Assert.Null(silent.BendAxis);
        Assert.Null(silent.Direction);
        Assert.Equal("+X", declared.BendAxis.ToString());
        Near.Equal(0, declared.PreferredBend);
        Assert.Equal(Vector3.UnitZ, declared.Declared);
    }

    [Fact]
    public void A_bone_between_two_axes_has_no_clear_axis()
    {
        var model = TestRig.ModelOf(draft =>
        {
            var a = draft.Skeleton("s").Root("a");
            draft.Chain(a, a.Child("b", at: new Vector3(1, 1, 0)));
        });

        Assert.Null(ChainFrame.Of(model.Chains[0], RestPose.Of(model))!.BoneAxis);
    }

    [Fact]
    public void Frames_of_opposite_axes_turn_equally_and_move_oppositely() =>
        Any.Rotation.Sample(left =>
        {
            // The mirrored axes, all reversed: the right frame of "equal turns make the mirror image".
            Vector3d Reversed(Vector3d axis) => -(left.Rotate(axis) is var v ? v with { X = -v.X } : v);
            var right = new Affine3d(Reversed(Vector3d.UnitX), Reversed(Vector3d.UnitY), Reversed(Vector3d.UnitZ), Vector3d.Zero);

            var mirror = MirrorBehaviour.Between(Affine3d.Rigid(Vector3d.Zero, left), right)!.Value;
            Assert.True(mirror.TurnsAreEqual);
            Assert.Equal((1, -1), (mirror.TurnSign(Axis.Y), mirror.MoveSign(Axis.Y)));
        });

    [Fact]
    public void Frames_with_the_worlds_axes_turn_oppositely_about_y_and_z()
    {
        var mirror = MirrorBehaviour.Between(Affine3d.Identity, Affine3d.Identity)!.Value;

        Assert.Equal((1, -1, -1), (mirror.TurnSign(Axis.X), mirror.TurnSign(Axis.Y), mirror.TurnSign(Axis.Z)));
        Assert.Equal((-1, 1, 1), (mirror.MoveSign(Axis.X), mirror.MoveSign(Axis.Y), mirror.MoveSign(Axis.Z)));
    }

    [Fact]
    public void The_signs_make_the_mirror_image_of_any_turn() =>
        Gen.Select(Any.Rotation, Gen.Bool, Gen.Bool, Any.Rotation).Sample((left, x, y, turn) =>
        {
            int[] signs = [x ? 1 : -1, y ? 1 : -1, 0];
            signs[2] = -signs[0] * signs[1]; // the change of basis A of a mirror has determinant −1
            Vector3d Column(Vector3d axis, int sign) => left.Rotate(axis) is var v ? new Vector3d(-v.X, v.Y, v.Z) * sign : v;
            var right = new Affine3d(Column(Vector3d.UnitX, signs[0]), Column(Vector3d.UnitY, signs[1]), Column(Vector3d.UnitZ, signs[2]), Vector3d.Zero);
            var mirror = MirrorBehaviour.Between(Affine3d.Rigid(Vector3d.Zero, left), right)!.Value;

            var mirrored = new Quaterniond(turn.X * mirror.TurnSign(Axis.X), turn.Y * mirror.TurnSign(Axis.Y), turn.Z * mirror.TurnSign(Axis.Z), turn.W);
            var (here, there) = (left * turn * left.Inverse, right.Rotation * mirrored * right.Rotation.Inverse);
            Near.Equal(new Quaterniond(here.X, -here.Y, -here.Z, here.W), there);
        });

    [Fact]
    public void The_mirror_image_of_a_frame_moves_and_turns_equally_whichever_side_it_is() =>
        Any.Rotation.Sample(rotation =>
        {
            var frame = Affine3d.Rigid(Vector3d.UnitY, rotation);
            foreach (var mirror in new[] { MirrorBehaviour.Between(frame, frame.Mirrored)!.Value, MirrorBehaviour.Between(frame.Mirrored, frame)!.Value })
            {
                Assert.True(mirror.TurnsAreEqual);
                Assert.All([Axis.X, Axis.Y, Axis.Z], axis => Assert.Equal((1, 1), (mirror.TurnSign(axis), mirror.MoveSign(axis))));
            }
        });

    [Fact]
    public void Frames_that_mirror_by_no_axis_have_no_clear_mirroring() =>
        Assert.Null(MirrorBehaviour.Between(Affine3d.Identity, Affine3d.Rigid(Vector3d.Zero, Quaterniond.About(new Vector3d(1, 1, 1).Direction!.Value, 1))));

    private static ChainFrame Leg(Quaternion hipTurn, Quaternion kneeTurn, Vector3? declared)
    {
        var model = TestRig.ModelOf(draft =>
        {
            var hip = draft.Skeleton("leg").Root("hip", turned: hipTurn);
            var chain = draft.Chain(hip, hip.Child("knee", at: -Vector3.UnitY, turned: kneeTurn).Child("ankle", at: -Vector3.UnitY));
            if (declared is { } towards)
                chain.Bending(towards);
        });
        return ChainFrame.Of(model.Chains[0], RestPose.Of(model))!;
    }
}
