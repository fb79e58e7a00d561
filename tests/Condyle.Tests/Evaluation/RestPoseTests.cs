using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class RestPoseTests
{
    [Fact]
    public void Every_node_stands_where_its_parents_and_placement_put_it() =>
        ArmSetting.Any.Sample(setting =>
        {
            var rig = ArmRig.Of(setting);
            foreach (var node in rig.Model.Nodes)
            {
                var parent = node.Parent.TryKnown(out var above) && above is not null ? rig.Rest.WorldOf(above) : Affine3d.Identity;
                Near.Equal(rig.Rest.WorldOf(node), parent * rig.Rest.PlacementOf(node) * RestPose.ChannelsOf(node).ToAffine(), 1e-8);
            }

            foreach (var (name, at) in setting.Points)
                Near.Equal(setting.ToWorld.Apply(at), rig.Rest.WorldOf(rig[name]).Origin, 1e-5);
        });

    [Fact]
    public void A_control_takes_the_place_and_the_turn_of_its_target_but_not_its_scale() =>
        ArmSetting.Any.Sample(setting =>
        {
            var rig = ArmRig.Of(setting);
            var (hand, wrist) = (rig.Rest.WorldOf(rig["hand"]), rig.Rest.WorldOf(rig["wrist"]));

            Near.Equal(wrist.Frame, hand);
            Near.Equal(hand, rig.Rest.WorldOf(rig["ik_wrist"]));
        });

    [Fact]
    public void The_pole_point_is_off_the_middle_joint_to_where_the_chain_bends()
    {
        var rig = ArmRig.Of(ArmSetting.Tidy);
        var (shoulder, elbow, wrist, pole) = (At(rig, "shoulder"), At(rig, "elbow"), At(rig, "wrist"), At(rig, "pole"));

        Near.Equal(0.4, (pole - elbow).Length, 1e-6);
        Near.Equal(0, Vector3d.Dot(pole - elbow, (wrist - shoulder).Direction!.Value), 1e-6);
        Assert.True((pole - elbow).Z < -0.3, "The elbow bends backwards.");
        Near.Equal(Affine3d.At(pole), rig.Rest.WorldOf(rig["pole"]));
    }

    [Fact]
    public void A_clear_bend_wins_over_a_declared_one_and_a_straight_chain_takes_the_declared_one()
    {
        Near.Equal(new Vector3d(0, -1, -2.1), PoleOf(kneeAt: new(0, -1, -0.1f), Vector3.UnitZ), 1e-6);
        Near.Equal(new Vector3d(0, -1, 2), PoleOf(kneeAt: new(0, -1, 0), new(0, 5, 3)), 1e-6);
    }

    [Fact]
    public void A_straight_chain_without_a_declared_bend_is_told_to_declare_one()
    {
        var error = Assert.Throws<RigGeometryException>(() => PoleOf(kneeAt: new(0, -1, 0), null));
        Assert.Equal("The chain from 'hip' to 'ankle' is straight at rest, so nothing tells where its pole point is: say .Bending(...) with the direction to which it bends.", error.Message);
    }

    [Fact]
    public void A_bend_declared_along_a_straight_chain_is_refused() =>
        Assert.Contains("runs along it", Assert.Throws<RigGeometryException>(() => PoleOf(kneeAt: new(0, -1, 0), Vector3.UnitY)).Message);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(float.NaN)]
    [InlineData(float.PositiveInfinity)]
    public void A_pole_point_at_no_distance_is_refused(float distance) =>
        Assert.Contains("Give a distance above zero", Assert.Throws<RigGeometryException>(() => PoleOf(kneeAt: new(0, -1, 1), null, distance)).Message);

    [Fact]
    public void A_chain_of_two_joints_has_no_pole_point()
    {
        var error = Assert.Throws<RigGeometryException>(() => new TestRig(draft =>
        {
            var a = draft.Skeleton("s").Root("a");
            draft.Control("pole").PlacedAt(draft.Chain(a, a.Child("b", at: Vector3.UnitY)).PolePoint(1));
        }));
        Assert.Contains("from 'a' to 'b' has 2 joints", error.Message);
    }

    [Fact]
    public void A_loop_of_placements_is_an_error_that_prints_its_path()
    {
        var error = Assert.Throws<RigGeometryException>(() => new TestRig(draft =>
        {
            var (a, b) = (draft.Control("a"), draft.Control("b"));
            a.PlacedAt(b);
            b.PlacedAt(a);
        }));
        Assert.Contains("'a' -> 'b' -> 'a'", error.Message);
    }

    [Fact]
    public void A_loop_of_parents_is_an_error_that_prints_its_path()
    {
        var error = Assert.Throws<RigGeometryException>(() => new TestRig(draft =>
        {
            var (a, b, c) = (draft.Control("a"), draft.Control("b"), draft.Control("c"));
            a.Under(b);
            b.Under(c);
            c.Under(b);
        }));
        Assert.Contains("'b' -> 'c' -> 'b'", error.Message);
    }

    [Fact]
    public void What_is_not_known_leaves_the_rest_of_the_rig_known()
    {
        var model = TestRig.ModelOf(draft =>
        {
            var unknown = Control.Open(draft);
            draft.Control("below").Under(unknown);
            draft.Control("beside");
        });
        var rest = RestPose.KnownOf(model);

        Assert.Throws<RigGeometryException>(() => RestPose.Of(model));
        Assert.False(rest.TryWorldOf(model.Nodes.Single(node => node.Name.ToString() == "below"), out _));
        Assert.True(rest.TryWorldOf(model.Nodes.Single(node => node.Name.ToString() == "beside"), out _));
    }

    [Fact]
    public void A_hierarchy_too_deep_to_be_worked_out_is_an_error_not_a_crash()
    {
        var model = TestRig.ModelOf(draft =>
        {
            var controls = Enumerable.Range(0, 200_000).Select(i => draft.Control($"c{i}")).ToList();
            for (var i = 1; i < controls.Count; i++)
                controls[i - 1].Under(controls[i]);
        });
        Assert.Contains("too deep", Assert.Throws<RigGeometryException>(() => RestPose.Of(model)).Message);
    }

    private static Vector3d At(TestRig rig, string node) => rig.Rest.WorldOf(rig[node]).Origin;

    private static Vector3d PoleOf(Vector3 kneeAt, Vector3? declared, float distance = 2)
    {
        var rig = new TestRig(draft =>
        {
            var hip = draft.Skeleton("leg").Root("hip");
            var chain = draft.Chain(hip, hip.Child("knee", at: kneeAt).Child("ankle", at: new Vector3(0, -2, 0) - kneeAt));
            if (declared is { } towards)
                chain.Bending(towards);
            draft.Control("pole").PlacedAt(chain.PolePoint(distance));
        });
        return At(rig, "pole");
    }
}
