using System.Numerics;
using Condyle.Evaluation;

namespace Condyle.Tests.Evaluation;

public class PlacementTests
{
    [Fact]
    public void A_spot_beside_a_node_stands_at_the_offset_along_the_worlds_axes_however_the_node_is_turned()
    {
        var rig = new TestRig(draft =>
        {
            var ankle = draft.Skeleton("s").Root("ankle", at: new Vector3(1, 2, 3), turned: Quaternion.CreateFromYawPitchRoll(1, 2, 3));
            draft.Group("heel_group").Under(draft.Control("foot").PlacedAt(ankle)).PlacedAt(draft.Spot(ankle, new Vector3(0.5f, -2, 0.25f)));
        });
        var world = rig.Rest.WorldOf(rig["heel_group"]);
        Assert.True((world.Origin - new Vector3d(1.5, 0, 3.25)).Length < 1e-12);
        Assert.True(Quaterniond.Angle(world.Rotation, Quaterniond.Identity) < 1e-7);
    }

    [Fact]
    public void A_mirrored_control_rests_as_the_left_handed_image_of_its_counterpart()
    {
        var rig = new TestRig(draft =>
        {
            var wrist = draft.Skeleton("s").Root("wrist_left", at: new Vector3(1, 2, 3), turned: Quaternion.CreateFromYawPitchRoll(1, 2, 3));
            draft.Control("hand_right").Under(draft.Control("world").PlacedAt(wrist)).Mirroring(draft.Control("hand_left").PlacedAt(wrist));
        });
        var (left, right) = (rig.Rest.WorldOf(rig["hand_left"]), rig.Rest.WorldOf(rig["hand_right"]));
        Assert.Equal(-1, right.Determinant, 12);
        foreach (var (image, axis) in new[] { (left.X, right.X), (left.Y, right.Y), (left.Z, right.Z), (left.Origin, right.Origin) })
            Assert.True((image with { X = -image.X } - axis).Length < 1e-12);
    }

    [Fact]
    public void The_image_of_an_image_is_the_frame_itself()
    {
        var rig = new TestRig(draft =>
        {
            var wrist = draft.Skeleton("s").Root("wrist", at: new Vector3(1, 2, 3), turned: Quaternion.CreateFromYawPitchRoll(1, 2, 3));
            draft.Control("again").Mirroring(draft.Control("image").Mirroring(draft.Control("hand").PlacedAt(wrist)));
        });
        var (hand, again) = (rig.Rest.WorldOf(rig["hand"]), rig.Rest.WorldOf(rig["again"]));
        foreach (var (axis, same) in new[] { (hand.X, again.X), (hand.Y, again.Y), (hand.Z, again.Z), (hand.Origin, again.Origin) })
            Assert.True((axis - same).Length < 1e-12);
    }

    [Fact]
    public void An_offset_that_is_no_number_is_refused() => Assert.Contains(
        "The offset of a spot is not finite",
        Assert.Throws<ArgumentException>(() => TestRig.ModelOf(rig => rig.Spot(rig.Control("foot"), new Vector3(0, float.NaN, 0)))).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Two_controls_that_mirror_each_other_are_a_loop() => Assert.Contains(
        "Break the loop",
        Assert.Throws<RigGeometryException>(() => new TestRig(draft =>
        {
            var left = draft.Control("hand_left");
            left.Mirroring(draft.Control("hand_right").Mirroring(left));
        })).Message,
        StringComparison.Ordinal);
}
