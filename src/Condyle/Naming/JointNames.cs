using System.Globalization;

namespace Condyle.Naming;

/// <summary>
/// The names that joints go by when a file leaves nodes unnamed or names two alike. The skeleton generator and the loader of the running program
/// both take them from here, so a joint is called the same in code and at run time.
/// </summary>
internal static class JointNames
{
    /// <summary>
    /// One name for each node, no two alike. The first node of a name keeps it, a later one adds its index (<c>tail_12</c>), and a node without a name
    /// becomes <c>node_12</c>; where that name is taken, the index is added again.
    /// </summary>
    /// <param name="nodeNames">The names of all nodes of the file, in its order.</param>
    public static string[] Unique(IReadOnlyList<string?> nodeNames)
    {
        var names = new string[nodeNames.Count];
        var taken = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < names.Length; i++)
        {
            if (nodeNames[i] is { } name && !string.IsNullOrWhiteSpace(name) && taken.Add(name))
                names[i] = name;
        }

        for (var i = 0; i < names.Length; i++)
        {
            if (names[i] is not null)
                continue;
            var suffix = "_" + i.ToString(CultureInfo.InvariantCulture);
            var candidate = string.IsNullOrWhiteSpace(nodeNames[i]) ? "node" : nodeNames[i];
            do
                candidate += suffix;
            while (!taken.Add(candidate));
            names[i] = candidate;
        }

        return names;
    }
}
