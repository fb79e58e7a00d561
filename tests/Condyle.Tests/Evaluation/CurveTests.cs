using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class CurveTests
{
    private static readonly Gen<(TailSetting Setting, (Vector3d By, Quaterniond Turn)[] Moves)> Case =
        Gen.Select(TailSetting.Any, Gen.Select(Any.Vector, Any.Rotation).Array[3]);

    [Fact]
    public void Rest_holds() => Gen.Select(TailSetting.Any, Gen.Float[0, 1]).Sample((setting, stretch) => Tail(setting, stretch).AssertRestHolds(1e-7));

    [Fact]
    public void Rest_holds_where_the_nodes_do_not_stand_on_the_joints_and_are_turned() => Gen.Select(TailSetting.Any, Any.Vector.Array[3], Any.Rotation.Array[3])
        .Sample((setting, at, turned) =>
        {
            var rig = new TestRig(draft =>
            {
                var chain = setting.Declare(draft);
                var copy = chain.Copy("curve");
                var curve = draft.Curve(copy).Stretching(0.5f);
                for (var i = 0; i < 3; i++)
                    curve.Through(draft.Control($"node_{i}").PlacedAt(draft.Skeleton($"marks_{i}").Root($"mark_{i}", at: (setting.Origin + setting.Facing.Rotate((at[i] * 0.2) + new Vector3d(0, 0.3, -i))).ToSingle(), turned: turned[i].ToSingle())));
                draft.Blend(chain).From(copy, 1f);
            });
            rig.AssertRestHolds(1e-7);
        });

    [Fact]
    public void Without_stretch_the_bones_keep_their_length_whatever_the_curve() => Case.Sample((setting, moves) =>
    {
        var rig = Tail(setting, 0);
        var pose = rig.Evaluate(Moved(rig, moves, 0.3));
        foreach (var (joint, next) in setting.Names.Zip(setting.Names.Skip(1)))
            Near.Equal(Length(rig.Rest.WorldOf, rig, joint, next), Length(pose.WorldOf, rig, joint, next), 1e-6);
    });

    [Fact]
    public void Moving_all_nodes_moves_the_chain_with_them() => Gen.Select(Case, Any.Rotation, Any.Vector, Gen.Float[0, 1]).Sample((given, turn, by, stretch) =>
    {
        var (setting, moves) = given;
        var rig = Tail(setting, stretch);
        var moved = new Trs(by, turn, Vector3d.One);
        var (here, there) = (rig.Evaluate(Moved(rig, moves, 0.1)), rig.Evaluate(Moved(rig, moves, 0.1).Set(rig["world"].Id, moved)));
        foreach (var joint in setting.Names)
            Near.Equal(moved.ToAffine() * here.WorldOf(rig["curve_" + joint]), there.WorldOf(rig["curve_" + joint]), 1e-6);
    });

    [Fact]
    public void A_mirrored_chain_lies_mirrored_whatever_its_frames_are() => Gen.Select(Case, Any.Rotation.Array[3], Gen.Float[0, 1]).Sample((given, frames, stretch) =>
    {
        var (setting, moves) = given;
        var (here, there) = setting.Mirrored(frames);
        var (one, other) = (Tail(here, stretch), Tail(there, stretch));
        var (pose, mirrored) = (new Pose(), new Pose());
        for (var i = 0; i < moves.Length; i++)
        {
            // Small turns: half a turn of an end is where the roll jumps.
            var (by, turn) = (moves[i].By * 0.05, Slerp.Between(Quaterniond.Identity, moves[i].Turn, 0.3));
            pose.Set(one[$"node_{i}"].Id, one.Moved($"node_{i}", by, turn));
            mirrored.Set(other[$"node_{i}"].Id, other.Moved($"node_{i}", TailSetting.Mirror(by), TailSetting.Mirror(turn)));
        }

        var (a, b) = (one.Evaluate(pose), other.Evaluate(mirrored));
        foreach (var joint in here.Names)
            Near.Equal(TailSetting.Mirror(a.WorldOf(one[joint]).Origin), b.WorldOf(other[joint]).Origin, 1e-4);
    });

    [Fact]
    public void It_grows_with_the_character() => Gen.Select(Case, Gen.Double[0.3, 3], Gen.Float[0, 1]).Sample((given, scale, stretch) =>
    {
        var (setting, moves) = given;
        var rig = Tail(setting, stretch);
        var grown = Trs.Identity with { Scale = Vector3d.One * scale };
        var (here, there) = (rig.Evaluate(Moved(rig, moves, 0.1)), rig.Evaluate(Moved(rig, moves, 0.1).Set(rig["world"].Id, grown)));
        foreach (var joint in setting.Names)
            Near.Equal(here.WorldOf(rig[joint]).Origin * scale, there.WorldOf(rig[joint]).Origin, 1e-5);
    });

    [Fact]
    public void Stretched_in_full_the_tip_of_a_straight_chain_is_at_the_last_node_and_without_it_on_the_line()
    {
        foreach (var (stretch, length) in new[] { (0f, 1.0), (0.5f, 1.25), (1f, 1.5) })
        {
            var rig = Tail(TailSetting.Bowed(4, 0), stretch);
            var pose = rig.Evaluate(new Pose()
                .Set(rig["node_1"].Id, rig.Moved("node_1", new(0, 0, -0.25), Quaterniond.Identity))
                .Set(rig["node_2"].Id, rig.Moved("node_2", new(0, 0, -0.5), Quaterniond.Identity)));
            Near.Equal(rig.Rest.WorldOf(rig["tail_0"]).Origin + new Vector3d(0, 0, -length), pose.WorldOf(rig["tail_4"]).Origin, 1e-6);
        }
    }

    [Fact]
    public void A_chain_that_is_longer_than_its_curve_goes_straight_on()
    {
        var rig = Tail(TailSetting.Bowed(4, 0), 0);
        var pose = rig.Evaluate(new Pose()
            .Set(rig["node_1"].Id, rig.Moved("node_1", new(0, 0, 0.25), Quaterniond.Identity))
            .Set(rig["node_2"].Id, rig.Moved("node_2", new(0, 0, 0.5), Quaterniond.Identity)));
        foreach (var joint in new[] { "tail_0", "tail_2", "tail_4" })
            Near.Equal(rig.Rest.WorldOf(rig[joint]).Origin, pose.WorldOf(rig[joint]).Origin, 1e-6);
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(-2.5)]
    public void The_roll_of_the_last_node_is_spread_along_the_chain_and_its_swing_is_not_taken(double roll)
    {
        var rig = Tail(TailSetting.Bowed(4, 0), 0);
        var pose = rig.Evaluate(new Pose().Set(rig["node_2"].Id, Trs.Identity with { Rotation = Quaterniond.About(Vector3d.UnitZ, roll) }));
        for (var i = 0; i <= 4; i++)
        {
            Near.Equal(Quaterniond.About(Vector3d.UnitZ, roll * i / 4) * rig.Rest.WorldOf(rig[$"tail_{i}"]).Rotation, pose.WorldOf(rig[$"tail_{i}"]).Rotation, 1e-6);
            Near.Equal(rig.Rest.WorldOf(rig[$"tail_{i}"]).Origin, pose.WorldOf(rig[$"tail_{i}"]).Origin, 1e-6);
        }

        var swung = rig.Evaluate(new Pose().Set(rig["node_2"].Id, Trs.Identity with { Rotation = Quaterniond.About(Vector3d.UnitX, roll) }));
        Near.Equal(rig.Rest.WorldOf(rig["tail_4"]), swung.WorldOf(rig["tail_4"]), 1e-6);
    }

    [Fact]
    public void Turning_both_ends_alike_rolls_the_whole_chain()
    {
        var rig = Tail(TailSetting.Bowed(5, 0), 0);
        var rolled = Trs.Identity with { Rotation = Quaterniond.About(Vector3d.UnitZ, 1.2) };
        var pose = rig.Evaluate(new Pose().Set(rig["node_0"].Id, rolled).Set(rig["node_2"].Id, rolled));
        for (var i = 0; i <= 5; i++)
            Near.Equal(rolled.Rotation * rig.Rest.WorldOf(rig[$"tail_{i}"]).Rotation, pose.WorldOf(rig[$"tail_{i}"]).Rotation, 1e-6);
    }

    [Fact]
    public void Each_bone_points_to_the_next_joint_as_at_rest() => Case.Sample((setting, moves) =>
    {
        var rig = Tail(setting, 0.7f);
        var pose = rig.Evaluate(Moved(rig, moves, 0.1));
        foreach (var (joint, next) in setting.Names.Zip(setting.Names.Skip(1), (a, b) => ("curve_" + a, "curve_" + b)))
        {
            Vector3d Bone(Func<Condyle.Model.RigNode, Affine3d> world) =>
                world(rig[joint]).Rotation.Inverse.Rotate((world(rig[next]).Origin - world(rig[joint]).Origin).Direction!.Value);
            Near.Equal(Bone(rig.Rest.WorldOf), Bone(pose.WorldOf), 1e-6);
        }
    });

    [Fact]
    public void A_curve_through_one_node_is_unfinished_and_moves_nothing()
    {
        var rig = new TestRig(draft =>
        {
            var chain = TailSetting.Bowed(3, 0.1).Declare(draft);
            draft.Curve(chain.Copy("curve")).Through(draft.Control("node"));
        });
        var pose = rig.Evaluate(new Pose().Set(rig["node"].Id, Trs.Identity with { Translation = Vector3d.One }));

        Near.Equal(rig.Rest.WorldOf(rig["tail_3"]), pose.WorldOf(rig["curve_tail_3"]));
    }

    [Fact]
    public void Degenerate_curves_give_finite_answers()
    {
        foreach (var setting in new[] { TailSetting.Bowed(4, 0), TailSetting.Bowed(4, 0.3), TailSetting.Folded, TailSetting.WithoutLength(2), TailSetting.WithoutLength(0) })
        {
            foreach (var by in new[] { Vector3d.Zero, new(0, 0, 0.5), new(0, 0, 1), new(0, 0, 2), new(1e6, 0, 0), new(0, 0, 1e-160) })
            {
                foreach (var stretch in new[] { 0f, 1f })
                {
                    var rig = Tail(setting, stretch);
                    var half = Trs.Identity with { Translation = by, Rotation = Quaterniond.About(Vector3d.UnitX, Math.PI) };
                    foreach (var pose in new[] { new Pose().Set(rig["node_2"].Id, half), new Pose().Set(rig["node_1"].Id, half), new Pose().Set(rig["node_0"].Id, half) })
                    {
                        var evaluated = rig.Evaluate(pose);
                        foreach (var node in rig.Model.Nodes)
                            Near.Finite(evaluated.WorldOf(node));
                    }
                }
            }
        }
    }

    private static double Length(Func<Condyle.Model.RigNode, Affine3d> world, TestRig rig, string joint, string next) =>
        (world(rig[next]).Origin - world(rig[joint]).Origin).Length;

    private static Pose Moved(TestRig rig, (Vector3d By, Quaterniond Turn)[] moves, double by)
    {
        var pose = new Pose();
        for (var i = 0; i < moves.Length; i++)
            pose.Set(rig[$"node_{i}"].Id, new Trs(moves[i].By * by, moves[i].Turn, Vector3d.One));
        return pose;
    }

    /// <summary>A tail along a curve through controls at its root, its middle and its tip.</summary>
    private static TestRig Tail(TailSetting setting, float stretch) => new(rig =>
    {
        var chain = setting.Declare(rig);
        var world = rig.Control("world");
        var copy = chain.Copy("curve").Under(rig.Group("curve_group").Under(world));
        var curve = rig.Curve(copy);
        Joint[] led = [chain.Root, chain[chain.Count / 2], chain.Tip];
        for (var i = 0; i < led.Length; i++)
            curve.Through(rig.Control($"node_{i}").Under(world).PlacedAt(led[i]));
        if (stretch > 0)
            curve.Stretching(stretch);
        rig.Blend(chain).From(copy, 1f);
    });
}
