using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R03;

/// <summary>
/// Upper body test rig. Ported from our build script, so the layout is the script's:
/// a list of joints, a dict of joints by name, then one function for each module.
/// </summary>
public sealed class DockWorkerArms : IRigDefinition
{
    private static readonly List<(string name, string? parent, float x, float y, float z)> joint_list = new()
    {
        ("root", null, 0f, 0f, 0f),
        ("pelvis", "root", 0f, 1.02f, 0f),
        ("chest", "pelvis", 0f, 0.34f, 0.01f),
        ("neck", "chest", 0f, 0.22f, -0.01f),
        ("head", "neck", 0f, 0.12f, 0.02f),
    };

    // Per side, x is mirrored. "{0}" is the side.
    private static readonly List<(string name, string parent, float x, float y, float z)> arm_list = new()
    {
        ("collar_{0}", "chest", 0.04f, 0.16f, 0f),
        ("shoulder_{0}", "collar_{0}", 0.14f, 0.01f, -0.01f),
        ("elbow_{0}", "shoulder_{0}", 0.27f, 0f, -0.02f),
        ("wrist_{0}", "elbow_{0}", 0.25f, 0f, 0.03f),
    };

    private static readonly string[] spine = ["pelvis", "chest", "neck", "head"];

    public void Define(RigDraft rig)
    {
        var joints = build_joints(rig);

        var world = rig.Control("world").PlacedAt(joints["root"]);
        rig.Drive(joints["root"]).ByChannels(world);

        var controls = build_spine(rig, joints, world);

        var side_names = Side.Both.Select(s => s.ToString()).ToList();
        foreach (var side in side_names)
        {
            build_arm(rig, joints, controls, side, world);
        }
    }

    private static Dictionary<string, Joint> build_joints(RigDraft rig)
    {
        var result = new Dictionary<string, Joint>();
        var skeleton = rig.Skeleton("dock_worker");

        foreach (var (name, parent, x, y, z) in joint_list)
        {
            var at = new Vector3(x, y, z);
            result[name] = parent is null
                ? skeleton.Root(name, at: at)
                : result[parent].Child(name, at: at);
        }

        foreach (var side in Side.Both)
        {
            foreach (var (name, parent, x, y, z) in arm_list)
            {
                var joint_name = string.Format(name, side);
                var parent_name = string.Format(parent, side);
                result.Add(joint_name, result[parent_name].Child(joint_name, at: new Vector3(side.Sign * x, y, z)));
            }
        }

        return result;
    }

    private static Dictionary<string, Control> build_spine(RigDraft rig, Dictionary<string, Joint> joints, Control world)
    {
        var controls = new Dictionary<string, Control>();
        var parent = world;
        foreach (var (index, name) in spine.Index())
        {
            var control = rig.Control($"turn_{name}").Under(parent).PlacedAt(joints[name]);
            if (index > 0)
                control.Lock(Channels.Move);
            rig.Drive(joints[name]).ByChannels(control);
            controls[name] = control;
            parent = control;
        }

        return controls;
    }

    private static void build_arm(RigDraft rig, Dictionary<string, Joint> joints, Dictionary<string, Control> controls, string side, Control world)
    {
        Joint get(string part) => joints[$"{part}_{side}"];

        var collar = rig.Control($"turn_collar_{side}").Under(controls["chest"]).PlacedAt(get("collar")).Lock(Channels.Move);
        rig.Drive(get("collar")).ByChannels(collar);

        var chain = rig.Chain(get("shoulder"), get("wrist"));
        var grp = rig.Group($"arm_{side}_group").Under(collar).PlacedAt(chain.Root);

        // ik
        var ik = chain.Copy("ik").Under(grp);
        var hand = rig.Control($"hand_{side}").Under(world).PlacedAt(get("wrist"));
        var pole = rig.Control($"elbow_pole_{side}").Under(world).PlacedAt(ik.PolePoint(distance: 0.5f)).Lock(Channels.Turn);
        rig.TwoBone(ik).Reach(hand).Face(pole);

        // fk
        var fk = chain.Copy("fk").Under(grp);
        var fk_controls = new List<Control>();
        foreach (var joint in chain)
        {
            var parent = fk_controls.Any() ? fk_controls.Last() : collar;
            var control = rig.Control($"turn_{joint.Name}").Under(parent).PlacedAt(joint).Lock(Channels.Move);
            rig.Drive(fk.Of(joint)).ByChannels(control);
            fk_controls.Add(control);
        }

        // ik / fk
        var fk_switch = hand.Switch("fk").AlsoOn(collar);
        rig.Blend(chain).From(ik, fk_switch.Inverse).From(fk, fk_switch);

        var labels = new Dictionary<string, Weight> { ["ik"] = fk_switch.Inverse, ["fk"] = fk_switch };
        foreach (var pair in labels)
            rig.Label($"{pair.Key}_arm_label_{side}", pair.Key.ToUpperInvariant()).Under(collar).ShownBy(pair.Value);
    }
}
