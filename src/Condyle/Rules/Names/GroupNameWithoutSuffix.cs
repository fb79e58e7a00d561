using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1001: a group's name must end in the team's group suffix.</summary>
internal sealed class GroupNameWithoutSuffix : ModelRule
{
    private const string Vowels = "aeiou";

    public override string Id => "CDY1001";

    public override string Title => "Group name without the required suffix";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "append it, in place of its short form";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        var suffix = conventions.GroupSuffix;
        var delivered = new DeliveredLetters(model);
        foreach (var group in model.Nodes)
        {
            if (group.Kind != NodeKind.Group || group.IsUnknown || group.Name.EndsWith(suffix) != Answer.No || WouldEndInIt(group.Name))
                continue;
            var shortened = ShortFormIn(group.Name, suffix);
            var right = group.Name.ToString() is var name ? name.Substring(0, name.Length - shortened.Length) + suffix : "";
            yield return new Finding(
                this,
                group,
                $"Group '{group.Name}' doesn't end in '{suffix}': people and tools that tell groups from controls by their names will take it for a handle. Name it '{right}'.",
                group.Place)
            {
                Repairs = [new AppendText(group.Id, 0, suffix, $"Rename to '{right}'") { Instead = shortened }],
            };
        }

        // 'arm group' isn't portable, which is another rule's finding, and is put right by that.
        bool WouldEndInIt(Text name) => name.TryKnown(out var known) && NotPortable.Faulty(known, delivered, conventions)
            && NotPortable.Portable(known) is { } portable && portable.EndsWith(suffix, StringComparison.Ordinal);
    }

    /// <summary>What another team ends its groups' names in, where that is the suffix cut short: <c>_grp</c>; else nothing.</summary>
    private static string ShortFormIn(Text name, string suffix)
    {
        var end = name.Pieces[name.Pieces.Count - 1] ?? "";
        var mark = end.LastIndexOf('_');
        return mark >= 0 && (mark > 0 || name.IsOpen) && suffix.Length > 1 && suffix[0] == '_' && IsShortFor(end.Substring(mark + 1).ToLowerInvariant(), suffix.Substring(1).ToLowerInvariant()) ? end.Substring(mark) : "";
    }

    // Its beginning, or all but its vowels; or the same with other capitals.
    private static bool IsShortFor(string word, string whole) =>
        word.Length > 1 && (whole.StartsWith(word, StringComparison.Ordinal) || word == whole[0] + string.Concat(whole.Skip(1).Where(letter => !Vowels.Contains(letter))));
}
