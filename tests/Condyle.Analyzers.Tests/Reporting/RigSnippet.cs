using System.Collections.Immutable;
using Condyle.Analyzers.Reporting;
using Condyle.Rules;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Testing;
using Microsoft.CodeAnalysis.Testing;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>Rig code with its findings marked, as <c>{|CDY1001:"arm_left"|}</c>: the body of <c>Define</c>, members beside it and another file.</summary>
internal sealed record RigSnippet(string Body, string Members = "", string More = "")
{
    /// <summary>The rules that snippets are about.</summary>
    public static readonly IReadOnlySet<string> Rules = new HashSet<string> { "CDY1001", "CDY2001", "CDY3001", "CDY9001", "CDY9002" };

    private static readonly MetadataReference[] References =
    [
        .. CompiledCode.FrameworkReferences(),
        MetadataReference.CreateFromFile(typeof(RigDraft).Assembly.Location),
    ];

    public IReadOnlyList<(string Path, string Source)> Files =>
    [
        ("/0/rig.cs", $"public sealed class Docker : IRigDefinition\n{{\n    public void Define(RigDraft rig)\n    {{\n{Body}\n    }}\n\n{Members}\n}}\n"),
        ("/0/more.cs", More),
        ("/0/stage.cs", Stage.Code),
    ];

    /// <summary>The files without the marks.</summary>
    public (string Path, string Source)[] PlainFiles => [.. Files.Select(file =>
    {
        TestFileMarkupParser.GetSpans(file.Source, out var plain, out ImmutableArray<TextSpan> _);
        return (file.Path, plain);
    })];

    /// <summary>The analyzer finds what is marked and nothing else, and the running program finds the same.</summary>
    public static async Task Finds(string body, string members = "", string more = "")
    {
        var snippet = new RigSnippet(body, members, more);
        await snippet.IsAnalysed();
        await FrontEnds.Agree(snippet.PlainFiles);
    }

    /// <summary>As <see cref="Finds"/>, for code that depends on what only a run can know, so that the two may differ.</summary>
    public static Task FindsByReading(string body, string members = "", string more = "") => new RigSnippet(body, members, more).IsAnalysed();

    private async Task IsAnalysed()
    {
        var test = new Test();
        Prepare(test);
        Fill(test.TestState);
        await test.RunAsync();
    }

    public void Fill(SolutionState state)
    {
        foreach (var file in Files)
            state.Sources.Add(file);
    }

    public static void Prepare(AnalyzerTest<DefaultVerifier> test)
    {
        // A snippet is half a rig: it looks at what reading finds and at the rules that need no more. All rules look at the cases of the corpus.
        test.DisabledDiagnostics.AddRange(RuleBook.All.Select(rule => rule.Id).Except(Rules));
        // Pragmas have a test of their own.
        test.TestBehaviors = TestBehaviors.SkipSuppressionCheck;
        test.ReferenceAssemblies = new ReferenceAssemblies("net10.0");
        test.TestState.AdditionalReferences.AddRange(References);
    }

    public static CSharpParseOptions Parsing { get; } = new(LanguageVersion.Preview);

    private sealed class Test : CSharpCodeFixTest<RigAnalyzer, EmptyCodeFixProvider, DefaultVerifier>
    {
        protected override ParseOptions CreateParseOptions() => Parsing;
    }
}
