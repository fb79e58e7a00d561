using System.Numerics;
using Condyle.Evaluation;
using Condyle.Tests.Shared;
using CsCheck;

namespace Condyle.Runtime.Tests.Evaluation;

/// <summary>Dials, choices, responses and spaces of a running rig.</summary>
public class SettingTests
{
    private static readonly CompiledRig Hand = RigCompiler.Compile(Rig.Examine(new DefinedRig(DefineHand)));

    [Fact]
    public void Morph_weights_are_those_of_the_reference() => Gen.Int.Sample(
        seed =>
        {
            var rig = Rig.Examine(new RandomRig(seed));
            var live = RigCompiler.Compile(rig).NewInstance();
            var pose = new RandomPose(live.Rig, seed ^ 5);
            pose.Set(live);
            live.Evaluate();
            var exact = ReferenceEvaluator.Evaluate(rig.Model, RestPose.Of(rig.Model), pose.For(rig.Model, 0, 0));
            var strayed = Enumerable.Range(1, 16).Select(time => ReferenceEvaluator.Evaluate(rig.Model, RestPose.Of(rig.Model), pose.For(rig.Model, 1e-6f, seed + time))).ToList();
            foreach (var morph in live.Rig.Morphs)
            {
                // Measured angles jump at half a turn, and slopes magnify what a pose is off; a float is that far off at the least.
                var expected = exact.MorphWeight(morph.Mesh, morph.Target);
                var unstable = strayed.Max(other => Math.Abs(other.MorphWeight(morph.Mesh, morph.Target) - expected));
                Assert.True(Math.Abs(live.MorphWeight(morph.Index) - expected) <= 1e-4 + (1e-6 * Math.Abs(expected)) + (4 * unstable), $"{morph} of {seed}: {live.MorphWeight(morph.Index)}, not {expected}.");
            }
        },
        iter: 200);

    [Fact]
    public void A_dial_curls_a_finger_and_shows_a_morph_target()
    {
        var instance = Hand.NewInstance();
        instance.SetDial(Hand.DialIndex("hand.curl"), 0.5f);
        instance.Evaluate();
        var turn = Quaternion.Conjugate(Hand.Joints[1].RestRotation) * instance.JointRotation(1);
        Assert.Equal(40, 2 * Math.Acos(Math.Abs(turn.W)) * 180 / Math.PI, 4);
        Assert.Equal(0.25f, instance.MorphWeight(Hand.MorphIndex("body.fist")), 6);
        Assert.Equal(40f / 90, instance.MorphWeight(Hand.MorphIndex("body.bulge")), 5);
    }

    [Fact]
    public void A_dial_beyond_its_range_is_taken_as_the_nearer_end_and_is_known_on_every_control_that_shows_it()
    {
        var instance = Hand.NewInstance();
        instance.SetDial(Hand.DialIndex("chest.curl"), 7);
        instance.Evaluate();
        Assert.Equal(1, instance.MorphWeight(Hand.MorphIndex("body.fist")));
        var dial = Assert.Single(Hand.Dials);
        Assert.Equal(("hand.curl", DialUnit.Share, 0f, 1f, 0f), (dial.Name, dial.Unit, dial.From, dial.To, dial.AtRest));
        Assert.Equal(["chest.curl"], dial.AlsoKnownAs);
    }

