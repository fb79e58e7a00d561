using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reporting;

/// <summary>The readings that may run the code of a file.</summary>
/// <param name="Model">The file.</param>
/// <param name="Results">The readings.</param>
/// <param name="SawAll">Whether those are all; else what others may share is left as it is.</param>
internal sealed record FileReadings(SemanticModel Model, IReadOnlyList<ReadingResult> Results, bool SawAll)
{
    private readonly Lazy<SourceUses> uses = new(() => new SourceUses(Results.SelectMany(result => result.Paths)));

    public SyntaxTree Tree => Model.SyntaxTree;

    public IEnumerable<ReadPath> Paths => Results.SelectMany(result => result.Paths);

    /// <summary>What those readings make of the file; worked out only when there is something to repair.</summary>
    public SourceUses Uses => uses.Value;
}
