using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R49;

/// <summary>A crane hook that rides the jib, the load or the quay, with a mix of two switches, and a sling that shares between its ends.</summary>
public sealed class CraneHook : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        var jib = rig.Skeleton("crane_hook").Root("jib", at: new Vector3(0, 20, 0));
        var block = jib.Child("block", at: new Vector3(0, -8, 12));
        var hook = block.Child("hook", at: new Vector3(0, -0.9f, 0));
        var tag = hook.Child("tag_line", at: new Vector3(0, -0.4f, 0));

        var jibMove = Handle(rig, "jib", jib, null);
        var blockMove = Handle(rig, "block", block, jibMove);
        var hookMove = rig.Control("hook").PlacedAt(hook);
        rig.Drive(jib).ByChannels(jibMove);
        rig.Drive(block).ByChannels(blockMove);

        var load = hookMove.Switch("load");
        var quay = hookMove.Switch("quay").AlsoOn(blockMove);
        var spaces = new[]
        {
            Space.Of("jib", jibMove, load.Inverse * quay.Inverse),
            Space.Of("load", Handle(rig, "load", hook, null), load * quay.Inverse),
            Space.Of("quay", null, quay),
        };

        var riding = rig.Blend(rig.Group("hook_space_group").PlacedAt(hook).Named(out var seat));
        foreach (var space in spaces)
            riding = riding.From(space.Seat(rig, hook), space.Weight);
        hookMove.Under(seat);
        rig.Drive(hook).ByChannels(hookMove);

        Labels(rig, hookMove, spaces);
        Sling(rig, hook, hookMove);
        Tag(rig, tag, hookMove, blockMove, (load, quay));
    }

    private static void Labels(RigDraft rig, Control hook, IEnumerable<Space> spaces)
    {
        foreach (var (name, _, weight) in spaces)
            rig.Label($"hook_on_{name}_label", $"on the {name}").Under(hook).ShownBy(weight);
    }

    private static void Sling(RigDraft rig, Joint hook, Control above)
    {
        // Four legs; the middle of each lies a given part of the way from the hook to the crate's corner.
        var even = above.Switch("even", atRest: 1);
        var corner = 0;
        foreach (var side in Side.Both)
        {
            foreach (var z in (float[])[0.6f, -0.6f])
            {
                corner++;
                var middle = hook.Child($"sling_{corner}", at: new Vector3(0.35f * side.Sign, -1, z / 2));
                var low = rig.Control($"corner_{corner}").Under(above).PlacedAt(middle);
                var high = rig.Group($"sling_{corner}_high_group").Under(above).PlacedAt(middle);
                var half = 0.5f * even;
                Weight rest = corner % 2 == 0 ? 0.75f : 0.25f;
                var lower = half + rest * even.Inverse;
                rig.Blend(middle).From(low, lower).From(high, lower.Inverse);
            }
        }
    }

    private static void Tag(RigDraft rig, Joint tag, Control hook, Control block, (Switch Load, Switch Quay) on)
    {
        var free = rig.Control("tag_line").PlacedAt(tag);
        var held = on.Load + on.Quay * on.Load.Inverse;
        Span<Weight> shares = [held * 0.5f, 0.5f * held, held.Inverse];
        var sum = shares[0];
        foreach (var share in shares[1..])
            sum += share;
        rig.Blend(tag)
            .From(rig.Group("tag_on_hook_group").Under(hook).PlacedAt(tag), shares[0])
            .From(rig.Group("tag_on_block_group").Under(block).PlacedAt(tag), shares[1])
            .From(free, shares[^1]);
        rig.Label("tag_label", "tag line").Under(free).ShownBy(sum);

        var wrong = tag.Child("tag_end", at: new Vector3(0, -1.5f, 0));
        var ends = new Dictionary<string, Weight>(StringComparer.Ordinal) { ["hook"] = on.Load, ["block"] = on.Quay };
        _ = ends.OrderBy(end => end.Key).Aggregate(
            rig.Blend(wrong),
            (blend, end) => blend.From(rig.Group($"tag_end_{end.Key}_group").Under(end.Key == "hook" ? hook : block).PlacedAt(wrong), end.Value));
    }

    private static Control Handle(RigDraft rig, string name, Joint at, Node? above)
    {
        var control = rig.Control($"{name}_move").PlacedAt(at);
        return above is { } node ? control.Under(node) : control;
    }
}

internal sealed record Space(string Name, Node? Rides, Weight Weight)
{
    public static Space Of(string name, Node? rides, Weight weight) => new(name, rides, weight);

    public Group Seat(RigDraft rig, Node at)
    {
        var seat = rig.Group($"hook_on_{Name}_group").PlacedAt(at);
        if (Rides is not null)
            seat = seat.Under(Rides.Value);
        return seat;
    }
}

internal static class Naming
{
    public static Group Named(this Group group, out Group name)
    {
        name = group;
        return group;
    }
}
