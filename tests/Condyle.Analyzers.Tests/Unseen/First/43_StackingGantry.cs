using System;
using System.Collections.Generic;
using System.Numerics;
using System.Runtime.InteropServices;
using Condyle;

namespace Unseen.First.R43;

/// <summary>
/// Yard gantry with two trolleys, four corner bogies of two wheels each, and a telescopic spreader. Parts live in parallel arrays that are sorted by parent,
/// so declaring and rigging are two forward sweeps.
/// </summary>
public sealed class StackingGantry : IRigDefinition
{
    [Flags]
    private enum Traits : ushort
    {
        None = 0,
        SlideX = 1 << 0,
        SlideY = 1 << 1,
        SlideZ = 1 << 2,
        SpinX = 1 << 3,
        SpinY = 1 << 4,
        Mirror = 1 << 8,
        Helper = 1 << 9,
        Rope = 1 << 10,
    }

    // parent, traits, x, y, z (centimetres), name. A mirrored part is entered once for both sides.
    private static readonly (short Parent, Traits Traits, short X, short Y, short Z, string Name)[] Source =
    [
        (-1, Traits.SlideZ | Traits.Helper, 0, 0, 0, "gantry"),
        (0, Traits.None, 0, 2150, 0, "girder"),
        (1, Traits.SlideX, -420, -40, 0, "trolley_a"),
        (1, Traits.SlideX, 510, -40, 0, "trolley_b"),
        (2, Traits.SlideY | Traits.Rope, 0, -900, 0, "spreader_a"),
        (3, Traits.SlideY | Traits.Rope, 0, -1100, 0, "spreader_b"),
        (4, Traits.SlideX | Traits.Mirror, 300, 0, 0, "beam_a"),
        (5, Traits.SlideX | Traits.Mirror, 300, 0, 0, "beam_b"),
        (0, Traits.SpinY | Traits.Mirror, 1180, 90, 640, "bogie_front"),
        (0, Traits.SpinY | Traits.Mirror, 1180, 90, -640, "bogie_rear"),
        (8, Traits.SpinX | Traits.Mirror, 0, -40, 70, "wheel_front"),
        (9, Traits.SpinX | Traits.Mirror, 0, -40, -70, "wheel_rear"),
    ];

    public void Define(RigDraft rig)
    {
        Expand(out var parents, out var traits, out var places, out var names);
        var joints = new Joint[names.Count];
        var controls = GC.AllocateUninitializedArray<Control>(names.Count);

        var skeleton = rig.Skeleton("stacking_gantry");
        var parent = CollectionsMarshal.AsSpan(parents);
        var place = CollectionsMarshal.AsSpan(places);
        for (var i = 0; i < joints.Length; i++)
        {
            var role = (traits[i] & Traits.Helper) != 0 ? JointRole.Helper : JointRole.Deform;
            joints[i] = parent[i] < 0 ? skeleton.Root(names[i], role, at: place[i]) : joints[parent[i]].Child(names[i], role, at: place[i]);
        }

        var ropes = 0UL;
        for (var i = 0; i < joints.Length; i++)
        {
            var free = ToChannels(traits[i]);
            var control = rig.Control(free == Channels.None ? "hold_" + names[i] : "move_" + names[i]).PlacedAt(joints[i]);
            controls[i] = (parent[i] < 0 ? control : control.Under(controls[parent[i]])).Lock((Channels.Move | Channels.Turn) & ~free);
            ropes |= (traits[i] & Traits.Rope) != 0 ? 1UL << i : 0;
            if ((ropes >> i & 1) == 0)
                rig.Drive(joints[i]).ByChannels(controls[i]);
        }

        Ropes(rig, ropes, joints, controls, parent);
    }

    /// <summary>A spreader hangs from its trolley; it can also be carried by the other trolley's, for a lift in tandem.</summary>
    private static void Ropes(RigDraft rig, ulong mask, Joint[] joints, Control[] controls, ReadOnlySpan<int> parent)
    {
        if (BitOperations.PopCount(mask) != 2)
            throw new InvalidOperationException($"A lift in tandem takes two spreaders, not {BitOperations.PopCount(mask)}.");
        var first = BitOperations.TrailingZeroCount(mask);
        var second = BitOperations.Log2(mask);
        var tandem = controls[parent[first]].Switch("tandem").AlsoOn(controls[parent[second]]);

        rig.Drive(joints[first]).ByChannels(controls[first]);
        var carried = rig.Group(joints[second].Name + "_tandem_group").Under(controls[first]).PlacedAt(joints[second]);
        rig.Blend(joints[second]).From(carried, tandem).From(controls[second], tandem.Inverse);
        rig.Label("tandem_label", "TANDEM").Under(controls[0]).ShownBy(tandem);
    }

    private static void Expand(out List<int> parents, out List<Traits> traits, out List<Vector3> places, out List<string> names)
    {
        var capacity = Source.Length * 2;
        parents = new(capacity);
        traits = new(capacity);
        places = new(capacity);
        names = new(capacity);
        Span<(int Left, int Right)> map = stackalloc (int, int)[Source.Length];
        for (var s = 0; s < Source.Length; s++)
        {
            ref readonly var part = ref Source[s];
            var mirrored = (part.Traits & Traits.Mirror) != 0;
            var above = part.Parent < 0 ? (Left: -1, Right: -1) : map[part.Parent];
            var (left, right) = (names.Count, mirrored ? names.Count + 1 : names.Count);
            map[s] = (left, right);
            var at = new Vector3(part.X, part.Y, part.Z) * 0.01f;
            for (var i = left; i <= right; i++)
            {
                var onRight = i != left;
                parents.Add(onRight ? above.Right : above.Left);
                traits.Add(part.Traits & ~Traits.Mirror);
                places.Add(onRight ? at with { X = -at.X } : at);
                names.Add(mirrored ? $"{part.Name}_{(onRight ? Side.Right : Side.Left)}" : part.Name);
            }
        }
    }

    private static Channels ToChannels(Traits traits)
    {
        // The low five bits are the channels in the same order, so no branch is needed.
        const int moves = (int)(Traits.SlideX | Traits.SlideY | Traits.SlideZ);
        const int spins = (int)(Traits.SpinX | Traits.SpinY);
        return (Channels)((int)traits & (moves | spins));
    }
}
