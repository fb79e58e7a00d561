namespace Condyle.Naming;

/// <summary>Names that someone may have meant by one that isn't there.</summary>
internal static class NearestNames
{
    /// <summary>The nearest names, nearest first, names at the same distance in ordinal order.</summary>
    public static IReadOnlyList<string> To(string name, IEnumerable<string> candidates, int most) =>
        [.. candidates
            .OrderBy(candidate => Distance(candidate, name))
            .ThenBy(candidate => candidate, StringComparer.Ordinal)
            .Take(most)];

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
