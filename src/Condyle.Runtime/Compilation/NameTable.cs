namespace Condyle.Runtime.Compilation;

/// <summary>Finds things of one kind by name, and says which names are near when there is none.</summary>
internal sealed class NameTable(string kind)
{
    private const int MostSuggestions = 3;

    private readonly Dictionary<string, int> indices = new(StringComparer.Ordinal);

    /// <summary>A table of things in order, one name each.</summary>
    public static NameTable Of(string kind, IEnumerable<string> names) => Of(kind, names.Select(name => new[] { name }));

    /// <summary>A table of things in order, each with all its names.</summary>
    /// <exception cref="RigGeometryException">Two things have the same name.</exception>
    public static NameTable Of(string kind, IEnumerable<IEnumerable<string>> namesOfEach)
    {
        var table = new NameTable(kind);
        foreach (var (index, names) in namesOfEach.Index())
        {
            foreach (var name in names)
            {
                if (!table.indices.TryAdd(name, index))
                    throw new RigGeometryException($"There is more than one {kind} named '{name}', so nobody could say which one is meant. Give each its own name.");
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
        var nearest = indices.Keys
            .OrderBy(candidate => Distance(candidate, name))
            .ThenBy(candidate => candidate, StringComparer.Ordinal)
            .Take(MostSuggestions)
            .Select(candidate => $"'{candidate}'")
            .ToList();
        return nearest.Count == 0 ? $" It has no {kind} at all." : $" The nearest: {string.Join(", ", nearest)}.";
    }

    /// <summary>The least number of letters to insert, drop or change that turns one name into the other.</summary>
    private static int Distance(string from, string to)
    {
        var row = Enumerable.Range(0, to.Length + 1).ToArray();
        for (var i = 1; i <= from.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var change = diagonal + (from[i - 1] == to[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(change, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[to.Length];
    }
}
