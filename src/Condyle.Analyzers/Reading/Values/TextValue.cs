using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>A string, known whole or in parts, with the literals that it was made of and the place where more could be appended.</summary>
internal sealed class TextValue(Text text, IReadOnlyList<Seam> seams, IReadOnlyList<Origin> origins)
{
    public Text Text { get; } = text;

    /// <summary>Where its end could be appended to, the innermost literal first.</summary>
    public IReadOnlyList<Seam> Seams { get; } = seams;

    public IReadOnlyList<Origin> Origins { get; } = origins;

    public static TextValue Open { get; } = new(Text.Open, [], []);

    public static TextValue Plain(string text) => new(text, [], []);

    public bool TryKnown(out string value) => Text.TryKnown(out value);

    /// <summary>The same text where its last characters can't be changed at their source.</summary>
    public TextValue WithoutSeam() => Seams.Count == 0 ? this : new TextValue(Text, [], Origins);

    /// <summary>Joins parts; what is appended to the last one or at the seam is appended to the whole.</summary>
    public static TextValue Join(IReadOnlyList<TextValue> parts, Seam? seam)
    {
        Check(parts);
        var origins = parts.SelectMany(part => part.Origins);
        IEnumerable<Seam> seams = parts.Count > 0 ? parts[parts.Count - 1].Seams : [];
        if (seam is not null)
        {
            origins = origins.Concat([seam.Literal]);
            seams = seams.Where(inner => inner != seam).Concat([seam]);
        }

        return new TextValue(Text.Of(parts.SelectMany(part => part.Text.Pieces)), [.. seams], [.. origins.Distinct()]);
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
        foreach (var part in parts)
        {
            foreach (var piece in part.Text.Pieces)
            {
                length += piece?.Length ?? 0;
                pieces++;
            }
        }

        CheckLength(length);
        Budget.Current.Make((int)(length + pieces));
    }
}
