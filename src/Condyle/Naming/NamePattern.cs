using Condyle.Model;

namespace Condyle.Naming;

/// <summary>
/// A pattern of names: a regular expression of a few signs, matched in one pass. Whatever the pattern, the time is at most the square of its length times the name's length, and
/// a name that is known in parts has an answer as well.
/// </summary>
internal sealed class NamePattern : IEquatable<NamePattern>
{
    /// <summary>How many characters a pattern may have.</summary>
    public const int Longest = 200;

    /// <summary>What a pattern is made of, for people.</summary>
    public const string Signs = "letters, digits, '_' and '-' that stand for themselves, '.' for any character, '[a-z0-9]' for one of a set and '[^a-z]' for one of all others, '|' for either, '( )' for a part, and '*', '+' or '?' behind what may repeat";

    private readonly string text;
    private readonly PatternStates states;

    private NamePattern(string text, PatternStates states)
    {
        this.text = text;
        this.states = states;
    }

    /// <summary>Reads a pattern.</summary>
    /// <exception cref="FormatException">It is none; the message says where and why.</exception>
    public static NamePattern Parse(string text) => new(text, PatternReader.Read(text));

    /// <summary>Where and why a text is no pattern; none where it is one.</summary>
    public static string? FaultOf(string text)
    {
        try
        {
            Parse(text);
            return null;
        }
        catch (FormatException wrong)
        {
            return wrong.Message;
        }
    }

    /// <summary>Whether a name as a whole is one of the pattern's.</summary>
    public Answer Fits(Text name)
    {
        var at = states.Begin();
        foreach (var piece in name.Pieces)
        {
            if (piece is null)
                states.GoAnywhere(at);
            else
                at = piece.Aggregate(at, states.Next);
        }

        return !states.IsEnd(at) ? Answer.No : name.IsOpen ? Answer.Open : Answer.Yes;
    }

    /// <summary>Whether a part of a name is one of the pattern's.</summary>
    public bool IsIn(string name)
    {
        var at = states.Begin();
        for (var i = 0; !states.IsEnd(at); i++)
        {
            if (i == name.Length)
                return false;
            at = states.Next(at, name[i]);
            at[0] = true; // it may begin at every character
        }

        return true;
    }

    public bool Equals(NamePattern? other) => other?.text == text;

    public override bool Equals(object? obj) => Equals(obj as NamePattern);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(text);

    public override string ToString() => text;
}
