using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Condyle.Model;

/// <summary>What messages must be for people and for the tools that read a build's lines.</summary>
internal static class Messages
{
    // As .NET writes it behind the message of an argument that was refused, and as .NET Framework does.
    private static readonly Regex Parameter = new(@"(\s\(Parameter '[^']*'\)|\s+Parameter name: \S*)$", RegexOptions.CultureInvariant);

    /// <summary>The message with its line breaks and other characters that aren't shown written as C# writes them: a name may hold any.</summary>
    public static string OnOneLine(string message)
    {
        var line = new StringBuilder(message.Length);
        int width;
        for (var at = 0; at < message.Length; at += width)
        {
            width = char.IsSurrogatePair(message, at) ? 2 : 1;
            _ = message[at] switch
            {
                '\n' => line.Append(@"\n"),
                '\r' => line.Append(@"\r"),
                '\t' => line.Append(@"\t"),
                _ when IsShown(message, at) => line.Append(message, at, width),
                var half when width == 1 => line.Append($@"\u{(int)half:x4}"),
                _ => line.Append($@"\U{char.ConvertToUtf32(message, at):x8}"),
            };
        }

        return line.Length == message.Length ? message : line.ToString();
    }

    // A break of lines and what turns the way of reading hide the rest of a message, as control characters do; half a pair is no character.
    private static bool IsShown(string message, int at) => CharUnicodeInfo.GetUnicodeCategory(message, at)
        is not (UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate);

    /// <summary>The message of a refused argument without the name of the parameter, which says nothing to who wrote the rig.</summary>
    public static string OfRefusal(string message) => Parameter.Replace(message, "");
}
