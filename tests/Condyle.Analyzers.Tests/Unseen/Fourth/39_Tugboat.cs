using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R39;

public sealed class Tugboat : IRigDefinition
{
    private static readonly Dictionary<string, (string Name, Vector3 At)[]> Tree = new()
    {
        ["hull"] = [("deck", new(0, 1.1f, 0)), ("rudder", new(0, -0.3f, -4)), ("screw", new(0, -0.5f, -3.6f))],
        ["deck"] = [("wheelhouse", new(0, 0.2f, 1)), ("tow_post", new(0, 0.2f, -2)), ("arm_root", new(0.8f, 0.2f, -1))],
        ["wheelhouse"] = [("funnel", new(0, 1.5f, -1.2f)), ("lamp", new(0, 2.4f, 0.3f)), ("wheel", new(0, 0.9f, 0.7f))],
        ["arm_root"] = [("arm_knee", new(0, 1.4f, 0.3f))],
        ["arm_knee"] = [("arm_tip", new(0, 1.1f, -0.9f))],
    };

    private static readonly HashSet<string> Still = ["deck", "arm_root", "arm_knee", "arm_tip"];

    public void Define(RigDraft rig)
    {
        var joints = new Dictionary<string, Joint> { ["hull"] = rig.Skeleton("tugboat").Root("hull", at: new Vector3(0, 0.5f, 0)) };
        var above = new Dictionary<string, string>();
        var order = new List<string>();

        var queue = new Queue<string>();
        queue.Enqueue("hull");
        while (queue.TryDequeue(out var name))
        {
            order.Add(name);
            if (!Tree.TryGetValue(name, out var below))
                continue;
            foreach (var (child, at) in below)
            {
                joints[child] = joints[name].Child(child, at: at);
                above[child] = name;
                queue.Enqueue(child);
            }
        }

        var controls = new Dictionary<string, Control>();
        var world = rig.Control("world");
        foreach (var name in order)
        {
            if (Still.Contains(name))
                continue;
            var parent = name;
            var node = world;
            while (above.TryGetValue(parent, out parent!))
            {
                if (controls.TryGetValue(parent, out node))
                    break;
            }

            if (parent is null)
                node = world;
            controls[name] = rig.Control($"move_{name}").Under(node).PlacedAt(joints[name]);
            rig.Drive(joints[name]).ByChannels(controls[name]);
        }

        controls["rudder"].LimitTurn(Axis.Y, -35, 35);
        controls["screw"].Lock(Channels.Move | Channels.TurnX | Channels.TurnY);

        // the towing arm
        var path = new Stack<string>();
        for (var name = "arm_tip"; name != "deck"; name = above[name])
            path.Push(name);
        var arm = rig.Chain(joints[path.Peek()], joints["arm_tip"]);
        var ik = arm.Copy("ik").Under(joints["deck"]);
        var fk = arm.Copy("fk").Under(joints["deck"]);
        var tow = rig.Control("tow").Under(world).PlacedAt(joints["arm_tip"]);
        rig.TwoBone(ik).Reach(tow).Face(controls["wheelhouse"]);
        Node last = joints["deck"];
        while (path.TryPop(out var name))
        {
            var turn = rig.Control($"turn_{name}").Under(last).PlacedAt(joints[name]);
            rig.Drive(fk.Of(joints[name])).ByChannels(turn);
            last = turn;
        }

        var fkAmount = tow.Switch("fk");
        rig.Blend(arm).From(ik, fkAmount).From(fk, fkAmount.Inverse);
        rig.Label("tow_label", "IK").Under(tow).ShownBy(fkAmount.Inverse);
    }
}
