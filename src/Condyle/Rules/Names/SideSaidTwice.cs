using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1009: a name ends in one side's mark, not in two: recipes and loops append it to what they are given.</summary>
internal sealed class SideSaidTwice : Rule
{
    public override string Id => "CDY1009";

    public override string Title => "Name that says its side twice";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "leave it to the recipe";

    public override IEnumerable<Finding> Check(CheckedRig rig)
    {
        var given = new GivenNames(rig.Model);
        var delivered = new Lazy<HashSet<string>>(() => [.. rig.Model.Nodes.Where(node => node.IsExported && Doubled(node.Name, rig.Conventions) is not null).Select(node => node.Name.ToString())]);
        foreach (var node in rig.Model.Nodes)
        {
            if (node.Kind is not (NodeKind.Control or NodeKind.Group) || node.IsUnknown || Doubled(node.Name, rig.Conventions) is not { } doubled
                || (doubled.Inner != doubled.Outer && !IsMistaken(node, doubled, given, rig)) || PartsOf(doubled.Name).Any(delivered.Value.Contains))
                continue;
            var (right, other) = (doubled.Once, doubled.With(doubled.Inner, doubled.Outer.Opposite));
            var isTaken = given.Contain(right);
            yield return new Finding(
                this,
                node,
                $"'{doubled.Name}' {(doubled.Inner == doubled.Outer ? $"says its side twice: by its name its counterpart would be '{other}', which says both" : "says both sides, and so neither")}: what goes by sides, as a pose that is mirrored, passes it over. {(isTaken ? $"Another is called '{right}', so give it another name, with its side once." : $"Name it '{right}'; give a recipe the name without its side, which it appends by itself.")}",
                node.Place)
            {
                Repairs = isTaken ? [] : [new ReplaceText(node.Id, 0, right, $"Rename to '{right}'") { From = doubled.Name }],
            };
        }
    }

    // What is called after a joint says what the joint says.
    private static IEnumerable<string> PartsOf(string name)
    {
        var words = name.Split('_');
        return Enumerable.Range(0, words.Length).SelectMany(first => Enumerable.Range(1, words.Length - first).Select(count => string.Join("_", words, first, count)));
    }

    // "slide_left_right" says a way: only what stands on the side that it says last, and has a fellow on the other, was given both by mistake.
    private static bool IsMistaken(RigNode node, DoubledSide doubled, GivenNames given, CheckedRig rig) =>
        Limbs.JointOf(node) is { } joint && rig.Pairs.SideOf(joint) == doubled.Outer
        && (given.Contain(doubled.With(doubled.Inner, doubled.Outer.Opposite)) || given.Contain(doubled.With(doubled.Inner.Opposite, doubled.Outer.Opposite)));

    private static DoubledSide? Doubled(Text text, Conventions conventions) =>
        text.TryKnown(out var name) ? Doubled(name, Side.Left, conventions) ?? Doubled(name, Side.Right, conventions) : null;

    private static DoubledSide? Doubled(string name, Side outer, Conventions conventions)
    {
        var (mark, at) = (conventions.MarkOf(outer), SidedName.MarkIn(name, conventions.MarkOf(outer)));
        if (at <= 0 || MarkBefore(name, at, conventions) is not { } inner)
            return null;
        var (before, behind) = (name.Substring(0, at - conventions.MarkOf(inner).Length), name.Substring(at + mark.Length));
        return before.Length > 0 && !EndsInMark(before, conventions) && !BeginsWithMark(behind, conventions)
            ? new(name, before.Length, inner, outer, conventions)
            : null;
    }

    private static Side? MarkBefore(string name, int end, Conventions conventions)
    {
        var (left, right) = (conventions.LeftMark, conventions.RightMark);
        return end >= left.Length && string.CompareOrdinal(name, end - left.Length, left, 0, left.Length) == 0 ? Side.Left
            : end >= right.Length && string.CompareOrdinal(name, end - right.Length, right, 0, right.Length) == 0 ? Side.Right
            : null;
    }

    // With a third one it is a way that is said for a side: "slide_left_right_left".
    private static bool EndsInMark(string part, Conventions conventions) => Side.Both.Any(side => part.EndsWith(conventions.MarkOf(side), StringComparison.Ordinal));

    private static bool BeginsWithMark(string part, Conventions conventions) => Side.Both.Any(side => (part + "_").StartsWith(conventions.MarkOf(side) + "_", StringComparison.Ordinal));

    /// <summary>A name with two marks, one behind the other.</summary>
    private sealed record DoubledSide(string Name, int At, Side Inner, Side Outer, Conventions Conventions)
    {
        /// <summary>The name with the last mark alone.</summary>
        public string Once => Name.Remove(At, Conventions.MarkOf(Inner).Length);

        /// <summary>The name with other marks.</summary>
        public string With(Side inner, Side outer) =>
            Name.Substring(0, At) + Conventions.MarkOf(inner) + Conventions.MarkOf(outer) + Name.Substring(At + Conventions.MarkOf(Inner).Length + Conventions.MarkOf(Outer).Length);
    }
}
