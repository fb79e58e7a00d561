using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>CDY1004: a name that the rig gives must mean the same everywhere: plain letters, digits and underscores, not too long, and not told apart by case alone.</summary>
internal sealed class NotPortable : ModelRule
{
    public override string Id => "CDY1004";

    public override string Title => "Name that isn't portable";

    public override Severity Severity => Severity.Warning;

    public override string Fix => "the portable form";

    protected override IEnumerable<Finding> Check(RigModel model, Conventions conventions)
    {
        // What the delivered joints have in their names the engine copes with, and controls are best called after joints.
        var delivered = new DeliveredLetters(model);
        return Nodes(model, delivered, conventions).Concat(Settings(model, delivered, conventions));
    }

    private IEnumerable<Finding> Nodes(RigModel model, DeliveredLetters delivered, Conventions conventions)
    {
        var given = new GivenNames(model);
        var byLetters = new Dictionary<string, (string Name, RigNode Node)>(model.Nodes.Count, StringComparer.OrdinalIgnoreCase);
        foreach (var node in model.Nodes)
        {
            if (node.IsUnknown || !node.Name.TryKnown(out var name))
                continue;
            var known = byLetters.TryGetValue(name, out var other);
            if (!known)
                byLetters.Add(name, (name, node));

            // The names of joints are the modeller's, and those of copied joints follow from them.
            if (node.Kind is NodeKind.Control or NodeKind.Group
                && Of(node, name, "node", known && other.Name != name ? other.Node : null, portable => !given.Contain(portable), delivered, conventions) is { } finding)
                yield return finding;
        }
    }

    // They are found by the name of their control and their own.
    private IEnumerable<Finding> Settings(RigModel model, DeliveredLetters delivered, Conventions conventions)
    {
        var named = model.Switches.Concat<RigSetting>(model.Dials).Concat(model.Choices).Where(setting => setting is { IsUnknown: false, Control.IsUnknown: false } && !setting.Name.IsOpen).ToList();
        var byLetters = new Dictionary<(RigNode, string), RigSetting>(named.Count);
        foreach (var setting in named)
        {
            var letters = Letters(setting.Control!, setting.Name.ToString());
            if (!byLetters.ContainsKey(letters))
                byLetters.Add(letters, setting);
        }

        foreach (var setting in named)
        {
            var (control, name) = (setting.Control!, setting.Name.ToString());
            var first = byLetters[Letters(control, name)];
            if (Of(setting, name, "setting", first.Name.SameAs(setting.Name) == Answer.No ? first : null, portable => !byLetters.ContainsKey(Letters(control, portable)), delivered, conventions) is { } finding)
                yield return finding with { ActsOn = control };
        }

        static (RigNode, string) Letters(RigNode control, string name) => (control, name.ToUpperInvariant());
    }

    private Finding? Of(RigElement named, string name, string kind, RigElement? butForCase, Func<string, bool> isFree, DeliveredLetters delivered, Conventions conventions)
    {
        var isWrong = Faulty(name, delivered, conventions);
        if (!isWrong && butForCase is null)
            return null;
        var faults = isWrong ? Faults(name, delivered, conventions) : [];
        if (butForCase is not null)
            faults.Add($"differs from {butForCase.Title} only by case, which not every program tells apart");
        var portable = isWrong && Portable(name) is { } plain && plain != name && plain.Length <= conventions.LongestName && isFree(plain) ? plain : null;
        return new Finding(
            this,
            named,
            $"'{name}' {Wording.Joined(faults, int.MaxValue)}: elsewhere it can be refused or changed, and a clip no longer finds the {kind}. {(portable is null ? "Give it another name." : $"Name it '{portable}'.")}",
            named.Place)
        {
            Related = butForCase is null ? [] : [butForCase.Place],
            Repairs = portable is null ? [] : [new ReplaceText(named.Id, 0, portable, $"Rename to '{portable}'") { From = name }],
        };
    }

    /// <summary>Whether anything is wrong with a name by itself.</summary>
    public static bool Faulty(string name, DeliveredLetters delivered, Conventions conventions)
    {
        if (name.Length > conventions.LongestName || (name.Length > 0 && char.IsDigit(name[0])))
            return true;
        foreach (var letter in name)
        {
            if (!Conventions.IsPortable(letter) && !delivered.Contain(letter))
                return true;
        }

        return false;
    }

    // Each as a clause.
    private static List<string> Faults(string name, DeliveredLetters delivered, Conventions conventions)
    {
        var faults = new List<string>();
        if (name.Length > conventions.LongestName)
            faults.Add($"has {name.Length} characters where {conventions.LongestName} are allowed");
        var letters = name.Where(letter => !Conventions.IsPortable(letter) && !delivered.Contain(letter))
            .Select(letter => char.IsWhiteSpace(letter) ? "a space" : char.IsControl(letter) ? "an invisible character" : $"'{letter}'").Distinct().ToList();
        if (letters.Count > 0)
            faults.Add($"has {Wording.Joined(letters)} in it");
        if (char.IsDigit(name[0]))
            faults.Add("begins with a digit");
        return faults;
    }

    /// <summary>The portable form; none where the name is portable, or has none. Too long a name has no obvious shorter one.</summary>
    public static string? Portable(string name)
    {
        var plain = string.Concat(name.Select(letter => Conventions.IsPortable(letter) ? letter : '_')).Trim('_');
        return plain.Length == 0 || name.All(Conventions.IsPortable) && !char.IsDigit(name[0]) ? null : char.IsDigit(plain[0]) ? "_" + plain : plain;
    }
}
