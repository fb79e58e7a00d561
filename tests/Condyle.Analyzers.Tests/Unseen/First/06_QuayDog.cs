using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R06;

/// <summary>The dog of the quay, put together from functions that make functions.</summary>
public sealed class QuayDog : IRigDefinition
{
    private delegate Control Poser(Joint joint, Node above);

    public void Define(RigDraft rig)
    {
        Func<string, Func<Joint, Control>> named = prefix => joint => rig.Control($"{prefix}_{joint.Name}").PlacedAt(joint);
        Func<Func<Joint, Control>, Channels, Poser> fixing = (make, locked) => (joint, above) => Bound(rig, joint, make(joint).Under(above).Lock(locked));
        var turning = fixing(named("turn"), Channels.Move);
        var moving = fixing(named("move"), Channels.None);

        var hips = rig.Skeleton("quay_dog").Root("hips", at: new Vector3(0, 0.55f, -0.25f));
        var dog = rig.Control("dog");
        var systems = rig.Group("systems_group").Under(dog);
        var hipControl = moving(hips, dog);

        var spine = Strung(hips, ("loin", (0, 0.02f, 0.16f)), ("ribs", (0, 0.03f, 0.18f)), ("withers", (0, 0.05f, 0.14f)));
        var back = Chained(turning, hipControl)(spine);
        Chained(turning, back[^1])(Strung(spine[^1], ("neck", (0, 0.12f, 0.1f)), ("skull", (0, 0.1f, 0.08f)), ("jaw", (0, -0.03f, 0.06f))));
        Chained(Limited(turning, control => control.LimitTurn(Axis.Y, -60, 60)), hipControl)(
            Strung(hips, [.. Enumerable.Range(1, 4).Select(i => ($"tail{i}", (0f, i == 1 ? 0.04f : -0.01f, -0.09f)))]));

        var fore = LegsOf(rig, dog, systems, ("fore", "scapula", "humerus", "paw"), 0.5f, Mix(amount => amount.Inverse, amount => amount));
        var hind = LegsOf(rig, dog, systems, ("hind", "femur", "tibia", "pad"), -0.5f, Mix(amount => 1f, amount => amount));
        (Joint, Control, Func<Side, Joint, Control, Chain>)[] pairs = [(spine[^1], back[^1], fore), (hips, hipControl, hind)];
        var legs = pairs.SelectMany(pair => Side.Both, (pair, side) => pair.Item3(side, pair.Item1, pair.Item2)).ToArray();
        rig.Label("gait_label", string.Join(" ", legs.Select(leg => leg.Tip.Name))).Under(dog);
    }

    private static Func<Side, Joint, Control, Chain> LegsOf(
        RigDraft rig,
        Control dog,
        Group systems,
        (string Leg, string Upper, string Lower, string Foot) names,
        float bend,
        Func<Switch, (Weight Ik, Weight Fk)> mix) => (side, root, above) =>
    {
        var upper = root.Child($"{names.Upper}_{side}", at: new Vector3(0.1f * side.Sign, -0.05f, 0));
        var lower = upper.Child($"{names.Lower}_{side}", at: new Vector3(0, -0.22f, 0.12f * bend));
        var foot = lower.Child($"{names.Foot}_{side}", at: new Vector3(0, -0.26f, -0.1f * bend));
        var leg = rig.Chain(upper, foot);

        var parts = rig.Group($"{names.Leg}_leg_{side}_group").Under(systems).PlacedAt(above);
        rig.Drive(parts).ByMatrix(above);
        var copies = new[] { "ik", "fk" }.Select(leg.Copy).Select(copy => copy.Under(parts)).ToArray();
        var goal = rig.Control($"{names.Foot}_goal_{side}").Under(dog).PlacedAt(foot);
        rig.TwoBone(copies[0]).Reach(goal).Face(rig.Control($"{names.Leg}_pole_{side}").Under(dog).PlacedAt(copies[0].PolePoint(0.35f)));

        Chained((joint, over) => Bound(rig, copies[1].Of(joint), rig.Control($"fk_turn_{joint}").Under(over).PlacedAt(joint)), above)([.. leg]);
        var (ik, fk) = mix(goal.Switch("fk"));
        rig.Blend(leg).From(copies[0], ik).From(copies[1], fk);
        return leg;
    };

    private static Func<Switch, (Weight Ik, Weight Fk)> Mix(Func<Switch, Weight> ik, Func<Switch, Weight> fk) => amount => (ik(amount), fk(amount));

    private static Poser Limited(Poser poser, Func<Control, Control> limit) => (joint, above) => limit(poser(joint, above));

    private static Func<IReadOnlyList<Joint>, List<Control>> Chained(Poser pose, Control first) => joints =>
        joints.Aggregate(new List<Control>(), (made, joint) => [.. made, pose(joint, made.Count > 0 ? made[^1] : first)]);

    private static List<Joint> Strung(Joint from, params (string Name, (float X, float Y, float Z) At)[] links)
    {
        var last = from;
        return links.Select(link => last = last.Child(link.Name, at: new Vector3(link.At.X, link.At.Y, link.At.Z))).ToList();
    }

    private static Control Bound(RigDraft rig, Node node, Control control)
    {
        rig.Drive(node).ByChannels(control);
        return control;
    }
}
