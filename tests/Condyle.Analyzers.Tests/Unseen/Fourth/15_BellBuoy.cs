using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R15;

public class BellBuoy : IRigDefinition
{
    static readonly Dictionary<string, string[]> below = new()
    {
        ["float"] = ["cage", "ring", "keel"],
        ["cage"] = ["bell", "lamp", "post_left", "post_right"],
        ["bell"] = ["clapper"],
        ["keel"] = ["link1"],
        ["link1"] = ["link2"],
        ["link2"] = ["link3"],
    };

    static readonly Dictionary<string, Vector3> places = new()
    {
        ["cage"] = new(0, 1, 0),
        ["ring"] = new(0, 0.2f, 1.1f),
        ["keel"] = new(0, -0.8f, 0),
        ["bell"] = new(0, 1.2f, 0),
        ["lamp"] = new(0, 2, 0),
        ["post_left"] = new(0.6f, 0, 0),
        ["post_right"] = new(-0.6f, 0, 0),
        ["clapper"] = new(0, -0.1f, 0),
        ["link1"] = new(0, -0.4f, 0),
        ["link2"] = new(0, -0.4f, 0.05f),
        ["link3"] = new(0, -0.4f, -0.05f),
    };

    static readonly HashSet<string> still = ["post_left", "post_right"];

    public void Define(RigDraft rig)
    {
        var root = rig.Skeleton("bell_buoy").Root("float");
        var found = new Dictionary<string, Joint> { [root.Name] = root };
        var depth = new Dictionary<string, int> { [root.Name] = 0 };
        var queue = new Queue<Joint>();
        queue.Enqueue(root);
        while (queue.Count > 0)
        {
            var joint = queue.Dequeue();
            if (!below.TryGetValue(joint.Name, out var names))
                continue;
            foreach (var name in names)
            {
                var child = joint.Child(name, still.Contains(name) ? JointRole.Helper : JointRole.Deform, places[name]);
                found.Add(name, child);
                depth[name] = depth[joint.Name] + 1;
                queue.Enqueue(child);
            }
        }

        var controls = new Dictionary<string, Control>();
        var visit = new Queue<(string Name, string? Parent)>();
        visit.Enqueue(("float", null));
        while (visit.TryDequeue(out var next))
        {
            if (!still.Contains(next.Name))
            {
                var control = rig.Control("turn_" + next.Name).PlacedAt(found[next.Name]);
                if (next.Parent != null && controls.TryGetValue(next.Parent, out var parent))
                    control.Under(parent);
                if (depth[next.Name] >= 2)
                    control.Lock(Channels.Move);
                controls[next.Name] = control;
            }

            if (below.ContainsKey(next.Name))
                foreach (var child in below[next.Name])
                    visit.Enqueue((child, next.Name));
        }

        // The mooring: its links are solved or turned.
        var mooring = rig.Chain(found["link1"], found["link3"]);
        var group = rig.Group("mooring_group").Under(controls["keel"]).PlacedAt(mooring.Root);
        var ik = mooring.Copy("ik").Under(group);
        var fk = mooring.Copy("fk").Under(group);
        var stone = rig.Control("sinker").PlacedAt(mooring.Tip);
        rig.TwoBone(ik).Reach(stone);
        var mine = new HashSet<string>();
        foreach (var joint in mooring)
        {
            rig.Drive(fk.Of(joint)).ByChannels(controls[joint.Name]);
            mine.Add(joint.Name);
        }

        var free = stone.Switch("fk");
        rig.Blend(mooring).From(ik, free.Inverse).From(fk, free);

        foreach (var pair in controls)
        {
            if (mine.Contains(pair.Key))
                continue;
            if (pair.Key == "clapper")
                rig.Drive(found[pair.Key]).ByMatrix(pair.Value);
            else
                rig.Drive(found[pair.Key]).ByChannels(pair.Value);
        }
    }
}
