using System.Collections.Concurrent;
using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reporting;

/// <summary>The readings that may run the code of a file.</summary>
/// <param name="Tree">The file.</param>
/// <param name="Results">The readings.</param>
/// <param name="HasAll">Whether those are all.</param>
/// <param name="Models">Gives the file's model.</param>
/// <param name="Reread">Reads the file again as an edit would leave it.</param>
internal sealed record FileReadings(SyntaxTree Tree, IReadOnlyList<ReadingResult> Results, bool HasAll, Func<SyntaxTree, SemanticModel> Models, Func<TextEdit, CancellationToken, FileReadings> Reread)
{
    private readonly ConcurrentDictionary<TextEdit, Once<bool>> borne = new();
    private readonly Lazy<SourceUses> uses = new(() => new SourceUses(Results.SelectMany(result => result.Paths)));

    public SemanticModel Model => Models(Tree);

    /// <summary>Whether all was seen that may use the file's code; else what others may share is left as it is.</summary>
    public bool SawAll => HasAll && !Paths.Any(path => path.EndsEarly);

    public IEnumerable<ReadPath> Paths => Results.SelectMany(result => result.Paths);

    /// <summary>Whether an edit of the file leaves all that may run its code as it is: no way through it fails that didn't, and no rule speaks that was silent.</summary>
    public bool Bears(TextEdit edit, CancellationToken cancellation) =>
        borne.GetOrAdd(edit, static _ => new Once<bool>()).Get(() => IsBorne([.. Paths], [.. Reread(edit, cancellation).Paths]), cancellation);

    private static bool IsBorne(List<ReadPath> before, List<ReadPath> after) => before.Count == after.Count
        && before.Zip(after, static (was, then) => !then.Findings.Select(finding => finding.Rule).Except(was.Findings.Select(finding => finding.Rule)).Any()).All(isBorne => isBorne);

    /// <summary>What those readings make of the file; worked out only when there is something to repair.</summary>
    public SourceUses Uses => uses.Value;
}
