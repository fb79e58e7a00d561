using System.Numerics;
using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;

namespace Condyle.Tests.Rules.Poses;

/// <summary>What holds for every rule that evaluates a rig, and what the rules of rest poses say.</summary>
public class EvaluatedRuleTests
{
    private static readonly IReadOnlyList<EvaluatedRule> Rules = [.. RuleBook.All.OfType<EvaluatedRule>()];

    [Fact]
    public void The_worst_joint_is_named_with_how_far_it_is_and_why()
    {
        var finding = Assert.Single(Findings(rig =>
        {
            var (shoulder, elbow, wrist) = Arm(rig);
            rig.Drive(elbow).ByChannels(rig.Control("turn_elbow").PlacedAt(shoulder));
        }));
        Assert.Equal("CDY8001", finding.Rule.Id);
        Assert.Equal(
            "With everything at rest, 'elbow' is 301 mm away from how it was delivered and takes another joint with it: 'elbow' is driven onto 'turn_elbow', which rests 301 mm away from it. So the character changes as soon as the rig moves it. Place 'turn_elbow' where 'elbow' rests, or let the drive keep the rest offset.",
            finding.Message);
    }

    [Fact]
    public void Sentences_that_each_move_a_joint_away_are_told_apart_worst_first() => Assert.Equal(
        ["'hook_b' is 2 m", "'hook_a' is 1 m"],
        Findings(rig =>
        {
            var skeleton = rig.Skeleton("hooks");
            rig.Drive(skeleton.Root("hook_a", at: new(1, 0, 0))).ByChannels(rig.Control("a"));
            rig.Drive(skeleton.Root("hook_b", at: new(2, 0, 0))).ByChannels(rig.Control("b"));
        }).Select(finding => finding.Message["With everything at rest, ".Length..finding.Message.IndexOf(" away", StringComparison.Ordinal)]));

    [Fact]
    public void Two_slips_of_one_limb_are_told_apart_with_what_each_does() => Assert.Equal(
        ["'shoulder' is 300 mm", "'wrist' is 200 mm"],
        Findings(rig =>
        {
            var (shoulder, _, wrist) = Arm(rig);
            var carry = rig.Control("carry").PlacedAt(rig.Spot(shoulder, new Vector3(0, 0.3f, 0)));
            rig.Drive(shoulder).ByChannels(carry);
            rig.Drive(wrist).ByChannels(rig.Control("hold").Under(carry).PlacedAt(rig.Spot(wrist, new Vector3(0.2f, 0, 0))));
        }).Select(finding => finding.Message["With everything at rest, ".Length..finding.Message.IndexOf(" away", StringComparison.Ordinal)]));

    [Fact]
    public void A_slip_further_down_adds_nothing_to_the_first_one() => Assert.Equal(
        ["'shoulder' is 300 mm"],
        Findings(rig =>
        {
            var (shoulder, elbow, _) = Arm(rig);
            rig.Drive(shoulder).ByChannels(rig.Control("carry").PlacedAt(rig.Spot(shoulder, new Vector3(0, 0.3f, 0))));
            var dial = rig.Control("bend").PlacedAt(elbow).Dial("bend", 0, 1, 0.5f);
            rig.Response(dial).Key(0, 0).Key(1, 2).OntoMove(elbow, Axis.Y);
        }).Select(finding => finding.Message["With everything at rest, ".Length..finding.Message.IndexOf(" away", StringComparison.Ordinal)]));

    [Fact]
    public void A_turn_and_a_size_are_told_as_well() => Assert.StartsWith(
        "With everything at rest, 'hook' is 90° and 0.5 times the size away from how it was delivered: ",
        Assert.Single(Findings(rig =>
        {
            var post = rig.Skeleton("crane").Root("post", turned: Quaternion.CreateFromAxisAngle(Vector3.UnitX, MathF.PI / 2), scaled: new(2));
            rig.Drive(post.Child("hook")).ByChannels(rig.Control("hang")).WithScale();
        })).Message,
        StringComparison.Ordinal);

