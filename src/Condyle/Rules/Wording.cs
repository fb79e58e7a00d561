namespace Condyle.Rules;

/// <summary>How messages put words together.</summary>
internal static class Wording
{
    /// <summary>A title as the first word of a sentence.</summary>
    public static string First(string title) => char.ToUpperInvariant(title[0]) + title.Substring(1);

    /// <summary>"a, b and c"; of many the first ones: "a, b, c and 4 more".</summary>
    public static string Joined(IReadOnlyList<string> names, int most = 4) => names.Count switch
    {
        0 => "",
        1 => names[0],
        _ when names.Count <= most => string.Join(", ", names.Take(names.Count - 1)) + " and " + names[names.Count - 1],
        _ => string.Join(", ", names.Take(most - 1)) + $" and {names.Count - most + 1} more",
    };
}
