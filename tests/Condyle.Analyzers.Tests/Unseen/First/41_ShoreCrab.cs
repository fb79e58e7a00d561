using System;
using System.Numerics;
using System.Runtime.CompilerServices;
using Condyle;

namespace Unseen.First.R41;

/// <summary>Shore crab, ten limbs. Topology is packed into words; nothing is allocated but the names.</summary>
public sealed class ShoreCrab : IRigDefinition
{
    // 5 limb pairs × 3 bits: number of joints below the coxa (2..3), lowest pair in the lowest bits.
    private const uint JointCounts = 2u | (2u << 3) | (2u << 6) | (2u << 9) | (3u << 12);

    // Bit i: limb pair i has an IK copy.
    private const byte Reaching = 0b1_1111;

    // Bit i: limb pair i may also be turned joint by joint.
    private const byte Turning = 0b1_0010;

    private static ReadOnlySpan<sbyte> AnchorZ => [-30, -12, 6, 22, 34];             // millimetres

    private static ReadOnlySpan<byte> BoneLengths => [44, 40, 52, 46, 54, 48, 50, 44, 36, 30, 22];

    private static ReadOnlySpan<byte> LimbTags => "hindmidsforewalkclaw"u8;          // four bytes each

    public void Define(RigDraft rig)
    {
        var carapace = rig.Skeleton("shore_crab").Root("carapace", at: new Vector3(0, 0.045f, 0));
        var scuttle = rig.Control("scuttle").PlacedAt(carapace);
        rig.Drive(carapace).ByChannels(scuttle);
        var holder = rig.Group("limbs_group").PlacedAt(scuttle);
        rig.Drive(holder).ByMatrix(scuttle);

        Span<Joint> joints = new Joint[4];
        var offset = 0;
        for (var pair = 0; pair < 5; pair++)
        {
            var below = (int)(JointCounts >> (3 * pair)) & 7;
            var lengths = BoneLengths.Slice(offset, below);
            for (var bits = 0b11; bits != 0; bits &= bits - 1)
            {
                var right = BitOperations.TrailingZeroCount(bits);
                var used = Declare(carapace, pair, right, lengths, joints);
                Rig(rig, scuttle, holder, pair, right, used);
            }

            offset += below;
        }

        Eyes(rig, carapace, scuttle);
    }

    private static ReadOnlySpan<Joint> Declare(Joint carapace, int pair, int right, ReadOnlySpan<byte> lengths, Span<Joint> joints)
    {
        float sign = 1 - (right << 1);
        joints[0] = carapace.Child(Name(pair, 0, right), at: new Vector3(sign * 0.032f, -0.004f, AnchorZ[pair] * 1e-3f));
        ref var previous = ref joints[0];
        for (var i = 0; i < lengths.Length; i++)
        {
            // Up and out, then down and out.
            var rise = ((i & 1) == 0 ? 1 : -1) * 0.5f;
            var way = new Vector3(sign, rise, (pair - 2) * 0.12f);
            joints[i + 1] = previous.Child(Name(pair, i + 1, right), at: way * (lengths[i] * 1e-3f * FastInverseLength(way)));
            previous = ref joints[i + 1];
        }

        return joints[..(lengths.Length + 1)];
    }

    private static void Rig(RigDraft rig, Control scuttle, Group holder, int pair, int right, ReadOnlySpan<Joint> joints)
    {
        var chain = rig.Chain(joints[0], joints[2]);
        var mask = 1 << pair;
        var ik = chain.Copy("ik").Under(holder);
        var goal = rig.Control(string.Concat("step_", joints[2].Name)).PlacedAt(joints[2]);
        if ((Reaching & mask) != 0)
            rig.TwoBone(ik).Reach(goal).Face(rig.Control(string.Concat("knee_", joints[1].Name)).Under(scuttle).PlacedAt(ik.PolePoint(0.06f)));

        if ((Turning & mask) == 0)
        {
            foreach (ref readonly var joint in joints[..3])
                rig.Drive(joint).ByChannels(ik.Of(joint));
        }
        else
        {
            var fk = chain.Copy("fk").Under(holder);
            Node above = scuttle;
            foreach (ref readonly var joint in joints[..3])
            {
                var control = rig.Control(string.Concat("turn_", joint.Name)).Under(above).PlacedAt(joint).Lock(Channels.Move);
                rig.Drive(fk.Of(joint)).ByChannels(control);
                above = control;
            }

            var amount = goal.Switch("fk");
            rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount);
        }

        if (joints.Length > 3)
        {
            var pincer = rig.Control(string.Concat("pinch_", joints[^1].Name)).Under(goal).PlacedAt(joints[^1]).Lock(Channels.Move)
                .LimitTurn(Axis.Z, right == 0 ? 0 : -40, right == 0 ? 40 : 0);
            rig.Drive(joints[^1]).ByChannels(pincer);
        }
    }

    private static void Eyes(RigDraft rig, Joint carapace, Control scuttle)
    {
        for (var x = -1; x <= 1; x += 2)
        {
            var stalk = carapace.Child(x > 0 ? "stalk_left" : "stalk_right", at: new Vector3(0.012f * x, 0.012f, 0.034f));
            var eye = stalk.Child(x > 0 ? "eye_left" : "eye_right", at: new Vector3(0.002f * x, 0.008f, 0.001f));
            rig.Drive(stalk).ByChannels(rig.Control(x > 0 ? "fold_left" : "fold_right").Under(scuttle).PlacedAt(stalk).LimitTurn(Axis.X, -90, 0));
            rig.Drive(eye).ByMatrix(stalk).KeepingOffset().Accept("CDY3001", because: "the shader turns the eye, the joint only marks it");
        }
    }

    // tag_n_left: always 11 or 12 characters, written once.
    private static string Name(int pair, int number, int right) => string.Create(right == 0 ? 11 : 12, (pair, number, right), static (text, state) =>
    {
        var tag = LimbTags.Slice(state.pair << 2, 4);
        for (var i = 0; i < tag.Length; i++)
            text[i] = (char)tag[i];
        text[4] = '_';
        text[5] = (char)('0' | state.number);
        text[6] = '_';
        (state.right == 0 ? "left" : "right").CopyTo(text[7..]);
    });

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static float FastInverseLength(Vector3 v)
    {
        var squared = Vector3.Dot(v, v);
        var y = BitConverter.Int32BitsToSingle(0x5F3759DF - (BitConverter.SingleToInt32Bits(squared) >> 1));
        y *= 1.5f - (0.5f * squared * y * y);
        return y * (1.5f - (0.5f * squared * y * y));
    }
}