    [Fact]
    public void What_is_less_than_delivered_numbers_are_rounded_is_left_alone() => Assert.Empty(Findings(rig =>
    {
        var (shoulder, elbow, _) = Arm(rig);
        var near = shoulder.Child("marker", JointRole.Helper, at: new(0.30005f, 0, -0.02f));
        rig.Drive(elbow).ByChannels(rig.Control("turn_elbow").PlacedAt(near));
    }));

    [Fact]
    public void A_goal_out_of_reach_is_told_with_what_is_missing() => Assert.Equal(
        "With 'hand' at rest, copy 'ik' of the chain from 'shoulder' to 'wrist' is 449 mm too short to reach it: the limb is pulled straight before anybody has moved anything, and 'ik_wrist' stays behind. Place 'hand' at the chain's tip.",
        Assert.Single(Findings(rig =>
        {
            var (shoulder, _, wrist) = Arm(rig);
            var far = shoulder.Child("far", JointRole.Helper, at: new(0, -1, 0));
            var arm = rig.Chain(shoulder, wrist);
            var ik = arm.Copy("ik");
            rig.TwoBone(ik).Reach(rig.Control("hand").PlacedAt(far));
            rig.Blend(arm).From(ik, 1);
        })).Message);

    [Fact]
    public void A_goal_nearer_than_the_bones_fold_is_told_as_well() => Assert.StartsWith(
        "With 'hand' at rest, copy 'ik' of the chain from 'shoulder' to 'wrist' can't fold up enough to reach it: it is 500 mm nearer to 'ik_shoulder' than the bones can bring 'ik_wrist'",
        Assert.Single(Findings(rig =>
        {
            var shoulder = rig.Skeleton("docker").Root("shoulder");
            var arm = rig.Chain(shoulder, shoulder.Child("elbow", at: new(1, 0, 0)).Child("wrist", at: new(0, 0.5f, 0)));
            rig.TwoBone(arm.Copy("ik")).Reach(rig.Control("hand").PlacedAt(shoulder));
        })).Message,
        StringComparison.Ordinal);

    [Fact]
    public void A_bone_that_shrinks_over_a_switch_is_told_with_its_lengths_and_the_value_where_it_is_worst()
    {
        var finding = Assert.Single(Findings(rig =>
        {
            var (shoulder, elbow, _) = Arm(rig);
            var held = rig.Control("hold").Switch("held");
            var free = rig.Control("free").PlacedAt(shoulder);
            var still = rig.Control("still").PlacedAt(shoulder).Lock(Channels.Turn);
            rig.Blend(shoulder).From(free, held.Inverse).From(still, held);
            rig.Blend(elbow).From(rig.Control("free_elbow").Under(free).PlacedAt(elbow), held.Inverse).From(rig.Control("still_elbow").Under(still).PlacedAt(elbow), held);
        }));
        Assert.Equal("CDY8002", finding.Rule.Id);
        Assert.Matches(
            "^The bone from 'shoulder' to 'elbow' changes its length over switch 'held': with every control turned by up to 30° it is 2[0-9]{2} mm long with switch 'held' at 0.5, and 301 mm at either end. The limb shrinks while it is handed over. Blend the chain as a whole",
            finding.Message);
    }

    [Fact]
    public void A_rig_with_a_loop_or_without_a_skeleton_or_with_names_twice_is_no_reason_to_fail()
    {
        Assert.Empty(Findings(_ => { }));
        Assert.Empty(Findings(rig =>
        {
            var (a, b) = (rig.Group("a_group"), rig.Group("b_group"));
            a.Under(b);
            b.Under(a);
            rig.Drive(rig.Skeleton("s").Root("joint", at: new(1, 0, 0))).ByChannels(a);
        }));
        Findings(rig =>
        {
            var skeleton = rig.Skeleton("twice");
            rig.Drive(skeleton.Root("joint")).ByChannels(skeleton.Root("joint").Child("joint"));
        });
    }

