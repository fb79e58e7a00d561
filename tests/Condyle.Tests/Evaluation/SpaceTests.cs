using Condyle.Evaluation;
using Condyle.Model;
using CsCheck;

namespace Condyle.Tests.Evaluation;

public sealed class SpaceTests
{
    [Fact]
    public void At_rest_a_control_stands_where_it_rests_whatever_is_picked() =>
        Gen.Select(Any.Channels, Any.Channels, Any.Channels, Gen.Double[0, 1]).Sample((root, chest, hand, amount) =>
        {
            var rig = Ridden(root, chest, hand);
            foreach (var option in rig.Model.Options)
            {
                Near.Equal(rig.Rest.WorldOf(rig["hand"]), rig.Evaluate(new Pose().SetChoice(option)).WorldOf(rig["hand"]), 1e-6);
                Near.Equal(rig.Rest.WorldOf(rig["hand"]), rig.Evaluate(new Pose().SetChoice(option, rig.Model.Options[0], amount)).WorldOf(rig["hand"]), 1e-6);
            }
        });

    [Fact]
    public void It_goes_with_the_node_that_is_picked_as_if_it_hung_there_with_scale_and_all() =>
        Gen.Select(Any.Channels, Any.Channels, Any.Channels, Any.Channels, Any.Channels, Gen.Int[0, 1]).Sample((root, chest, hand, moved, own, picked) =>
        {
            var rig = Ridden(root, chest, hand);
            var name = picked == 0 ? "world" : "chest";
            var pose = new Pose().Set(rig[name].Id, moved).Set(rig["hand"].Id, own).SetChoice(rig.Model.Options[picked]);
            var carried = rig.Evaluate(pose).WorldOf(rig[name]) * rig.Rest.WorldOf(rig[name]).Inverse() * rig.Rest.WorldOf(rig["hand"]);
            Near.Equal(carried * own.ToAffine(), rig.Evaluate(pose).WorldOf(rig["hand"]), 1e-6);
        });

    [Fact]
    public void Between_two_nodes_it_goes_by_mean_and_slerp_and_grows_evenly()
    {
        var rig = new TestRig(draft => draft.Space(draft.Control("hand")).In("a", draft.Control("a")).In("b", draft.Control("b")));
        var there = new Trs(new(2, 0, 4), Quaterniond.About(Vector3d.UnitY, 1), new(3, 3, 3));
        var pose = new Pose().Set(rig["b"].Id, there).SetChoice(rig.Model.Options[0], rig.Model.Options[1], 0.25);
        Near.Equal(
            new Trs(new(0.5, 0, 1), Quaterniond.About(Vector3d.UnitY, 0.25), new(1.5, 1.5, 1.5)).ToAffine(),
            rig.Evaluate(pose).WorldOf(rig["hand"]));
    }

    [Fact]
    public void While_an_option_without_a_node_is_picked_it_rides_what_it_is_under()
    {
        var rig = new TestRig(draft =>
        {
            var hand = draft.Control("hand").Under(draft.Control("arm"));
            draft.Space(hand, draft.Control("desk").Choice("ride", ["arm", "crate"])).In("crate", draft.Control("crate"));
        });
        var up = Trs.Identity with { Translation = new(0, 1, 0) };
        var pose = new Pose().Set(rig["arm"].Id, up);
        Near.Equal(new Vector3d(0, 1, 0), rig.Evaluate(pose).WorldOf(rig["hand"]).Origin);
        Near.Equal(Vector3d.Zero, rig.Evaluate(pose.SetChoice(rig.Model.Options[1])).WorldOf(rig["hand"]).Origin);
    }

    [Fact]
    public void Halfway_between_an_upright_node_and_a_mirrored_or_vanished_one_it_stays_finite()
    {
        var rig = new TestRig(draft => draft.Space(draft.Control("hand")).In("a", draft.Control("a")).In("b", draft.Control("b")));
        foreach (var scale in new Vector3d[] { new(-1, 1, 1), Vector3d.Zero, new(1e6, 1, 0) })
        {
            var pose = new Pose().Set(rig["b"].Id, new(new(1e6, 0, 0), Quaterniond.About(Vector3d.UnitY, Math.PI), scale));
            Near.Finite(rig.Evaluate(pose.SetChoice(rig.Model.Options[0], rig.Model.Options[1], 0.5)).WorldOf(rig["hand"]));
        }
    }

