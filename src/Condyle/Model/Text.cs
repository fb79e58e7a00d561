using System.Text;

namespace Condyle.Model;

/// <summary>A text that is known whole or in parts: <c>$"{prefix}_group"</c> ends in a known suffix whatever the prefix is.</summary>
internal readonly struct Text : IEquatable<Text>
{
    /// <summary>How an unknown part is shown to people.</summary>
    public const string Hole = "…";

    /// <summary>What is wrong where code gives none.</summary>
    public const string NoText = "A rig was given null for a text, such as a name. Give it a text.";

    private readonly string? known;
    private readonly string?[]? pieces;

    private Text(string? known, string?[]? pieces)
    {
        this.known = known;
        this.pieces = pieces;
    }

    /// <summary>A text of which nothing is known.</summary>
    public static Text Open => default;

    public bool TryKnown(out string value)
    {
        value = known ?? "";
        return known is not null;
    }

    public bool IsOpen => known is null;

    /// <summary>Joins pieces in order; <c>null</c> stands for an unknown piece of any length.</summary>
    public static Text Of(IEnumerable<string?> parts)
    {
        var joined = new List<string?>();
        foreach (var part in parts)
        {
            if (part is "")
                continue;
            var last = joined.Count - 1;
            if (last >= 0 && joined[last] is { } before && part is not null)
                joined[last] = before + part;
            else if (last < 0 || part is not null || joined[last] is not null)
                joined.Add(part);
        }

        return joined switch
        {
            [] => new Text("", null),
            [{ } whole] => new Text(whole, null),
            _ => new Text(null, [.. joined]),
        };
    }

    /// <summary>Joins texts in order.</summary>
    public static Text Of(IReadOnlyList<Text> parts)
    {
        var all = new string[parts.Count];
        for (var i = 0; i < all.Length; i++)
        {
            if (parts[i].known is not { } part)
                return Of(parts.SelectMany(open => open.Pieces));
            all[i] = part;
        }

        return new Text(string.Concat(all), null);
    }

    /// <summary>Known texts, one by one.</summary>
    public static Text[] Each(IReadOnlyList<string> texts) => [.. texts.Select(text => (Text)text)];

    /// <summary>How many of its characters are known.</summary>
    public int KnownLength => known?.Length ?? Pieces.Sum(piece => piece?.Length ?? 0);

    /// <summary>How many pieces it has.</summary>
    public int PieceCount => known is not null ? 1 : Pieces.Count;

    /// <summary>The pieces in order, <c>null</c> for the unknown ones.</summary>
    public IReadOnlyList<string?> Pieces => known is not null ? [known] : pieces ?? [null];

    public static Text operator +(Text left, Text right) => Of([left, right]);

    public Answer EndsWith(string suffix)
    {
        if (known is not null)
            return known.EndsWith(suffix, StringComparison.Ordinal) ? Answer.Yes : Answer.No;
        var tail = Pieces[Pieces.Count - 1] ?? "";
        if (tail.EndsWith(suffix, StringComparison.Ordinal))
            return Answer.Yes;
        return suffix.EndsWith(tail, StringComparison.Ordinal) ? Answer.Open : Answer.No;
    }

    public Answer SameAs(Text other) =>
        TryKnown(out var mine) && other.TryKnown(out var theirs)
            ? mine == theirs ? Answer.Yes : Answer.No
            : Answer.Open;

    /// <exception cref="ArgumentNullException">There is no text.</exception>
    public static implicit operator Text(string value) => value is null ? throw new ArgumentNullException(null, NoText) : new(value, null);

    public bool Equals(Text other) => Pieces.SequenceEqual(other.Pieces);

    public override bool Equals(object? obj) => obj is Text other && Equals(other);

    public override int GetHashCode() => ToString().GetHashCode();

    public override string ToString()
    {
        if (known is not null)
            return known;
        var shown = new StringBuilder();
        foreach (var piece in Pieces)
            shown.Append(piece ?? Hole);
        return shown.ToString();
    }
}