    [Theory]
    [InlineData(false, "CDY8004")]
    [InlineData(true, "CDY7003")]
    public void The_pole_point_of_a_straight_chain_is_told_of_once_whether_or_not_a_solver_takes_it(bool faces, string rule) => Assert.Equal(
        [rule],
        Findings(rig =>
        {
            var post = rig.Skeleton("mast").Root("post");
            var ik = rig.Chain(post, post.Child("jib", at: new(0, 2, 0)).Child("top", at: new(0, 2, 0))).Copy("ik");
            var pole = rig.Control("pole").PlacedAt(ik.PolePoint(1));
            if (faces)
                rig.TwoBone(ik).Reach(rig.Control("move_top").PlacedAt(post)).Face(pole);
        }).Select(finding => finding.Rule.Id));

    [Fact]
    public void Hostile_geometry_is_no_reason_to_fail()
    {
        float[] numbers = [0, 1, -1, 1e-30f, 1e30f, float.MaxValue, 0.1f, -0.3f];
        for (var seed = 0; seed < 300; seed++)
            Findings(rig => HostileRig.Say(rig, new Random(seed), numbers));
    }

    [Fact]
    public void What_is_open_or_not_whole_keeps_them_silent()
    {
        Assert.Single(Findings(Slip));
        Assert.Empty(Findings(rig =>
        {
            Slip(rig);
            rig.Control("other").PlacedAt(Control.Open(rig), PlaceId.None);
        }));
        Assert.Empty(Findings(rig =>
        {
            Slip(rig);
            rig.Record(new PartBegun());
        }));
        Assert.Empty(Findings(rig =>
        {
            Slip(rig);
            rig.Record(new Gap(new RigGap("the rig", PlaceId.None, "of a test")));
        }));
        Assert.Empty(Findings(rig =>
        {
            Slip(rig);
            rig.Log.Scope = 1;
            rig.Control("perhaps");
        }));

        static void Slip(RigDraft rig) => rig.Drive(rig.Skeleton("hook").Root("hook", at: new(1, 0, 0))).ByChannels(rig.Control("turn_hook"));
    }

    [Fact]
    public void More_work_than_the_limit_is_not_begun()
    {
        Assert.Single(Findings(rig => Slips(rig, rounds: 30)));
        Assert.Empty(Findings(rig => Slips(rig, rounds: 1000)));

        static void Slips(RigDraft rig, int rounds)
        {
            var skeleton = rig.Skeleton("eels");
            rig.Drive(skeleton.Root("hook", at: new(1, 0, 0))).ByChannels(rig.Control("turn_hook"));
            for (var i = 0; i < 70; i++)
            {
                var joint = skeleton.Root($"eel_{i}");
                var tail = rig.Chain(joint, joint.Child($"a_{i}", at: new(0, 0, 1)).Child($"b_{i}", at: new(0, 0.1f, 1)));
                rig.ManyBone(tail.Copy("swim")).Reach(rig.Control($"end_{i}").PlacedAt(tail.Tip)).Within(0.001f, rounds);
            }
        }
    }

    [Fact]
    public void They_stop_when_nobody_waits_any_more()
    {
        var draft = new RigDraft(Conventions.Default, new ProgramPlaces());
        Arm(draft);
        var rig = new CheckedRig(RigModel.Of(draft.Log), Conventions.Default, new CancellationToken(canceled: true));
        Assert.Throws<OperationCanceledException>(() => rig.Evaluated);
    }

    private static List<Finding> Findings(Action<RigDraft> say)
    {
        var draft = new RigDraft(Conventions.Default, new ProgramPlaces());
        say(draft);
        var rig = new CheckedRig(RigModel.Of(draft.Log), Conventions.Default, CancellationToken.None);
        return [.. Rules.SelectMany(rule => rule.Check(rig))];
    }

    private static (Joint Shoulder, Joint Elbow, Joint Wrist) Arm(RigDraft rig)
    {
        var shoulder = rig.Skeleton("docker").Root("shoulder", at: new(0.2f, 1.4f, 0));
        var elbow = shoulder.Child("elbow", at: new(0.3f, 0, -0.02f));
        return (shoulder, elbow, elbow.Child("wrist", at: new(0.25f, 0, 0.02f)));
    }
}
