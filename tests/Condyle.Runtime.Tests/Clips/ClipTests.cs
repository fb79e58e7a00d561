using System.Numerics;
using Condyle.Runtime.Tests.Baking;

namespace Condyle.Runtime.Tests.Clips;

/// <summary>Clips are read as the glTF 2.0 specification says (appendix C, "Animation sampler interpolation modes"), and say what is wrong with them.</summary>
public sealed class ClipTests
{
    private static readonly CompiledRig Rig = CargoArm.Compiled();

    [Fact]
    public void Moves_go_in_a_line_between_keys_and_hold_outside_them()
    {
        var track = new Clip("c", 4).Move("waist", at: 1, x: 2).Move("waist", at: 3, x: 4, y: 1).Moves["waist"];
        Assert.Equal(new Vector3(2, 0, 0), track.At(0));
        Assert.Equal(new Vector3(2.5f, 0.25f, 0), track.At(1.5f));
        Assert.Equal(new Vector3(4, 1, 0), track.At(3));
        Assert.Equal(new Vector3(4, 1, 0), track.At(4));
    }

    [Fact]
    public void Keys_may_be_said_in_any_order()
    {
        var track = new Clip("c", 4).Switch("s", at: 3, value: 1).Switch("s", at: 1, value: 0).Switches["s"];
        Assert.Equal(0.25f, track.At(1.5f), 1e-6);
    }

    [Fact]
    public void Turns_go_by_slerp()
    {
        var track = new Clip("c", 2).TurnAbout("waist", Axis.Z, (0, 0), (2, 120)).Turned["waist"];
        AssertTurn(Vector3.UnitZ, 30, track.At(0.5f));
    }

    [Fact]
    public void Turns_take_the_short_way_when_keys_have_opposite_signs()
    {
        var track = new Clip("c", 2).Turn("waist", at: 0).Turn("waist", at: 2, -Turns.About(Axis.X, 80)).Turned["waist"];
        AssertTurn(Vector3.UnitX, 20, track.At(0.5f));
    }

    [Fact]
    public void Stepped_tracks_hold_each_key_until_the_next()
    {
        var track = new Clip("c", 4).Stepped("s").Switch("s", (0, 0), (2, 1)).Switches["s"];
        Assert.Equal(0, track.At(1.99f));
        Assert.Equal(1, track.At(2));
    }

    /// <summary>Each order is built from three turns about the axes as the earlier turns left them.</summary>
    [Theory]
    [InlineData(TurnOrder.XYZ, "XYZ")]
    [InlineData(TurnOrder.XZY, "XZY")]
    [InlineData(TurnOrder.YXZ, "YXZ")]
    [InlineData(TurnOrder.YZX, "YZX")]
    [InlineData(TurnOrder.ZXY, "ZXY")]
    [InlineData(TurnOrder.ZYX, "ZYX")]
    public void Angles_turn_about_the_axes_as_the_earlier_turns_left_them(TurnOrder order, string axes)
    {
        var degrees = new Dictionary<char, float> { ['X'] = 20, ['Y'] = -50, ['Z'] = 75 };
        var expected = Quaternion.Identity;
        foreach (var name in axes)
        {
            var own = name switch { 'X' => Vector3.UnitX, 'Y' => Vector3.UnitY, _ => Vector3.UnitZ };
            expected = Quaternion.CreateFromAxisAngle(Vector3.Transform(own, expected), degrees[name] * MathF.PI / 180) * expected;
        }

        var actual = new Clip("c", 1).Turn("waist", at: 0, x: 20, y: -50, z: 75, order).Turned["waist"].At(0);
        Assert.True(MathF.Abs(Quaternion.Dot(expected, actual)) > 1 - 1e-6f, $"{actual} is not {expected}");
    }

    [Fact]
    public void A_player_sets_what_the_clip_keys_and_leaves_the_rest()
    {
        var (played, set) = (Rig.NewInstance(), Rig.NewInstance());
        foreach (var instance in new[] { played, set })
            instance.SetMove(Rig.ControlIndex("world"), new Vector3(0, 0, 1));
        new ClipPlayer(Rig, new Clip("c", 2)
            .MoveAlong("hand_left", Axis.Y, (0, 0), (2, 0.4f))
            .TurnAbout("waist", Axis.Y, (0, 20))
            .Scale("world", at: 0, x: 1.1f)
            .Switch("arm_root.fk", at: 0, value: 0.5f)).Pose(played, 1);
        set.SetMove(Rig.ControlIndex("hand_left"), new Vector3(0, 0.2f, 0));
        set.SetTurn(Rig.ControlIndex("waist"), Turns.About(Axis.Y, 20));
        set.SetScale(Rig.ControlIndex("world"), new Vector3(1.1f, 1, 1));
        set.SetSwitch(Rig.SwitchIndex("hand_left.fk"), 0.5f);
        played.Evaluate();
        set.Evaluate();
        foreach (var joint in Rig.Joints)
            Assert.Equal(set.JointWorld(joint.Index), played.JointWorld(joint.Index));
    }

