using System.Text.RegularExpressions;
using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Reporting;
using Condyle.Model;
using Condyle.Naming;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes;

/// <summary>
/// The rigs that a document has a part in: what changes code proves on them that it does what it says, before it is offered. They are read when the first of them is asked for.
/// </summary>
internal sealed class RigReading
{
    // What is added gives what comes after it other numbers.
    private static readonly Regex Number = new(@"#\d+", RegexOptions.CultureInvariant);

    private readonly Lazy<FileReadings> readings;
    private readonly Lazy<IReadOnlyList<ReadPath>> paths;

    private RigReading(SemanticModel code, Conventions conventions, Func<FileReadings> read)
    {
        (Code, Conventions, readings) = (code, conventions, new(read));
        paths = new(() => [.. readings.Value.Paths]);
    }

    public SemanticModel Code { get; }

    public Conventions Conventions { get; }

    public IReadOnlyList<ReadPath> Paths => paths.Value;

    /// <summary>Whether all was read that the document has a part in.</summary>
    public bool IsWhole => readings.Value.SawAll && Paths.Count > 0;

    /// <summary>A local or a parameter that holds a side, where a piece of code begins.</summary>
    public string? SideAt(int position) => Code.LookupSymbols(position)
        .FirstOrDefault(symbol => ((symbol as ILocalSymbol)?.Type ?? (symbol as IParameterSymbol)?.Type) is INamedTypeSymbol type && TypeKeys.PlainNameOf(type) == typeof(Side).FullName)?.Name;

    /// <summary>What a document has a part in; none where there are no rigs, or where it is half-typed: of such code a part may be lost.</summary>
    public static async Task<RigReading?> Of(Document document, CancellationToken cancellation)
    {
        if (await document.GetSemanticModelAsync(cancellation).ConfigureAwait(false) is not { } code || code.Compilation.GetTypeByMetadataName("Condyle.IRigDefinition") is not { } definition
            || code.SyntaxTree.GetDiagnostics(cancellation).Any(problem => problem.Severity == DiagnosticSeverity.Error))
            return null;
        var session = new ReadingSession(code.Compilation, definition, isLive: true, tree => tree == code.SyntaxTree ? code : code.Compilation.GetSemanticModel(tree));
        return new(code, TeamSettings.Of(code.Compilation.Assembly).Conventions, () => session.ReadingsOf(code.SyntaxTree, cancellation));
    }

    /// <summary>Whether the rigs bear a change within lines of the document: no way through them fails that didn't, and no rule says more of a line than it did, but for the step that comes next.</summary>
    public async Task<bool> Bears(Document changed, CancellationToken cancellation) =>
        IsWhole && await Of(changed, cancellation).ConfigureAwait(false) is { IsWhole: true } after && after.Paths.Count == Paths.Count
        && Paths.Zip(after.Paths, (was, then) => Without(after.Said(then), Said(was)).Count == 0).All(isBorne => isBorne);

    /// <summary>
    /// What a change of the document adds to its rigs, rig by rig and way by way; none where it doesn't compile, takes something away, or makes a rule
    /// speak that was silent.
    /// </summary>
    public async Task<IReadOnlyList<RigAddition>?> AddedBy(Document changed, CancellationToken cancellation)
    {
        if (!IsWhole || await Of(changed, cancellation).ConfigureAwait(false) is not { } after
            || after.Code.GetDiagnostics(cancellationToken: cancellation).Any(problem => problem.Severity == DiagnosticSeverity.Error)
            || !after.IsWhole || after.Paths.Count != Paths.Count)
            return null;
        var added = new List<RigAddition>();
        for (var i = 0; i < Paths.Count; i++)
        {
            var (earlier, later) = (Lines(Paths[i]), Lines(after.Paths[i]));
            if (Without(earlier, later).Count > 0 || after.Paths[i].Findings.Select(finding => finding.Rule).Except(Paths[i].Findings.Select(finding => finding.Rule)).Any())
                return null;
            added.Add(new(earlier, Without(later, earlier), after.Paths[i].Model));
        }

        return added;
    }

    /// <summary>Those lines that are in the first list more often than in the second.</summary>
    public static List<string> Without(IEnumerable<string> lines, IEnumerable<string> others)
    {
        var left = others.GroupBy(line => line).ToDictionary(same => same.Key, same => same.Count());
        var without = new List<string>();
        foreach (var line in lines)
        {
            if (left.TryGetValue(line, out var count) && count > 0)
                left[line] = count - 1;
            else
                without.Add(line);
        }

        return without;
    }

    // A change may turn the columns of its line.
    private IEnumerable<string> Said(ReadPath path) => path.Findings.Where(finding => !finding.Rule.IsAboutNextStep).Select(finding => path.Places.Find(finding.Place) is { } place && TextOf(place.Path) is { } text
        ? $"{finding.Rule.Id} at {place.Path}:{text.Lines.GetLinePosition(place.Span.Start).Line}" : finding.Rule.Id);

    private SourceText? TextOf(string path) => Code.Compilation.SyntaxTrees.FirstOrDefault(tree => tree.FilePath == path)?.GetText();

    private static List<string> Lines(ReadPath path) => [.. ModelText.Lines(path.Model, static _ => null).Select(line => Number.Replace(line, "#"))];
}

/// <summary>What a change adds to a rig.</summary>
/// <param name="Before">The rig before it, a line an element.</param>
/// <param name="Added">The lines that it adds.</param>
/// <param name="After">The rig after it.</param>
internal sealed record RigAddition(IReadOnlyList<string> Before, IReadOnlyList<string> Added, RigModel After);
