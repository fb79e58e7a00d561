namespace Condyle.Naming;

/// <summary>Reads the text of a pattern into its states.</summary>
internal sealed class PatternReader
{
    private readonly string text;
    private readonly List<Func<char, bool>> signs = [static _ => false];
    private readonly List<HashSet<int>> following = [[]];
    private int at;

    private PatternReader(string text) => this.text = text;

    public static PatternStates Read(string text)
    {
        if (text.Length > NamePattern.Longest)
            throw new FormatException($"it has {text.Length} characters, and {NamePattern.Longest} are allowed");
        var reader = new PatternReader(text);
        var whole = reader.Either();
        if (reader.at < text.Length)
            throw reader.Wrong("has no '(' before it");
        reader.following[0].UnionWith(whole.First);
        return new(reader.signs, reader.following, whole.MayBeNothing ? [.. whole.Last, 0] : whole.Last);
    }

    private Part Either()
    {
        var part = Row();
        while (Take('|'))
        {
            var other = Row();
            part = new(part.MayBeNothing || other.MayBeNothing, [.. part.First, .. other.First], [.. part.Last, .. other.Last]);
        }

        return part;
    }

    private Part Row()
    {
        var row = new Part(true, [], []);
        while (at < text.Length && text[at] is not ('|' or ')'))
        {
            var next = Repeated(One());
            Follow(row.Last, next.First);
            row = new(
                row.MayBeNothing && next.MayBeNothing,
                row.MayBeNothing ? [.. row.First, .. next.First] : row.First,
                next.MayBeNothing ? [.. row.Last, .. next.Last] : next.Last);
        }

        return row;
    }

    private Part Repeated(Part part)
    {
        while (at < text.Length && text[at] is ('*' or '+' or '?'))
        {
            if (text[at] != '?')
                Follow(part.Last, part.First);
            part = part with { MayBeNothing = part.MayBeNothing || text[at] != '+' };
            at++;
        }

        return part;
    }

    private Part One()
    {
        if (Take('('))
        {
            var inside = Either();
            return Take(')') ? inside : throw Wrong("lacks the ')' of a part");
        }

        if (Take('['))
            return Sign(Set());
        var character = text[at];
        if (character != '.' && !Conventions.IsPortable(character) && character != '-')
            throw Wrong(character is '*' or '+' or '?' ? "has nothing before it to repeat" : "means nothing here");
        at++;
        return Sign(character == '.' ? static _ => true : other => other == character);
    }

    private Func<char, bool> Set()
    {
        var isOthers = Take('^');
        var ranges = new List<(char From, char To)>();
        while (!Take(']'))
        {
            if (at == text.Length)
                throw Wrong("lacks the ']' of a set");
            var from = text[at++];
            var to = from;
            if (at + 1 < text.Length && text[at] == '-' && text[at + 1] != ']')
            {
                to = text[at + 1];
                at += 2;
            }

            if (to < from)
                throw new FormatException($"'{from}-{to}' before character {at + 1} has nothing in it");
            ranges.Add((from, to));
        }

        return ranges.Count == 0 ? throw new FormatException($"the set before character {at + 1} has nothing in it") : character => ranges.Exists(range => character >= range.From && character <= range.To) != isOthers;
    }

    private Part Sign(Func<char, bool> sign)
    {
        signs.Add(sign);
        following.Add([]);
        return new(false, [signs.Count - 1], [signs.Count - 1]);
    }

    private void Follow(HashSet<int> last, HashSet<int> first)
    {
        foreach (var state in last)
            following[state].UnionWith(first);
    }

    private bool Take(char sign)
    {
        if (at == text.Length || text[at] != sign)
            return false;
        at++;
        return true;
    }

    private FormatException Wrong(string what) => new(at < text.Length ? $"'{text[at]}' at character {at + 1} {what}" : $"its end {what}");

    /// <summary>A part of a pattern: the states in which it can begin and end.</summary>
    private sealed record Part(bool MayBeNothing, HashSet<int> First, HashSet<int> Last);
}
