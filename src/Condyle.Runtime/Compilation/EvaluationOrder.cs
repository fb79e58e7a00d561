using Condyle.Evaluation;

namespace Condyle.Runtime.Compilation;

/// <summary>Puts nodes in an order in which each comes after all that it needs.</summary>
internal sealed class EvaluationOrder
{
    private readonly List<PlannedNode> ordered = [];
    private readonly HashSet<PlannedNode> done = [];
    private readonly NodePath path = new();

    private EvaluationOrder()
    {
    }

    /// <exception cref="RigGeometryException">Nodes need each other in a loop.</exception>
    public static IReadOnlyList<PlannedNode> Of(IEnumerable<PlannedNode> nodes)
    {
        var order = new EvaluationOrder();
        foreach (var node in nodes)
            order.Visit(node);
        return order.ordered;
    }

    private void Visit(PlannedNode node)
    {
        if (done.Contains(node))
            return;
        if (path.Enter(node.Node) is { } fault)
            throw new RigGeometryException(fault);
        foreach (var needed in node.Needs)
            Visit(needed);
        path.Leave();
        done.Add(node);
        ordered.Add(node);
    }
}
