using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Rules;

/// <summary>What the delivered joints have in their names although it isn't portable: looked for when a name has such a letter, as few have.</summary>
internal sealed class DeliveredLetters(RigModel model)
{
    private readonly Lazy<HashSet<char>> letters = new(() =>
    {
        var found = new HashSet<char>();
        foreach (var node in model.Nodes)
        {
            if (node.IsExported && node.Name.TryKnown(out var name))
                found.UnionWith(name.Where(letter => !Conventions.IsPortable(letter)));
        }

        return found;
    });

    public bool Contain(char letter) => letters.Value.Contains(letter);
}
