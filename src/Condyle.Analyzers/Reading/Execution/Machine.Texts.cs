using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>Texts that aren't known: what they are compared with splits the reading into ways, as an unknown boolean does.</summary>
internal sealed partial class Machine
{
    private readonly Dictionary<object, ComparedText> compared = [];

    /// <summary>Whether two texts are the same; none where that isn't known and can't be decided.</summary>
    public bool? AreEqual(TextValue a, TextValue b) => PartlyKnown.AreEqual(a.Text, b.Text)
        ?? (a.Identity is { } unknown && b.TryKnown(out var text) ? Is(unknown, text) : b.Identity is { } other && a.TryKnown(out text) ? Is(other, text) : null);

    /// <summary>A text whose value has been decided.</summary>
    private TextValue Decide(TextValue text) =>
        text.Identity is { } unknown && compared.TryGetValue(unknown, out var known) && known.Is is { } value ? TextValue.Plain(value) : text;

    private bool? Is(object unknown, string text)
    {
        if (!compared.TryGetValue(unknown, out var known))
            compared[unknown] = known = new ComparedText();
        if (known.Is is { } value)
            return value == text;
        if (known.IsNot.Contains(text))
            return false;
        switch (decisions.Take(2, Limits.PathsOfTexts))
        {
            case 0:
                known.Is = text;
                return true;
            case 1:
                known.IsNot.Add(text);
                return false;
            default: return null;
        }
    }

    /// <summary>A text that is either of two, of which one may be missing; none where they aren't texts.</summary>
    private TextValue? Either(object? a, object? b)
    {
        if ((a ?? b) is not TextValue one || (b ?? a) is not TextValue other)
            return null;
        return new TextValue(a is null || b is null ? Text.Open : PartlyKnown.Either(one.Text, other.Text), [], [])
        {
            IsThere = a is not null && b is not null && !one.MayBeNull && !other.MayBeNull,
            Identity = IsInTurn ? null : new object(),
        };
    }

    /// <summary>What is known of an unknown text on this path.</summary>
    private sealed class ComparedText
    {
        public string? Is { get; set; }

        public HashSet<string> IsNot { get; } = [];
    }
}
