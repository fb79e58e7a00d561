using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY4004: a skeleton has one joint that carries all others.</summary>
internal sealed class SeveralRoots : ModelRule
{
    public override string Id => "CDY4004";

    public override string Title => "Skeleton with several roots";

    public override Severity Severity => Severity.Info;

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        var roots = new Dictionary<RigSkeleton, List<RigNode>>();
        foreach (var node in model.Nodes)
        {
            if (node is not { IsExported: true, IsUnknown: false, Skeleton: { IsUnknown: false } skeleton } || !node.Parent.TryKnown(out var parent) || parent is not null)
                continue;
            if (!roots.TryGetValue(skeleton, out var its))
                roots[skeleton] = its = [];
            if (its.Count == 0 || its[0].Scope == node.Scope)
                its.Add(node);
        }

        foreach (var pair in roots.Where(pair => pair.Value.Count > 1))
        {
            var (skeleton, its) = (pair.Key, pair.Value);
            yield return new Finding(
                this,
                its[1],
                $"{Capital(skeleton.Title)} has {its.Count} roots, {its[0].Title} and {its[1].Title}{(its.Count > 2 ? " among them" : "")}: no joint moves all of it, and an engine that takes one root for a skeleton leaves the rest behind. Hang them under one root, or declare a skeleton for each.",
                its[1].Place)
            {
                Related = [.. its.Select(root => root.Place).Prepend(skeleton.Place).Where(place => place != its[1].Place).Distinct()],
            };
        }
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text.Substring(1);
}
