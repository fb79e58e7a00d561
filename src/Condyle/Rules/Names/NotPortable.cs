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
        var delivered = LettersOfJoints(model);
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
            if (node.Kind is not (NodeKind.Control or NodeKind.Group))
                continue;
            if (Fault(name, delivered, conventions) is { } fault)
                yield return Of(node, name, fault, Portable(name) is { } portable && !given.Contain(portable) ? portable : null);
            else if (known && other.Name != name)
                yield return Of(node, name, $"differs from {other.Node.Title} only by case, which not every program tells apart", null) with { Related = [other.Node.Place] };
        }
    }

    /// <summary>What the delivered joints have in their names although it isn't portable.</summary>
    public static HashSet<char> LettersOfJoints(RigModel model)
    {
        var letters = new HashSet<char>();
        foreach (var node in model.Nodes)
        {
            if (!node.IsExported || !node.Name.TryKnown(out var name))
                continue;
            foreach (var letter in name)
            {
                if (!Conventions.IsPortable(letter))
                    letters.Add(letter);
            }
        }

        return letters;
    }

    private Finding Of(RigNode node, string name, string fault, string? portable) =>
        new(this, node, $"'{name}' {fault}: elsewhere it can be refused or changed, and a clip no longer finds the node. {(portable is { Length: > 0 } ? $"Name it '{portable}'." : "Give it another name.")}", node.Place)
        {
            Repairs = portable is { Length: > 0 } && portable != name ? [new ReplaceText(node.Id, 0, portable, $"Rename to '{portable}'")] : [],
        };

    /// <summary>What is wrong with a name, as a clause; null where nothing is.</summary>
    public static string? Fault(string name, HashSet<char> delivered, Conventions conventions)
    {
        if (name.Length == 0)
            return "is no name";
        if (name.Length > conventions.LongestName)
            return $"has {name.Length} characters, and {conventions.LongestName} are allowed";
        foreach (var letter in name)
        {
            if (!Conventions.IsPortable(letter) && !delivered.Contains(letter))
                return char.IsWhiteSpace(letter) ? "has a space in it" : char.IsControl(letter) ? "has an invisible character in it" : $"has '{letter}' in it";
        }

        return char.IsDigit(name[0]) ? "begins with a digit" : null;
    }

    /// <summary>The portable form; none where the name is portable, or has none. Too long a name has no obvious shorter one.</summary>
    public static string? Portable(string name)
    {
        var plain = string.Concat(name.Select(letter => Conventions.IsPortable(letter) ? letter : '_')).Trim('_');
        return plain.Length == 0 || name.All(Conventions.IsPortable) && !char.IsDigit(name[0]) ? null : char.IsDigit(plain[0]) ? "_" + plain : plain;
    }
}
