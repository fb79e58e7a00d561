using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Skeletons;

/// <summary>
/// Makes a typed class of every <c>.gltf</c> among the additional files that carries the metadata <c>CondyleSkeleton="true"</c>:
/// <c>StevedoreSkeleton</c> of <c>stevedore.gltf</c>, with one property for each joint or pair of joints.
/// </summary>
[Generator(LanguageNames.CSharp)]
public sealed class SkeletonGenerator : IIncrementalGenerator
{
    internal const string RequestsStep = "SkeletonRequests";
    internal const string SourcesStep = "SkeletonSources";

    /// <inheritdoc/>
    public void Initialize(IncrementalGeneratorInitializationContext context)
    {
        var requests = context.AdditionalTextsProvider
            .Combine(context.AnalyzerConfigOptionsProvider)
            .Select(static (pair, _) => SkeletonRequest.Of(pair.Left, pair.Right))
            .Where(static request => request is not null)
            .Select(static (request, _) => request!)
            .WithTrackingName(RequestsStep);

        var sources = requests.Select(SkeletonSource.Make).WithTrackingName(SourcesStep);

        // One text compares by value, which a collection doesn't.
        var askedTwice = requests
            .Select(static (request, _) => request.HintName)
            .Collect()
            .Select(static (names, _) => string.Join("\n", names
                .GroupBy(static name => name, StringComparer.OrdinalIgnoreCase)
                .Where(static group => group.Count() > 1)
                .Select(static group => group.Key)
                .OrderBy(static name => name, StringComparer.Ordinal)));

        context.RegisterSourceOutput(sources.Combine(askedTwice), static (output, pair) => Add(output, pair.Left, pair.Right.Split('\n')));
    }

    private static void Add(SourceProductionContext output, SkeletonSource source, string[] askedTwice)
    {
        if (source.Problem is { } problem)
            output.ReportDiagnostic(problem.ToDiagnostic());
        else if (askedTwice.Contains(source.HintName, StringComparer.OrdinalIgnoreCase))
            output.ReportDiagnostic(source.NameClash().ToDiagnostic());
        else
            output.AddSource(source.HintName, SourceText.From(source.Code, Encoding.UTF8));
    }
}
