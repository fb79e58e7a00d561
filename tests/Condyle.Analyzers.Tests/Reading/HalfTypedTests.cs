using Condyle.Tests.Shared;
using CsCheck;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.Analyzers.Tests.Reading;

/// <summary>People are typing: whatever the code looks like, the analyzer neither fails nor points outside a file.</summary>
public class HalfTypedTests
{
    private static readonly string Source = Oracle.Rig(ArmSample.Body, ArmSample.Members);
    private static readonly int Tokens = CSharpSyntaxTree.ParseText(Source).GetRoot().DescendantTokens().Count();

    [Fact]
    public async Task Random_tokens_deleted_doubled_or_swapped_are_survived() =>
        await Gen.Select(Gen.Int[0, Tokens - 2], Gen.Int[0, Tokens - 2], Gen.Int[0, 3]).SampleAsync(
            async (first, second, change) =>
            {
                var mutated = Mutate(first, second, change);
                var compilation = CompiledCode.Compile(("rig.cs", mutated));
                foreach (var found in await Findings.Diagnostics(compilation))
                {
                    Assert.NotEqual("AD0001", found.Id);
                    Assert.True(!found.GetMessage().Contains("the reader failed", StringComparison.Ordinal), found.GetMessage() + Environment.NewLine + mutated);
                    Assert.InRange(found.Location.SourceSpan.End, 0, mutated.Length);
                }
            },
            iter: 500,
            seed: "0000KOIXGcI4");

    [Fact]
    public async Task Every_prefix_of_a_file_is_survived()
    {
        for (var length = 0; length < Source.Length; length += 37)
        {
            foreach (var found in await Findings.Diagnostics(CompiledCode.Compile(("rig.cs", Source[..length]))))
                Assert.True(found.Id != "AD0001" && !found.GetMessage().Contains("the reader failed", StringComparison.Ordinal), found.GetMessage());
        }
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
