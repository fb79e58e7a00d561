using System.Collections.Immutable;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Benchmarks.Projects;

/// <summary>A project of so many rigs, as files and as compilations that have nothing in common, so that no round profits from another one.</summary>
internal sealed class HarbourProject
{
    private readonly CSharpCompilation empty = CompiledCode.Compile();
    private readonly ImmutableArray<SyntaxTree> parsed;

    public HarbourProject(int rigs)
    {
        Files = [SharedFiles.Helpers, SharedFiles.Unrelated, Roll.File(rigs), .. Enumerable.Range(0, rigs).Select(Worker.File)];
        parsed = CompiledCode.Compile([.. Files]).SyntaxTrees;
    }

    /// <summary>Makes sure that what is measured is code as people have it: without errors.</summary>
    public static void Verify()
    {
        var errors = new HarbourProject(rigs: 1).Fresh().GetDiagnostics().Where(found => found.Severity == DiagnosticSeverity.Error).ToList();
        if (errors.Count > 0)
            throw new InvalidOperationException("The generated project doesn't compile: " + string.Join(Environment.NewLine, errors));
    }

    public IReadOnlyList<(string Path, string Source)> Files { get; }

    /// <summary>The project as if it had just been opened: parsed, nothing bound, no tree known to anybody.</summary>
    public CSharpCompilation Fresh() => empty.AddSyntaxTrees(parsed.Select(tree => CSharpSyntaxTree.Create((CompilationUnitSyntax)tree.GetRoot(), (CSharpParseOptions)tree.Options, tree.FilePath, tree.GetText().Encoding)));
}
