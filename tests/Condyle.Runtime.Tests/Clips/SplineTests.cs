using System.Numerics;
using Condyle.Runtime.Tests.Baking;
using CsCheck;

namespace Condyle.Runtime.Tests.Clips;

/// <summary>
/// Cubic splines as the specification of glTF 2.0 has them, appendix C.5: v(t) = (2t³ − 3t² + 1)·v(k) + d·(t³ − 2t² + t)·b(k) + (−2t³ + 3t²)·v(k+1) + d·(t³ − t²)·a(k+1), where d is the time between
/// the keys, a the slope into a key and b the one out of it; rotations are normalised afterwards.
/// </summary>
public sealed class SplineTests
{
    private static readonly CompiledRig Rig = CargoArm.Compiled();

    private static readonly Gen<float> Number = Gen.Float[-2, 2];

    [Fact]
    public void A_spline_with_slopes_is_the_specifications_formula() => Gen.Select(Number, Number, Number, Number, Gen.Float[0.1f, 3], Gen.Float[0, 1]).Sample((from, outOf, to, into, seconds, t) =>
    {
        var track = new Clip("c", 4).Dial("d", (0.5f, from), (0.5f + seconds, to)).DialSlope("d", 0.5f, outOf, KeySide.After).DialSlope("d", 0.5f + seconds, into, KeySide.Before).Dials["d"];
        Assert.Equal(Formula(from, outOf, to, into, seconds, t), track.At((float)(0.5 + ((double)t * seconds))), 2e-5);
    });

    [Fact]
    public void Without_slopes_said_it_goes_from_the_neighbour_to_the_neighbour_and_begins_and_ends_at_rest()
    {
        var track = new Clip("c", 3).Splined("world").Move("world", 0, x: 1).Move("world", 1, x: 2).Move("world", 3, x: 7).Moves["world"];
        Assert.Equal(Formula(1, 0, 2, 2, 1, 0.3), track.At(0.3f).X, 1e-5);
        Assert.Equal(Formula(2, 2, 7, 0, 2, 0.5), track.At(2).X, 1e-5);
    }

    [Fact]
    public void A_key_that_comes_later_between_others_takes_its_place_among_the_slopes()
    {
        var track = new Clip("c", 2).Dial("d", (0, 0), (2, 2)).DialSlope("d", 2, 5).Dial("d", 1, 3).Dials["d"];
        Assert.Equal(Formula(3, 1, 2, 5, 1, 0.25), track.At(1.25f), 1e-5);
        Assert.Equal(Formula(0, 0, 3, 1, 1, 0.5), track.At(0.5f), 1e-5);
    }

    [Fact]
    public void A_turns_slope_is_its_speed_about_the_controls_own_axes()
    {
        var speed = new Vector3(30, -50, 20);
        var track = new Clip("c", 2).Turn("waist", 0, 10, 60, -30).Turn("waist", 2, 40, 20, 0).TurnSlope("waist", 0, speed.X, speed.Y, speed.Z).Turned["waist"];
        const float Moment = 1e-3f;
        var step = Quaternion.Inverse(track.At(0)) * track.At(Moment);
        var degrees = new Vector3(step.X, step.Y, step.Z) * (360 / MathF.PI / Moment);
        Assert.True(Vector3.Distance(speed, degrees) < 0.3f, $"{degrees}");
        Assert.Equal(1, track.At(0.7f).Length(), 1e-6);
    }

    [Fact]
    public void A_splined_turn_takes_the_short_way_whatever_the_signs_and_the_order_of_its_keys()
    {
        static Quaternion About(float degrees, int sign) => Turns.About(Axis.Z, degrees) * sign;
        var plain = new Clip("c", 3).Splined("waist").Turn("waist", 0, About(0, 1)).Turn("waist", 1, About(50, 1)).Turn("waist", 2, About(110, 1)).Turn("waist", 3, About(120, 1)).Turned["waist"];
        var mixed = new Clip("c", 3).Splined("waist").Turn("waist", 3, About(120, -1)).Turn("waist", 1, About(50, -1)).Turn("waist", 0, About(0, 1)).Turn("waist", 2, About(110, 1)).Turned["waist"];
        for (var time = 0f; time <= 3; time += 0.1f)
            Assert.Equal(1, MathF.Abs(Quaternion.Dot(plain.At(time), mixed.At(time))), 1e-5);
    }

    [Fact]
    public void A_switch_that_a_spline_takes_beyond_its_ends_stays_at_them()
    {
        var clip = new Clip("c", 1).Switch("hand_left.fk", (0, 0), (1, 1)).SwitchSlope("hand_left.fk", 0, -4);
        Assert.True(clip.Switches["hand_left.fk"].At(0.2f) < -0.1f);
        var (played, set) = (Rig.NewInstance(), Rig.NewInstance());
        new ClipPlayer(Rig, clip).Pose(played, 0.2f);
        played.Evaluate();
        foreach (var joint in Rig.Joints)
            Assert.Equal(set.JointWorld(joint.Index), played.JointWorld(joint.Index));
    }

    public static TheoryData<string, Func<Clip>> Mistakes => new()
    {
        { "clip 'c': 'waist' at 1 s has a slope but no key. Add the key first.", () => new Clip("c", 2).Move("waist", 0).MoveSlope("waist", 1) },
        { "clip 'c': 'waist' at 0 s has a slope that is no finite number. Give a finite number.", () => new Clip("c", 2).Turn("waist", 0).TurnSlope("waist", 0, y: float.NaN) },
        { "clip 'c': 'turn_elbow_left' at 0 s changes its move Y, which the rig locks. Unlock the channel in the rig, or drop the key.", () => new Clip("c", 2).Move("turn_elbow_left", 0).MoveSlope("turn_elbow_left", 0, y: 1) },
        { "clip 'c': 'waist' is splined but has no key. Key it, or don't say that it is splined.", () => new Clip("c", 2).Move("world", 0).Splined("waist") },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_clip_control_and_time(string message, Func<Clip> clip) =>
        Assert.Equal(message, Assert.Throws<BadInputException>(() => new ClipPlayer(Rig, clip())).Message);

    internal static double Formula(double from, double outOf, double to, double into, double seconds, double t) =>
        (((2 * t * t * t) - (3 * t * t) + 1) * from)
        + (seconds * ((t * t * t) - (2 * t * t) + t) * outOf)
        + (((-2 * t * t * t) + (3 * t * t)) * to)
        + (seconds * ((t * t * t) - (t * t)) * into);
}
