using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.Second.R40;

/// <summary>A ship's derrick as a tree of spars. Joints are declared depth first, controls breadth first, so that they list from coarse to fine.</summary>
public sealed class CargoDerrick : IRigDefinition
{
    private static readonly Spar Tree = new("king_post", 0, 0, 0)
    {
        Parts =
        {
            new Spar("boom_fore", 0, 1.5f, 0.6f)
            {
                Parts =
                {
                    new Spar("boom_fore_mid", 0, 1.8f, 3) { Parts = { new Spar("head_fore", 0, 1.2f, 2.6f) } },
                    new Spar("topping_fore", 0, 3, -0.4f),
                },
            },
            new Spar("boom_aft", 0, 1.5f, -0.6f)
            {
                Parts = { new Spar("head_aft", 0, 3, -5) { Parts = { new Spar("block_aft", 0, -0.3f, 0), new Spar("hook_aft", 0, -2, 0) } } },
            },
            new Spar("crosstree", 0, 6, 0)
            {
                Parts = { new Spar("guy_left", 1.4f, 0, 0), new Spar("guy_right", -1.4f, 0, 0) },
            },
        },
    };

    public void Define(RigDraft rig)
    {
        var joints = new Dictionary<Spar, Joint>();
        var skeleton = rig.Skeleton("cargo_derrick");
        var stack = new Stack<(Spar Spar, Spar? Above)>();
        stack.Push((Tree, null));
        while (stack.TryPop(out var next))
        {
            joints[next.Spar] = next.Above is { } above
                ? joints[above].Child(next.Spar.Name, at: next.Spar.At)
                : skeleton.Root(next.Spar.Name, at: next.Spar.At);
            foreach (var part in Enumerable.Reverse(next.Spar.Parts))
                stack.Push((part, next.Spar));
        }

        var queue = new Queue<(Spar Spar, Node Above, int Depth)>();
        queue.Enqueue((Tree, rig.Control("derrick"), 0));
        var deepest = Depth(Tree);
        while (queue.Count > 0)
        {
            var (spar, above, depth) = queue.Dequeue();
            var control = rig.Control($"l{depth}_{spar.Name}").Under(above).PlacedAt(joints[spar]);
            if (depth == deepest)
                control.Lock(Channels.Move);
            else if (depth > 0)
                control.LimitTurn(Axis.X, -90f / depth, 90f / depth);
            rig.Drive(joints[spar]).ByChannels(control);
            foreach (var part in spar.Parts)
                queue.Enqueue((part, control, depth + 1));
        }

        foreach (var hook in Tree.Find(spar => spar.Parts.Count == 0 && spar.Name.StartsWith("hook_")))
        {
            var reach = Sum(Path(Tree, hook));
            rig.Group($"{hook.Name}_load_{(reach.Z < 0 ? "aft" : "fore")}_group").Under(joints[hook]).PlacedAt(joints[hook]);
            rig.Label($"{hook.Name}_reach", $"{Math.Round(reach.Length())} m over {Count(Tree)} spars").Under(joints[hook]).ShownBy(1);
        }
    }

    private static int Depth(Spar spar) => spar.Parts.Count == 0 ? 0 : 1 + spar.Parts.Max(Depth);

    private static int Count(Spar spar) => 1 + spar.Parts.Sum(Count);

    private static Vector3 Sum(IEnumerable<Spar> path)
    {
        var sum = Vector3.Zero;
        foreach (var spar in path)
            sum += spar.At;
        return sum;
    }

    private static LinkedList<Spar> Path(Spar from, Spar to)
    {
        if (ReferenceEquals(from, to))
            return new LinkedList<Spar>([from]);
        foreach (var part in from.Parts)
        {
            var path = Path(part, to);
            if (path.Count == 0)
                continue;
            path.AddFirst(from);
            return path;
        }

        return new LinkedList<Spar>();
    }

    private sealed class Spar(string name, float x, float y, float z)
    {
        public string Name => name;

        public Vector3 At { get; } = new(x, y, z);

        public List<Spar> Parts { get; } = [];

        public IEnumerable<Spar> Find(Predicate<Spar> wanted)
        {
            if (wanted(this))
                yield return this;
            foreach (var part in Parts)
            {
                foreach (var found in part.Find(wanted))
                    yield return found;
            }
        }
    }
}
