using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reporting;

/// <summary>The readings that may run the code of a file.</summary>
/// <param name="Tree">The file.</param>
/// <param name="Results">The readings.</param>
/// <param name="HasAll">Whether those are all.</param>
/// <param name="Models">Gives the file's model.</param>
internal sealed record FileReadings(SyntaxTree Tree, IReadOnlyList<ReadingResult> Results, bool HasAll, Func<SyntaxTree, SemanticModel> Models)
{
    private readonly Lazy<SourceUses> uses = new(() => new SourceUses(Results.SelectMany(result => result.Paths)));

    public SemanticModel Model => Models(Tree);

    /// <summary>Whether all was seen that may use the file's code; else what others may share is left as it is.</summary>
    public bool SawAll => HasAll && !Paths.Any(path => path.EndsEarly);

    public IEnumerable<ReadPath> Paths => Results.SelectMany(result => result.Paths);

    /// <summary>What those readings make of the file; worked out only when there is something to repair.</summary>
    public SourceUses Uses => uses.Value;
}
