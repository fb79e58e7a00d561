using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis.CSharp;
using Xunit.Abstractions;

namespace Condyle.Analyzers.Tests.Reading.HalfTyped;

/// <summary>People are typing: whatever the code looks like, the analyzer neither fails nor points outside a file.</summary>
public class HalfTypedTests(ITestOutputHelper output)
{
    private static readonly int Mutations = Mutation.Tried(inTheSuite: 150);

    [Fact]
    public async Task Random_tokens_deleted_doubled_or_swapped_are_survived()
    {
        var failures = new List<string>();
        foreach (var mutation in Mutation.Of(RigSources.All.Count, Mutations, seed: 20_000))
        {
            var source = RigSources.All[mutation.Source];
            var text = mutation.Apply(source.Compilation.Value.SyntaxTrees.First(tree => tree.FilePath == source.Path).ToString());
            if (await WhatIsWrongWith(source, text) is { } wrong)
                failures.Add($"{source}, {mutation.Seed}: {wrong}{Environment.NewLine}{text}");
        }

        output.WriteLine($"{Mutations} mutations of {RigSources.All.Count} pieces of rig code, {failures.Count} of them not survived");
        Assert.True(failures.Count == 0, string.Join(Environment.NewLine, failures));
    }

    [Fact]
    public async Task Every_prefix_of_a_file_is_survived()
    {
        var source = Oracle.Rig(ArmSample.Body, ArmSample.Members);
        for (var length = 0; length < source.Length; length += 37)
            Assert.Null(await Survival.WhatIsWrongWith(CompiledCode.Compile(("rig.cs", source[..length]))));
    }

    /// <summary>What isn't there was negated: of that the reader took the type for known. Where a file has changed, its mutation has to be found anew.</summary>
    [Theory]
    [InlineData("42_Ragworm.cs", 839853482, "!rings[after]- HasHandle")]
    [InlineData("JointKinds.cs", 1438191620, "Name.joints(\"twist\"")]
    public async Task Mutations_that_an_analyzer_once_failed_on_are_survived(string file, int seed, string broken)
    {
        var source = RigSources.All.First(source => source.ToString()!.Contains(file, StringComparison.Ordinal));
        var text = source.Compilation.Value.SyntaxTrees.First(tree => tree.FilePath == source.Path).ToString();
        var mutated = new Mutation(0, seed).Apply(text);
        Assert.Contains(broken, mutated, StringComparison.Ordinal);
        Assert.Null(await WhatIsWrongWith(source, mutated));
    }

    private static Task<string?> WhatIsWrongWith(RigSource source, string text)
    {
        var compilation = source.Compilation.Value;
        var tree = compilation.SyntaxTrees.First(tree => tree.FilePath == source.Path);
        var changed = CSharpSyntaxTree.ParseText(text, (CSharpParseOptions)tree.Options, source.Path);
        return Survival.WhatIsWrongWith(compilation.ReplaceSyntaxTree(tree, changed));
    }
}
