using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>People are typing: whatever the code looks like, the analyzer neither fails nor points outside a file.</summary>
public class HalfTypedTests
{
    private static readonly string Source = Oracle.Rig(ArmSample.Body, ArmSample.Members);
    private static readonly int Tokens = CSharpSyntaxTree.ParseText(Source).GetRoot().DescendantTokens().Count();

    /// <summary>How many mutations the suite tries; the environment variable asks for the long run.</summary>
    private static readonly int Mutations = int.TryParse(Environment.GetEnvironmentVariable("CONDYLE_MUTATIONS"), out var many) ? many : 500;

    [Fact]
    public async Task Random_tokens_deleted_doubled_or_swapped_are_survived()
    {
        // The same mutations every time, so that a change is judged by itself.
        var random = new Random(20_000);
        var failures = new List<string>();
        for (var i = 0; i < Mutations; i++)
        {
            var (first, second, change) = (random.Next(Tokens - 1), random.Next(Tokens - 1), random.Next(4));
            if (await WhatIsWrongWith(Mutate(first, second, change)) is { } wrong)
                failures.Add($"({first}, {second}, {change}): {wrong}");
        }

        Assert.True(failures.Count == 0, string.Join(Environment.NewLine, failures));
    }

    [Theory]
    [InlineData(50, 600, 2)]
    [InlineData(282, 546, 2)]
    [InlineData(326, 511, 2)]
    [InlineData(225, 284, 2)]
    [InlineData(389, 148, 2)]
    [InlineData(178, 442, 2)]
    [InlineData(268, 240, 2)]
    [InlineData(232, 161, 2)]
    public async Task Mutations_that_failed_once_are_survived(int first, int second, int change)
    {
        var wrong = await WhatIsWrongWith(Mutate(first, second, change));

        Assert.True(wrong is null, wrong);
    }

    [Fact]
    public async Task Every_prefix_of_a_file_is_survived()
    {
        for (var length = 0; length < Source.Length; length += 37)
            Assert.Null(await WhatIsWrongWith(Source[..length]));
    }

    private static async Task<string?> WhatIsWrongWith(string source)
    {
        foreach (var found in await Findings.Diagnostics(CompiledCode.Compile(("rig.cs", source))))
        {
            if (found.Id == "AD0001" || found.GetMessage().Contains("the reader failed", StringComparison.Ordinal))
                return found.GetMessage();
            if (found.Location.SourceSpan.End > source.Length)
                return $"{found.Id} lies outside the file";
        }

        return null;
    }

    private static string Mutate(int first, int second, int change)
    {
        var tokens = CSharpSyntaxTree.ParseText(Source).GetRoot().DescendantTokens().Select(token => token.ToFullString()).ToList();
        switch (change)
        {
            case 0: tokens.RemoveAt(first); break;
            case 1: tokens.Insert(first, tokens[first]); break;
            case 2: (tokens[first], tokens[second]) = (tokens[second], tokens[first]); break;
            default:
                tokens.RemoveAt(first);
                tokens.Insert(Math.Min(second, tokens.Count), tokens[0]);
                break;
        }

        return string.Concat(tokens);
    }
}
