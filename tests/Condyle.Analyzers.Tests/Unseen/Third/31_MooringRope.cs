using System;
using System.Globalization;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Condyle;

namespace Unseen.Third.R31;

/// <summary>Bow line, stern line and two springs. Names are formatted into one reused buffer; nothing here boxes.</summary>
public sealed class MooringRope : IRigDefinition
{
    private const int SegmentsPerRope = 16;
    private const int Ropes = 4;
    private const int ControlEvery = 5;

    public void Define(RigDraft rig)
    {
        Span<RopeSpec> specs = stackalloc RopeSpec[Ropes];
        specs[0] = new RopeSpec('b', 14f, 1.8f, new Vector3(0f, 2f, 18f));
        specs[1] = new RopeSpec('s', 12f, 1.5f, new Vector3(0f, 2f, -18f));
        specs[2] = new RopeSpec('f', 20f, 0.9f, new Vector3(0f, 1.5f, 6f));
        specs[3] = new RopeSpec('a', 20f, 0.9f, new Vector3(0f, 1.5f, -6f));

        var skeleton = rig.Skeleton("mooring_ropes");
        var quay = skeleton.Root("quay", JointRole.Helper);
        var world = rig.Control("world");
        rig.Drive(quay).ByChannels(world);

        var pool = new Joint[Ropes * SegmentsPerRope];
        var name = new NameBuffer(stackalloc char[32]);

        for (var r = 0; r < Ropes; r++)
        {
            ref readonly var spec = ref specs[r];
            var segment = pool.AsSpan(r * SegmentsPerRope, SegmentsPerRope);
            Declare(quay, in spec, segment, ref name);
        }

        for (var r = 0; r < Ropes; r++)
            Attach(rig, world, specs[r].Code, pool.AsSpan(r * SegmentsPerRope, SegmentsPerRope), ref name);
    }

    private static void Declare(Joint quay, in RopeSpec spec, Span<Joint> segment, ref NameBuffer name)
    {
        Span<float> heights = stackalloc float[SegmentsPerRope];
        spec.Sag(heights);

        var step = spec.Length / (SegmentsPerRope - 1);
        ref var first = ref MemoryMarshal.GetReference(segment);
        first = quay.Child(name.Of(spec.Code, 0), at: spec.Bollard);
        for (var i = 1; i < segment.Length; i++)
        {
            ref var above = ref Unsafe.Add(ref first, i - 1);
            Unsafe.Add(ref first, i) = above.Child(name.Of(spec.Code, i), at: new Vector3(-step, heights[i] - heights[i - 1], 0f));
        }
    }

    private static void Attach(RigDraft rig, Control world, char code, ReadOnlySpan<Joint> segment, ref NameBuffer name)
    {
        var previous = world;
        for (var i = 0; i < segment.Length; i += ControlEvery)
        {
            var control = rig.Control(name.Of('c', code, i)).Under(previous).PlacedAt(segment[i]);
            rig.Drive(segment[i]).ByChannels(control);

            var last = Math.Min(i + ControlEvery, segment.Length);
            for (var j = i + 1; j < last; j++)
            {
                var follower = rig.Group(name.Of('g', code, j)).Under(control).PlacedAt(segment[j]);
                rig.Drive(segment[j]).ByChannels(follower);
            }

            previous = control;
        }
    }

    [StructLayout(LayoutKind.Sequential)]
    private readonly struct RopeSpec(char code, float length, float sag, Vector3 bollard)
    {
        private readonly float sag = sag;

        public readonly char Code = code;
        public readonly float Length = length;
        public readonly Vector3 Bollard = bollard;

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        public void Sag(Span<float> heights)
        {
            var scale = 1f / (heights.Length - 1);
            for (var i = 0; i < heights.Length; i++)
            {
                var t = i * scale;
                heights[i] = -4f * sag * t * (1f - t);
            }
        }
    }

    private ref struct NameBuffer(Span<char> space)
    {
        private readonly Span<char> space = space;

        public string Of(char code, int index)
        {
            "rope_".CopyTo(space);
            space[5] = code;
            space[6] = '_';
            index.TryFormat(space[7..], out var digits, "00", CultureInfo.InvariantCulture);
            return new string(space[..(7 + digits)]);
        }

        public string Of(char kind, char code, int index)
        {
            space[0] = kind == 'g' ? 'f' : 'p';
            space[1] = '_';
            space[2] = code;
            space[3] = '_';
            index.TryFormat(space[4..], out var digits, "00", CultureInfo.InvariantCulture);
            var length = 4 + digits;
            if (kind == 'g')
            {
                "_group".CopyTo(space[length..]);
                length += "_group".Length;
            }

            return new string(space[..length]);
        }
    }
}