    [Fact]
    public void Posing_allocates_nothing()
    {
        var (instance, player) = (Rig.NewInstance(), new ClipPlayer(Rig, CargoArm.Lift()));
        player.Pose(instance, 0.5f);
        var before = GC.GetAllocatedBytesForCurrentThread();
        for (var frame = 0; frame < 100; frame++)
            player.Pose(instance, frame / 50f);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
    }

    public static TheoryData<string, string> Mistakes => new()
    {
        { "nan", "clip 'c': 'waist' at 1 s has a key that is no finite number. Give a finite number." },
        { "late", "clip 'c': 'waist' at 2.5 s lies outside the clip, which lasts from 0 to 2 s. Move the key, or make the clip longer." },
        { "twice", "clip 'c': 'waist' at 1 s has two keys at the same time. Keep one of them." },
        { "zero", "clip 'c': 'waist' at 1 s turns by a quaternion of length zero. Give a quaternion that has a direction." },
        { "switch", "clip 'c': 'hand_left.fk' at 1 s is set to 1.5. A switch goes from 0 to 1." },
        { "unknown", "clip 'c': 'wiast' at 1 s is no control of the rig 'CargoArm'. The nearest: 'waist', 'world', 'arm_root'." },
        { "unknown switch", "clip 'c': 'hand_left.ik' at 1 s is no switch of the rig 'CargoArm'. The nearest: 'hand_left.fk', 'arm_root.fk'." },
        { "locked", "clip 'c': 'turn_elbow_left' at 1 s changes its move Y, which the rig locks. Unlock the channel in the rig, or drop the key." },
        { "several locked", "clip 'c': 'turn_elbow_left' at 1 s changes its move Y, which the rig locks, as it does move Z of 'turn_elbow_left', turn X and turn Z of 'elbow_pole_left'. Unlock the channels in the rig, or drop the keys." },
        { "both names", "clip 'c': 'hand_left.fk' at 1 s is the same switch as 'arm_root.fk', and both have keys. Key it by one of its names." },
        { "stepped", "clip 'c': 'waist' is stepped but has no key. Key it, or don't say that it is stepped." },
        { "empty", "clip 'c': has no keys. Key at least one control, switch, dial or choice." },
        { "length", "clip 'c': is -1 seconds long. Give a length above zero." },
        { "name", "a clip: has no name. Name the clip." },
    };

    [Theory]
    [MemberData(nameof(Mistakes))]
    public void A_mistake_is_told_with_clip_control_and_time(string mistake, string message) =>
        Assert.Equal(message, Assert.Throws<BadInputException>(() => new ClipPlayer(Rig, Wrong(mistake))).Message);

    private static Clip Wrong(string mistake)
    {
        var clip = new Clip(mistake == "name" ? " " : "c", mistake == "length" ? -1 : 2);
        return mistake switch
        {
            "nan" => clip.Turn("waist", at: 1, x: float.NaN),
            "late" => clip.Move("waist", at: 2.5f),
            "twice" => clip.Turn("waist", at: 1, x: 5).TurnAbout("waist", Axis.Y, (1, 10)),
            "zero" => clip.Turn("waist", at: 1, default(Quaternion)),
            "switch" => clip.Switch("hand_left.fk", at: 1, value: 1.5f),
            "unknown" => clip.Move("wiast", at: 1),
            "unknown switch" => clip.Switch("hand_left.ik", at: 1, value: 1),
            "locked" => clip.Move("turn_elbow_left", at: 0).Move("turn_elbow_left", at: 1, y: 0.1f),
            "several locked" => clip.Move("turn_elbow_left", at: 1, y: 0.1f, z: 0.2f).Turn("elbow_pole_left", at: 0.5f, x: 10, z: 5),
            "both names" => clip.Switch("hand_left.fk", at: 1, value: 1).Switch("arm_root.fk", at: 0, value: 1),
            "stepped" => clip.Move("world", at: 0).Stepped("waist"),
            _ => clip,
        };
    }

    private static void AssertTurn(Vector3 axis, float degrees, Quaternion actual)
    {
        var expected = Quaternion.CreateFromAxisAngle(axis, degrees * MathF.PI / 180);
        Assert.True(MathF.Abs(Quaternion.Dot(expected, actual)) > 1 - 1e-6f, $"{actual} is not {expected}");
    }
}
