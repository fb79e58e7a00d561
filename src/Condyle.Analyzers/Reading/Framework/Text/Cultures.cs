namespace Condyle.Analyzers.Reading;

/// <summary>
/// What comparing and casing texts gives in every culture, the invariant one included; none where cultures may differ, or may in doubt.
/// </summary>
/// <remarks>
/// Cultures order letters differently (vowels first, y beside i, z before t), take letters together as one ("ch", "aa", "dzs", "lj"),
/// and some skip underscores. No culture takes a digit or an underscore together with anything, and none takes two different texts of
/// plain letters and digits for the same, or one letter for its other case. Other characters than these are left open.
/// </remarks>
internal static class Cultures
{
    private const int CharactersComparedInAStep = 16;

    /// <summary>The order of two texts: −1, 0 or 1.</summary>
    public static int? Order(string a, string b)
    {
        if (a == b)
            return 0;
        if (!IsPlain(a) || !IsPlain(b))
            return null;
        var at = 0;
        while (at < a.Length && at < b.Length && a[at] == b[at])
            at++;

        // What is longer comes later, unless what is added makes one letter with what stands before: "ng" comes before "n" in one culture.
        if (at == a.Length)
            return IsBoundary(b, at) && !b.Contains('_') ? -1 : null;
        if (at == b.Length)
            return IsBoundary(a, at) && !a.Contains('_') ? 1 : null;

        // Digits have the same order everywhere, except inside longer numbers, which may be compared by their value.
        return IsDigit(a[at]) && IsDigit(b[at]) && !IsInNumber(a, at) && !IsInNumber(b, at) ? Math.Sign(a[at].CompareTo(b[at])) : null;
    }

    public static bool? AreEqual(string a, string b, bool ignoresCase)
    {
        if (a == b)
            return true;
        if (!IsPlain(a) || !IsPlain(b))
            return null;
        if (!ignoresCase)
            return WithoutUnderscores(a) == WithoutUnderscores(b) ? null : false;
        var same = Lower(WithoutUnderscores(a)) == Lower(WithoutUnderscores(b));
        return !same ? false : a.Length == b.Length && !DiffersInI(a, b) && Lower(a) == Lower(b) ? true : null;
    }

    public static bool? StartsWith(string text, string start, bool ignoresCase = false)
    {
        if (start.Length == 0)
            return true;
        if (!IsPlain(text) || !IsPlain(start))
            return null;
        if (text.StartsWith(start, StringComparison.Ordinal) && IsBoundary(text, start.Length))
            return true;
        return Fold(text, ignoresCase).StartsWith(Fold(start, ignoresCase), StringComparison.Ordinal) ? null : false;
    }

    public static bool? EndsWith(string text, string end, bool ignoresCase = false)
    {
        if (end.Length == 0)
            return true;
        if (!IsPlain(text) || !IsPlain(end))
            return null;
        if (text.EndsWith(end, StringComparison.Ordinal) && IsBoundary(text, text.Length - end.Length))
            return true;
        return Fold(text, ignoresCase).EndsWith(Fold(end, ignoresCase), StringComparison.Ordinal) ? null : false;
    }

    /// <summary>Where a text has a part, −1 where it has none.</summary>
    public static int? IndexOf(string text, string part, bool isLast = false)
    {
        if (part.Length == 0 || !IsPlain(text) || !IsPlain(part))
            return null;
        Budget.Current.Spend(text.Length / CharactersComparedInAStep);
        var letters = WithoutUnderscores(part);
        if (letters.Length > 0 && Find(WithoutUnderscores(text), letters) < 0)
            return -1;
        var at = Find(text, part);

        // A culture that skips underscores might find the part elsewhere.
        return at >= 0 && !text.Contains('_') && IsBoundary(text, at) && IsBoundary(text, at + part.Length) ? at : null;

        int Find(string whole, string wanted) => isLast ? whole.LastIndexOf(wanted, StringComparison.Ordinal) : whole.IndexOf(wanted, StringComparison.Ordinal);
    }

    /// <summary>The text in capitals. Only i has another one in some cultures.</summary>
    public static string? ToUpper(string text) => text.All(character => character < 128 && character != 'i') ? text.ToUpperInvariant() : null;

    public static string? ToLower(string text) => text.All(character => character < 128 && character != 'I') ? text.ToLowerInvariant() : null;

    private static bool IsPlain(string text) => text.All(character => character == '_' || IsLetter(character) || IsDigit(character));

    private static bool IsLetter(char character) => character is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z');

    private static bool IsDigit(char character) => character is >= '0' and <= '9';

    private static bool IsInNumber(string text, int at) => (at > 0 && IsDigit(text[at - 1])) || (at + 1 < text.Length && IsDigit(text[at + 1]));

    // Two letters side by side may be one in some culture.
    private static bool IsBoundary(string text, int at) => at == 0 || at == text.Length || !IsLetter(text[at - 1]) || !IsLetter(text[at]);

    private static string WithoutUnderscores(string text) => text.Replace("_", "");

    private static string Fold(string text, bool ignoresCase) => ignoresCase ? Lower(WithoutUnderscores(text)) : WithoutUnderscores(text);

    private static string Lower(string text) => text.ToLowerInvariant();

    private static bool DiffersInI(string a, string b)
    {
        for (var i = 0; i < a.Length; i++)
        {
            if (a[i] != b[i] && a[i] is ('i' or 'I'))
                return true;
        }

        return false;
    }
}
