using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using Condyle.Runtime;

namespace Condyle.Host.Batch;

/// <summary>One of several machines' share of a batch. Which share an input belongs to depends on its name alone, so every input is in exactly one, whatever the order of the list.</summary>
/// <param name="Index">Which share, counted from 0.</param>
/// <param name="Count">How many there are.</param>
internal sealed record Shard(int Index, int Count)
{
    /// <summary>What a Kubernetes Indexed Job tells each of its pods.</summary>
    public const string CompletionIndex = "JOB_COMPLETION_INDEX";

    public static Shard Whole { get; } = new(0, 1);

    /// <summary>Reads <c>3/8</c>, the fourth of eight shares, or <c>/8</c>, whose number the job's completion index tells.</summary>
    /// <exception cref="BadInputException">It is no share.</exception>
    public static Shard Parse(string? text, Func<string, string?> variable)
    {
        if (text is null)
            return Whole;
        var parts = text.Split('/');
        if (parts.Length != 2 || !TryRead(parts[1], out var count) || count < 1)
            throw Wrong(text);
        var told = parts[0].Length > 0 ? parts[0] : variable(CompletionIndex)
            ?? throw new BadInputException("--shard", $"'{text}' leaves the share's number to {CompletionIndex}, which isn't set", "Write it out, counted from 0, as in 0/8");
        return TryRead(told, out var index) && index < count ? new Shard(index, count) : throw Wrong($"{told}/{parts[1]}");
    }

    public bool Holds(string name) =>
        BitConverter.ToUInt64(SHA256.HashData(Encoding.UTF8.GetBytes(name))) % (ulong)Count == (ulong)Index;

    private static bool TryRead(string text, out int number) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);

    private static BadInputException Wrong(string text) =>
        new("--shard", $"'{text}' is no share of a batch", "Write which one, counted from 0, and how many there are, as in 0/8 to 7/8");
}
