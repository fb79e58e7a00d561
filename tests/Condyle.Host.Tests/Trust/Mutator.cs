using System.Buffers.Binary;
using System.Globalization;
using System.Text;

namespace Condyle.Host.Tests.Trust;

/// <summary>Damages files as transfers, editors and liars do. The same number makes the same damage.</summary>
internal sealed class Mutator(IReadOnlyList<byte[]> seeds)
{
    private static readonly uint[] Lies = [0, 1, 2, 0x7F, 0xFF, 0x7FFF, 0xFFFF, 0x7FFFFFFF, 0x80000000, 0xFFFFFFFE, 0xFFFFFFFF, 0x7FC00000, 0x7F800000, 0xFF800000];

    private static readonly string[] Texts =
    [
        "0", "-1", "1e999", "-0", "2147483647", "2147483648", "4294967295", "9007199254740993", "0.5", "NaN", "null", "true", "{}", "[]", "[[[[[[", "\"\"", "\"\\ud800\"", "\"../../secret\"", "\"data:;base64,AAAA\"", "1e-320",
    ];

    public byte[] Make(int number)
    {
        var random = new Random(number);
        var bytes = seeds[number % seeds.Count].ToList();
        for (var change = random.Next(3) == 0 ? random.Next(1, 4) : 1; change > 0 && bytes.Count > 0; change--)
            Change(bytes, random);
        return [.. bytes];
    }

    private void Change(List<byte> bytes, Random random)
    {
        var at = random.Next(bytes.Count);
        var length = Math.Min(bytes.Count - at, 1 + (int)Math.Pow(2, random.NextDouble() * 8));
        switch (random.Next(16))
        {
            case 0:
                bytes[at] ^= (byte)(1 << random.Next(8));
                break;
            case 1:
                bytes[at] = (byte)random.Next(256);
                break;
            case 2:
                bytes.RemoveRange(at, length);
                break;
            case 3:
                bytes.InsertRange(at, bytes.GetRange(at, length));
                break;
            case 4:
                bytes.RemoveRange(at, bytes.Count - at);
                break;
            case 5:
                Lie(bytes, at & ~3, Lies[random.Next(Lies.Length)]);
                break;
            case 6:
                var other = seeds[random.Next(seeds.Count)];
                var from = random.Next(other.Length);
                bytes.InsertRange(at, other.Skip(from).Take(length));
                break;
            default:
                ReplaceNumber(bytes, at, Texts[random.Next(Texts.Length)]);
                break;
        }
    }

    private static void Lie(List<byte> bytes, int at, uint word)
    {
        Span<byte> four = stackalloc byte[4];
        BinaryPrimitives.WriteUInt32LittleEndian(four, word);
        for (var i = 0; i < 4 && at + i < bytes.Count; i++)
            bytes[at + i] = four[i];
    }

    /// <summary>Puts something else in the place of the next number that is written as text.</summary>
    private static void ReplaceNumber(List<byte> bytes, int at, string text)
    {
        var start = bytes.FindIndex(at, value => value is >= (byte)'0' and <= (byte)'9');
        if (start < 0)
            return;
        var end = start;
        while (end < bytes.Count && (char)bytes[end] is (>= '0' and <= '9') or '.' or 'e' or 'E' or '+' or '-')
            end++;
        bytes.RemoveRange(start, end - start);
        bytes.InsertRange(start, Encoding.UTF8.GetBytes(text.ToString(CultureInfo.InvariantCulture)));
    }
}
