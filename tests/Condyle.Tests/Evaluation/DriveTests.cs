using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class DriveTests
{
    private static readonly Gen<Trs> Signed = Gen.Select(Any.Channels, Gen.Bool).Select((channels, mirrored) =>
        mirrored ? channels with { Scale = channels.Scale with { X = -channels.Scale.X } } : channels);

    [Fact]
    public void With_its_offset_kept_a_joint_stays_at_rest_also_under_shear_and_mirrored() =>
        Gen.Select(Signed, Signed, Any.Vector).Sample((root, child, at) => Followed(root, child, at, scales: false).AssertRestHolds(1e-5));

    [Fact]
    public void With_its_scale_written_a_joint_stays_at_rest() =>
        Gen.Select(Signed, Signed, Any.Vector).Sample((root, child, at) => Followed(root, child, at, scales: true).AssertRestHolds(1e-5));

    [Fact]
    public void Without_an_offset_a_control_lands_on_its_source_and_reads_the_way_there() =>
        Gen.Select(Any.Channels, Any.Channels).Sample((parent, moved) =>
        {
            var (above, source) = (parent with { Scale = Vector3d.One }, moved with { Scale = Vector3d.One });
            var rig = new TestRig(draft =>
            {
                var holder = draft.Control("holder");
                draft.Drive(draft.Control("follower").Under(holder)).ByChannels(draft.Control("leader"));
            });
            var pose = rig.Evaluate(new Pose().Set(rig["holder"].Id, above).Set(rig["leader"].Id, source));
            Near.Equal(source.ToAffine(), pose.WorldOf(rig["follower"]), 1e-8);
        });

    [Fact]
    public void Scale_goes_over_only_if_asked()
    {
        var rig = new TestRig(draft =>
        {
            var leader = draft.Control("leader");
            draft.Drive(draft.Group("plain_group")).ByChannels(leader);
            draft.Drive(draft.Group("scaled_group")).ByChannels(leader).WithScale();
        });
        var grown = new Trs(new(1, 0, 0), Quaterniond.Identity, new(2, 3, 4));
        var pose = rig.Evaluate(new Pose().Set(rig["leader"].Id, grown));

        Near.Equal(Affine3d.At(new(1, 0, 0)), pose.WorldOf(rig["plain_group"]));
        Near.Equal(grown.ToAffine(), pose.WorldOf(rig["scaled_group"]));
    }

    [Fact]
    public void A_matrix_takes_scale_and_shear_whole_and_the_channels_come_on_top() =>
        Gen.Select(Any.Channels, Any.Channels, Any.Channels).Sample((a, b, own) =>
        {
            var rig = new TestRig(draft =>
            {
                var leader = draft.Control("leader").Under(draft.Control("above"));
                draft.Drive(draft.Control("follower").Under(draft.Control("elsewhere"))).ByMatrix(leader);
            });
            var pose = rig.Evaluate(new Pose().Set(rig["above"].Id, a).Set(rig["leader"].Id, b).Set(rig["follower"].Id, own));
            Near.Equal(a.ToAffine() * b.ToAffine() * own.ToAffine(), pose.WorldOf(rig["follower"]), 1e-8);
        });

    [Fact]
    public void A_matrix_keeps_the_offset_if_asked()
    {
        var rig = new TestRig(draft =>
        {
            var joint = draft.Skeleton("s").Root("a", at: new Vector3(0, 2, 0));
            draft.Drive(draft.Group("held_group").PlacedAt(joint)).ByMatrix(draft.Control("leader")).KeepingOffset();
        });
        var turn = Quaterniond.About(Vector3d.UnitZ, Math.PI / 2);
        var pose = rig.Evaluate(new Pose().Set(rig["leader"].Id, Trs.Identity with { Rotation = turn }));

        Near.Equal(Affine3d.Rigid(new(-2, 0, 0), turn), pose.WorldOf(rig["held_group"]));
    }

    [Fact]
    public void Of_several_drives_the_last_has_the_channels_and_a_matrix_stands_beside_it()
    {
        var rig = new TestRig(draft =>
        {
            var (first, last, matrix) = (draft.Control("first"), draft.Control("last"), draft.Control("matrix"));
            var target = draft.Group("target_group");
            draft.Drive(target).ByChannels(first);
            draft.Drive(target).ByMatrix(matrix);
            draft.Drive(target).ByChannels(last);
        });
        Trs To(double x) => Trs.Identity with { Translation = new(x, 0, 0) };
        var pose = rig.Evaluate(new Pose().Set(rig["first"].Id, To(1)).Set(rig["last"].Id, To(2)).Set(rig["matrix"].Id, To(10)));

        Near.Equal(new Vector3d(2, 0, 0), pose.WorldOf(rig["target_group"]).Origin);
    }

    private static TestRig Followed(Trs root, Trs child, Vector3d at, bool scales) => new(draft =>
    {
        var joint = draft.Skeleton("s")
            .Root("a", at: root.Translation.ToSingle(), turned: root.Rotation.ToSingle(), scaled: root.Scale.ToSingle())
            .Child("b", at: child.Translation.ToSingle(), turned: child.Rotation.ToSingle(), scaled: child.Scale.ToSingle());
        var place = draft.Skeleton("place").Root("spot", at: at.ToSingle(), turned: child.Rotation.ToSingle());
        var drive = draft.Drive(joint).ByChannels(draft.Control("leader").PlacedAt(place)).KeepingOffset();
        if (scales)
            drive.WithScale();
    });
}
