using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class AimTests
{
    private enum UpKind
    {
        None,
        Place,
        Axis,
    }

    private static readonly Gen<Trs> Signed = Gen.Select(Any.Channels, Gen.Bool).Select((channels, mirrored) =>
        mirrored ? channels with { Scale = channels.Scale with { X = -channels.Scale.X } } : channels);

    private static readonly Gen<Setting> Settings = Gen.Select(Signed, Signed, Any.Direction, Any.Direction, Any.Rotation, Gen.Enum<UpKind>())
        .Select((root, child, target, up, frame, kind) => new Setting(root, child, target, up, frame, kind))
        .Where(setting => Vector3d.Cross(setting.Target, setting.Up).Length > 0.3);

    /// <summary>Worked triangles: 3-4-5 on the ground, and 5-12-13 up from there (Euclid, Elements I.47): the turn is atan(3/4), the climb atan(12/5).</summary>
    [Fact]
    public void A_lamp_that_points_along_Z_follows_its_target_around_and_up()
    {
        var rig = new TestRig(draft =>
        {
            var lamp = draft.Skeleton("quay").Root("lamp", at: new Vector3(1, 2, 3));
            var ahead = draft.Skeleton("marks").Root("ahead", at: new Vector3(1, 2, 8));
            draft.Aim(lamp).At(draft.Control("gull").PlacedAt(ahead)).Up(draft.Control("quay"), Axis.Y);
        });
        Quaterniond Facing(Vector3d to) => rig.Evaluate(new Pose().Set(rig["gull"].Id, Trs.Identity with { Translation = to - new Vector3d(0, 0, 5) })).WorldOf(rig["lamp"]).Rotation;

        var around = Quaterniond.About(Vector3d.UnitY, Math.Atan2(3, 4));
        Near.Equal(around, Facing(new(3, 0, 4)));
        Near.Equal(around * Quaterniond.About(Vector3d.UnitX, -Math.Atan2(12, 5)), Facing(new(3, 12, 4)));
    }

    [Fact]
    public void Rest_holds_under_shear_and_mirrored() => Settings.Sample(setting => setting.Rig().AssertRestHolds(1e-5));

    [Fact]
    public void What_points_at_the_target_at_rest_does_so_wherever_it_goes_and_the_side_that_faces_up_stays_there() => Gen.Select(Settings, Any.Vector, Any.Channels).Sample((setting, by, upMoved) =>
    {
        var rig = setting.Rig();
        var pose = rig.Evaluate(new Pose().Set(rig["target"].Id, rig.Moved("target", by, Quaterniond.Identity)).Set(rig["up"].Id, upMoved with { Scale = Vector3d.One }));
        var (before, now) = (Seen(rig, setting.Kind, rig.Rest.WorldOf), Seen(rig, setting.Kind, pose.WorldOf));
        if (now.Distance < 0.1 || now.Sine < 0.05 || before.Sine < 0.05)
            return;
        Near.Equal(before.Target, now.Target, 1e-6);
        if (setting.Kind != UpKind.None)
            Near.Equal(before.Up, now.Up, 1e-5);
    });

    [Fact]
    public void Without_an_up_it_is_the_smallest_turn_from_where_the_parent_carries_it() => Gen.Select(Settings, Any.Vector, Any.Rotation).Sample((setting, by, turn) =>
    {
        var rig = (setting with { Kind = UpKind.None, Root = setting.Root with { Scale = Vector3d.One } }).Rig();
        var carried = rig.Moved("parent", Vector3d.Zero, turn);
        var pose = rig.Evaluate(new Pose().Set(rig["parent"].Id, carried).Set(rig["target"].Id, rig.Moved("target", by, Quaterniond.Identity)));
        var world = pose.WorldOf(rig["lamp"]);
        var before = turn.Rotate((rig.Rest.WorldOf(rig["target"]).Origin - rig.Rest.WorldOf(rig["lamp"]).Origin).Direction!.Value);
        var toTarget = pose.WorldOf(rig["target"]).Origin - world.Origin;
        if (toTarget.Length < 2 * AimRest.Near || toTarget.Direction is not { } now || Vector3d.Dot(before, now) < -0.99)
            return;
        Near.Equal(Math.Acos(Math.Min(1, Vector3d.Dot(before, now))), Quaterniond.Angle(turn * rig.Rest.WorldOf(rig["lamp"]).Rotation, world.Rotation), 1e-6);
    });

    [Fact]
    public void A_named_axis_comes_to_the_point_though_it_is_off_at_rest() => Gen.Select(Settings, Gen.Enum<Axis>(), Any.Vector).Sample((setting, axis, by) =>
    {
        var rig = (setting with { Root = setting.Root with { Scale = Vector3d.One }, Child = setting.Child with { Scale = Vector3d.One } }).Rig(axis);
        var pose = rig.Evaluate(new Pose().Set(rig["target"].Id, rig.Moved("target", by, Quaterniond.Identity)));
        var (world, target) = (pose.WorldOf(rig["lamp"]), pose.WorldOf(rig["target"]).Origin);
        if ((target - world.Origin).Length > 0.01)
            Near.Equal((target - world.Origin).Direction!.Value, world.Turn(Vector3d.Unit(axis)), 1e-6);
    });

    [Fact]
    public void It_looks_from_where_a_drive_moves_it_to_whichever_is_said_first() => Gen.Select(Any.Vector, Any.Vector, Gen.Bool).Sample((from, to, first) =>
    {
        var rig = new TestRig(draft =>
        {
            var lamp = draft.Skeleton("s").Root("lamp");
            void Move() => draft.Drive(lamp).ByChannels(draft.Control("boat")).Writing(Channels.Move);
            if (first)
                Move();
            draft.Aim(lamp).At(draft.Control("gull")).Along(Axis.X);
            if (!first)
                Move();
        });
        var pose = rig.Evaluate(new Pose().Set(rig["boat"].Id, Trs.Identity with { Translation = from }).Set(rig["gull"].Id, Trs.Identity with { Translation = to }));
        Near.Equal(from, pose.WorldOf(rig["lamp"]).Origin);
        if ((to - from).Length > 0.01)
            Near.Equal((to - from).Direction!.Value, pose.WorldOf(rig["lamp"]).X, 1e-8);
    });

    [Fact]
    public void The_mirror_image_of_a_pose_aims_at_its_mirror_image_whatever_the_frames_are() => Gen.Select(Settings, Any.Rotation, Any.Rotation, Any.Vector).Sample((setting, root, child, by) =>
    {
        var here = setting with { Root = setting.Root with { Scale = Vector3d.One }, Child = setting.Child with { Scale = Vector3d.One } };
        var there = here.MirroredOn(root, child);
        var (one, other) = (here.Rig(), there.Rig());
        ReferencePose Posed(TestRig rig, Vector3d move) => rig.Evaluate(new Pose().Set(rig["target"].Id, rig.Moved("target", move, Quaterniond.Identity)));
        Quaterniond Turned(TestRig rig, ReferencePose pose) => pose.WorldOf(rig["lamp"]).Rotation * rig.Rest.WorldOf(rig["lamp"]).Rotation.Inverse;

        // Near the places where an aim jumps, the floats of the control's move decide.
        var (left, right) = (Posed(one, by * 0.2), Posed(other, TailSetting.Mirror(by * 0.2)));
        var (before, now) = (Seen(one, setting.Kind, one.Rest.WorldOf), Seen(one, setting.Kind, left.WorldOf));
        if (Math.Min(before.Distance, now.Distance) > 0.1 && (setting.Kind == UpKind.None || Math.Min(before.Sine, now.Sine) > 0.05))
            Near.Equal(TailSetting.Mirror(Turned(one, left)), Turned(other, right), 1e-4);
    });

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(0, 0, 1e-7)]
    [InlineData(0, 0, -2)]
    [InlineData(0, 1, 0)]
    [InlineData(1e6, -1e6, 1e6)]
    public void Where_it_cannot_be_continuous_it_has_one_finite_answer(double x, double y, double z)
    {
        foreach (var scale in new[] { Vector3d.One, Vector3d.Zero, new(0, 1, 1), new(-1, 1, 1) })
        {
            foreach (var kind in new[] { UpKind.None, UpKind.Place, UpKind.Axis })
            {
                // The up node stands at (0, 1, 0) of the lamp, the target at (0, 0, 1).
                var rig = new Setting(Trs.Identity, Trs.Identity, Vector3d.UnitZ, Vector3d.UnitY, Quaterniond.Identity, kind).Rig();
                var pose = new Pose().Set(rig["parent"].Id, Trs.Identity with { Scale = scale }).Set(rig["target"].Id, Trs.Identity with { Translation = new Vector3d(x, y, z) - Vector3d.UnitZ });
                var world = rig.Evaluate(pose).WorldOf(rig["lamp"]);
                Near.Finite(world);
                Near.Equal(world, rig.Evaluate(pose).WorldOf(rig["lamp"]), 0);
                if (scale == Vector3d.One && new Vector3d(x, y, z).Length < AimRest.Near)
                    Near.Equal(Quaterniond.Identity, world.Rotation);
            }
        }
    }

    [Fact]
    public void A_target_that_rests_on_the_node_needs_an_axis()
    {
        Assert.Contains(".Along", Assert.Throws<RigGeometryException>(() => new TestRig(draft => draft.Aim(draft.Group("a_group")).At(draft.Control("b"))).Evaluate()).Message, StringComparison.Ordinal);
        new TestRig(draft => draft.Aim(draft.Skeleton("s").Root("a")).At(draft.Control("b")).Along(Axis.Y).Up(draft.Control("c"))).AssertRestHolds();
    }

    [Fact]
    public void Without_a_target_the_sentence_is_unfinished_and_turns_nothing() => new TestRig(draft => draft.Aim(draft.Skeleton("s").Root("a")).Along(Axis.Y)).AssertRestHolds();

    private static (Vector3d Target, Vector3d Up, double Distance, double Sine) Seen(TestRig rig, UpKind kind, Func<Condyle.Model.RigNode, Affine3d> worldOf)
    {
        var (lamp, up) = (worldOf(rig["lamp"]), worldOf(rig["up"]));
        var toTarget = worldOf(rig["target"]).Origin - lamp.Origin;
        var toUp = kind == UpKind.Axis ? up.Y : up.Origin - lamp.Origin;
        var (line, facing) = (toTarget.Direction ?? default, toUp.Length < 2 * AimRest.Near ? default : toUp.Direction!.Value);
        var back = lamp.Rotation.Inverse;
        return (back.Rotate(line), back.Rotate(facing.Across(line).Direction ?? default), toTarget.Length, facing.Across(line).Length);
    }

    /// <summary>A lamp on a post, each with any frame, scale and mirroring; its target and its up stand off in two directions.</summary>
    private sealed record Setting(Trs Root, Trs Child, Vector3d Target, Vector3d Up, Quaterniond Frame, UpKind Kind)
    {
        public TestRig Rig(Axis? along = null) => new(draft =>
        {
            var post = draft.Skeleton("s").Root("post", JointRole.Helper, Root.Translation.ToSingle(), Root.Rotation.ToSingle(), Root.Scale.ToSingle());
            var lamp = post.Child("lamp", at: Child.Translation.ToSingle(), turned: Child.Rotation.ToSingle(), scaled: Child.Scale.ToSingle());
            draft.Drive(post).ByChannels(draft.Control("parent").PlacedAt(post)).KeepingOffset();
            var at = (Root.ToAffine() * Child.ToAffine()).Origin;
            Control Standing(string name, Vector3d direction) =>
                draft.Control(name).PlacedAt(draft.Skeleton(name + "_marks").Root(name + "_mark", at: (at + direction).ToSingle(), turned: Frame.ToSingle()));
            var aim = draft.Aim(lamp).At(Standing("target", Target));
            var up = Standing("up", Up);
            if (along is { } axis)
                aim.Along(axis);
            if (Kind != UpKind.None)
                _ = Kind == UpKind.Place ? aim.Up(up) : aim.Up(up, Axis.Y);
        });

        /// <summary>The mirror image over the plane x = 0 with other frames; the up's Y axis is mirrored too.</summary>
        public Setting MirroredOn(Quaterniond root, Quaterniond child)
        {
            var lamp = TailSetting.Mirror((Root.ToAffine() * Child.ToAffine()).Origin);
            var post = Trs.Identity with { Translation = TailSetting.Mirror(Root.Translation), Rotation = root };
            return new(post, new(post.ToAffine().Inverse().Apply(lamp), child, Vector3d.One), TailSetting.Mirror(Target), TailSetting.Mirror(Up), TailSetting.Mirror(Frame), Kind);
        }
    }
}
