using System;
using System.Collections;
using System.Collections.Generic;
using System.Numerics;
using System.Runtime.CompilerServices;
using Condyle;

namespace Unseen.First.R49;

/// <summary>A round cast net: spokes from the hand line to the lead line, rings across. Each knot is weighted over crown and rim.</summary>
public sealed class CastNet : IRigDefinition
{
    private static readonly Size Net = new(Spokes: 6, Rings: 3);

    public void Define(RigDraft rig)
    {
        Web<Joint> knots = new(Net);
        var crown = rig.Skeleton("cast_net").Root("crown", at: new(0, 3, 0));
        foreach (var (spoke, ring) in Net)
        {
            ref var knot = ref knots[spoke, ring];
            knot = (ring == 0 ? crown : knots[spoke, ring - 1]).Child(Net.NameOf(spoke, ring), at: Step(spoke, ring));
        }

        var throwing = rig.Control("throw").PlacedAt(crown);
        rig.Drive(crown).ByChannels(throwing);

        Rim rim = default;
        for (int spoke = 0; spoke < Net.Spokes; spoke++)
        {
            rim[spoke] = rig.Control($"lead_{spoke}") is var lead && spoke % 2 == 0
                ? lead.PlacedAt(knots[spoke, ^1])
                : lead.PlacedAt(knots[spoke, ^1]).Lock(Channels.Turn);
        }

        var open = throwing.Switch("open", atRest: 1);
        Tally tally = new();
        foreach (ref readonly var handle in rim[..Net.Spokes])
        {
            open.AlsoOn(handle);
            tally += handle;
        }

        Span<Group> falling = [.. Hang(rig, throwing, knots)];
        foreach (var (spoke, ring) in Net)
        {
            var joint = knots[spoke, ring];
            var spread = rig.Group($"spread_{joint}_group").Under(rim[spoke]).PlacedAt(joint);
            var near = (float)checked(ring + 1) / Net.Rings;
            var blend = rig.Blend(joint).From(falling[(spoke * Net.Rings) + ring], open.Inverse + ((1 - near) * open));
            _ = near switch
            {
                > 0 and <= 1 => blend.From(spread, near * open),
                _ => blend,
            };
        }

        if (tally is not { Count: 6, Last.Name: ['l', 'e', 'a', 'd', '_', .. var number] } || number is not "5")
            throw new UnravelledException($"{tally}") { Knots = knots.Count };

        static Vector3 Step(int spoke, int ring)
        {
            (float sin, float cos) = MathF.SinCos(MathF.Tau * spoke / Net.Spokes);
            return new Vector3(sin, -0.3f - (0.1f * ring), cos) * 0.6f;
        }
    }

    private static IEnumerable<Group> Hang(RigDraft rig, Control from, Web<Joint> knots)
    {
        foreach (var joint in knots)
            yield return rig.Group($"hang_{joint}_group").Under(from).PlacedAt(joint);
    }

    [InlineArray(8)]
    private struct Rim
    {
        private Control first;
    }
}

internal readonly record struct Size(int Spokes, int Rings) : IEnumerable<Size.Place>
{
    public string NameOf(int spoke, int ring) => (spoke, ring) switch
    {
        ( >= 0, 0) => $"knot_{spoke}_crown",
        ( >= 0, var last) when last == Rings - 1 => $"knot_{spoke}_rim",
        ( >= 0, > 0) => $"knot_{spoke}_{ring}",
        _ => throw new ArgumentOutOfRangeException(nameof(spoke)),
    };

    public Enumerator GetEnumerator() => new(this);

    IEnumerator<Place> IEnumerable<Place>.GetEnumerator() => GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    public readonly record struct Place(int Spoke, int Ring);

    public struct Enumerator(Size size) : IEnumerator<Place>
    {
        private int at = -1;

        public readonly Place Current => new(at / size.Rings, at % size.Rings);

        readonly object IEnumerator.Current => Current;

        public bool MoveNext() => ++at < size.Spokes * size.Rings;

        public void Reset() => at = -1;

        public readonly void Dispose()
        {
        }
    }
}

/// <summary>One thing for each knot, by spoke and ring.</summary>
internal sealed class Web<T>(Size size) : IEnumerable<T>
{
    private readonly T[] all = new T[size.Spokes * size.Rings];

    public int Count => all.Length;

    public ref T this[int spoke, Index ring] => ref all[(spoke * size.Rings) + ring.GetOffset(size.Rings)];

    public IEnumerator<T> GetEnumerator()
    {
        foreach (var thing in all)
            yield return thing;
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}

internal readonly record struct Tally(int Count, Control Last)
{
    public static Tally operator +(Tally tally, Control control) => tally with { Count = tally.Count + 1, Last = control };

    public override string ToString() => $$"""{{{Count}} handles}""";
}

internal sealed class UnravelledException(string message) : Exception(message)
{
    public required int Knots { get; init; }
}
