using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary>What is asked of characters.</summary>
internal static class CharCalls
{
    private const string Type = "System.Char.";

    public static void Register()
    {
        Kind("IsDigit", char.IsDigit);
        Kind("IsLetter", char.IsLetter);
        Kind("IsLetterOrDigit", char.IsLetterOrDigit);
        Kind("IsWhiteSpace", char.IsWhiteSpace);
        Kind("IsUpper", char.IsUpper);
        Kind("IsLower", char.IsLower);
        Kind("IsPunctuation", char.IsPunctuation);
        Kind("IsSymbol", char.IsSymbol);
        Kind("IsNumber", char.IsNumber);
        Kind("IsControl", char.IsControl);
        Kind("IsSeparator", char.IsSeparator);
        Kind("IsSurrogate", char.IsSurrogate);
        Kind("IsHighSurrogate", char.IsHighSurrogate);
        Kind("IsLowSurrogate", char.IsLowSurrogate);
        Ascii();
        Cases();
        Pure.Add(Type + "GetNumericValue", (char character) => char.GetNumericValue(character));
        Pure.Add(Type + "GetNumericValue", (string text, int at) => char.GetNumericValue(text, at));
        Pure.Add(Type + "ToString", (char character) => character.ToString());
        Pure.Add(Type + "ToString", (char character, object? _) => character.ToString());
        Pure.Add(Type + "Parse", (string text) => text.Length == 1 ? text[0] : throw new FormatException("The text isn't one character."));
        Pure.Add(Type + "ConvertFromUtf32", (int code) => char.ConvertFromUtf32(code));
        FrameworkTable.Add("System.Char", "TryParse", call =>
        {
            var isOne = call[0] is not null && call.Text(0).Length == 1;
            call.Out(1, isOne ? call.Text(0)[0] : '\0');
            return isOne;
        });
    }

    private static void Kind(string name, Func<char, bool> run)
    {
        Pure.Add(Type + name, run);
        Pure.Add(Type + name, (string text, int at) => at >= 0 && at < text.Length ? run(text[at]) : throw new ArgumentOutOfRangeException(nameof(at)));
    }

    private static void Ascii()
    {
        Pure.Add(Type + "IsAscii", (char character) => character < 128);
        Pure.Add(Type + "IsAsciiDigit", (char character) => character is >= '0' and <= '9');
        Pure.Add(Type + "IsAsciiLetter", (char character) => character is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z'));
        Pure.Add(Type + "IsAsciiLetterLower", (char character) => character is >= 'a' and <= 'z');
        Pure.Add(Type + "IsAsciiLetterUpper", (char character) => character is >= 'A' and <= 'Z');
        Pure.Add(Type + "IsAsciiLetterOrDigit", (char character) => character is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9'));
        Pure.Add(Type + "IsAsciiHexDigit", (char character) => character is (>= 'a' and <= 'f') or (>= 'A' and <= 'F') or (>= '0' and <= '9'));
        Pure.Add(Type + "IsAsciiHexDigitLower", (char character) => character is (>= 'a' and <= 'f') or (>= '0' and <= '9'));
        Pure.Add(Type + "IsAsciiHexDigitUpper", (char character) => character is (>= 'A' and <= 'F') or (>= '0' and <= '9'));
        Pure.Add(Type + "IsBetween", (char character, char least, char most) => character >= least && character <= most);
    }

    private static void Cases()
    {
        Pure.Add(Type + "ToUpperInvariant", (char character) => char.ToUpperInvariant(character));
        Pure.Add(Type + "ToLowerInvariant", (char character) => char.ToLowerInvariant(character));
        Pure.Add(Type + "ToUpper", (char character) => Cultures.ToUpper(character.ToString())?[0]);
        Pure.Add(Type + "ToLower", (char character) => Cultures.ToLower(character.ToString())?[0]);
        Pure.Add(Type + "ToUpper", (char character, object? culture) => culture == OtherCalls.InvariantCulture ? char.ToUpper(character, CultureInfo.InvariantCulture) : Cultures.ToUpper(character.ToString())?[0]);
        Pure.Add(Type + "ToLower", (char character, object? culture) => culture == OtherCalls.InvariantCulture ? char.ToLower(character, CultureInfo.InvariantCulture) : Cultures.ToLower(character.ToString())?[0]);
    }
}
