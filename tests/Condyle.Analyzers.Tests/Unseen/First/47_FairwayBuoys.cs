using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using System.Runtime.CompilerServices;
using Condyle;
using Mooring = (float Depth, int Links, float Slack);

namespace Unseen.First.R47;

/// <summary>The fairway's buoys with their moorings: a lantern, a topmark and a bell where the chart has one.</summary>
public sealed class FairwayBuoys : IRigDefinition
{
    private const string Prefix = "fairway";
    private const string HolderName = $"{Prefix}_systems_group";

    private static readonly Dictionary<char, Mark> Chart = new()
    {
        ['a'] = new() { Kind = MarkKind.Can, At = new(12, 0, 0), Mooring = (9, 4, 1.1f) },
        ['b'] = new() { Kind = MarkKind.Cone, At = new(-12, 0, 2), Mooring = (9, 4, 1.1f), Bell = new(Strokes: 2) },
        ['c'] = new() { Kind = MarkKind.Can, At = new(13, 0, 40), Mooring = (7.5f, 3, 1.05f), Bell = new(Strokes: 1) },
        ['d'] = new() { Kind = MarkKind.Sphere | MarkKind.Lit, At = new(0, 0, 75), Mooring = (14, 5, 1.2f) },
    };

    public void Define(RigDraft rig)
    {
        var fleet = rig.NewFleet(HolderName);
        var skeleton = rig.Skeleton(Prefix);
        foreach (var (letter, mark) in Chart)
        {
            var joint = skeleton.Root($"float_{letter}", at: mark.At);
            var buoy = rig.Handle(joint, mark.IsLit ? Channels.None : Channels.TurnY);
            fleet += buoy;

            var top = mark.Kind switch
            {
                MarkKind.Can or MarkKind.Cone => joint.Above(letter, "topmark", 2.4f),
                var kind and not MarkKind.None when kind.HasFlag(MarkKind.Lit) => joint.Above(letter, "lantern", 3),
                _ => throw new SwitchExpressionException(mark.Kind),
            };
            rig.Handle(top, Channels.Move, under: buoy);

            if (mark is { Bell: { Strokes: > 0 and var strokes }, Mooring.Depth: < 10 })
            {
                var swing = (int range = 20, params int[] extra) => range + extra.Sum();
                var bell = rig.Handle(joint.Above(letter, "bell", 1.6f), Channels.All & ~(Channels.Turn | Channels.Scale), under: buoy);
                bell.LimitTurn(Axis.X, -swing(), strokes is 1 ? swing() : swing(25, 5, strokes));
            }

            Moor(rig, joint, buoy, letter, mark.Mooring with { Slack = MathF.Max(mark.Mooring.Slack, 1.06f) });
        }

        fleet.Sailing?.Lock(Channels.Turn);
        rig.Drive(fleet.Holder).ByMatrix(fleet.Sailing ?? throw new InvalidOperationException(nameof(fleet)));
    }

    private static void Moor(RigDraft rig, Joint joint, Control buoy, char letter, Mooring mooring)
    {
        var (depth, links, slack) = mooring;
        Joint[] chain = [joint, .. Links()];
        var sinker = rig.Control($"sinker_{letter}").PlacedAt(chain[^1]);
        foreach (var (index, link) in chain[1..].Index())
        {
            var share = (index + 1f) / links;
            Group up = rig.Group($"up_{link}_group").Under(buoy).PlacedAt(link), down = rig.Group($"down_{link}_group").Under(sinker).PlacedAt(link);
            _ = rig.Blend(link) is var blend && share < 1 ? blend.From(up, 1 - share).From(down, share) : blend.From(sinker, 1);
        }

        IEnumerable<Joint> Links()
        {
            for (var (last, i) = (joint, 1); i <= links; i++)
                yield return last = last.Child($"link_{letter}{i}", at: new(0, -depth * slack / links, i % 2 is 0 ? 0.2f : -0.2f));
        }
    }
}

[Flags]
internal enum MarkKind : byte
{
    None = 0,
    Can = 1,
    Cone = 1 << 1,
    Sphere = 1 << 2,
    Lit = 1 << 7,
}

internal sealed record Bell(int Strokes);

internal sealed class Mark
{
    public required MarkKind Kind { get; init; }

    public required Mooring Mooring
    {
        get;
        init => field = value is { Depth: > 0, Links: > 0 }
            ? value
            : throw new ArgumentOutOfRangeException(nameof(value), value, "A mooring has a depth and links.");
    }

    public Vector3 At { get; init => field = value with { Y = value.Y + 0.4f }; }

    public Bell? Bell { get; init; }

    public bool IsLit => (Kind & MarkKind.Lit) is not MarkKind.None;
}

/// <summary>The buoys as one flock: the first one that joins is what the others are counted from.</summary>
internal sealed class Fleet(Group holder)
{
    private readonly List<Control> buoys = [];

    public Group Holder => holder;

    public Control? Sailing { get; private set; }

    public void operator +=(Control buoy)
    {
        buoys.Add(buoy);
        Sailing ??= buoys[0];
    }
}

internal static class RigExtensions
{
    extension(RigDraft rig)
    {
        public Fleet NewFleet(string name) => new(rig.Group(name));

        public Control Handle(Joint joint, Channels locked, Node? under = null, [CallerArgumentExpression(nameof(under))] string? spelled = null)
        {
            var control = rig.Control(spelled is null ? $"move_{joint}" : $"{joint}_on_{spelled}").PlacedAt(joint).Lock(locked);
            if (under is { } above)
                control.Under(above);
            rig.Drive(joint).ByChannels(control);
            return control;
        }
    }

    extension(Joint joint)
    {
        public Joint Above(char letter, string what, float height) => joint.Child($"{what}_{letter}", at: Vector3.UnitY * height);
    }
}
