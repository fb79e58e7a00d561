namespace Condyle.Rules;

/// <summary>How messages put words together.</summary>
internal static class Wording
{
    /// <summary>A title as the first word of a sentence.</summary>
    public static string First(string title) => char.ToUpperInvariant(title[0]) + title.Substring(1);

    /// <summary>"a, b and c".</summary>
    public static string Joined(IReadOnlyList<string> names) =>
        names.Count == 1 ? names[0] : string.Join(", ", names.Take(names.Count - 1)) + " and " + names[names.Count - 1];
}
