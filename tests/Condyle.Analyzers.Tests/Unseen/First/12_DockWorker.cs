using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R12;

/// <summary>A dock worker with a hand hook, kept as tables: bones, limbs, props, limits.</summary>
public sealed class DockWorker : IRigDefinition
{
    private sealed record Bone(string Name, string? Parent, float X, float Y, float Z, JointRole Role = JointRole.Deform);

    private sealed record LimbRow(string Name, string From, string To, string Hold, float Pole, string[] Labels);

    private sealed record LimitRow(Axis Axis, float From, float To);

    private static readonly Bone[] Bones =
    [
        new("root", null, 0, 0, 0, JointRole.Helper),
        new("pelvis", "root", 0, 0.95f, 0),
        new("waist", "pelvis", 0, 0.12f, 0),
        new("chest", "waist", 0, 0.18f, -0.01f),
        new("neck", "chest", 0, 0.28f, 0.02f),
        new("head", "neck", 0, 0.1f, 0.02f),
        new("shoulder?", "chest", 0.19f, 0.2f, 0),
        new("upper_twist?", "shoulder?", 0.14f, 0, -0.02f, JointRole.Twist),
        new("elbow?", "upper_twist?", 0.14f, 0, -0.02f),
        new("wrist?", "elbow?", 0.26f, 0, 0.05f),
        new("hip?", "pelvis", 0.1f, -0.04f, 0),
        new("knee?", "hip?", 0, -0.42f, 0.03f),
        new("ankle?", "knee?", 0, -0.41f, -0.04f),
        new("toes?", "ankle?", 0, -0.06f, 0.13f),
        new("hook", "wrist_right", -0.08f, -0.02f, 0.03f, JointRole.Helper),
    ];

    private static readonly Dictionary<string, LimitRow[]> Limits = new()
    {
        ["head"] = [new(Axis.X, -40, 40), new(Axis.Y, -70, 70)],
        ["neck"] = [new(Axis.X, -20, 30)],
        ["waist"] = [new(Axis.X, -15, 45), new(Axis.Y, -30, 30), new(Axis.Z, -20, 20)],
    };

    private static readonly LimbRow[] Limbs =
    [
        new("arm", "shoulder?", "wrist?", "chest", 0.5f, ["reach", "swing"]),
        new("leg", "hip?", "ankle?", "pelvis", 0.7f, ["step", "kick"]),
    ];

    private static readonly string[] Row = ["pelvis", "waist", "chest", "neck", "head"];

    private readonly Dictionary<string, Joint> joints = [];
    private readonly Dictionary<string, Control> controls = [];

    public void Define(RigDraft rig)
    {
        joints.Clear();
        controls.Clear();
        var skeleton = rig.Skeleton("dock_worker");
        foreach (var bone in Bones.SelectMany(Sided))
        {
            var at = new Vector3(bone.X, bone.Y, bone.Z);
            joints[bone.Name] = bone.Parent is null ? skeleton.Root(bone.Name, bone.Role, at) : joints[bone.Parent].Child(bone.Name, bone.Role, at);
        }

        var ground = controls["root"] = rig.Control("ground").PlacedAt(joints["root"]);
        rig.Drive(joints["root"]).ByChannels(ground);
        foreach (var (name, above) in Row.Zip(Row.Prepend("root")))
        {
            var control = controls[name] = rig.Control($"pose_{name}").Under(controls[above]).PlacedAt(joints[name]);
            foreach (var limit in Limits.GetValueOrDefault(name) ?? [])
                control = control.LimitTurn(limit.Axis, limit.From, limit.To);
            rig.Drive(joints[name]).ByChannels(control);
        }

        var systems = rig.Group("systems_group");
        foreach (var limb in Limbs)
        {
            foreach (var side in Side.Both)
                Build(rig, limb, side, systems);
        }

        rig.Drive(joints["hook"]).ByMatrix(controls["hook"] = rig.Control("hook_grip").Under(controls["tip_arm_right"]).PlacedAt(joints["hook"]));
        foreach (var (name, joint) in joints.Where(pair => pair.Key.StartsWith("toes")).OrderBy(pair => pair.Key))
            rig.Drive(joint).ByChannels(rig.Control($"curl_{name}").Under(controls[name.Replace("toes", "tip_leg")]).PlacedAt(joint));
    }

    private void Build(RigDraft rig, LimbRow limb, Side side, Group systems)
    {
        string At(string name) => name.Replace("?", $"_{side}");
        var hold = controls[limb.Hold];
        var chain = rig.Chain(joints[At(limb.From)], joints[At(limb.To)]).Without(JointRole.Twist);
        var parts = rig.Group($"{limb.Name}_{side}_group").Under(systems).PlacedAt(hold);
        rig.Drive(parts).ByMatrix(hold);

        var copies = limb.Labels.ToDictionary(label => label, label => chain.Copy(label).Under(parts));
        var goal = controls[$"tip_{limb.Name}_{side}"] = rig.Control($"goal_{limb.Name}_{side}").Under(controls["root"]).PlacedAt(chain.Tip);
        var pole = rig.Control($"pole_{limb.Name}_{side}").Under(controls["root"]).PlacedAt(chain.PolePoint(limb.Pole));
        rig.TwoBone(copies[limb.Labels[0]]).Reach(goal).Face(pole);

        Node above = hold;
        foreach (var joint in chain)
        {
            var turn = rig.Control($"{limb.Labels[1]}_{joint}_turn").Under(above).PlacedAt(joint);
            rig.Drive(copies[limb.Labels[1]].Of(joint)).ByChannels(turn);
            above = turn;
        }

        var amount = goal.Switch(limb.Labels[1]);
        var weights = new[] { amount.Inverse, amount };
        var blend = rig.Blend(chain);
        foreach (var (label, weight) in limb.Labels.Zip(weights))
        {
            blend = blend.From(copies[label], weight);
            rig.Label($"{label}_label_{side}", label.ToUpperInvariant()).Under(goal).ShownBy(weight);
        }
    }

    private static IEnumerable<Bone> Sided(Bone bone) => !bone.Name.Contains('?')
        ? [bone]
        : Side.Both.Select(side => bone with
        {
            Name = bone.Name.Replace("?", $"_{side}"),
            Parent = bone.Parent?.Replace("?", $"_{side}"),
            X = bone.X * side.Sign,
        });
}
