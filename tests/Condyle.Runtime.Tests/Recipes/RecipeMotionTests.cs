using System.Numerics;
using Condyle.Tests.Shared;

namespace Condyle.Runtime.Tests.Recipes;

/// <summary>What recipes build moves as their pages say, whatever the joints' frames, and alike on both sides.</summary>
public sealed class RecipeMotionTests() : MotionOfRecipes(isWhole: false, seeds: 6);

/// <summary>A whole biped moves as its parts do.</summary>
public sealed class WholeBipedMotionTests() : MotionOfRecipes(isWhole: true, seeds: 2);

/// <summary>How a biped moves that recipes have rigged.</summary>
/// <param name="isWhole">Whether it is rigged by one sentence.</param>
/// <param name="seeds">How many sets of frames its joints are tried with.</param>
public abstract class MotionOfRecipes(bool isWhole, int seeds)
{

    private static readonly BipedRecipes Curving = new(Spine: new SpineOptions { Curves = true, Stretches = true });

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void At_rest_every_joint_is_where_it_was_delivered(bool curves, bool behaves)
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed, curves ? Curving : null, behaves);
            foreach (var (fk, aim) in new[] { (0, 0), (1, 0), (0, 1), (1, 1), (0.5f, 0.5f) })
            {
                posed.Switch("fk", fk);
                posed.Switch("aim", aim);
                posed.Evaluated();
                foreach (var joint in posed.Joints)
                {
                    Posed.Same(posed.RestOf(joint), posed.At(joint), $"{seed}: {joint} at rest, fk {fk}, aim {aim}");
                    Posed.Same(Quaternion.Identity, posed.TurnOf(joint), $"{seed}: {joint} at rest, fk {fk}, aim {aim}");
                }
            }
        }
    }

    [Theory]
    [InlineData("arm", "shoulder", "elbow", "wrist", "hand", "elbow_pole")]
    [InlineData("leg", "hip", "knee", "ankle", "foot", "knee_pole")]
    public void A_limbs_tip_goes_with_its_goal_in_IK_and_with_its_turns_in_FK(string limb, string root, string bend, string tip, string goal, string pole)
    {
        var (moved, turned) = (new Vector3(-0.08f, 0.1f, 0.12f), Spin(0.3f, 0.4f, -0.2f));
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            posed.Both(goal, tip, moved, turned);
            posed.Evaluated().AssertMirrored();
            Posed.Same(posed.RestOf($"{tip}_left") + moved, posed.At($"{tip}_left"), $"{seed}: {tip}");
            Posed.Same(turned, posed.TurnOf($"{tip}_left"), $"{seed}: {tip}");

            // The pole draws the bend to its side.
            var before = posed.At($"{bend}_left");
            var aside = 0.5f * (limb == "leg" ? Vector3.UnitX : Vector3.UnitY);
            posed.Both(pole, null, aside, Quaternion.Identity);
            posed.Evaluated();
            Assert.True(Vector3.Dot(posed.At($"{bend}_left") - before, aside) > 0.005f, $"{seed}: {bend}");

            posed.Switch("fk", 1);
            posed.Both($"turn_{root}", root, Vector3.Zero, Spin(0, 0, 0.5f));
            posed.Both($"turn_{bend}", bend, Vector3.Zero, Spin(0.4f, 0, 0));
            posed.Evaluated().AssertMirrored();
            Posed.Same(posed.RestOf($"{root}_left"), posed.At($"{root}_left"), $"{seed}: {root} of {limb}");
            Posed.Same(Spin(0, 0, 0.5f), posed.TurnOf($"{root}_left"), $"{seed}: {root}");
            Posed.Same(Spin(0, 0, 0.5f) * Spin(0.4f, 0, 0), posed.TurnOf($"{tip}_left"), $"{seed}: {tip} in FK");
        }
    }

    [Fact]
    public void A_collar_follows_its_arms_goal_by_its_share_while_IK_has_the_arm_and_turns_by_its_control_in_both()
    {
        var raised = new Vector3(-0.1f, 0.4f, 0.1f);
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            var toWrist = posed.RestOf("wrist_left") - posed.RestOf("collar_left");
            var whole = Between(toWrist, toWrist + raised);
            posed.Both("hand", "wrist", raised, Quaternion.Identity);
            foreach (var share in new[] { 0, 0.25f, 1 })
            {
                if (share != 0)
                    posed.Switch("follows", share);
                posed.Evaluated().AssertMirrored();
                Posed.Same(Quaternion.Slerp(Quaternion.Identity, whole, share), posed.TurnOf("collar_left"), $"{seed}: collar by {share}");
                Posed.Same(posed.Carried("collar_left", posed.RestOf("shoulder_left")), posed.At("shoulder_left"), $"{seed}: shoulder by {share}");
                Assert.True(share == 0 || posed.At("shoulder_left").Y > posed.RestOf("shoulder_left").Y + 0.01f, $"{seed}: the shoulder goes up by {share}");
            }

            posed.Switch("follows", 1);
            posed.Switch("fk", 1);
            posed.Evaluated().AssertMirrored();
            Posed.Same(Quaternion.Identity, posed.TurnOf("collar_left"), $"{seed}: collar in FK");

            posed.Both("turn_collar", "collar", Vector3.Zero, Spin(0, 0.2f, 0.3f));
            posed.Evaluated().AssertMirrored();
            Posed.Same(Spin(0, 0.2f, 0.3f), posed.TurnOf("collar_left"), $"{seed}: collar turned in FK");
            posed.Switch("fk", 0);
            posed.Evaluated().AssertMirrored();
            Posed.Same(whole * Spin(0, 0.2f, 0.3f), posed.TurnOf("collar_left"), $"{seed}: collar turned on top of what it follows");
        }
    }

    [Theory]
    [InlineData("world")]
    [InlineData("hips")]
    [InlineData("chest")]
    [InlineData("head")]
    public void A_goal_and_what_is_looked_at_ride_what_is_picked(string space)
    {
        var moved = new Vector3(-0.1f, 0, 0.1f);
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            posed.Both("hand", "wrist", moved, Quaternion.Identity);
            posed.Ride("hand", space);
            posed.Ride("elbow_pole", "goal");
            if (space != "head")
                posed.Ride("look", space);
            posed.Switch("aim", space == "head" ? 0 : 1);
            posed.Switch("follows", 0);
            posed.Turn("hips", "waist", Spin(0, 0.2f, 0));
            posed.Turn("turn_chest", "chest", Spin(-0.1f, 0.15f, 0));
            posed.Turn("turn_head", "head", Spin(0, -0.1f, 0));
            posed.Evaluated();
            var carrier = space switch { "hips" => "pelvis", "world" => null, _ => space };
            Vector3 Ridden(Vector3 atRest) => carrier is null ? atRest : posed.Carried(carrier, atRest);
            Posed.Same(Ridden(posed.RestOf("wrist_left") + moved), posed.At("wrist_left"), $"{seed}: the left hand rides the {space}");
            Posed.Same(Ridden(posed.RestOf("wrist_right") + MirroredRest.Of(moved)), posed.At("wrist_right"), $"{seed}: the right hand rides the {space}");
            if (space != "head")
                LooksAt(posed, "head", Ridden(posed.RestOf("head") + Vector3.UnitZ), $"{seed}: the head looks at what rides the {space}");
        }
    }

    [Fact]
    public void Turns_go_with_the_body_or_stay_as_they_lie_in_the_world()
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            posed.Switch("fk", 1);
            posed.Turn("turn_chest", "chest", Spin(0.3f, 0.4f, 0.1f));
            posed.Both("turn_shoulder", "shoulder", Vector3.Zero, Spin(0, 0, -0.5f));
            foreach (var (option, body) in new[] { ("body", Spin(0.3f, 0.4f, 0.1f)), ("world", Quaternion.Identity) })
            {
                posed.Ride("turn_shoulder", option);
                posed.Ride("turn_head", option);
                posed.Evaluated();
                Posed.Same(body * Spin(0, 0, -0.5f), posed.TurnOf("shoulder_left"), $"{seed}: the left shoulder goes with the {option}");
                Posed.Same(body, posed.TurnOf("head"), $"{seed}: the head goes with the {option}");
                foreach (var joint in new[] { "shoulder_left", "shoulder_right", "head" })
                    Posed.Same(posed.Carried("chest", posed.RestOf(joint)), posed.At(joint), $"{seed}: {joint} stays on the body");
            }
        }
    }

    [Fact]
    public void A_limb_lengthens_where_its_switch_lets_it_and_no_further_than_it_may()
    {
        var posed = Pose(1, new(Leg: new LimbOptions { Goal = "foot", Stretches = true, MostStretch = 1.2f }));
        foreach (var (fall, stretches, reaches) in new[] { (-0.1f, 0, false), (-0.1f, 1, true), (-0.4f, 1, false) })
        {
            posed.Switch("stretch", stretches);
            posed.Both("foot", "ankle", new(0, fall, 0), Quaternion.Identity);
            posed.Evaluated().AssertMirrored();
            var rest = Vector3.Distance(posed.RestOf("hip_left"), posed.RestOf("knee_left")) + Vector3.Distance(posed.RestOf("knee_left"), posed.RestOf("ankle_left"));
            var length = Vector3.Distance(posed.At("hip_left"), posed.At("knee_left")) + Vector3.Distance(posed.At("knee_left"), posed.At("ankle_left"));
            if (reaches)
                Posed.Same(posed.RestOf("ankle_left") + new Vector3(0, fall, 0), posed.At("ankle_left"), "ankle");
            else
                Assert.Equal(rest * (stretches == 1 ? 1.2f : 1), length, 1e-4f);
        }
    }

    [Fact]
    public void A_foot_rolls_about_its_heel_then_its_ball_then_the_tip_of_its_toes()
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            posed.Move("body", "pelvis", new(0, -0.15f, 0));
            posed.Both("foot", "ankle", new(0.05f, 0, 0.1f), Spin(0, 0.4f, 0));
            Vector3 Rolled(float roll, string point)
            {
                posed.Dial("roll", roll);
                posed.Evaluated().AssertMirrored();
                return posed.At(point);
            }

            foreach (var side in new[] { "left", "right" })
            {
                Stays(-40, $"heel_{side}");
                Stays(20, $"toes_{side}");
                Stays(20, $"toe_tip_{side}");
                Stays(80, $"toe_tip_{side}");
                Assert.True(Rolled(-40, $"toe_tip_{side}").Y > Rolled(0, $"toe_tip_{side}").Y + 0.05f, $"{seed}: the toes of the {side} foot go up over the heel");
                Assert.True(Rolled(30, $"heel_{side}").Y > Rolled(0, $"heel_{side}").Y + 0.05f, $"{seed}: the heel of the {side} foot goes up over the ball");
                Assert.True(Rolled(80, $"toes_{side}").Y > Rolled(0, $"toes_{side}").Y + 0.02f, $"{seed}: the ball of the {side} foot goes up over the tip");
            }

            void Stays(float roll, string point) => Posed.Same(Rolled(0, point), Rolled(roll, point), $"{seed}: {point} at {roll}");
        }
    }

    [Fact]
    public void Toes_go_with_the_foot_in_FK_and_turn_by_their_own_control_in_both()
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            posed.Switch("fk", 1);
            posed.Dial("roll", 30);
            posed.Both("turn_ankle", "ankle", Vector3.Zero, Spin(0.5f, 0, 0));
            posed.Evaluated().AssertMirrored();
            Posed.Same(Spin(0.5f, 0, 0), posed.TurnOf("toes_left"), $"{seed}: toes in FK");
            Posed.Same(posed.Carried("ankle_left", posed.RestOf("toes_left")), posed.At("toes_left"), $"{seed}: toes in FK");

            posed.Both("turn_toes", "toes", Vector3.Zero, Spin(-0.3f, 0, 0));
            posed.Evaluated();
            Posed.Same(Spin(0.5f, 0, 0) * Spin(-0.3f, 0, 0), posed.TurnOf("toes_left"), $"{seed}: toes turned in FK");
            posed.Switch("fk", 0);
            posed.Dial("roll", 0);
            posed.Evaluated().AssertMirrored();
            Posed.Same(Spin(-0.3f, 0, 0), posed.TurnOf("toes_left"), $"{seed}: toes turned in IK");
        }
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(false, true)]
    [InlineData(true, false)]
    [InlineData(true, true)]
    public void Fingers_close_towards_the_palm_and_open_apart_on_both_sides(bool behaves, bool said)
    {
        var posed = Pose(3, said ? new(Fingers: new FingersOptions { AllAxesMirror = behaves }) : null, behaves);
        posed.Dial("curl", 0.5f);
        posed.Evaluated().AssertMirrored();
        Posed.Same(Spin(0, 0, -MathF.PI * 80 / 360), posed.TurnOf("index_1_left"), "the first joint of the index curls down by half of 80 degrees");
        Posed.Same(Spin(0, 0, -MathF.PI * 160 / 360), posed.TurnOf("index_2_left"), "the second on top of it");
        Posed.Same(Spin(0, 0, -MathF.PI * 40 / 360), posed.TurnOf("thumb_1_left"), "the thumb curls by half of 40 degrees");
        Assert.True(posed.At("index_3_right").Y < posed.RestOf("index_3_right").Y - 0.03f, "the right hand closes");

        posed.Dial("curl", 0);
        posed.Dial("spread", 1);
        posed.Evaluated();
        foreach (var side in new[] { "left", "right" })
        {
            Assert.True(posed.At($"index_3_{side}").Z > posed.RestOf($"index_3_{side}").Z + 0.01f, $"the index of the {side} hand opens forwards");
            Assert.True(posed.At($"little_3_{side}").Z < posed.RestOf($"little_3_{side}").Z - 0.01f, $"the little finger of the {side} hand opens backwards");
            Posed.Same(posed.RestOf($"middle_3_{side}"), posed.At($"middle_3_{side}"), "the middle one stays");
            Posed.Same(posed.RestOf($"thumb_3_{side}"), posed.At($"thumb_3_{side}"), "the thumb stays");
        }

        posed.AssertMirrored();
    }

    [Fact]
    public void A_spine_bends_joint_by_joint_over_hips_that_sway_below_it()
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            posed.Turn("hips", "waist", Spin(0, 0, 0.3f));
            posed.Evaluated();
            Posed.Same(Spin(0, 0, 0.3f), posed.TurnOf("pelvis"), $"{seed}: pelvis");
            Posed.Same(posed.RestOf("waist"), posed.At("waist"), $"{seed}: the waist stays while the hips sway");
            Posed.Same(posed.RestOf("chest"), posed.At("chest"), $"{seed}: the chest stays while the hips sway");
            Posed.Same(Quaternion.Identity, posed.TurnOf("chest"), $"{seed}: chest");

            posed.Turn("turn_waist", "waist", Spin(0.3f, 0, 0));
            posed.Turn("turn_chest", "chest", Spin(0.2f, 0, 0));
            posed.Move("body", "pelvis", new(0, -0.1f, 0.2f));
            posed.Evaluated();
            Posed.Same(Spin(0.5f, 0, 0), posed.TurnOf("chest"), $"{seed}: chest bent");
            Posed.Same(posed.RestOf("waist") + new Vector3(0, -0.1f, 0.2f), posed.At("waist"), $"{seed}: waist moved");
            Assert.True(posed.At("head").Z > posed.RestOf("head").Z + 0.25f, $"{seed}: the head goes forwards");
        }
    }

    [Fact]
    public void A_spine_that_curves_reaches_its_top_and_lengthens_by_its_switch()
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed, Curving);
            posed.Switch("stretch", 1);
            posed.Move("spine_top", "chest", new(0.03f, 0.05f, 0.1f));
            posed.Turn("spine_top", "chest", Spin(0.3f, 0.2f, 0));
            posed.Evaluated();
            Posed.Same(posed.RestOf("chest") + new Vector3(0.03f, 0.05f, 0.1f), posed.At("chest"), $"{seed}: chest");
            Posed.Same(Spin(0.3f, 0.2f, 0), posed.TurnOf("chest"), $"{seed}: chest");
            Posed.Same(posed.RestOf("pelvis"), posed.At("pelvis"), $"{seed}: pelvis");

            posed.Turn("hips", "pelvis", Spin(0, 0.4f, 0));
            posed.Evaluated();
            Posed.Same(posed.RestOf("pelvis"), posed.At("pelvis"), $"{seed}: pelvis turned");
            Posed.Same(Spin(0, 0.4f, 0), posed.TurnOf("pelvis"), $"{seed}: pelvis turned");
        }
    }

    [Fact]
    public void A_head_looks_at_its_target_as_far_as_its_switch_says()
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            posed.Move("look", null, new(0.5f, 0.3f, -0.2f));
            posed.Turn("turn_head", "head", Spin(0, -0.6f, 0));
            posed.Evaluated();
            Posed.Same(Spin(0, -0.6f, 0), posed.TurnOf("head"), $"{seed}: head turned");

            posed.Switch("aim", 1);
            posed.Turn("turn_chest", "chest", Spin(0.1f, 0.2f, 0));
            posed.Evaluated();
            LooksAt(posed, "head", posed.RestOf("head") + new Vector3(0.5f, 0.3f, 0.8f), $"{seed}: head");
            Assert.True(Vector3.Transform(Vector3.UnitY, posed.TurnOf("head")).Y > 0.8f, $"{seed}: the head stays upright");
        }
    }

    [Fact]
    public void Eyes_look_at_their_controls_wherever_the_head_turns()
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed);
            if (isWhole)
                posed.Ride("eyes", "world");
            posed.Turn("turn_head", "head", Spin(0.2f, 0.4f, 0.1f));
            posed.Move("eyes", null, new(0.2f, 0.1f, 0));
            posed.Move("look_eye_left", null, new(0, 0.05f, 0));
            posed.Evaluated();
            LooksAt(posed, "eye_left", posed.RestOf("eye_left") + new Vector3(0.2f, 0.15f, 1), $"{seed}: left eye");
            LooksAt(posed, "eye_right", posed.RestOf("eye_right") + new Vector3(0.2f, 0.1f, 1), $"{seed}: right eye");
            Posed.Same(posed.Carried("head", posed.RestOf("eye_left")), posed.At("eye_left"), $"{seed}: left eye");
        }
    }

    [Fact]
    public void A_tail_shares_its_bend_and_wings_do_the_same_on_both_sides()
    {
        for (var seed = 0; seed < seeds; seed++)
        {
            var posed = Pose(seed, new(Tail: new TailOptions { FirstShare = 0.5f, LastShare = 1.5f }));
            posed.Turn("tail_bend", "tail_1", Spin(0, 0.9f, 0));
            posed.Both("wing_bend", "wing_1", Vector3.Zero, Spin(0, 0, 0.6f));
            posed.Both("turn_wing_2", "wing_2", Vector3.Zero, Spin(0, 0.2f, 0));
            posed.Evaluated().AssertMirrored();
            Posed.Same(Spin(0, 0.15f, 0), posed.TurnOf("tail_1"), $"{seed}: tail_1");
            Posed.Same(Spin(0, 0.45f, 0), posed.TurnOf("tail_2"), $"{seed}: tail_2");
            Posed.Same(Spin(0, 0.9f, 0), posed.TurnOf("tail_3"), $"{seed}: tail_3");
            Assert.True(posed.At("wing_3_left").Y > posed.RestOf("wing_3_left").Y + 0.05f, $"{seed}: the wing goes up");
        }
    }

    private Posed Pose(int seed, BipedRecipes? recipes = null, bool behaves = false) => new(seed, (recipes ?? new()) with { IsWhole = isWhole }, behaves);

    private static void LooksAt(Posed posed, string joint, Vector3 target, string what) =>
        Assert.True(Vector3.Distance(Vector3.Normalize(target - posed.At(joint)), Vector3.Transform(Vector3.UnitZ, posed.TurnOf(joint))) < 1e-4f, what);

    private static Quaternion Between(Vector3 from, Vector3 to)
    {
        var axis = Vector3.Normalize(Vector3.Cross(from, to));
        return Quaternion.CreateFromAxisAngle(axis, MathF.Acos(Vector3.Dot(Vector3.Normalize(from), Vector3.Normalize(to))));
    }

    private static Quaternion Spin(float x, float y, float z) =>
        Quaternion.CreateFromAxisAngle(Vector3.UnitX, x) * Quaternion.CreateFromAxisAngle(Vector3.UnitY, y) * Quaternion.CreateFromAxisAngle(Vector3.UnitZ, z);
}
