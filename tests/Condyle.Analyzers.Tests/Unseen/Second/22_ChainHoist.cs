using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R22;

/// <summary>
/// The hoist in the boat shed. Lengths and names come from the props team's part list, which is a tree in pre-order with depths;
/// the old cloth tool finds some parts by name, so these keep theirs.
/// </summary>
public sealed class ChainHoist : IRigDefinition
{
    private static readonly (int Depth, string Part, float Down)[] PartList =
    [
        (0, "beam", 0f),
        (1, "trolley", 0.15f),
        (2, "upper_block", 0.4f),
        (3, "chain_1", 0.3f),
        (4, "chain_2", 0.3f),
        (5, "chain_3", 0.3f),
        (6, "hook", 0.25f),
        (3, "hand_chain", 0.5f),
        (4, "hand_chain_end", 1.1f),
        (2, "brake", 0.1f),
    ];

    private sealed class Part
    {
        public required string Name { get; init; }
        public required Joint Joint { get; init; }
        public Part? Parent { get; init; }
        public LinkedList<Part> Children { get; } = new();
        public int Depth => Parent is null ? 0 : Parent.Depth + 1;
    }

    public void Define(RigDraft rig)
    {
        var beam = ReadParts(rig.Skeleton("chain_hoist"));
        var controls = new Dictionary<Part, Control>();

        // breadth first: a control's parent is there before it
        var open = new Queue<Part>();
        open.Enqueue(beam);
        while (open.TryDequeue(out var part))
        {
            controls[part] = MakeControl(rig, part, part.Parent is null ? null : controls[part.Parent]);
            foreach (var child in part.Children)
                open.Enqueue(child);
        }

        var byName = controls.ToDictionary(entry => entry.Key.Name, entry => entry.Value);
        Load(rig, byName["hook"], byName["trolley"]);

        var deepest = controls.Keys.MaxBy(part => part.Depth)!;
        rig.Label("load_label", $"max 2 t, {deepest.Depth} parts deep").Under(byName["trolley"]).ShownBy(1f);
    }

    private static Part ReadParts(Skeleton skeleton)
    {
        Part? root = null;
        var path = new Stack<Part>();
        foreach (var (depth, name, down) in PartList)
        {
            while (path.Count > depth)
                path.Pop();

            Part part;
            if (path.TryPeek(out var parent))
            {
                part = new Part { Name = name, Parent = parent, Joint = parent.Joint.Child(name, at: new Vector3(0, -down, 0)) };
                parent.Children.AddLast(part);
            }
            else
            {
                root = part = new Part { Name = name, Joint = skeleton.Root(name, at: new Vector3(0, 4, 0)) };
            }

            path.Push(part);
        }

        return root!;
    }

    private static Control MakeControl(RigDraft rig, Part part, Control? parent)
    {
        var control = rig.Control($"move_{part.Name}").PlacedAt(part.Joint);
        if (parent is not null)
            control.Under(parent.Value);

        if (part.Name.Contains("chain"))
            control.Lock(Channels.Move | Channels.TurnY);
        else if (part.Name is "trolley")
            control.Lock(Channels.Turn).LimitMove(Axis.X, -3, 3);
        else if (part.Parent?.Name == "upper_block")
            control.Lock(Channels.MoveX | Channels.MoveZ);

        rig.Drive(part.Joint).ByChannels(control);
        return control;
    }

    // What hangs on the hook is a group, driven by the hook while it hangs and left on the floor otherwise.
    private static void Load(RigDraft rig, Control hook, Control trolley)
    {
        var load = rig.Group("load").PlacedAt(hook).Accept("CDY1001", because: "the cloth tool looks for this name");
        var floor = rig.Control("floor").PlacedAt(hook).Lock(Channels.Turn);
        var hangs = hook.Switch("hangs", 1).AlsoOn(trolley).AlsoOn(floor);
        rig.Blend(load).From(hook, hangs).From(floor, hangs.Inverse);
    }
}
