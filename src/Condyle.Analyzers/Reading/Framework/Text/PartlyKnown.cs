using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>What the known parts of a text tell of the whole: none where they don't decide.</summary>
internal static class PartlyKnown
{
    /// <summary>Whether two texts are the same.</summary>
    public static bool? AreEqual(Text a, Text b) => a.TryKnown(out var x) && b.TryKnown(out var y) ? x == y : CanBeEqual(a, b) ? null : false;

    public static bool? StartsWith(Text text, string start, StringComparison how)
    {
        var head = text.Pieces[0] ?? "";
        if (IsOfCulture(how))
        {
            // What follows may belong to the last letter.
            var sure = head.Substring(0, Math.Max(0, head.Length - 1));
            return sure.Length >= start.Length && Cultures.StartsWith(head, start) is true ? true
                : Cultures.StartsWith(sure, start) is false && Cultures.StartsWith(start, sure) is false ? false
                : null;
        }

        return !IsDecidable(how, head, start) ? null : head.StartsWith(start, how) ? true : start.StartsWith(head, how) ? null : false;
    }

    public static bool? EndsWith(Text text, string end, StringComparison how)
    {
        var tail = text.Pieces[text.PieceCount - 1] ?? "";
        if (IsOfCulture(how))
        {
            // What stands before may belong to the first letter, but to no digit or underscore.
            var sure = tail.Length > 0 && tail[0] is not ('_' or (>= '0' and <= '9')) ? tail.Substring(1) : tail;
            return sure.Length >= end.Length && Cultures.EndsWith(tail, end) is true ? true
                : Cultures.EndsWith(sure, end) is false && Cultures.EndsWith(end, sure) is false ? false
                : null;
        }

        return !IsDecidable(how, tail, end) ? null : tail.EndsWith(end, how) ? true : end.EndsWith(tail, how) ? null : false;
    }

    /// <summary>Whether a text has a part, by its characters.</summary>
    public static bool? Contains(Text text, string part) => text.Pieces.Any(piece => piece?.IndexOf(part, StringComparison.Ordinal) >= 0) ? true : null;

    /// <summary>Where a part first lies, by its characters.</summary>
    public static int? IndexOf(Text text, string part) => text.Pieces[0] is { } head && head.IndexOf(part, StringComparison.Ordinal) is >= 0 and var at ? at : null;

    /// <summary>What two texts have in common, where it may be either of them.</summary>
    public static Text Either(Text a, Text b)
    {
        var (x, y) = (a.Pieces[0] ?? "", b.Pieces[0] ?? "");
        var head = 0;
        while (head < x.Length && head < y.Length && x[head] == y[head])
            head++;
        var start = x.Substring(0, head);
        (x, y) = (a.Pieces[a.PieceCount - 1] ?? "", b.Pieces[b.PieceCount - 1] ?? "");
        // Where a text is known whole its end must not count what its beginning counts already.
        var (mostOfX, mostOfY) = (x.Length - (a.IsOpen ? 0 : head), y.Length - (b.IsOpen ? 0 : head));
        var tail = 0;
        while (tail < mostOfX && tail < mostOfY && x[x.Length - 1 - tail] == y[y.Length - 1 - tail])
            tail++;
        return Text.Of([start, null, x.Substring(x.Length - tail)]);
    }

    private static bool CanBeEqual(Text a, Text b)
    {
        if (a.TryKnown(out var whole) || b.TryKnown(out whole))
            return Fits(a.IsOpen ? a : b, whole);
        var (x, y) = (a.Pieces[0] ?? "", b.Pieces[0] ?? "");
        var (endOfX, endOfY) = (a.Pieces[a.PieceCount - 1] ?? "", b.Pieces[b.PieceCount - 1] ?? "");
        return (x.StartsWith(y, StringComparison.Ordinal) || y.StartsWith(x, StringComparison.Ordinal)) && (endOfX.EndsWith(endOfY, StringComparison.Ordinal) || endOfY.EndsWith(endOfX, StringComparison.Ordinal));
    }

    // The known pieces come in their order and don't overlap.
    private static bool Fits(Text text, string whole)
    {
        var pieces = text.Pieces;
        var (head, tail) = (pieces[0] ?? "", pieces[pieces.Count - 1] ?? "");
        if (whole.Length < text.KnownLength || !whole.StartsWith(head, StringComparison.Ordinal) || !whole.EndsWith(tail, StringComparison.Ordinal))
            return false;
        var (at, end) = (head.Length, whole.Length - tail.Length);
        for (var i = 1; i < pieces.Count - 1; i++)
        {
            if (pieces[i] is not { } piece)
                continue;
            var found = whole.IndexOf(piece, at, end - at, StringComparison.Ordinal);
            if (found < 0)
                return false;
            at = found + piece.Length;
        }

        return true;
    }

    private static bool IsOfCulture(StringComparison how) => how is StringComparison.CurrentCulture or StringComparison.InvariantCulture;

    private static bool IsDecidable(StringComparison how, string known, string asked) => how == StringComparison.Ordinal || (how == StringComparison.OrdinalIgnoreCase && IsAscii(known) && IsAscii(asked));

    private static bool IsAscii(string text) => text.All(character => character < 128);
}
