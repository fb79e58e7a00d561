using System;
using System.Collections.Frozen;
using System.Collections.Generic;
using System.Collections.Immutable;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R26;

public sealed class HarbourMaster : IRigDefinition
{
    private sealed record Scene(
        RigDraft Rig,
        ImmutableDictionary<string, Joint> Joints,
        ImmutableDictionary<string, Control> Controls,
        ImmutableList<Switch> Switches)
    {
        public static Scene Empty(RigDraft rig) => new(rig, ImmutableDictionary<string, Joint>.Empty, ImmutableDictionary<string, Control>.Empty, []);

        public Joint this[string joint] => Joints.TryGetValue(joint, out var found) ? found : throw new KeyNotFoundException(joint);

        public Scene Add(Joint joint) => this with { Joints = Joints.Add(joint.Name, joint) };

        public Scene Add(string key, Control control) => this with { Controls = Controls.SetItem(key, control) };

        public Scene Add(Switch by) => this with { Switches = Switches.Add(by) };
    }

    private static readonly FrozenDictionary<string, (string? On, Vector3 At)> Trunk = new Dictionary<string, (string?, Vector3)>
    {
        ["pelvis"] = (null, new(0, 1, 0)),
        ["waist"] = ("pelvis", new(0, 0.14f, 0.01f)),
        ["chest"] = ("waist", new(0, 0.22f, -0.02f)),
        ["neck"] = ("chest", new(0, 0.25f, 0)),
        ["head"] = ("neck", new(0, 0.1f, 0.02f)),
    }.ToFrozenDictionary();

    private static readonly ImmutableArray<string> Order = ["pelvis", "waist", "chest", "neck", "head"];

    public void Define(RigDraft rig)
    {
        var skeleton = rig.Skeleton("harbour_master");
        var scene = Order.Aggregate(Scene.Empty(rig), (s, name) => AddTrunk(s, skeleton, name));
        scene = Side.Both.Aggregate(scene, (s, side) => AddArm(s, side));
        Hat(scene);
        foreach (var (index, by) in scene.Switches.Index())
            rig.Label($"fk{index}_label", "FK").ShownBy(by).Under(scene.Controls["chest"]);
    }

    private static Scene AddTrunk(Scene scene, Skeleton skeleton, string name)
    {
        var (on, at) = Trunk[name];
        var joint = on is null ? skeleton.Root(name, at: at) : scene[on].Child(name, at: at);
        var control = scene.Rig.Control($"{name}_main").PlacedAt(joint);
        if (on is not null)
            control = control.Under(scene.Controls[on]);
        scene.Rig.Drive(joint).ByChannels(control);
        return scene.Add(joint).Add(name, control);
    }

    private static Scene AddArm(Scene scene, Side side)
    {
        var rig = scene.Rig;
        var steps = ImmutableArray.Create(
            ("shoulder", new Vector3(0.18f, 0.16f, 0)),
            ("elbow", new Vector3(0.29f, 0, -0.02f)),
            ("wrist", new Vector3(0.25f, 0, 0.02f)));
        var last = scene["chest"];
        foreach (var (name, at) in steps)
        {
            last = last.Child($"{name}_{side}", at: at * new Vector3(side.Sign, 1, 1));
            scene = scene.Add(last);
        }

        var arm = rig.Chain(scene[$"shoulder_{side}"], last);
        var parts = rig.Group($"arm_{side}_group").Under(scene.Controls["chest"]).PlacedAt(arm.Root);
        var copies = ImmutableSortedDictionary<string, Copy>.Empty.Add("ik", arm.Copy("ik").Under(parts)).Add("fk", arm.Copy("fk").Under(parts));
        var hand = rig.Control($"hand_{side}").PlacedAt(last);
        rig.TwoBone(copies["ik"]).Reach(hand).Face(rig.Control($"elbow_pole_{side}").PlacedAt(copies["ik"].PolePoint(0.4f)));
        Node above = parts;
        foreach (var joint in arm)
        {
            var turn = rig.Control($"turn_{joint.Name}").Under(above).PlacedAt(joint);
            rig.Drive(copies["fk"].Of(joint)).ByChannels(turn);
            above = turn;
        }

        var fk = hand.Switch("fk");
        var weights = ImmutableDictionary.CreateRange(new KeyValuePair<string, Weight>[] { new("ik", fk.Inverse), new("fk", fk) });
        var blend = rig.Blend(arm);
        foreach (var (tag, copy) in copies)
            blend = blend.From(copy, weights[tag]);
        return scene.Add($"hand_{side}", hand).Add(fk);
    }

    // the hat sits on the head, or is held in the one or the other hand
    private static void Hat(Scene scene)
    {
        var hat = scene["head"].Child("hat", JointRole.Helper, new Vector3(0, 0.18f, 0));
        var (left, right) = (scene.Controls["hand_left"], scene.Controls["hand_right"]);
        var builder = ImmutableDictionary.CreateBuilder<string, Switch>();
        builder["left"] = left.Switch("hat");
        builder["right"] = right.Switch("hat");
        var by = builder.ToImmutable();
        var worn = rigControl("hat_worn", scene.Controls["head"]);
        scene.Rig.Blend(hat)
            .From(rigControl("hat_left", left), by["left"])
            .From(rigControl("hat_right", right), by["right"] * by["left"].Inverse)
            .From(worn, by["left"].Inverse * by["right"].Inverse);

        Control rigControl(string name, Control under) => scene.Rig.Control(name).Under(under).PlacedAt(hat);
    }
}
