using System.Buffers.Text;
using System.Globalization;
using System.Text;

namespace Condyle.Runtime.Capture;

/// <summary>A BVH file's text, line by line and word by word. Every complaint names file and line.</summary>
internal ref struct BvhText(string file, ReadOnlySpan<byte> text)
{
    /// <summary>Beyond this a place that is scaled and turned might leave a float's range.</summary>
    private const float Furthest = 1e8f;

    private ReadOnlySpan<byte> rest = text;

    /// <summary>The number of the line that was taken last, from 1.</summary>
    public int Line { get; private set; }

    /// <summary>How many bytes come after the line that was taken last.</summary>
    public readonly int Left => rest.Length;

    /// <summary>Takes the next line that isn't blank; false at the end.</summary>
    public bool TryTake(out ReadOnlySpan<byte> line)
    {
        while (rest.Length > 0)
        {
            var end = rest.IndexOfAny((byte)'\n', (byte)'\r');
            line = (end < 0 ? rest : rest[..end]).Trim(" \t"u8);
            var isPair = end >= 0 && rest[end] == '\r' && end + 1 < rest.Length && rest[end + 1] == '\n';
            rest = end < 0 ? default : rest[(end + (isPair ? 2 : 1))..];
            Line++;
            if (!line.IsEmpty)
                return true;
        }

        line = default;
        return false;
    }

    public ReadOnlySpan<byte> Take(string wanted) => TryTake(out var line) ? line : throw Wrong($"the file ends where {wanted} should stand", "Export or copy the file again");

    /// <summary>Takes the first word of a line off it.</summary>
    public static ReadOnlySpan<byte> Word(ref ReadOnlySpan<byte> line)
    {
        var end = line.IndexOfAny((byte)' ', (byte)'\t');
        var word = end < 0 ? line : line[..end];
        line = end < 0 ? default : line[end..].TrimStart(" \t"u8);
        return word;
    }

    /// <summary>Whether a word is another one, letter case aside.</summary>
    public static bool Is(ReadOnlySpan<byte> word, ReadOnlySpan<byte> other) => Ascii.EqualsIgnoreCase(word, other);

    /// <summary>Takes a number off a line.</summary>
    public readonly float Number(ref ReadOnlySpan<byte> line, string what)
    {
        var word = Word(ref line);
        if (word.IsEmpty)
            throw Wrong($"{what} is missing", "Write a number");
        var signed = word[0] == '+' ? word[1..] : word;
        return Utf8Parser.TryParse(signed, out double number, out var read) && read == signed.Length && float.IsFinite((float)number)
            ? (float)number
            : throw Wrong($"{what} is '{Shown(word)}', which is no finite number", "Write a number with a point, such as -12.5");
    }

    /// <summary>Takes a length or an angle off a line.</summary>
    public readonly float Place(ref ReadOnlySpan<byte> line, string what)
    {
        var number = Number(ref line, what);
        return Math.Abs(number) <= Furthest ? number : throw Wrong(string.Create(CultureInfo.InvariantCulture, $"{what} is {number}, which is beyond {Furthest}"), "Export the file again");
    }

    public readonly long Whole(ref ReadOnlySpan<byte> line, string what, long most)
    {
        var number = Number(ref line, what);
        return number == MathF.Floor(number) && number >= 0 && number <= most ? (long)number
            : throw Wrong(string.Create(CultureInfo.InvariantCulture, $"{what} is {number}, which is no whole number from 0 to {most}"), "Export the file again");
    }

    /// <summary>What is wrong on the line that was taken last.</summary>
    public readonly BadInputException Wrong(string problem, string remedy, string? joint = null) => new(file, problem, remedy, joint, $"line {Math.Max(1, Line)}");

    public static string Shown(ReadOnlySpan<byte> word) => Encoding.UTF8.GetString(word.Length > 40 ? word[..40] : word);
}
