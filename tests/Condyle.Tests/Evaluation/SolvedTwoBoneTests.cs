using System.Numerics;
using Condyle.Evaluation;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class SolvedTwoBoneTests
{
    [Fact]
    public void A_leg_of_three_and_four_makes_the_right_triangle_with_a_goal_at_five()
    {
        // Euclid, Elements I.47: 3² + 4² = 5², so the knee is at a right angle.
        var rig = Leg(3, 4, bent: 0.3f);
        var root = rig.Rest.WorldOf(rig["hip"]).Origin;
        var goal = new Vector3d(0, -5, 0);
        var pose = rig.Evaluate(new Pose().Set(rig["foot"].Id, rig.Moved("foot", root + goal - rig.Rest.WorldOf(rig["ankle"]).Origin, Quaterniond.Identity)));
        var (knee, ankle) = (pose.WorldOf(rig["ik_knee"]).Origin, pose.WorldOf(rig["ik_ankle"]).Origin);

        Near.Equal(root + goal, ankle, 1e-6);
        Near.Equal(0, Vector3d.Dot((root - knee).Direction!.Value, (ankle - knee).Direction!.Value), 1e-6);
        Near.Equal(root + new Vector3d(0, -1.8, 2.4), knee, 1e-6);
    }

    [Fact]
    public void A_straight_leg_bends_to_where_its_pole_is_declared_to_be()
    {
        var rig = Leg(1, 1, bent: 0, declared: Vector3.UnitZ);
        rig.AssertRestHolds();
        var pose = rig.Evaluate(new Pose().Set(rig["foot"].Id, Trs.Identity with { Translation = new(0, 1, 0) }));

        Near.Equal(new Vector3d(0, 1.5, Math.Sqrt(3) / 2), pose.WorldOf(rig["ik_knee"]).Origin, 1e-6);
    }

    [Fact]
    public void Without_a_pole_the_bend_turns_with_the_copys_parent() =>
        Gen.Select(Any.Rotation, Any.Vector).Sample((turn, by) =>
        {
            var rig = Leg(1, 0.9, bent: 0.4f, pole: false);
            rig.AssertRestHolds();
            var moved = new Trs(by, turn, Vector3d.One);
            var pose = rig.Evaluate(new Pose().Set(rig["world"].Id, moved));
            foreach (var joint in new[] { "ik_hip", "ik_knee", "ik_ankle" })
                Near.Equal(moved.ToAffine() * rig.Rest.WorldOf(rig[joint]), pose.WorldOf(rig[joint]), 1e-6);
        });

    [Fact]
    public void Without_a_pole_the_bend_goes_with_the_smallest_turn_of_the_leg()
    {
        var rig = Leg(1, 1, bent: 0.4f, pole: false);
        var length = (rig.Rest.WorldOf(rig["ankle"]).Origin - rig.Rest.WorldOf(rig["hip"]).Origin).Length;
        var turn = Quaterniond.About(Vector3d.UnitX, -1.2); // the leg swings forwards
        var line = (rig.Rest.WorldOf(rig["ankle"]).Origin - rig.Rest.WorldOf(rig["hip"]).Origin) / length;
        var pose = rig.Evaluate(new Pose().Set(rig["foot"].Id, rig.Moved("foot", (turn.Rotate(line) - line) * length, Quaterniond.Identity)));
        var hip = pose.WorldOf(rig["ik_hip"]).Origin;

        Near.Equal(turn.Rotate(rig.Rest.WorldOf(rig["knee"]).Origin - hip), pose.WorldOf(rig["ik_knee"]).Origin - hip, 1e-6);
    }

    [Fact]
    public void Without_a_goal_nothing_is_solved()
    {
        var rig = new TestRig(draft =>
        {
            var hip = draft.Skeleton("leg").Root("hip");
            var chain = draft.Chain(hip, hip.Child("knee", at: -Vector3.UnitY).Child("ankle", at: -Vector3.UnitY));
            draft.TwoBone(chain.Copy("ik"));
        });

        Near.Equal(new Vector3d(0, -2, 0), rig.Evaluate().WorldOf(rig["ik_ankle"]).Origin);
    }

    public static TheoryData<string, double, double, double> Degenerate => new()
    {
        { "the goal at the root", 1, 1, 2 },
        { "equal bones, folded", 1, 1, 1.9999999999 },
        { "a first bone of no length", 0, 1, 0.5 },
        { "a second bone of no length", 1, 0, 0.5 },
        { "no bones at all", 0, 0, 0.5 },
        { "the goal above the root", 1, 1, 3.5 },
    };

    [Theory]
    [MemberData(nameof(Degenerate))]
    public void Degenerate_legs_give_finite_answers(string what, double thigh, double shin, double raised)
    {
        Assert.NotEmpty(what);
        foreach (var pole in new[] { true, false })
        {
            var rig = Leg(thigh, shin, bent: 0, declared: Vector3.UnitZ, pole: pole);
            var pose = rig.Evaluate(new Pose().Set(rig["foot"].Id, Trs.Identity with { Translation = new(0, raised, 0) }));
            foreach (var node in rig.Model.Nodes)
                Near.Finite(pose.WorldOf(node));
            Near.Equal(thigh, (pose.WorldOf(rig["ik_knee"]).Origin - pose.WorldOf(rig["ik_hip"]).Origin).Length, 1e-6);
            Near.Equal(shin, (pose.WorldOf(rig["ik_ankle"]).Origin - pose.WorldOf(rig["ik_knee"]).Origin).Length, 1e-6);
        }
    }

    [Fact]
    public void A_pole_on_the_line_gives_the_bend_of_rest()
    {
        var rig = Leg(1, 1, bent: 0.4f);
        var onTheLine = rig.Rest.WorldOf(rig["hip"]).Origin - rig.Rest.WorldOf(rig["knee_pole"]).Origin;
        var pose = rig.Evaluate(new Pose().Set(rig["knee_pole"].Id, Trs.Identity with { Translation = onTheLine }));

        Near.Equal(rig.Rest.WorldOf(rig["knee"]).Origin, pose.WorldOf(rig["ik_knee"]).Origin, 1e-6);
    }

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(1, 0, 1)]
    [InlineData(-1, 2, 1e-9)]
    public void A_flattened_or_mirrored_character_is_finite(double x, double y, double z)
    {
        var rig = Leg(1, 1, bent: 0.4f);
        var pose = rig.Evaluate(new Pose().Set(rig["world"].Id, Trs.Identity with { Scale = new(x, y, z) }));
        foreach (var node in rig.Model.Nodes)
            Near.Finite(pose.WorldOf(node));
    }

    /// <summary>A leg that hangs down from (0, thigh + shin, 0), with the knee forwards by an angle at the hip.</summary>
    private static TestRig Leg(double thigh, double shin, float bent, Vector3? declared = null, bool pole = true) => new(draft =>
    {
        var turned = Quaternion.CreateFromAxisAngle(Vector3.UnitX, -bent);
        var hip = draft.Skeleton("leg").Root("hip", at: new Vector3(0, (float)(thigh + shin), 0), turned: turned);
        var knee = hip.Child("knee", at: new Vector3(0, -(float)thigh, 0), turned: Quaternion.Inverse(turned) * Quaternion.Inverse(turned));
        var chain = draft.Chain(hip, knee.Child("ankle", at: new Vector3(0, -(float)shin, 0)));
        if (declared is { } towards)
            chain.Bending(towards);
        var world = draft.Control("world");
        var copy = chain.Copy("ik").Under(world);
        var foot = draft.Control("foot").Under(world).PlacedAt(chain.Tip);
        var solver = draft.TwoBone(copy).Reach(foot);
        if (pole && thigh + shin > 0)
            solver.Face(draft.Control("knee_pole").Under(world).PlacedAt(copy.PolePoint(1)));
        draft.Blend(chain).From(copy, 1f);
    });
}
