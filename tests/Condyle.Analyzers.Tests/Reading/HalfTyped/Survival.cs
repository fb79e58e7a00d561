using Condyle.Analyzers.Reporting;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.Analyzers.Tests.Reading.HalfTyped;

/// <summary>Analyses code that may be anything, and tells what an analyzer must not do to people who are typing it.</summary>
internal static class Survival
{
    /// <summary>What went wrong; none if nothing did.</summary>
    public static async Task<string?> WhatIsWrongWith(Compilation compilation)
    {
        if (compilation.SyntaxTrees.Any(CompilerWaitsForItself))
            return null;
        var analyzer = new RigAnalyzer();
        var options = new CompilationWithAnalyzersOptions(new AnalyzerOptions([]), onAnalyzerException: null, concurrentAnalysis: false, logAnalyzerExecutionTime: false);
        AnalysisResult result;
        try
        {
            result = await new CompilationWithAnalyzers(compilation, [analyzer], options).GetAnalysisResultAsync(CancellationToken.None);
        }
        catch (Exception) when (CompilerFailsAlone(compilation))
        {
            return null;
        }

        if (result.CompilationDiagnostics.Values.SelectMany(found => found).FirstOrDefault() is { } lost)
            return $"{lost.Id} lies in no file: {lost.GetMessage()}";
        foreach (var (tree, found) in result.SemanticDiagnostics)
        {
            foreach (var diagnostic in found.Values.SelectMany(diagnostics => diagnostics))
            {
                if (WhatIsWrongWith(diagnostic, tree, compilation) is { } wrong)
                    return wrong;
            }
        }

        return null;
    }

    /// <summary>Whether the compiler itself fails on the code: it does on some extension blocks that are half typed. Then no analyzer is heard.</summary>
    private static bool CompilerFailsAlone(Compilation compilation)
    {
        try
        {
            compilation.Clone().GetDiagnostics();
            return false;
        }
        catch (Exception)
        {
            return true;
        }
    }

    /// <summary>Whether a parameter's default names the function that it belongs to: the compiler may wait for itself then, for ever, whoever asks it for diagnostics.</summary>
    private static bool CompilerWaitsForItself(SyntaxTree tree) => tree.GetRoot().DescendantNodes().OfType<ParameterSyntax>()
        .Any(parameter => parameter.Default?.DescendantNodes().OfType<SimpleNameSyntax>().Any(name => name.Identifier.ValueText == FunctionOf(parameter)) == true);

    private static string? FunctionOf(ParameterSyntax parameter) => parameter.Parent?.Parent switch
    {
        MethodDeclarationSyntax method => method.Identifier.ValueText,
        LocalFunctionStatementSyntax function => function.Identifier.ValueText,
        _ => null,
    };

    private static string? WhatIsWrongWith(Diagnostic found, SyntaxTree tree, Compilation compilation)
    {
        if (found.Id == "AD0001" || found.GetMessage().Contains("the reader failed", StringComparison.Ordinal))
            return found.GetMessage();
        if (found.Location.SourceTree != tree || found.Location.SourceSpan.End > tree.Length)
            return $"{found.Id} lies outside its file";
        if (found.AdditionalLocations.Any(related => related.SourceTree is not { } other || !compilation.ContainsSyntaxTree(other) || related.SourceSpan.End > other.Length))
            return $"{found.Id} is related to a place outside all files";
        var lengths = compilation.SyntaxTrees.ToLookup(file => file.FilePath, file => file.Length).ToDictionary(same => same.Key, same => same.Min());
        return RepairProperties.Read(found.Properties).SelectMany(repair => repair.Edits).Any(edit => !lengths.TryGetValue(edit.Path, out var length) || edit.Span.End > length)
            ? $"{found.Id} would be repaired outside all files"
            : null;
    }
}
