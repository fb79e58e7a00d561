using System;
using System.Buffers;
using System.Diagnostics.CodeAnalysis;
using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Condyle;

namespace Unseen.First.R42;

/// <summary>Bait for the anglers: 24 rings with a pair of paddles on each. One pass, one rented buffer.</summary>
public sealed class Ragworm : IRigDefinition
{
    private const int Rings = 24;
    private const int HandleEvery = 6;      // every sixth ring gets a full handle, the rings between are blended from their neighbours

    public void Define(RigDraft rig)
    {
        var rings = ArrayPool<Ring>.Shared.Rent(Rings);
        try
        {
            Span<char> buffer = stackalloc char[32];
            var names = new NameWriter(buffer);
            var span = rings.AsSpan(0, Rings);
            span.Clear();
            Declare(rig.Skeleton("ragworm"), span, ref names);
            Handles(rig, span, ref names);
            Between(rig, span, ref names);
            Paddles(rig, span, ref names);
        }
        finally
        {
            ArrayPool<Ring>.Shared.Return(rings, clearArray: true);
        }
    }

    private static void Declare(Skeleton skeleton, Span<Ring> rings, ref NameWriter names)
    {
        ref var first = ref MemoryMarshal.GetReference(rings);
        for (nint i = 0; i < rings.Length; i++)
        {
            ref var ring = ref Unsafe.Add(ref first, i);
            ring.Radius = Taper((int)i);
            var name = names.Begin("ring_").Number((int)i, digits: 2).Text();
            ring.Joint = i == 0
                ? skeleton.Root(name, at: new Vector3(0, 0.012f, 0))
                : Unsafe.Subtract(ref ring, 1).Joint.Child(name, at: new Vector3(0, 0, -0.009f));
        }
    }

    private static void Handles(RigDraft rig, Span<Ring> rings, ref NameWriter names)
    {
        for (var i = 0; i < rings.Length; i += HandleEvery)
            Handle(rig, ref rings[i], ref names, i);
        Handle(rig, ref rings[^1], ref names, rings.Length - 1);
    }

    private static void Handle(RigDraft rig, ref Ring ring, ref NameWriter names, int number)
    {
        ring.Handle = rig.Control(names.Begin("wriggle_").Number(number, digits: 2).Text()).PlacedAt(ring.Joint);
        ring.HasHandle = true;
        rig.Drive(ring.Joint).ByChannels(ring.Handle);
    }

    private static void Between(RigDraft rig, Span<Ring> rings, ref NameWriter names)
    {
        var before = 0;
        for (var after = 1; after < rings.Length; after++)
        {
            if (!rings[after].HasHandle)
                continue;
            var reciprocal = 1f / (after - before);
            for (var i = before + 1; i < after; i++)
            {
                ref var ring = ref rings[i];
                var share = (i - before) * reciprocal;
                var head = rig.Group(names.Begin("head_of_").Number(i, digits: 2).Then("_group").Text()).Under(rings[before].Handle).PlacedAt(ring.Joint);
                var tail = rig.Group(names.Begin("tail_of_").Number(i, digits: 2).Then("_group").Text()).Under(rings[after].Handle).PlacedAt(ring.Joint);
                rig.Blend(ring.Joint).From(head, 1 - share).From(tail, share);
            }

            before = after;
        }
    }

    private static void Paddles(RigDraft rig, ReadOnlySpan<Ring> rings, ref NameWriter names)
    {
        Span<float> angles = stackalloc float[rings.Length];
        for (var i = 0; i < angles.Length; i++)
            angles[i] = 15 + ((i & 3) * 5);

        var holder = rig.Group("paddles_group");
        for (var i = 1; i < rings.Length - 1; i++)
        {
            ref readonly var ring = ref rings[i];
            var carrier = rig.Group(names.Begin("carrier_").Number(i, digits: 2).Then("_group").Text()).Under(holder).PlacedAt(ring.Joint);
            rig.Drive(carrier).ByMatrix(ring.Joint);
            for (var sign = 1; sign >= -1; sign -= 2)
            {
                var side = sign > 0 ? "left" : "right";
                var name = names.Begin("paddle_").Number(i, digits: 2).Then('_').Then(side).Text();
                var paddle = ring.Joint.Child(name, at: new Vector3(sign * ring.Radius, 0, 0));
                var row = rig.Control(names.Begin("row_").Number(i, digits: 2).Then('_').Then(side).Text()).Under(carrier).PlacedAt(paddle)
                    .Lock(Channels.Move | Channels.TurnX).LimitTurn(Axis.Y, -angles[i], angles[i]);
                rig.Drive(paddle).ByChannels(row);
            }
        }
    }

    // 4·t·(1 − t) is thickest in the middle; the clamp keeps a snout and a tail.
    private static float Taper(int i)
    {
        var t = i * (1f / (Rings - 1));
        return Math.Clamp(0.006f * 4 * t * (1 - t), 0.002f, 0.006f);
    }

    [StructLayout(LayoutKind.Auto)]
    private struct Ring
    {
        public Joint Joint;
        public Control Handle;
        public float Radius;
        public bool HasHandle;
    }

    /// <summary>Builds names in a buffer of the caller's; the string is the one allocation.</summary>
    private ref struct NameWriter(Span<char> buffer)
    {
        private readonly Span<char> buffer = buffer;
        private int length;

        [UnscopedRef]
        public ref NameWriter Begin(ReadOnlySpan<char> text)
        {
            length = 0;
            return ref Then(text);
        }

        [UnscopedRef]
        public ref NameWriter Then(params ReadOnlySpan<char> text)
        {
            text.CopyTo(buffer[length..]);
            length += text.Length;
            return ref this;
        }

        [UnscopedRef]
        public ref NameWriter Number(int value, int digits)
        {
            for (var at = length + digits - 1; at >= length; at--)
            {
                (value, var digit) = Math.DivRem(value, 10);
                buffer[at] = (char)('0' + digit);
            }

            length += digits;
            return ref this;
        }

        public readonly string Text() => new(buffer[..length]);
    }
}
