using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class ManyBoneTests
{
    private static readonly Gen<(TailSetting Setting, Vector3d By, Quaterniond Turn)> Case = Gen.Select(TailSetting.Any, Any.Vector, Any.Rotation);

    [Fact]
    public void Rest_holds() => TailSetting.Any.Sample(setting =>
    {
        foreach (var pole in new[] { true, false })
            Tail(setting, pole).AssertRestHolds(1e-7);
    });

    [Fact]
    public void The_rest_of_a_straight_and_of_an_almost_straight_tail_holds_to_the_last_digits()
    {
        foreach (var bend in new[] { 0, 1e-7, 1e-5, 1e-3 })
        {
            foreach (var pole in new[] { true, false })
                Tail(TailSetting.Bowed(6, bend), pole).AssertRestHolds(2e-9);
        }
    }

    [Fact]
    public void The_tip_reaches_its_goal_and_turns_with_it_and_the_bones_keep_their_length() =>
        Case.Sample((setting, by, turn) =>
        {
            var rig = Tail(setting, pole: true);
            var pose = rig.Evaluate(Moved(rig, setting, by * 0.2, turn));
            var (root, tip, goal) = (setting.Names[0], setting.Names[^1], pose.WorldOf(rig["goal"]));
            foreach (var (joint, next) in setting.Names.Zip(setting.Names.Skip(1)))
                Near.Equal(Length(rig.Rest.WorldOf, rig, joint, next), Length(pose.WorldOf, rig, joint, next), 1e-6);

            var lengths = setting.Names.Zip(setting.Names.Skip(1), (joint, next) => Length(rig.Rest.WorldOf, rig, joint, next)).ToList();
            var (total, inner) = (lengths.Sum(), (2 * lengths.Max()) - lengths.Sum());
            var distance = (goal.Origin - pose.WorldOf(rig[root]).Origin).Length;
            Near.Equal(Math.Max(0, Math.Max(distance - total, inner - distance)), (pose.WorldOf(rig[tip]).Origin - goal.Origin).Length, 1e-5);
            Near.Equal(turn * rig.Rest.WorldOf(rig[tip]).Rotation, pose.WorldOf(rig[tip]).Rotation, 1e-6);
        });

    [Fact]
    public void A_mirrored_tail_stands_mirrored_whatever_its_frames_are() => Gen.Select(Case, Any.Rotation.Array[3]).Sample((given, frames) =>
    {
        var (setting, by, turn) = given;
        var (here, there) = setting.Mirrored(frames);
        var (one, other) = (Tail(here, pole: true), Tail(there, pole: true));
        var (a, b) = (one.Evaluate(Moved(one, here, by * 0.1, turn)), other.Evaluate(Moved(other, there, TailSetting.Mirror(by * 0.1), TailSetting.Mirror(turn))));
        foreach (var joint in here.Names)
            Near.Equal(TailSetting.Mirror(a.WorldOf(one[joint]).Origin), b.WorldOf(other[joint]).Origin, 1e-4);
    });

    [Fact]
    public void No_joint_but_the_root_and_the_tip_twists_on_its_parent() =>
        Case.Sample((setting, by, turn) =>
        {
            var rig = Tail(setting with { Scale = Vector3d.One }, pole: true);
            var pose = rig.Evaluate(Moved(rig, setting, by * 0.2, turn));
            foreach (var (joint, above) in setting.Names.Skip(1).SkipLast(1).Zip(setting.Names))
            {
                Quaterniond Local(Func<Condyle.Model.RigNode, Affine3d> world) => world(rig["ik_" + above]).Rotation.Inverse * world(rig["ik_" + joint]).Rotation;
                var next = setting.Names[setting.Names.ToList().IndexOf(joint) + 1];
                var bone = (rig.Rest.WorldOf(rig[next]).Origin - rig.Rest.WorldOf(rig[joint]).Origin).Direction!.Value;
                var boneAbove = rig.Rest.WorldOf(rig["ik_" + above]).Rotation.Inverse.Rotate(bone);
                var fromRest = Local(pose.WorldOf) * Local(rig.Rest.WorldOf).Inverse;
                Near.Equal(0, Vector3d.Dot(fromRest.Vector, boneAbove), 1e-6);
            }
        });

    [Fact]
    public void A_straight_tail_leaves_its_line_to_the_side_of_its_pole()
    {
        var rig = Tail(TailSetting.Bowed(5, 0), pole: true);
        var pose = rig.Evaluate(new Pose().Set(rig["goal"].Id, Trs.Identity with { Translation = new(0, 0, 0.4) })); // back along the tail
        var (root, middle, tip) = (pose.WorldOf(rig["tail_0"]).Origin, pose.WorldOf(rig["tail_2"]).Origin, pose.WorldOf(rig["tail_5"]).Origin);

        Near.Equal(pose.WorldOf(rig["goal"]).Origin, tip, 2e-6);
        Assert.True((middle - root).Y > 0.1, $"{middle - root}");
        Near.Equal(0, (middle - root).X, 1e-6);
    }

    [Fact]
    public void It_comes_to_the_end_of_its_reach_without_a_jump()
    {
        var rig = Tail(TailSetting.Bowed(5, 0.2), pole: true);
        var (root, rest) = (rig.Rest.WorldOf(rig["tail_0"]).Origin, rig.Rest.WorldOf(rig["tail_5"]).Origin);
        var line = (rest - root).Direction!.Value;
        var total = Enumerable.Range(0, 5).Sum(i => Length(rig.Rest.WorldOf, rig, $"tail_{i}", $"tail_{i + 1}"));
        foreach (var share in new[] { 0.9, 0.99, 0.999, 0.9999, 0.999999 })
        {
            var by = root + (line * total * share) - rest;
            var pose = rig.Evaluate(new Pose().Set(rig["goal"].Id, rig.Moved("goal", by, Quaterniond.Identity)));
            Near.Equal(rest + by, pose.WorldOf(rig["tail_5"]).Origin, 2e-6);
        }
    }

    [Fact]
    public void A_limited_bone_stays_in_its_cone_and_the_tip_still_comes_near() =>
        Case.Sample((setting, by, turn) =>
        {
            const double Cone = 40;
            var rig = Tail(setting with { Scale = Vector3d.One }, pole: true, cone: (float)Cone);
            rig.AssertRestHolds(1e-7);
            var pose = rig.Evaluate(Moved(rig, setting, by * 0.2, turn));
            for (var i = 1; i + 1 < setting.Names.Count; i++)
            {
                var (above, joint, next) = ("ik_" + setting.Names[i - 1], "ik_" + setting.Names[i], "ik_" + setting.Names[i + 1]);
                Vector3d Bone(Func<Condyle.Model.RigNode, Affine3d> world) =>
                    world(rig[above]).Rotation.Inverse.Rotate((world(rig[next]).Origin - world(rig[joint]).Origin).Direction!.Value);
                var angle = Math.Acos(Math.Clamp(Vector3d.Dot(Bone(rig.Rest.WorldOf), Bone(pose.WorldOf)), -1, 1)) * 180 / Math.PI;
                Assert.True(angle <= Cone + 1e-3, $"{joint} is {angle}° from rest.");
            }
        });

    [Fact]
    public void A_joint_outside_the_chain_or_its_tip_is_refused()
    {
        Assert.Contains("'other' has no bone", Refusal(joints => joints["other"]), StringComparison.Ordinal);
        Assert.Contains("above its tip 'c'", Refusal(joints => joints["c"]), StringComparison.Ordinal);

        static string Refusal(Func<Dictionary<string, Joint>, Joint> which) => Assert.Throws<ArgumentException>(() => TestRig.ModelOf(draft =>
        {
            var a = draft.Skeleton("s").Root("a");
            var b = a.Child("b", at: System.Numerics.Vector3.UnitX);
            var c = b.Child("c", at: System.Numerics.Vector3.UnitX);
            var other = a.Child("other");
            draft.ManyBone(draft.Chain(a, c).Copy("ik")).Limiting(which(new() { ["other"] = other, ["c"] = c }), 30);
        })).Message;
    }

    [Theory]
    [InlineData(0.0, 10, "0 m")]
    [InlineData(0.01, 0, "0 rounds")]
    [InlineData(0.01, 100000, "1000")]
    public void An_end_that_cannot_be_is_told(double metres, int rounds, string what)
    {
        var fault = Assert.Throws<RigGeometryException>(() => Tail(TailSetting.Bowed(3, 0.2), true, end: ((float)metres, rounds)).Evaluate());
        Assert.Contains(what, fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_looser_end_stops_further_away()
    {
        var (loose, tight) = (Miss((0.05f, 100)), Miss((1e-5f, 200)));

        Assert.InRange(loose, 1e-4, 0.05);
        Assert.InRange(tight, 0, 1e-5);

        static double Miss((float, int) end)
        {
            var rig = Tail(TailSetting.Bowed(6, 0.3), true, end: end);
            var pose = rig.Evaluate(new Pose().Set(rig["goal"].Id, rig.Moved("goal", new(0.3, 0.25, 0.2), Quaterniond.Identity)));
            return (pose.WorldOf(rig["goal"]).Origin - pose.WorldOf(rig["tail_6"]).Origin).Length;
        }
    }

    [Fact]
    public void Degenerate_tails_and_goals_give_finite_answers()
    {
        foreach (var setting in new[] { TailSetting.Bowed(5, 0), TailSetting.Bowed(5, 0.3), TailSetting.Folded, TailSetting.WithoutLength(3), TailSetting.WithoutLength(0) })
        {
            foreach (var by in new[] { Vector3d.Zero, new(0, 0, 1), new(0, 0, 2), new(0, 0, 1 + 1e-12), new(1e6, 0, 0), new(0, 0, -5), new(1e-160, 0, 0) })
            {
                foreach (var cone in new float?[] { null, 0, 30 })
                {
                    var rig = Tail(setting, pole: false, cone: cone);
                    var pose = rig.Evaluate(new Pose().Set(rig["goal"].Id, Trs.Identity with { Translation = by }));
                    foreach (var node in rig.Model.Nodes)
                        Near.Finite(pose.WorldOf(node));
                }
            }
        }
    }

    private static double Length(Func<Condyle.Model.RigNode, Affine3d> world, TestRig rig, string joint, string next) =>
        (world(rig[next]).Origin - world(rig[joint]).Origin).Length;

    private static Pose Moved(TestRig rig, TailSetting setting, Vector3d by, Quaterniond turn) =>
        new Pose().Set(rig["goal"].Id, rig.Moved("goal", setting.Facing.Rotate(by), turn));

    private static TestRig Tail(TailSetting setting, bool pole, float? cone = null, (float Metres, int Rounds)? end = null) => new(rig =>
    {
        var chain = setting.Declare(rig);
        var world = rig.Control("world");
        var copy = chain.Copy("ik").Under(rig.Group("ik_group").Under(world));
        var goal = rig.Control("goal").Under(world).PlacedAt(chain.Tip);
        var solver = rig.ManyBone(copy).Reach(goal);
        if (pole)
            solver.Face(rig.Control("pole").Under(world).PlacedAt(copy.PolePoint(0.4f)));
        if (end is { } until)
            solver.Within(until.Metres, until.Rounds);
        foreach (var joint in cone is null ? [] : chain.SkipLast(1))
            solver.Limiting(joint, cone!.Value);
        rig.Blend(chain).From(copy, 1f);
    });
}