    [Fact]
    public void A_space_of_two_controls_that_ride_each_other_is_a_loop()
    {
        var rig = new TestRig(draft =>
        {
            var (a, b) = (draft.Control("a"), draft.Control("b"));
            draft.Space(a).In("other", b);
            draft.Space(b).In("other", a);
        });
        Assert.Contains("'a' -> 'b' -> 'a'", Assert.Throws<RigGeometryException>(() => rig.Evaluate()).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void The_weights_of_a_choice_add_up_to_one_in_the_one_form_that_weights_have()
    {
        var rig = new RigDraft(Condyle.Naming.Conventions.Default, new ProgramPlaces());
        var choice = rig.Control("hand").Choice("space", ["world", "chest", "crate"]);
        Assert.True((choice.Is("world") + choice.Is("chest") + choice.Is("crate")).In(rig).TryKnown(out var sum));
        Assert.Equal(WeightPolynomial.One, sum);
    }

    [Fact]
    public void What_stands_on_a_control_says_its_name_and_a_weight_its_form()
    {
        var rig = new RigDraft(Condyle.Naming.Conventions.Default, new ProgramPlaces());
        var hand = rig.Control("hand");
        var choice = hand.Choice("space", ["world", "chest"]);
        Assert.Equal("fk curl space", $"{hand.Switch("fk")} {hand.Dial("curl", 0, 1)} {choice}");
        Assert.Equal("1 − #3", choice.Is("world").ToString());
    }

    [Fact]
    public void What_can_never_be_right_is_refused_at_once()
    {
        var rig = new RigDraft(Condyle.Naming.Conventions.Default, new ProgramPlaces());
        var hand = rig.Control("hand");
        var choice = hand.Choice("space", ["world", "chest"]);
        Assert.Contains("'world', 'chest'", Assert.Throws<ArgumentException>(() => choice.Is("crate")).Message, StringComparison.Ordinal);
        Assert.Contains("no option 'crate'", Assert.Throws<ArgumentException>(() => rig.Space(hand, choice).In("crate", hand)).Message, StringComparison.Ordinal);
        Assert.Contains("'a' more than once", Assert.Throws<ArgumentException>(() => hand.Choice("twice", ["a", "b", "a"])).Message, StringComparison.Ordinal);
        Assert.Contains("no option", Assert.Throws<ArgumentException>(() => hand.Choice("none", [])).Message, StringComparison.Ordinal);
        Assert.Contains("from 1 to 0", Assert.Throws<ArgumentException>(() => hand.Dial("curl", 1, 0)).Message, StringComparison.Ordinal);
        Assert.Contains("no finite number", Assert.Throws<ArgumentException>(() => hand.Dial("curl", 0, 1, float.NaN)).Message, StringComparison.Ordinal);
        Assert.Contains("no axis", Assert.Throws<ArgumentException>(() => rig.Angle(hand).About((Axis)7)).Message, StringComparison.Ordinal);
    }

    /// <summary>A hand under the root that rides the world or a chest, both placed anywhere under a root with scale.</summary>
    private static TestRig Ridden(Trs root, Trs chest, Trs hand) => new(draft =>
    {
        var skeleton = draft.Skeleton("s").Root("root", at: root.Translation.ToSingle(), turned: root.Rotation.ToSingle(), scaled: root.Scale.ToSingle());
        var (over, at) = (
            skeleton.Child("over", at: chest.Translation.ToSingle(), turned: chest.Rotation.ToSingle(), scaled: chest.Scale.ToSingle()),
            skeleton.Child("at", at: hand.Translation.ToSingle(), turned: hand.Rotation.ToSingle()));
        var world = draft.Control("world");
        draft.Space(draft.Control("hand").Under(draft.Control("arm").Under(skeleton)).PlacedAt(at))
            .In("world", world)
            .In("chest", draft.Control("chest").Under(world).PlacedAt(over));
    });
}
