using System;
using System.Numerics;
using System.Runtime.CompilerServices;
using Condyle;

namespace Unseen.Third.R49;

[Flags]
public enum PartBits : uint
{
    None = 0,

    // low byte: what it is
    Frame = 1u << 0,
    Wheel = 1u << 1,
    Hoist = 1u << 2,
    Cabin = 1u << 3,
    Lamp = 1u << 4,

    // second byte: where it is
    Left = 1u << 8,
    Right = 1u << 9,
    Fore = 1u << 10,
    Aft = 1u << 11,
    High = 1u << 12,

    // third byte: what it may do
    Rolls = 1u << 16,
    Steers = 1u << 17,
    Lifts = 1u << 18,
    Slides = 1u << 19,
    Tilts = 1u << 20,

    Kinds = 0x0000_00FF,
    Places = 0x0000_FF00,
    Motions = 0x00FF_0000,
    Corner = Left | Right | Fore | Aft,
}

public sealed class StraddleCarrier : IRigDefinition
{
    private const uint FourCorners = 0b1111;

    private static ReadOnlySpan<Channels> MotionChannels =>
    [
        Channels.TurnX,
        Channels.TurnY,
        Channels.MoveY,
        Channels.MoveX | Channels.MoveZ,
        Channels.TurnX | Channels.TurnZ,
    ];

    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("straddle_carrier").Root("carrier_root", JointRole.Helper);
        var world = rig.Control("world");
        rig.Drive(root).ByChannels(world);

        var frame = Add(rig, root, world, PartBits.Frame | PartBits.High | PartBits.Tilts, 0);
        var cabin = Add(rig, frame.Joint, frame.Control, PartBits.Cabin | PartBits.Fore | PartBits.High | PartBits.Slides, 0);
        Add(rig, cabin.Joint, cabin.Control, PartBits.Lamp | PartBits.High, 0);

        // Eight wheels: two bits of corner and one bit of axle make the number.
        for (var bits = 0u; bits < 8u; bits++)
        {
            var place = ((bits & 1u) == 0 ? PartBits.Left : PartBits.Right) | ((bits & 2u) == 0 ? PartBits.Fore : PartBits.Aft);
            var motion = PartBits.Steers | ((bits & 4u) == 0 ? PartBits.Rolls : PartBits.None);
            var axle = Add(rig, root, world, PartBits.Wheel | place | motion, (int)(bits >> 2));
            if (!Any(axle.Bits, PartBits.Rolls))
                axle.Control.LimitTurn(Axis.Y, -50f, 50f);
        }

        var spreader = Add(rig, frame.Joint, frame.Control, PartBits.Hoist | PartBits.Lifts | PartBits.Slides, 0);
        for (var left = FourCorners; left != 0; left &= left - 1)
        {
            var corner = BitOperations.TrailingZeroCount(left);
            var place = ((corner & 1) == 0 ? PartBits.Left : PartBits.Right) | (corner < 2 ? PartBits.Fore : PartBits.Aft);
            var wire = Add(rig, frame.Joint, frame.Control, PartBits.Hoist | PartBits.High | place, 1);
            var end = wire.Joint.Child($"{Name(place)}_wire_end", at: new(0f, -3f, 0f));
            var hanging = rig.Group($"{Name(place)}_wire_group").Under(spreader.Control).PlacedAt(end);
            rig.Drive(end).ByChannels(hanging);
            var slack = frame.Control.Switch($"slack_{corner}");
            var twist = end.Child($"{Name(place)}_lock", at: new(0f, -0.2f, 0f));
            rig.Blend(twist).From(hanging, slack.Inverse).From(wire.Control, (corner & 1) == 0 ? slack : slack.Inverse);
        }
    }

    private static (Joint Joint, Control Control, PartBits Bits) Add(RigDraft rig, Joint above, Control parent, PartBits bits, int number)
    {
        var name = $"{Name(bits)}_{number}";
        var joint = above.Child(name, at: At(bits, number));
        var control = rig.Control($"c_{name}").Under(parent).PlacedAt(joint).Lock(Locked(bits));
        rig.Drive(joint).ByChannels(control);
        return (joint, control, bits);
    }

    private static Channels Locked(PartBits bits)
    {
        var free = Channels.None;
        var motions = (uint)(bits & PartBits.Motions) >> 16;
        while (motions != 0)
        {
            var lowest = BitOperations.TrailingZeroCount(motions);
            free |= MotionChannels[lowest];
            motions ^= 1u << lowest;
        }

        return Channels.All ^ free;
    }

    private static Vector3 At(PartBits bits, int number)
    {
        var x = Sign(bits, PartBits.Left, PartBits.Right) * 2.4f;
        var z = Sign(bits, PartBits.Fore, PartBits.Aft) * (Any(bits, PartBits.Wheel) ? 3f + number : 3.5f);
        var y = Any(bits, PartBits.High) ? 5f : Any(bits, PartBits.Wheel) ? 0.8f : -2f;
        return new(x, y, z);
    }

    private static int Sign(PartBits bits, PartBits plus, PartBits minus) => (Any(bits, plus) ? 1 : 0) - (Any(bits, minus) ? 1 : 0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static bool Any(PartBits bits, PartBits mask) => (bits & mask) != 0;

    private static string Name(PartBits bits)
    {
        var kind = bits & PartBits.Kinds;
        var name = kind == 0 ? "" : kind.ToString().ToLowerInvariant();
        for (var bit = 1u << 8; bit < 1u << 13; bit <<= 1)
        {
            if (Any(bits, (PartBits)bit))
                name += (name.Length == 0 ? "" : "_") + ((PartBits)bit).ToString().ToLowerInvariant();
        }

        return name;
    }
}
