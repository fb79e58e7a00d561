using System;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R29;

/// <summary>The harbour master's signal mast: yards on both sides, a halyard on each, and the flags of a message hoisted on them.</summary>
public sealed class SignalMast : IRigDefinition
{
    private const string Message = "keep clear of berth four";

    public void Define(RigDraft rig)
    {
        var mast = rig.Skeleton("signal_mast").Root("mast");
        var top = mast.Child("crosstrees", at: Vector3.UnitY * 9);
        var all = rig.Control("mast_root").PlacedAt(mast);
        rig.Drive(mast).ByChannels(all);

        var hoists = Message.Split(' ')
            .Select((word, index) => (Word: word, Side: index % 2 == 0 ? Side.Left : Side.Right))
            .GroupBy(hoist => hoist.Side, hoist => hoist.Word)
            .ToImmutableDictionary(words => words.Key, words => words.ToImmutableArray());

        var yards = Side.Both
            .Select(side => top.Child($"yard_{side}", at: new Vector3(1.8f * side.Sign, 0, 0)))
            .Zip(Side.Both, (yard, side) => new Yard(side, yard, Swinging(rig, yard, all, 15)))
            .ToList();

        var flags = yards
            .SelectMany(yard => hoists[yard.Side].Select((word, line) => (yard, word, line)))
            .Select(hoist => Hoist(rig, hoist.yard, hoist.word, hoist.line))
            .ToArray();

        var longest = flags.MaxBy(hoist => hoist.Count) ?? [];
        var raised = all.Switch("raised", atRest: 1);
        foreach (var (hoist, number) in flags.OrderBy(hoist => hoist.Count).Select((hoist, i) => (hoist, i + 1)))
            rig.Label($"hoist_label_{number}", $"{number}/{flags.Length}" + (ReferenceEquals(hoist, longest) ? " (longest)" : ""))
                .Under(hoist[0])
                .ShownBy(raised);
    }

    private static IReadOnlyList<Control> Hoist(RigDraft rig, Yard yard, string word, int line) => word
        .Distinct()
        .Where(char.IsAsciiLetterLower)
        .Select((letter, place) => (Name: $"flag_{word}_{letter}", Drop: place == 0 ? 0.6f : 0.5f))
        .Aggregate(
            (Joint: yard.Joint, Above: yard.Control, Made: ImmutableList<Control>.Empty),
            (so, flag) =>
            {
                var at = so.Made.IsEmpty ? new Vector3(0.3f * line, -flag.Drop, 0) : -Vector3.UnitY * flag.Drop;
                var joint = so.Joint.Child(flag.Name, at: at);
                var control = Swinging(rig, joint, so.Above, 35);
                return (joint, control, so.Made.Add(control));
            },
            so => so.Made);

    private static Control Swinging(RigDraft rig, Joint joint, Control above, float degrees) =>
        Enum.GetValues<Axis>()
            .Where(axis => axis != Axis.Y)
            .Aggregate(
                rig.Control($"swing_{joint.Name}").Under(above).PlacedAt(joint).Lock(Channels.Move),
                (control, axis) => control.LimitTurn(axis, -degrees, degrees))
            .Pipe(control => rig.Drive(joint).ByChannels(control));

    private sealed record Yard(Side Side, Joint Joint, Control Control);
}

internal static class Piping
{
    public static T Pipe<T, TIgnored>(this T value, Func<T, TIgnored> also)
    {
        also(value);
        return value;
    }
}
