using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1008: the tag of a copy stands where the team has it, also in the names of what belongs to the copy.</summary>
internal sealed class TagInAnotherPlace : ModelRule
{
    public override string Id => "CDY1008";

    public override string Title => "Tag in another place than the team's";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "put it there";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        if (!conventions.IsTagPlaceSet)
            yield break;
        var tags = model.Copies.Where(copy => copy.Tag.TryKnown(out var tag) && tag.Length > 0).Select(copy => copy.Tag.ToString()).Distinct().ToList();
        foreach (var node in model.Nodes)
        {
            if (node.Kind is not (NodeKind.Control or NodeKind.Group) || node.IsUnknown || !node.Name.TryKnown(out var name)
                || tags.Select(tag => Moved(name, tag, conventions)).FirstOrDefault(moved => moved is not null) is not { } right)
                continue;
            yield return new Finding(
                this,
                node,
                $"'{name}' has its tag {(conventions.IsTagAfterPart ? "before" : "after")} the part, and copies of this team have it {(conventions.IsTagAfterPart ? "after" : "before")} it: in a list by names it stands apart from what it belongs to. Name it '{right}'.",
                node.Place)
            {
                Repairs = [new ReplaceText(node.Id, 0, right, $"Rename to '{right}'") { From = name }],
            };
        }
    }

    /// <summary>The name with its tag where the team has it; none where it stands there already, or isn't in it.</summary>
    private static string? Moved(string name, string tag, Conventions conventions)
    {
        var end = conventions.EndOfPart(name);
        var part = name.Substring(0, end);
        var (first, last) = (tag + "_", "_" + tag);
        var rest = conventions.IsTagAfterPart
            ? part.StartsWith(first, StringComparison.Ordinal) && !part.EndsWith(last, StringComparison.Ordinal) ? part.Substring(first.Length) : ""
            : part.EndsWith(last, StringComparison.Ordinal) && !part.StartsWith(first, StringComparison.Ordinal) ? part.Substring(0, end - last.Length) : "";
        return rest.Length == 0 ? null : conventions.Tagged(tag, rest + name.Substring(end)).ToString();
    }
}
