using System.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>What makes other strings of strings.</summary>
internal static class StringChanges
{
    private const string Type = "System.String.";

    public static void Register()
    {
        Cuts();
        Pads();
        Replacements();
        Cases();
        New();
        foreach (var same in new[] { "ToString", "Clone", "Intern", "IsInterned", "Copy", "op_Implicit" })
            FrameworkTable.Add("System.String", same, call => call[0]);
        Pure.Constant(Type + "Empty", "");
        Pure.Add(Type + "ToCharArray", (string text) => text.ToCharArray());
        Pure.Add(Type + "ToCharArray", (string text, int start, int length) => text.ToCharArray(start, length));
        Pure.Add(Type + "Normalize", (string text) => text.All(character => character < 128) ? text : (object)OpenValue.Any);
    }

    private static void Cuts()
    {
        Pure.Add(Type + "Substring", (string text, int start) => text.Substring(start));
        Pure.Add(Type + "Substring", (string text, int start, int length) => text.Substring(start, length));
        Pure.Add(Type + "Remove", (string text, int start) => start == text.Length ? text : text.Remove(start));
        Pure.Add(Type + "Remove", (string text, int start, int count) => text.Remove(start, count));
        Pure.Add(Type + "Insert", (string text, int at, string more) => text.Insert(at, more));
        Pure.Add(Type + "Trim", (string text) => text.Trim());
        Pure.Add(Type + "Trim", (string text, char character) => text.Trim(character));
        Pure.Add(Type + "Trim", (string text, char[]? characters) => text.Trim(characters));
        Pure.Add(Type + "TrimStart", (string text) => text.TrimStart());
        Pure.Add(Type + "TrimStart", (string text, char character) => text.TrimStart(character));
        Pure.Add(Type + "TrimStart", (string text, char[]? characters) => text.TrimStart(characters));
        Pure.Add(Type + "TrimEnd", (string text) => text.TrimEnd());
        Pure.Add(Type + "TrimEnd", (string text, char character) => text.TrimEnd(character));
        Pure.Add(Type + "TrimEnd", (string text, char[]? characters) => text.TrimEnd(characters));
    }

    private static void Pads()
    {
        Pure.Add(Type + "PadLeft", (string text, int width) => text.PadLeft(Checked(width)));
        Pure.Add(Type + "PadLeft", (string text, int width, char character) => text.PadLeft(Checked(width), character));
        Pure.Add(Type + "PadRight", (string text, int width) => text.PadRight(Checked(width)));
        Pure.Add(Type + "PadRight", (string text, int width, char character) => text.PadRight(Checked(width), character));
    }

    private static int Checked(int length)
    {
        TextValue.CheckLength(length);
        return length;
    }

    private static void Replacements()
    {
        Pure.Add(Type + "Replace", (string text, string old, string? by) => Replace(text, old, by, StringComparison.Ordinal));
        Pure.Add(Type + "Replace", (string text, string old, string? by, StringComparison how) => Replace(text, old, by, how) ?? (object)OpenValue.Any);
        Pure.Add(Type + "ReplaceLineEndings", (string text, string by) => Replace(Replace(text, "\r\n", "\n", StringComparison.Ordinal)!
            .Replace('\r', '\n').Replace('\f', '\n').Replace('\u0085', '\n').Replace('\u2028', '\n').Replace('\u2029', '\n'), "\n", by, StringComparison.Ordinal));
        FrameworkTable.Where("System.String", "Replace", call => call.Arguments is [_, char, char], call => ByPieces(call, call[0], piece => piece.Replace((char)call[1]!, (char)call[2]!)));
    }

    /// <summary>The text with another part in place of each one; none where it isn't known where those are.</summary>
    public static string? Replace(string text, string old, string? by, StringComparison how)
    {
        if (old is null)
            throw new ArgumentNullException(nameof(old));
        if (old.Length == 0)
            throw new ArgumentException("The empty text can't be replaced.");

        // Before it is made: a long text for each character of a long text would be an endless one.
        TextValue.CheckLength(text.Length + ((long)text.Length / old.Length * Math.Max(0, (by?.Length ?? 0) - old.Length)));
        var made = new StringBuilder();
        var at = 0;
        while (TextComparison.IndexOf(text, old, how, at) is { } found)
        {
            if (found < 0)
                return made.Append(text, at, text.Length - at).ToString();
            made.Append(text, at, found - at).Append(by);
            at = found + old.Length;
        }

        return null;
    }

    private static void Cases()
    {
        FrameworkTable.Add("System.String", "ToLowerInvariant", call => ByPieces(call, call[0], piece => piece.ToLowerInvariant()));
        FrameworkTable.Add("System.String", "ToUpperInvariant", call => ByPieces(call, call[0], piece => piece.ToUpperInvariant()));
        Pure.Add(Type + "ToLower", (string text) => Cultures.ToLower(text) ?? (object)OpenValue.Any);
        Pure.Add(Type + "ToUpper", (string text) => Cultures.ToUpper(text) ?? (object)OpenValue.Any);
        Pure.Add(Type + "ToLower", (string text, object? culture) => culture == OtherCalls.InvariantCulture ? text.ToLowerInvariant() : Cultures.ToLower(text) ?? (object)OpenValue.Any);
        Pure.Add(Type + "ToUpper", (string text, object? culture) => culture == OtherCalls.InvariantCulture ? text.ToUpperInvariant() : Cultures.ToUpper(text) ?? (object)OpenValue.Any);
    }

    // What is done character by character is done to the known pieces of a text that is known in parts.
    private static object ByPieces(Invocation call, object? value, Func<string, string> change)
    {
        if (value is not TextValue text)
            return OpenValue.Any;
        call.Machine.Calls.Observe(text);
        call.Machine.Budget.Make(text.Text.Pieces.Sum(piece => piece?.Length ?? 0));
        return new TextValue(Condyle.Model.Text.Of(text.Text.Pieces.Select(piece => piece is null ? null : change(piece))), [], text.Origins);
    }

    private static void New()
    {
        Pure.Add(Type + ".ctor", (char character, int count) => new string(character, Checked(count)));
        Pure.Add(Type + ".ctor", (char[]? characters) => new string(characters));
        Pure.Add(Type + ".ctor", (string span) => span);
        Pure.Add(Type + ".ctor", (char[] characters, int start, int length) => new string(characters, start, length));
    }
}
