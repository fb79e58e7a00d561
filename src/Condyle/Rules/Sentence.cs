namespace Condyle.Rules;

/// <summary>Puts many names into a sentence.</summary>
internal static class Sentence
{
    /// <summary>Names one after the other, of many the first ones.</summary>
    public static string List(IReadOnlyList<string> names, int most = 4) => names.Count switch
    {
        0 => "",
        1 => names[0],
        _ when names.Count <= most => string.Join(", ", names.Take(names.Count - 1)) + " and " + names[names.Count - 1],
        _ => string.Join(", ", names.Take(most - 1)) + $" and {names.Count - most + 1} more",
    };
}
