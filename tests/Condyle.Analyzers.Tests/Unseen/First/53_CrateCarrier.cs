using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R53;

// Ported from build_carrier.py, function by function. Keys and order are as they were, so that both can be compared.
public sealed class CrateCarrier : IRigDefinition
{
    private static readonly Dictionary<string, Dictionary<string, object>> BODY = new()
    {
        ["pelvis"] = new() { ["parent"] = "", ["pos"] = new[] { 0.0, 0.96, 0.0 } },
        ["spine"] = new() { ["parent"] = "pelvis", ["pos"] = new[] { 0.0, 0.12, 0.0 }, ["count"] = 3, ["step"] = 0.11 },
        ["neck"] = new() { ["parent"] = "spine_03", ["pos"] = new[] { 0.0, 0.2, -0.01 } },
        ["head"] = new() { ["parent"] = "neck", ["pos"] = new[] { 0.0, 0.1, 0.02 } },
    };

    private static readonly Dictionary<string, Dictionary<string, object>> LIMBS = new()
    {
        ["arm"] = new()
        {
            ["parent"] = "spine_03",
            ["names"] = new List<string> { "shoulder", "elbow", "wrist" },
            ["pos"] = new List<double[]> { new[] { 0.2, 0.15, 0.0 }, new[] { 0.27, -0.02, -0.03 }, new[] { 0.25, 0.0, 0.05 } },
            ["goal"] = "hand",
            ["blend"] = true,
        },
        ["leg"] = new()
        {
            ["parent"] = "pelvis",
            ["names"] = new List<string> { "hip", "knee", "ankle" },
            ["pos"] = new List<double[]> { new[] { 0.1, -0.04, 0.0 }, new[] { 0.0, -0.43, 0.02 }, new[] { 0.0, -0.41, -0.03 } },
            ["goal"] = "foot",
        },
    };

    private readonly Dictionary<string, Joint> joints = new();
    private readonly Dictionary<string, Dictionary<string, Control>> controls = new();
    private readonly List<string> log = new();

    public void Define(RigDraft rig)
    {
        build_body(rig, rig.Skeleton("crate_carrier"));
        var systems = rig.Group(name("systems", "group"));
        foreach (var side in new[] { "left", "right" })
        {
            foreach (var (limb, data) in LIMBS)
                build_limb(rig, systems, limb, side, data);
        }

        add_crate(rig);
        if (log.Count(line => line.StartsWith("limb ")) != 4)
            throw new InvalidOperationException(string.Join("\n", log));
    }

    // ["arm", null, "left"] -> "arm_left"
    private static string name(params string?[] parts) => string.Join("_", parts.Where(part => !string.IsNullOrEmpty(part)));

    private static string pad(int number, int zeros = 2) => number.ToString().PadLeft(zeros, '0');

    // dict.get(key, default)
    private static T get<T>(Dictionary<string, object> data, string key, T otherwise) => data.TryGetValue(key, out var value) ? (T)value : otherwise;

    private static Vector3 vec(IReadOnlyList<double> pos, bool mirror = false) => new((float)(mirror ? -pos[0] : pos[0]), (float)pos[1], (float)pos[2]);

    private void build_body(RigDraft rig, Skeleton skeleton)
    {
        controls["body"] = new Dictionary<string, Control>();
        var above = "";
        foreach (var (part, data) in BODY)
        {
            var count = get(data, "count", 1);
            var parent = (string)data["parent"];
            for (var i = 1; i <= count; i++)
            {
                var joint_name = count > 1 ? name(part, pad(i)) : part;
                var pos = vec((double[])data["pos"]);
                if (i > 1)
                    pos = new Vector3(0, (float)get(data, "step", 0.1), 0);
                joints[joint_name] = parent == "" ? skeleton.Root(joint_name, at: pos) : joints[parent].Child(joint_name, at: pos);
                var control = rig.Control(name("turn", joint_name)).PlacedAt(joints[joint_name]);
                if (above != "")
                    control.Under(controls["body"][above]).Lock(Channels.Move);
                rig.Drive(joints[joint_name]).ByChannels(control);
                controls["body"][joint_name] = control;
                parent = above = joint_name;
            }

            log.Add(string.Format("body {0}: {1} joints", part, count));
        }
    }

    private void build_limb(RigDraft rig, Group systems, string limb, string side, Dictionary<string, object> data)
    {
        var parent = (string)data["parent"];
        var last = joints[parent];
        var made = new List<Joint>();
        var names = (List<string>)data["names"];
        foreach (var (joint_name, pos) in names.Zip((List<double[]>)data["pos"]))
        {
            last = last.Child(name(joint_name, side), at: vec(pos, mirror: side == "right"));
            joints[name(joint_name, side)] = last;
            made.Add(last);
        }

        var above = controls["body"][parent];
        var parts = rig.Group(name(limb, side, "group")).Under(systems).PlacedAt(above);
        rig.Drive(parts).ByMatrix(above);
        var chain = rig.Chain(made[0], made[^1]);

        // {"ik": copy, "fk": copy}
        var tags = get(data, "blend", false) ? new[] { "ik", "fk" } : new[] { "ik" };
        var copies = tags.ToDictionary(tag => tag, tag => chain.Copy(tag).Under(parts));
        var mine = controls[name(limb, side)] = new Dictionary<string, Control>();

        mine["goal"] = rig.Control(name((string)data["goal"], side)).PlacedAt(made[^1]);
        mine["pole"] = rig.Control(name(names[1], "pole", side)).PlacedAt(copies["ik"].PolePoint(distance: 0.45f)).Lock(Channels.Turn);
        rig.TwoBone(copies["ik"]).Reach(mine["goal"]).Face(mine["pole"]);

        if (copies.TryGetValue("fk", out var fk))
        {
            for (var i = 0; i < made.Count; i++)
            {
                mine[names[i]] = rig.Control(name("turn", names[i], side)).Under(i > 0 ? mine[names[i - 1]] : above).PlacedAt(made[i]).Lock(Channels.Move);
                rig.Drive(fk.Of(made[i])).ByChannels(mine[names[i]]);
            }

            var amount = mine["goal"].Switch("fk");
            var weights = new Dictionary<string, Weight> { ["ik"] = amount.Inverse, ["fk"] = amount };
            var blend = rig.Blend(chain);
            foreach (var (tag, copy) in copies)
            {
                blend.From(copy, weights[tag]);
                rig.Label(name(tag, limb, "label", side), tag.ToUpperInvariant()).Under(mine["goal"]).ShownBy(weights[tag]);
            }
        }
        else
        {
            made.ForEach(joint => rig.Drive(joint).ByChannels(copies["ik"].Of(joint)));
        }

        log.Add($"limb {limb} {side}: {string.Join(", ", mine.Keys)}");
    }

    private void add_crate(RigDraft rig)
    {
        var crate = joints["spine_03"].Child("crate", JointRole.Helper, vec(new[] { 0.0, 0.0, 0.4 }));
        var hands = from key in controls.Keys where key.StartsWith("arm") select controls[key]["goal"];
        var spots = hands.ToDictionary(hand => hand.Name, hand => rig.Group(name("crate", "at", hand.Name)).Under(hand).PlacedAt(crate));
        var held = rig.Blend(crate);
        foreach (var key in spots.Keys)
            held.From(spots[key], 1f / spots.Count);
    }
}
