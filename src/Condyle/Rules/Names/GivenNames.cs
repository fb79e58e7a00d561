using Condyle.Model;

namespace Condyle.Rules;

/// <summary>The names that nodes of a rig have: none of them is to be given to another one.</summary>
internal sealed class GivenNames(RigModel model)
{
    private readonly Lazy<HashSet<string>> names = new(() =>
    {
        var given = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var node in model.Nodes)
        {
            if (node.Name.TryKnown(out var name))
                given.Add(name);
        }

        return given;
    });

    public bool Contain(string name) => names.Value.Contains(name);
}
