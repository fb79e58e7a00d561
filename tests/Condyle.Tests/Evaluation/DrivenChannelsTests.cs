using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

/// <summary>Drives that write some channels only.</summary>
public sealed class DrivenChannelsTests
{
    private static readonly Gen<Channels> Parts = Gen.Int[0, 6].Select(i => new[]
    {
        Channels.Move, Channels.Turn, Channels.Scale, Channels.Move | Channels.Turn, Channels.MoveY, Channels.MoveX | Channels.Turn | Channels.ScaleZ, Channels.All,
    }[i]);

    private static readonly Gen<Trs> Signed = Gen.Select(Any.Channels, Gen.Bool).Select((channels, mirrored) =>
        mirrored ? channels with { Scale = channels.Scale with { X = -channels.Scale.X } } : channels);

    [Fact]
    public void Each_channel_follows_its_own_source_in_whatever_order_they_are_said() => Gen.Select(Any.Channels, Any.Channels, Any.Channels, Gen.Shuffle(new[] { 0, 1, 2 })).Sample((move, turn, scale, order) =>
    {
        var rig = new TestRig(draft =>
        {
            var target = draft.Group("target_group");
            foreach (var part in order)
            {
                var (name, channels) = new[] { ("mover", Channels.Move), ("turner", Channels.Turn), ("scaler", Channels.Scale) }[part];
                draft.Drive(target).ByChannels(draft.Control(name)).Writing(channels);
            }
        });
        var pose = rig.Evaluate(new Pose().Set(rig["mover"].Id, move).Set(rig["turner"].Id, turn).Set(rig["scaler"].Id, scale));
        Near.Equal(new Trs(move.Translation, turn.Rotation, scale.Scale).ToAffine(), pose.WorldOf(rig["target_group"]), 1e-8);
    });

    [Fact]
    public void The_others_stay_with_the_animator() => Gen.Select(Any.Channels, Any.Channels, Parts).Sample((own, followed, parts) =>
    {
        var rig = new TestRig(draft => draft.Drive(draft.Control("follower")).ByChannels(draft.Control("leader")).Writing(parts));
        var pose = rig.Evaluate(new Pose().Set(rig["follower"].Id, own).Set(rig["leader"].Id, followed));
        Near.Equal(own.Taking(parts, followed).ToAffine(), pose.WorldOf(rig["follower"]), 1e-8);
    });

    [Fact]
    public void With_its_offset_kept_a_joint_stays_at_rest_also_under_shear_and_mirrored() => Gen.Select(Signed, Signed, Any.Vector, Parts).Sample((root, child, at, parts) =>
    {
        var rig = new TestRig(draft =>
        {
            var joint = draft.Skeleton("s")
                .Root("a", at: root.Translation.ToSingle(), turned: root.Rotation.ToSingle(), scaled: root.Scale.ToSingle())
                .Child("b", at: child.Translation.ToSingle(), turned: child.Rotation.ToSingle(), scaled: child.Scale.ToSingle());
            var place = draft.Skeleton("place").Root("spot", at: at.ToSingle(), turned: child.Rotation.ToSingle());
            draft.Drive(joint).ByChannels(draft.Control("leader").PlacedAt(place)).KeepingOffset().Writing(parts);
        });
        rig.AssertRestHolds(1e-5);
        Assert.Equal(parts == Channels.Move || parts == Channels.MoveY, IsTurnedAsAtRest(rig));
    });

    [Fact]
    public void Of_two_that_write_a_channel_the_last_has_it_and_one_left_with_none_is_not_asked()
    {
        var rig = new TestRig(draft =>
        {
            var target = draft.Control("target");
            draft.Drive(target).ByChannels(draft.Control("below").Under(target)).Writing(Channels.Turn); // a loop, if it were asked
            draft.Drive(target).ByChannels(draft.Control("first"));
            draft.Drive(target).ByChannels(draft.Control("last")).Writing(Channels.MoveX);
        });
        Trs To(double x) => Trs.Identity with { Translation = new(x, x, 0) };
        var pose = rig.Evaluate(new Pose().Set(rig["first"].Id, To(1)).Set(rig["last"].Id, To(2)));
        Near.Equal(new Vector3d(2, 1, 0), pose.WorldOf(rig["target"]).Origin);
    }

    [Fact]
    public void What_writes_all_channels_afterwards_has_them_all()
    {
        var rig = new TestRig(draft =>
        {
            var target = draft.Group("target_group");
            draft.Drive(target).ByChannels(draft.Control("part")).Writing(Channels.Move);
            draft.Blend(target).From(draft.Control("whole"), 1f);
        });
        var pose = rig.Evaluate(new Pose().Set(rig["part"].Id, Trs.Identity with { Translation = new(5, 0, 0) }).Set(rig["whole"].Id, Trs.Identity with { Translation = new(0, 3, 0) }));
        Near.Equal(new Vector3d(0, 3, 0), pose.WorldOf(rig["target_group"]).Origin);
    }

    [Fact]
    public void What_can_never_be_right_is_refused()
    {
        var draft = new RigDraft(Condyle.Naming.Conventions.Default, new Condyle.Model.ProgramPlaces());
        var drive = draft.Drive(draft.Control("a")).ByChannels(draft.Control("b"));
        Assert.Contains("no channel", Assert.Throws<ArgumentException>(() => drive.Writing(Channels.None)).Message, StringComparison.Ordinal);
        Assert.Contains("part of the rotation", Assert.Throws<ArgumentException>(() => drive.Writing(Channels.Move | Channels.TurnY)).Message, StringComparison.Ordinal);

        var rig = new TestRig(rig => rig.Drive(rig.Group("g_group")).ByMatrix(rig.Control("c")).Writing(Channels.Move));
        Assert.Contains("by matrix", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message, StringComparison.Ordinal);
    }

    /// <summary>Whether the joint keeps its own rotation and scale while the leader is turned and scaled.</summary>
    private static bool IsTurnedAsAtRest(TestRig rig)
    {
        var moved = rig.Evaluate(new Pose().Set(rig["leader"].Id, new(new(1, 2, 3), Quaterniond.About(Vector3d.UnitX, 1), new(2, 3, 4)))).ChannelsOf(rig["b"]);
        var rest = RestPose.ChannelsOf(rig["b"]);
        return Quaterniond.Angle(moved.Rotation, rest.Rotation) < 1e-9 && (moved.Scale - rest.Scale).Length < 1e-9;
    }
}
