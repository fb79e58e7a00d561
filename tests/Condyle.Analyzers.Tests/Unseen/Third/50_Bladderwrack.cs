using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R50;

/// <summary>Seaweed on the pier's piles: a holdfast, stipes and fronds that fork. No recursion anywhere.</summary>
public sealed class Bladderwrack : IRigDefinition
{
    private const int Depth = 6;
    private const float Shrink = 0.82f;

    private readonly record struct Frond(Joint Joint, int Level, int Number, float Length);

    public void Define(RigDraft rig)
    {
        var holdfast = rig.Skeleton("bladderwrack").Root("holdfast");
        var children = new Dictionary<Joint, List<Joint>>();
        var levels = new Dictionary<Joint, int> { [holdfast] = 0 };

        Grow(holdfast, children, levels);

        // First the controls, breadth first, so that each parent is there before its children.
        var controls = new Dictionary<Joint, Control>();
        var world = rig.Control("world");
        var open = new Queue<(Joint Joint, Control Above)>();
        open.Enqueue((holdfast, world));
        while (open.TryDequeue(out var next))
        {
            var control = rig.Control($"sway_{next.Joint.Name}").Under(next.Above).PlacedAt(next.Joint);
            if (levels[next.Joint] >= 3)
                control.Lock(Channels.Move);
            controls.Add(next.Joint, control);
            if (!children.TryGetValue(next.Joint, out var below))
                continue;
            foreach (var child in below)
                open.Enqueue((child, control));
        }

        // Then the drives, depth first: the log reads frond by frond that way.
        var current = rig.Group("current_group").Under(world);
        var stack = new Stack<Joint>([holdfast]);
        var leaves = new List<Joint>();
        while (stack.Count > 0)
        {
            var joint = stack.Pop();
            if (children.TryGetValue(joint, out var below))
            {
                rig.Drive(joint).ByChannels(controls[joint]);
                for (var i = below.Count - 1; i >= 0; i--)
                    stack.Push(below[i]);
            }
            else
            {
                leaves.Add(joint);
            }
        }

        var drift = world.Switch("drift");
        var pending = new LinkedList<Joint>(leaves);
        while (pending.First is { } node)
        {
            pending.RemoveFirst();
            var target = rig.Group($"drift_{node.Value.Name}_group").Under(current).PlacedAt(node.Value);
            rig.Blend(node.Value).From(controls[node.Value], drift.Inverse).From(target, drift);
        }

        rig.Label("drift_label", "DRIFTING").ShownBy(drift);
    }

    private static void Grow(Joint holdfast, Dictionary<Joint, List<Joint>> children, Dictionary<Joint, int> levels)
    {
        var queue = new PriorityQueue<Frond, (int Level, int Number)>();
        queue.Enqueue(new Frond(holdfast, 0, 0, 0.3f), (0, 0));
        var made = 1;
        while (queue.TryDequeue(out var frond, out _))
        {
            if (frond.Level == Depth)
                continue;
            var forks = frond.Level switch
            {
                0 => 3,
                2 or 4 => 2,
                _ => 1,
            };
            var below = children[frond.Joint] = [];
            for (var fork = 0; fork < forks; fork++)
            {
                var angle = (fork * MathF.Tau / forks) + (0.4f * frond.Level);
                var spread = forks == 1 ? 0f : 0.3f;
                var at = new Vector3(spread * frond.Length * MathF.Cos(angle), frond.Length, spread * frond.Length * MathF.Sin(angle));
                var child = frond.Joint.Child($"frond_{made}", at: at);
                below.Add(child);
                levels[child] = frond.Level + 1;
                queue.Enqueue(new Frond(child, frond.Level + 1, made, frond.Length * Shrink), (frond.Level + 1, made));
                made++;
            }
        }
    }
}
