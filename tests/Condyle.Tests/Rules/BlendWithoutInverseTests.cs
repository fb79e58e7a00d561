using Condyle.Model;
using Condyle.Rules;

namespace Condyle.Tests.Rules;

public class BlendWithoutInverseTests
{
    [Fact]
    public void A_forgotten_inverse_is_found_at_the_switch_value_where_it_is_worst()
    {
        var finding = Checked.Only(rig =>
        {
            var (arm, ik, fk, _, amount) = Checked.Arm(rig);
            rig.Blend(arm).From(ik, amount).From(fk, amount);
        });
        Assert.Equal("CDY2001", finding.Rule.Id);
        Assert.Equal(
            "The weights of the chain from 'shoulder_left' to 'wrist_left' don't add up to 1: with switch 'fk' at 1 they add up to 2, so it floats between its sources and lands on none. Use the inverse of the switch for one of its sources.",
            finding.Message);
        Assert.Equal("Weight copy 'ik' by the inverse of switch 'fk'", Assert.IsType<InvertWeight>(Assert.Single(finding.Repairs)).Title);
    }

    [Fact]
    public void Without_any_source_the_limb_falls_back_to_its_rest_pose() => Assert.Contains(
        "with switch 'fk' at 1 they add up to 0, so no source moves it and it falls back to its rest pose.",
        Checked.Only(rig =>
        {
            var (arm, ik, fk, _, amount) = Checked.Arm(rig);
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, amount * 0f);
        }).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Constants_are_named_by_their_sum() => Assert.StartsWith(
        "The weights of the chain from 'shoulder_left' to 'wrist_left' always add up to 0.9 instead of 1: it floats between its sources and lands on none.",
        Checked.Only(rig =>
        {
            var (arm, ik, fk, _, _) = Checked.Arm(rig);
            rig.Blend(arm).From(ik, 0.5f).From(fk, 0.4f);
        }).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Several_switches_are_all_named() => Assert.Contains(
        "with switch 'fk' and switch 'held' at 1 they add up to 3",
        Checked.Only(rig =>
        {
            var (arm, ik, fk, hand, amount) = Checked.Arm(rig);
            var held = arm.Copy("held");
            rig.Blend(arm).From(ik, amount).From(fk, amount).From(held, hand.Switch("held"));
        }).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Switches_of_one_name_are_told_apart_by_their_controls() => Assert.Contains(
        "with switch 'fk' of 'hand_right' at 0 and switch 'fk' of 'hand_left' at 1 they add up to 0",
        Checked.Only(rig =>
        {
            var (arm, ik, fk, _, amount) = Checked.Arm(rig);
            rig.Blend(arm).From(ik, amount.Inverse).From(fk, rig.Control("hand_right").Switch("fk"));
        }).Message,
        StringComparison.Ordinal);

    [Fact]
    public void Where_the_names_do_not_tell_both_sources_can_be_repaired() => Assert.Equal(
        2,
        Checked.Only(rig =>
        {
            var (arm, ik, fk, _, amount) = Checked.Arm(rig, "follow");
            rig.Blend(arm).From(ik, amount).From(fk, amount);
        }).Repairs.Count);

    [Fact]
    public void A_repair_is_named_by_the_weight_that_it_gives()
    {
        Assert.Equal(["Weight copy 'fk' by switch 'fk'"], Titles((s, _) => (s.Inverse, s.Inverse)));
        Assert.Equal(["Weight copy 'ik' by the inverse of switch 'fk'"], Titles((s, _) => (1, s)));
        Assert.Equal(["Weight copy 'ik' by the inverse of its weight", "Weight copy 'fk' by the inverse of its weight"], Titles((s, t) => (s * t, s * t)));
        Assert.Equal(["Weight copy 'ik' by the inverse of the weight of copy 'fk'"], Titles((s, t) => (1, s * t)));

        static IEnumerable<string> Titles(Func<Switch, Switch, (Weight Ik, Weight Fk)> weights) => Checked.Only(rig =>
        {
            var (arm, ik, fk, hand, amount) = Checked.Arm(rig);
            var (toIk, toFk) = weights(amount, hand.Switch("hold"));
            rig.Blend(arm).From(ik, toIk).From(fk, toFk);
        }).Repairs.Select(repair => repair.Title);
    }

    [Fact]
    public void A_constant_can_become_the_inverse_of_the_other_weight() => Assert.IsType<InverseOf>(Assert.Single(Checked.Only(rig =>
    {
        var (arm, ik, fk, _, amount) = Checked.Arm(rig);
        rig.Blend(arm).From(ik, 1).From(fk, amount);
    }).Repairs));

    [Fact]
    public void Weights_that_add_up_to_one_are_left_alone_however_they_are_written() => Checked.IsClean(rig =>
    {
        var (arm, ik, fk, hand, s) = Checked.Arm(rig);
        var t = hand.Switch("held");
        var held = arm.Copy("held");
        rig.Blend(arm).From(ik, s.Inverse).From(fk, s);
        rig.Blend(arm).From(ik, s * t).From(fk, s * t.Inverse).From(held, s.Inverse);
        rig.Blend(arm).From(ik, (s * t) + (s * t.Inverse) + s.Inverse);
        rig.Blend(arm).From(ik, t.Inverse * s.Inverse).From(fk, t.Inverse * s).From(held, t);
        rig.Blend(arm).From(ik, 0.1f).From(fk, 0.2f).From(held, 0.7f);
    });

    [Fact]
    public void A_sum_that_only_passes_through_one_is_found() => Checked.Only(rig =>
    {
        var (arm, ik, fk, _, s) = Checked.Arm(rig);
        rig.Blend(arm).From(ik, s * s).From(fk, s.Inverse * s.Inverse);
    });

    [Fact]
    public void A_blend_of_which_a_weight_or_a_source_is_open_is_left_alone()
    {
        Checked.IsClean(rig =>
        {
            var (arm, ik, fk, _, amount) = Checked.Arm(rig);
            rig.Blend(arm).From(ik, Checked.OpenWeight).From(fk, amount);
        });
        Checked.IsClean(rig =>
        {
            var (arm, ik, fk, _, amount) = Checked.Arm(rig);
            var blend = rig.Blend(arm).From(ik, amount);
            rig.Log.Scope = 1;
            blend.From(fk, amount);
        });
        Checked.IsClean(rig => ChainBlend.Open(rig).From(Copy.Open(rig), 0.5f, PlaceId.None));
    }

    [Fact]
    public void An_unfinished_blend_is_left_to_another_rule() => Checked.IsClean(rig => rig.Blend(Checked.Arm(rig).Chain));

    [Fact]
    public void The_options_of_a_choice_add_up_to_one_and_one_that_is_left_out_is_found()
    {
        void Say(RigDraft rig, bool isWhole)
        {
            var (arm, ik, fk, hand, _) = Checked.Arm(rig);
            var source = hand.Choice("source", ["ik", "fk", "cloth"]);
            var blend = rig.Blend(arm).From(ik, source.Is("ik")).From(fk, source.Is("fk"));
            if (isWhole)
                blend.From(arm.Copy("cloth"), source.Is("cloth"));
        }

        Checked.IsClean(rig => Say(rig, isWhole: true));
        Assert.Contains("with option 'cloth' of choice 'source' at 1 they add up to 0", Checked.Only(rig => Say(rig, isWhole: false)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_options_that_can_not_be_picked_at_once_are_not_tried_at_once() => Checked.IsClean(rig =>
    {
        var (arm, ik, fk, hand, s) = Checked.Arm(rig);
        var source = hand.Choice("source", ["ik", "fk", "cloth"]);
        var never = source.Is("fk") * source.Is("cloth");
        rig.Blend(arm).From(ik, s.Inverse + never).From(fk, s);
    });
}