    [Fact]
    public void What_is_not_there_or_not_finite_is_refused_by_name()
    {
        var instance = Hand.NewInstance();
        Assert.Contains("'hand.curl'", Assert.Throws<ArgumentException>(() => instance.SetDial(0, float.NaN)).Message, StringComparison.Ordinal);
        Assert.Contains("'hand.space'", Assert.Throws<ArgumentException>(() => instance.SetChoice(0, 0, 1, float.PositiveInfinity)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentOutOfRangeException>(() => instance.SetDial(1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => instance.SetChoice(0, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => instance.SetChoiceInPlace(-1, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => instance.MorphWeight(2));
        Assert.Contains("'hand.curl'", Assert.Throws<ArgumentException>(() => Hand.DialIndex("hand.kurl")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("goes")]
    [InlineData("default")]
    [InlineData("name")]
    [InlineData("option")]
    public void A_rig_whose_settings_can_not_be_right_is_not_compiled(string slip)
    {
        var message = Assert.ThrowsAny<Exception>(() => DefinedRig.Compile(rig =>
        {
            var hand = rig.Control("hand");
            _ = slip switch
            {
                "goes" => hand.Dial("curl", 1, -1).ToString(),
                "default" => hand.Dial("curl", 1, 2).ToString(),
                "name" => (hand.Dial("fk", 0, 1), hand.Switch("fk")).ToString(),
                _ => rig.Space(hand).In("world", rig.Control("a")).In("world", rig.Control("b")).ToString(),
            };
        })).Message;
        Assert.Contains(
            slip switch { "goes" => "goes from 1 to -1", "default" => "Give a default from 1 to 2", "name" => "more than one switch, dial or choice named 'hand.fk'", _ => "'world' is an option of the space already" },
            message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_choice_that_changes_in_place_leaves_its_controls_where_they_are_in_the_world_whatever_the_pose() => Gen.Int.Sample(
        seed =>
        {
            var choices = new RandomChoices(seed);
            var instance = Ridden(choices).NewInstance();
            var rig = instance.Rig;
            var (pose, size, picked) = (new RandomPose(rig, seed), Vector3.One * choices.Between(0.5f, 2f), choices.Below(3));
            pose.Set(instance);
            instance.SetScale(rig.ControlIndex("chest"), size); // even: a control can't keep shear
            instance.SetChoice(0, choices.Below(3));
            instance.Evaluate();
            Matrix4x4[] before = [instance.JointWorld(0), instance.JointWorld(1)];
            instance.SetChoiceInPlace(0, picked);
            Matrix4x4[] after = [instance.JointWorld(0), instance.JointWorld(1)];
            for (var joint = 0; joint < 2; joint++)
            {
                for (var row = 0; row < 4; row++)
                    Assert.True(Vector4.Distance(before[joint][row], after[joint][row]) < 2e-5f, $"{seed}: {before[joint]} {after[joint]}");
            }

            // What does it are the channels that an animator sets: keyed, they give the same pose.
            var keyed = rig.NewInstance();
            pose.Set(keyed);
            foreach (var control in rig.Controls)
            {
                keyed.SetMove(control.Index, instance.ControlMove(control.Index));
                keyed.SetTurn(control.Index, instance.ControlTurn(control.Index));
                keyed.SetScale(control.Index, instance.ControlScale(control.Index));
            }

            keyed.SetChoice(0, picked);
            keyed.Evaluate();
            Assert.True(Vector3.Distance(after[1].Translation, keyed.JointWorld(1).Translation) < 1e-5f);

            for (var option = 0; option < 3; option++)
            {
                instance.SetChoiceInPlace(0, option);
                Assert.True(Vector3.Distance(before[1].Translation, instance.JointWorld(1).Translation) < 2e-5f);
            }
        },
        iter: 300);

    [Fact]
    public void Locked_channels_stay_as_they_are()
    {
        var rig = DefinedRig.Compile(draft =>
        {
            var pole = draft.Control("pole").Lock(Channels.Turn | Channels.MoveY);
            draft.Drive(draft.Skeleton("s").Root("tip")).ByChannels(pole);
            draft.Space(pole).In("a", draft.Control("a")).In("b", draft.Control("b"));
        });
        var instance = rig.NewInstance();
        instance.SetMove(rig.ControlIndex("b"), new Vector3(1, 2, 3));
        instance.SetTurn(rig.ControlIndex("b"), Quaternion.CreateFromAxisAngle(Vector3.UnitY, MathF.PI));
        instance.SetChoiceInPlace(0, 1);
        Assert.Equal(Quaternion.Identity, instance.ControlTurn(rig.ControlIndex("pole")));
        Assert.Equal(0, instance.ControlMove(rig.ControlIndex("pole")).Y);
        Assert.True(Vector3.Distance(new(0, 2, 0), instance.JointWorld(0).Translation) < 1e-6f);
    }

    [Fact]
    public void Changing_in_place_allocates_nothing()
    {
        var instance = Ridden(new RandomChoices(1)).NewInstance();
        Change(3); // what a type allocates when it is used first counts once
        var before = GC.GetAllocatedBytesForCurrentThread();
        Change(100);

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);

        void Change(int times)
        {
            for (var i = 0; i < times; i++)
            {
                instance.SetChoiceInPlace(0, i % 3);
                instance.SetDial(0, i);
                instance.SetChoice(0, 0, 1, 0.5f);
            }
        }
    }

    [Fact]
    public void Degenerate_input_gives_finite_output()
    {
        var instance = Ridden(new RandomChoices(2)).NewInstance();
        var controls = Enumerable.Range(0, instance.Rig.Controls.Count).ToList();
        foreach (var scale in new[] { Vector3.Zero, new(-1, 1, 1), Vector3.One * 1e-20f, new(1e5f, 0, 1) })
        {
            foreach (var turn in new[] { Quaternion.Identity, new(1, 0, 0, 0), new(0, -1, 0, 0), new(0.6f, 0, 0, -0.8f) })
            {
                foreach (var control in controls.Where(control => (instance.Rig.Controls[control].Locked & Channels.Scale) == 0))
                    instance.SetScale(control, scale);
                foreach (var control in controls)
                {
                    instance.SetTurn(control, turn);
                    instance.SetMove(control, new(1e6f, 0, -1e-20f));
                }

                instance.SetChoice(0, 0, 1, 0.5f);
                instance.SetDial(0, 1);
                instance.Evaluate();
                AssertFinite(instance);
                instance.SetChoiceInPlace(0, 2);
                AssertFinite(instance);
            }
        }
    }

    [Fact]
    public void A_choice_is_found_by_its_name_on_each_control_that_shows_it()
    {
        var rig = Ridden(new RandomChoices(3));
        Assert.Equal("hand_control.ride", rig.Choices[rig.ChoiceIndex("hand_control.ride")].Name);
        Assert.Equal(rig.ChoiceIndex("hand_control.ride"), rig.ChoiceIndex("held_control.ride"));
        Assert.Contains("'hand_control.ride'", Assert.Throws<ArgumentException>(() => rig.ChoiceIndex("hand_control.rid")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(8)]
    [InlineData(16)]
    public void A_member_of_a_crowd_changes_a_choice_in_place_as_it_does_alone_bit_for_bit(int width)
    {
        for (var seed = 0; seed < 40; seed++)
        {
            var rig = Ridden(new RandomChoices(seed));
            var (crowd, alone, neighbour) = (new RigCrowd(rig, width + 2, width), rig.NewInstance(), rig.NewInstance());
            var (member, beside, picked) = (seed % crowd.Count, (seed + 1) % crowd.Count, seed % 3);
            foreach (var instance in new[] { alone, crowd[member] })
            {
                new RandomPose(rig, seed).Set(instance);
                instance.SetChoiceInPlace(0, picked);
            }

            foreach (var instance in new[] { neighbour, crowd[beside] })
                new RandomPose(rig, ~seed).Set(instance);
            neighbour.Evaluate();
            AssertSame(alone, crowd[member]);
            crowd.Evaluate();
            AssertSame(alone, crowd[member]);
            AssertSame(neighbour, crowd[beside]);
        }
    }

    private static void AssertSame(RigInstance expected, RigInstance actual)
    {
        foreach (var control in expected.Rig.Controls)
        {
            Assert.Equal(expected.ControlMove(control.Index), actual.ControlMove(control.Index));
            Assert.Equal(expected.ControlTurn(control.Index), actual.ControlTurn(control.Index));
            Assert.Equal(expected.ControlScale(control.Index), actual.ControlScale(control.Index));
        }

        foreach (var joint in expected.Rig.Joints)
            Assert.Equal(expected.JointWorld(joint.Index), actual.JointWorld(joint.Index));
    }

    private static void AssertFinite(RigInstance instance)
    {
        foreach (var joint in instance.Rig.Joints)
            Assert.True(float.IsFinite(instance.JointRotation(joint.Index).Length() + instance.JointTranslation(joint.Index).Length() + instance.JointWorld(joint.Index).GetDeterminant()));
        foreach (var morph in instance.Rig.Morphs)
            Assert.True(float.IsFinite(instance.MorphWeight(morph.Index)));
    }

    private static void DefineHand(RigDraft rig)
    {
        var wrist = rig.Skeleton("s").Root("wrist", turned: Quaternion.CreateFromYawPitchRoll(1, 2, 3));
        var finger = wrist.Child("finger", at: new Vector3(0, 0.1f, 0), turned: Quaternion.CreateFromYawPitchRoll(-1, 0.5f, 2));
        var (chest, hand) = (rig.Control("chest"), rig.Control("hand"));
        var curl = hand.Dial("curl", 0, 1, unit: DialUnit.Share).AlsoOn(chest);
        rig.Response(curl).Key(0, 0).Key(1, 80).OntoTurn(finger, Axis.X);
        rig.Response(curl).Key(0, 0, slope: 0).Key(0.5f, 0.25f).Key(1, 1).OntoMorph("body", "fist");
        rig.Response(rig.Angle(finger).About(Axis.X)).Key(0, 0).Key(90, 1).OntoMorph("body", "bulge");
        rig.Space(hand).In("world", rig.Control("world")).In("chest", chest);
    }

    /// <summary>A hand and what it holds: both ride by one choice, what is held rides the hand too, and both have responses on top.</summary>
    private static CompiledRig Ridden(RandomChoices choices) => DefinedRig.Compile(rig =>
    {
        Joint Place(string name, Joint? under = null) => under is { } joint
            ? joint.Child(name, at: choices.Vector(1), turned: choices.Turn(3))
            : rig.Skeleton(name).Root(name, at: choices.Vector(1), turned: choices.Turn(3));
        var (hand, held) = (Place("hand"), Place("held"));
        var (world, chest) = (rig.Control("world").PlacedAt(Place("a")), rig.Control("chest").PlacedAt(Place("b")).Unlock(Channels.Scale));
        var handControl = rig.Control("hand_control").Under(rig.Control("arm").PlacedAt(Place("c"))).PlacedAt(hand);
        var heldControl = rig.Control("held_control").PlacedAt(held).Unlock(Channels.Scale);
        var ride = handControl.Choice("ride", ["world", "chest", "own"]).AlsoOn(heldControl);
        rig.Space(handControl, ride).In("chest", chest).In("world", world);
        rig.Space(heldControl, ride).In("world", handControl).In("chest", chest);
        var dial = world.Dial("offset", -1, 1);
        rig.Response(dial).Key(-1, -60).Key(1, 30).OntoTurn(handControl, Axis.Y);
        rig.Response(dial).Key(-1, 0.3f).Key(1, 0).OntoMove(handControl, Axis.X);
        rig.Response(dial).Key(-1, 1).Key(1, 1.5f).OntoScale(heldControl, Axis.Z);
        rig.Response(dial).Key(-1, 1).Key(1, 0).OntoMorph("mesh", "morph");
        rig.Drive(hand).ByChannels(handControl);
        rig.Drive(held).ByChannels(heldControl).WithScale();
    });
}
