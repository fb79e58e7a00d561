using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>The nodes that are being worked out, each for the one before it: a node that comes up again closes a loop.</summary>
internal sealed class NodePath
{
    private readonly List<RigNode> nodes = [];
    private readonly HashSet<int> ids = [];

    /// <summary>The node that is being worked out now; none at the beginning.</summary>
    public RigNode? Current => nodes.Count == 0 ? null : nodes[nodes.Count - 1];

    /// <summary>Why the node can't be worked out now; none when it can, and then it is on the path until <see cref="Leave"/>.</summary>
    public string? Enter(RigNode node)
    {
        if (!ids.Add(node.Id))
        {
            var loop = nodes.SkipWhile(candidate => candidate.Id != node.Id).Append(node);
            return $"Each of these needs the next one first: {string.Join(" -> ", loop.Select(step => step.Title))}. Break the loop: hang, place or drive one of them by a node outside it.";
        }

        if (!HasRoom())
        {
            ids.Remove(node.Id);
            return $"{node.Title} hangs too deep to be worked out: {nodes.Count} nodes need it. Make the hierarchy flatter.";
        }

        nodes.Add(node);
        return null;
    }

    public void Leave()
    {
        ids.Remove(nodes[nodes.Count - 1].Id);
        nodes.RemoveAt(nodes.Count - 1);
    }

    private static bool HasRoom()
    {
        try
        {
            RuntimeHelpers.EnsureSufficientExecutionStack();
            return true;
        }
        catch (InsufficientExecutionStackException)
        {
            return false;
        }
    }
}
