using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R14;

/// <summary>The closed set of things a lobster is made of.</summary>
public abstract record Part(string Name)
{
    public sealed record Hinge(string Name, Vector3 At, Channels Free, params Part[] Parts) : Part(Name);

    public sealed record Series(string Name, int Count, Vector3 Step, float Shrink, params Part[] Parts) : Part(Name);

    public sealed record Paired(Part Each) : Part(Each.Name);

    public sealed record Reacher(string Name, Vector3 Root, Vector3 Middle, Vector3 Tip, Part? Held = null) : Part(Name);
}

/// <summary>A lobster for the fish market's ice.</summary>
public sealed class Lobster : IRigDefinition
{
    private static readonly Part Plan = new Part.Hinge("carapace", new(0, 0.05f, 0), Channels.Move | Channels.Turn,
        new Part.Series("abdomen", 5, new(0, -0.002f, -0.03f), 0.92f,
            new Part.Hinge("telson", new(0, 0, -0.04f), Channels.TurnX),
            new Part.Paired(new Part.Hinge("uropod", new(0.02f, 0, -0.03f), Channels.TurnY))),
        new Part.Paired(new Part.Series("antenna", 4, new(0.01f, 0.01f, 0.06f), 1.1f)),
        new Part.Paired(new Part.Reacher("cheliped", new(0.03f, 0, 0.08f), new(0.06f, 0.01f, 0.03f), new(-0.01f, 0, 0.08f),
            new Part.Hinge("dactyl", new(0.01f, 0, 0.05f), Channels.TurnY))),
        new Part.Paired(new Part.Reacher("walker", new(0.03f, -0.01f, 0.02f), new(0.06f, 0.03f, 0), new(0.04f, -0.06f, 0))));

    private readonly record struct Spot3(Joint? Joint, Control? Control, Side? Side);

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("lobster");
        var lobster = rig.Control("lobster");
        var count = Grow(rig, skeleton, Plan, new Spot3(null, lobster, null), lobster);
        rig.Label("lobster_label", count switch
        {
            0 => "no joints",
            1 => "one joint",
            > 1 and < 100 => $"{count} joints",
            _ => "too many joints",
        }).Under(lobster);
    }

    private static int Grow(RigDraft rig, Skeleton skeleton, Part part, Spot3 on, Control lobster)
    {
        int Below(Spot3 spot, IEnumerable<Part> parts) => parts.Sum(each => Grow(rig, skeleton, each, spot, lobster));
        switch (part, on)
        {
            case (Part.Paired { Each: Part.Paired }, _):
                throw new ArgumentException($"'{part.Name}' is paired twice.", nameof(part));

            case (Part.Paired(var each), { Side: null }):
                return Side.Both.Sum(side => Grow(rig, skeleton, each, on with { Side = side }, lobster));

            case (Part.Hinge(var name, var at, var free, var parts), var (joint, above, side)):
                var hinge = joint is { } carrier ? carrier.Child(Named(name, side), at: Mirrored(at, side)) : skeleton.Root(Named(name, side), at: at);
                return 1 + Below(on with { Joint = hinge, Control = Turn(rig, hinge, above, free) }, parts);

            case (Part.Series { Count: > 0 and var count } series, { Joint: { } joint, Control: { } above }):
                var (last, handle, step) = (joint, above, series.Step);
                for (var i = 0; i < count; i++, step *= series.Shrink)
                {
                    last = last.Child(Named($"{series.Name}{i}", on.Side), at: Mirrored(step, on.Side));
                    handle = Turn(rig, last, handle, Channels.Turn);
                }

                return count + Below(on with { Joint = last, Control = handle }, series.Parts);

            case (Part.Reacher reacher, { Joint: { } joint, Control: { } above, Side: { } side }):
                var wrist = Reach(rig, reacher, joint, above, side, lobster, out var goal);
                return 3 + (reacher.Held is { } held ? Grow(rig, skeleton, held, new Spot3(wrist, goal, side), lobster) : 0);

            default:
                return 0;
        }
    }

    private static Joint Reach(RigDraft rig, Part.Reacher reacher, Joint joint, Control above, Side side, Control lobster, out Control goal)
    {
        var (name, at, middle, tip, held) = reacher;
        var root = joint.Child(Named(name + "_root", side), at: Mirrored(at, side));
        var knee = root.Child(Named(name + "_middle", side), at: Mirrored(middle, side));
        var end = knee.Child(Named(name + "_tip", side), at: Mirrored(tip, side));
        var chain = rig.Chain(root, end);

        var group = rig.Group(Named(name, side) + (held is null ? "_group" : "_grp")).Under(lobster).PlacedAt(above);
        rig.Drive(group).ByMatrix(above);
        var ik = chain.Copy("ik").Under(group);
        goal = rig.Control(Named($"{name}_goal", side)).Under(lobster).PlacedAt(end);
        rig.TwoBone(ik).Reach(goal).Face(rig.Control(Named($"{name}_pole", side)).Under(above).PlacedAt(ik.PolePoint(0.08f)));
        rig.Blend(chain).From(ik, 1f);
        return end;
    }

    private static Control Turn(RigDraft rig, Joint joint, Control? above, Channels free)
    {
        var control = rig.Control($"turn_{joint}").PlacedAt(joint).Lock((Channels.Move | Channels.Turn) & ~free);
        if (above is { } parent)
            control.Under(parent);
        rig.Drive(joint).ByChannels(control);
        return control;
    }

    private static string Named(string name, Side? side) => side is null ? name : $"{name}_{side}";

    private static Vector3 Mirrored(Vector3 at, Side? side) => at with { X = at.X * (side?.Sign ?? 1) };
}
