using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Tests.Reporting;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Testing;
using Microsoft.CodeAnalysis.Testing;

namespace Condyle.CodeFixes.Tests;

/// <summary>Applies the fixes one by one and all at once, and proves on the models that nothing but the blamed facts changed.</summary>
internal static class Repairs
{
    /// <summary>Every finding that is marked in the first code is repaired, which gives the second code; marks left there have no fix.</summary>
    public static Task Give(string before, string after, int steps = 1, int rules = 1) => Give(new RigSnippet(before), new RigSnippet(after), steps, rules);

    /// <param name="steps">How many fixes it takes one by one.</param>
    /// <param name="rules">How many it takes when all findings of a rule are fixed at once.</param>
    /// <param name="documents">How many it takes when all findings of a rule in a document are.</param>
    /// <param name="title">What the fix is called.</param>
    /// <param name="key">The kind of repair to choose, where there is a choice.</param>
    public static async Task Give(RigSnippet before, RigSnippet after, int steps = 1, int rules = 1, int documents = 1, string? title = null, string? key = null)
    {
        var test = new Test
        {
            NumberOfIncrementalIterations = steps,
            NumberOfFixAllIterations = rules,
            NumberOfFixAllInDocumentIterations = rules * documents,
            CodeActionEquivalenceKey = key,
            CodeActionVerifier = title is null ? null : (action, verifier) => verifier.Equal(title, action.Title),
        };
        RigSnippet.Prepare(test);
        before.Fill(test.TestState);
        after.Fill(test.FixedState);
        await test.RunAsync();
        OnlyTheBlame.Changed(before.PlainFiles, after.PlainFiles);
    }

    /// <summary>What is marked is found, and no fix is offered for it.</summary>
    public static async Task AreNotOffered(RigSnippet snippet)
    {
        var test = new Test { NumberOfIncrementalIterations = 0, NumberOfFixAllIterations = 0 };
        RigSnippet.Prepare(test);
        snippet.Fill(test.TestState);
        snippet.Fill(test.FixedState);
        await test.RunAsync();
    }

    private sealed class Test : CSharpCodeFixTest<RigAnalyzer, RepairCodeFixProvider, DefaultVerifier>
    {
        protected override ParseOptions CreateParseOptions() => RigSnippet.Parsing;
    }
}
