using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Finds loops among what nodes need. Each node is gone through once.</summary>
internal sealed class NeedLoops(RigModel model, Func<RigNode, bool, IEnumerable<NodeNeed>> needsOf)
{
    private readonly HashSet<(int, bool)> begun = [];
    private readonly Dictionary<(int, bool), int> onPath = [];
    private readonly List<NodeNeed> path = [];

    /// <summary>The loops, each as its needs in order.</summary>
    public IEnumerable<IReadOnlyList<NodeNeed>> Find()
    {
        foreach (var node in model.Nodes)
        {
            foreach (var loop in From(node))
                yield return loop;
        }
    }

    // Rigs may be deep, so the way is kept in a list and not on the stack.
    private IEnumerable<IReadOnlyList<NodeNeed>> From(RigNode start)
    {
        if (!begun.Add((start.Id, false)))
            yield break;
        var open = new Stack<((int, bool) Key, IEnumerator<NodeNeed> Needs)>();
        Enter((start.Id, false), start, false);
        while (open.Count > 0)
        {
            var (key, needs) = open.Peek();
            if (!needs.MoveNext())
            {
                open.Pop();
                onPath.Remove(key);
                if (path.Count > 0)
                    path.RemoveAt(path.Count - 1);
                continue;
            }

            var need = needs.Current;
            var next = (need.Node.Id, need.OfChannels);
            if (onPath.TryGetValue(next, out var from))
                yield return [.. path.Skip(from), need];
            if (!begun.Add(next))
                continue;
            path.Add(need);
            Enter(next, need.Node, need.OfChannels);
        }

        void Enter((int, bool) key, RigNode node, bool channels)
        {
            onPath[key] = path.Count;
            open.Push((key, needsOf(node, channels).GetEnumerator()));
        }
    }
}
