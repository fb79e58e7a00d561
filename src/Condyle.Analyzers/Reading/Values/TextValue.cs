using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>A string, known whole or in parts, with the literals that it was made of and the place where more could be appended.</summary>
internal sealed class TextValue(Text text, IReadOnlyList<Seam> seams, IReadOnlyList<Origin> origins)
{
    private const int Few = 4;

    public Text Text { get; } = text;

    /// <summary>Where its end could be appended to, the innermost literal first.</summary>
    public IReadOnlyList<Seam> Seams { get; } = seams;

    public IReadOnlyList<Origin> Origins { get; } = origins;

    /// <summary>Whether nothing is known of it, not even that it is there.</summary>
    public bool MayBeNull => Text.IsOpen && Origins.Count == 0 && !IsThere;

    /// <summary>Whether it is one of several, none of which is missing.</summary>
    public bool IsThere { get; init; }

    /// <summary>What tells an unknown text from others: compared with the same text it gives the same answer each time. None where it may be another one each time.</summary>
    public UnknownText? Identity { get; init; }

    /// <summary>What stands around the one unknown text that is part of it.</summary>
    public OpenMiddle? Around { get; private init; }

    /// <summary>What it was made of.</summary>
    public Derivation? Made { get; init; }

    public static TextValue Open { get; } = new(Text.Open, [], []);

    public static TextValue Plain(string text) => new(text, [], []);

    public bool TryKnown(out string value) => Text.TryKnown(out value);

    /// <summary>The same text where it is known to be there.</summary>
    public TextValue There() => new(Text, Seams, Origins) { IsThere = true, Identity = Identity, Around = Around, Made = Made };

    /// <summary>The same text, told from others, with what it was made of.</summary>
    public TextValue MadeBy(Derivation? made) => new(Text, Seams, Origins) { IsThere = IsThere, Identity = new UnknownText(canFork: false), Made = made };

    /// <summary>The same text where its last characters can't be changed at their source.</summary>
    public TextValue WithoutSeam() => Seams.Count == 0 ? this : At([], Origins);

    /// <summary>The same text after an edit of its file.</summary>
    public TextValue Moved(Relocation to) => Seams.Count + Origins.Count == 0 ? this : At([.. Seams.Select(to.Of)], [.. Origins.Select(to.Of)]);

    private TextValue At(IReadOnlyList<Seam> seams, IReadOnlyList<Origin> origins) => new(Text, seams, origins) { IsThere = IsThere, Identity = Identity, Around = Around, Made = Made };

    /// <summary>Joins parts; what is appended to the last one or at the seam is appended to the whole.</summary>
    public static TextValue Join(IReadOnlyList<TextValue> parts, Seam? seam)
    {
        Check(parts);
        IReadOnlyList<Origin> origins = [];
        for (var i = 0; i < parts.Count; i++)
            origins = Union(origins, parts[i].Origins);
        IReadOnlyList<Seam> seams = parts.Count > 0 ? parts[parts.Count - 1].Seams : [];
        var text = TextOf(parts);
        return new TextValue(text, seam is null ? seams : seams.Count == 0 ? [seam] : [.. seams.Where(inner => inner != seam), seam], seam is null ? origins : Union(origins, [seam.Literal]))
        {
            Around = text.IsOpen ? AroundIn(parts) : null,
            Made = text.IsOpen ? MadeOf(parts, seam) : null,
        };
    }

    private static Derivation? MadeOf(IReadOnlyList<TextValue> parts, Seam? seam) =>
        Derivation.Of(parts, machine => Join([.. parts.Select(part => machine.Decide(part) as TextValue ?? Plain(""))], seam));

    private static OpenMiddle? AroundIn(IReadOnlyList<TextValue> parts)
    {
        var (head, tail) = ("", "");
        OpenMiddle? inner = null;
        foreach (var part in parts)
        {
            if (part.TryKnown(out var known))
                (head, tail) = inner is null ? (head + known, tail) : (head, tail + known);
            else if (inner is null && (part.Around ?? (part.Identity is { } identity ? new OpenMiddle("", identity, "") : null)) is { } around)
                inner = around;
            else
                return null;
        }

        return inner is { } found ? new OpenMiddle(head + found.Head, found.Subject, found.Tail + tail) : null;
    }

    private static Text TextOf(IReadOnlyList<TextValue> parts)
    {
        var known = new string[parts.Count];
        for (var i = 0; i < known.Length; i++)
        {
            if (!parts[i].TryKnown(out known[i]))
                return Text.Of([.. parts.Select(part => part.Text)]);
        }

        return string.Concat(known);
    }

    /// <summary>All origins of both, each once. Nearly always one of them has none or the other's, so that nothing new is made.</summary>
    public static IReadOnlyList<Origin> Union(IReadOnlyList<Origin> some, IReadOnlyList<Origin> more)
    {
        if (some.Count == 0 || ReferenceEquals(some, more))
            return more;
        if (some.Count > Few && more.Count > Few)
            return [.. some.Union(more)];
        List<Origin>? all = null;
        for (var i = 0; i < more.Count; i++)
        {
            if (!Holds(all ?? some, more[i]))
                (all ??= Copy(some, room: more.Count - i)).Add(more[i]);
        }

        return all ?? some;
    }

    private static List<Origin> Copy(IReadOnlyList<Origin> origins, int room)
    {
        var copy = new List<Origin>(origins.Count + room);
        copy.AddRange(origins);
        return copy;
    }

    private static bool Holds(IReadOnlyList<Origin> origins, Origin origin)
    {
        for (var i = 0; i < origins.Count; i++)
        {
            if (origins[i] == origin)
                return true;
        }

        return false;
    }

    /// <summary>Refuses a text that is longer than a reading makes any.</summary>
    public static void CheckLength(long length)
    {
        if (length > Limits.TextLength)
            throw new ReadingStopped($"a text grows beyond {Limits.TextLength} characters");
    }

    public override string ToString() => Text.ToString();

    // Before the text is made: many long parts would make an endless one.
    private static void Check(IReadOnlyList<TextValue> parts)
    {
        var (length, pieces) = (0L, 0L);
        for (var i = 0; i < parts.Count; i++)
        {
            length += parts[i].Text.KnownLength;
            pieces += parts[i].Text.PieceCount;
        }

        CheckLength(length);
        Budget.Current.Make((int)(length + pieces));
    }
}
