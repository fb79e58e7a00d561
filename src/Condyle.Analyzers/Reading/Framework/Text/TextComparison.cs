namespace Condyle.Analyzers.Reading;

/// <summary>What the framework answers about texts in a given way of comparing them; none where it depends on the culture.</summary>
internal static class TextComparison
{
    public static bool? AreEqual(string? a, string? b, StringComparison how)
    {
        Check(how);
        if (a is null || b is null || string.Equals(a, b, StringComparison.Ordinal))
            return ReferenceEquals(a, b) || (a is not null && b is not null);
        return how switch
        {
            StringComparison.Ordinal => false,
            StringComparison.OrdinalIgnoreCase => Ascii(a, b, () => string.Equals(a, b, how)),
            _ => Cultures.AreEqual(a, b, IgnoresCase(how)),
        };
    }

    /// <summary>The order as the framework gives it: of ordinal comparisons the distance, of others only that there is none.</summary>
    public static int? Compare(string? a, string? b, StringComparison how)
    {
        Check(how);
        if (a is null || b is null)
            return a is null ? b is null ? 0 : -1 : 1;
        return how switch
        {
            StringComparison.Ordinal => Closed(a, b) ?? Distance(a, b),
            StringComparison.OrdinalIgnoreCase => Ascii(a, b, () => Distance(a.ToUpperInvariant(), b.ToUpperInvariant())),
            _ => a == b ? 0 : null,
        };
    }

    /// <summary>The order's sign.</summary>
    public static int? Order(string a, string b, StringComparison how) => how is StringComparison.CurrentCulture or StringComparison.InvariantCulture
        ? Cultures.Order(a, b)
        : Compare(a, b, how) is { } distance ? Math.Sign(distance) : null;

    public static bool? StartsWith(string text, string start, StringComparison how) => how switch
    {
        StringComparison.Ordinal => text.StartsWith(start, how),
        StringComparison.OrdinalIgnoreCase => Ascii(text, start, () => text.StartsWith(start, how)),
        _ => Cultures.StartsWith(text, start, IgnoresCase(Check(how))),
    };

    public static bool? EndsWith(string text, string end, StringComparison how) => how switch
    {
        StringComparison.Ordinal => text.EndsWith(end, how),
        StringComparison.OrdinalIgnoreCase => Ascii(text, end, () => text.EndsWith(end, how)),
        _ => Cultures.EndsWith(text, end, IgnoresCase(Check(how))),
    };

    public static int? IndexOf(string text, string part, StringComparison how, int start = 0, int? count = null)
    {
        var length = count ?? text.Length - start;
        return how switch
        {
            StringComparison.Ordinal => text.IndexOf(part, start, length, how),
            StringComparison.OrdinalIgnoreCase => Ascii<int>(text, part, () => text.IndexOf(part, start, length, how)),
            _ when IgnoresCase(Check(how)) => null,
            _ => part.Length == 0 ? start : Cultures.IndexOf(text.Substring(start, length), part) is { } at ? at < 0 ? -1 : at + start : null,
        };
    }

    /// <summary>The last place of a part, looked for backwards from a start.</summary>
    public static int? LastIndexOf(string text, string part, StringComparison how, int start, int count)
    {
        // Of the empty text hosts disagree where it ends a text.
        if (part.Length == 0)
            return null;
        return how switch
        {
            StringComparison.Ordinal => text.LastIndexOf(part, start, count, how),
            StringComparison.OrdinalIgnoreCase => Ascii<int>(text, part, () => text.LastIndexOf(part, start, count, how)),
            _ when IgnoresCase(Check(how)) || text.Length == 0 => text.Length == 0 ? -1 : null,
            _ => Cultures.IndexOf(text.Substring(start - count + 1, count), part, isLast: true) is { } at ? at < 0 ? -1 : at + start - count + 1 : null,
        };
    }

    private static bool IgnoresCase(StringComparison how) => how is StringComparison.CurrentCultureIgnoreCase or StringComparison.InvariantCultureIgnoreCase or StringComparison.OrdinalIgnoreCase;

    private static StringComparison Check(StringComparison how) =>
        how is >= StringComparison.CurrentCulture and <= StringComparison.OrdinalIgnoreCase ? how : throw new ArgumentException("There is no such way to compare texts.");

    // Which other letters are the same but for their case depends on the host's tables.
    private static T? Ascii<T>(string a, string b, Func<T> answer)
        where T : struct => a.All(character => character < 128) && b.All(character => character < 128) ? answer() : null;

    // The framework looks at the first two characters as they lie in memory, where a character zero ends a text.
    private static int? Closed(string a, string b)
    {
        for (var i = 0; i < 2 && i <= a.Length && i <= b.Length; i++)
        {
            var (x, y) = (i < a.Length ? a[i] : '\0', i < b.Length ? b[i] : '\0');
            if (x != y)
                return x - y;
        }

        return null;
    }

    /// <summary>The order of two stretches of texts.</summary>
    public static int Distance(string a, string b)
    {
        for (var i = 0; i < a.Length && i < b.Length; i++)
        {
            if (a[i] != b[i])
                return a[i] - b[i];
        }

        return a.Length - b.Length;
    }
}
