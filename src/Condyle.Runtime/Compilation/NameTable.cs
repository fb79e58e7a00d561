using Condyle.Model;
using Condyle.Naming;

namespace Condyle.Runtime.Compilation;

/// <summary>Finds things of one kind by name, and says which names are near when there is none.</summary>
internal sealed class NameTable(string kind)
{
    private const int MostSuggestions = 3;

    private readonly Dictionary<string, int> indices = new(StringComparer.Ordinal);

    /// <summary>A table of things in order, one name each.</summary>
    public static NameTable Of(string kind, IEnumerable<string> names, IReadOnlyList<RigElement>? elements = null) => Of(kind, names.Select(name => new[] { name }), elements);

    /// <summary>A table of things in order, each with all its names.</summary>
    /// <param name="kind">What they are.</param>
    /// <param name="namesOfEach">The names of each.</param>
    /// <param name="elements">What each is in the rig, where it is one thing.</param>
    /// <exception cref="RigGeometryException">Two things have the same name.</exception>
    public static NameTable Of(string kind, IEnumerable<IEnumerable<string>> namesOfEach, IReadOnlyList<RigElement>? elements = null)
    {
        var table = new NameTable(kind);
        foreach (var (index, names) in namesOfEach.Index())
        {
            foreach (var name in names)
            {
                if (!table.indices.TryAdd(name, index))
                    throw new RigGeometryException($"There is more than one {kind} named '{name}', so nobody could say which one is meant. Give each its own name.", elements?[index]);
            }
        }

        return table;
    }

    public int Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return indices.TryGetValue(name, out var index)
            ? index
            : throw new ArgumentException($"There is no {kind} '{name}' in this rig.{Suggest(name)}", nameof(name));
    }

    private string Suggest(string name)
    {
        var nearest = NearestNames.To(name, indices.Keys, MostSuggestions);
        return nearest.Count == 0 ? $" It has no {kind} at all." : $" The nearest: {string.Join(", ", nearest.Select(near => $"'{near}'"))}.";
    }
}
