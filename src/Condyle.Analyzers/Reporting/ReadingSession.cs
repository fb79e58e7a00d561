using System.Collections.Concurrent;
using Condyle.Analyzers.Reading;
using Condyle.Naming;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reporting;

/// <summary>The readings of one compilation, each made when it is first asked for. It goes with the compilation.</summary>
internal sealed class ReadingSession
{
    private readonly Compilation compilation;
    private readonly bool isLive;
    private readonly Func<SyntaxTree, SemanticModel> models;
    private readonly RigDeclarations declarations;
    private readonly TreeReach reach;
    private readonly CodeCache cache = new();
    private readonly ConcurrentDictionary<string, Once<ReadingResult>> readings = new();
    private readonly ConcurrentDictionary<SyntaxTree, FileReadings> files = new();
    private readonly Lazy<DeclaredFacts> facts;
    private readonly Lazy<Conventions> conventions;

    /// <param name="compilation">What is read.</param>
    /// <param name="definition">The interface of a rig definition.</param>
    /// <param name="isLive">Whether somebody is typing, so that a helper is only read again for some of the rigs that share it.</param>
    /// <param name="models">Gives the model of a file. Bodies are bound there, so it should be the one in which whoever asks for findings binds them too.</param>
    public ReadingSession(Compilation compilation, INamedTypeSymbol definition, bool isLive, Func<SyntaxTree, SemanticModel> models)
    {
        this.compilation = compilation;
        this.isLive = isLive;
        this.models = models;
        facts = new(() => cache.FactsOf(compilation));
        declarations = new RigDeclarations(definition, models, facts);
        reach = new TreeReach(compilation);
        conventions = new(() => TeamSettings.Of(compilation.Assembly).Conventions);
    }

    /// <summary>The findings that lie in one file.</summary>
    public IReadOnlyList<PlannedFinding> FindingsIn(SyntaxTree tree, CancellationToken cancellation)
    {
        var found = RepairPlanner.Plan(ReadingsOf(tree, cancellation), path => ReadingsOf(path, cancellation), cancellation);
        return found.Count > 0 && cache.TreeAt(tree.FilePath, compilation) is null ? [] : found;
    }

    private FileReadings? ReadingsOf(string path, CancellationToken cancellation) =>
        cache.TreeAt(path, compilation) is { } tree && !GeneratedCode.Includes(tree, compilation, cancellation) ? ReadingsOf(tree, cancellation) : null;

    /// <summary>The readings that may run the code of a file.</summary>
    public FileReadings ReadingsOf(SyntaxTree tree, CancellationToken cancellation)
    {
        if (files.TryGetValue(tree, out var known))
            return known;
        var own = declarations.DefinitionsIn(tree, cancellation);
        // A definition in parts may lie here and there.
        var seen = new HashSet<string>(own.Select(entry => entry.Id));
        var others = reach.Reaching(tree, cancellation).SelectMany(other => declarations.DefinitionsIn(other, cancellation)).Where(entry => seen.Add(entry.Id));
        // One more tells that there are too many.
        var some = (isLive ? others.Take(Limits.LiveDefinitionsForAHelper + 1) : others).ToList();
        var sawAll = !isLive || some.Count <= Limits.LiveDefinitionsForAHelper;
        var results = ReadDefinitions([.. own, .. sawAll ? some : some.Take(Limits.LiveDefinitionsForAHelper)], cancellation);
        if (sawAll && declarations.HelpersIn(tree, cancellation) is { Count: > 0 } helpers)
        {
            var reached = new HashSet<string>(results.SelectMany(result => result.Methods));
            results.AddRange(helpers.Where(helper => !reached.Contains(Ids.Of(helper) ?? "")).Select(helper => ReadHelper(helper, cancellation)));
        }

        return files.GetOrAdd(tree, new FileReadings(tree, results, sawAll, models));
    }

    private List<ReadingResult> ReadDefinitions(IReadOnlyList<RigEntry> definitions, CancellationToken cancellation)
    {
        // Where another file is having some of them read, the rest comes first.
        foreach (var entry in definitions)
            ReadingOf(entry.Id).TryGet(() => ReadDefinition(entry, cancellation));
        return [.. definitions.Select(entry => ReadingOf(entry.Id).Get(() => ReadDefinition(entry, cancellation), cancellation))];
    }

    private ReadingResult ReadDefinition(RigEntry entry, CancellationToken cancellation) =>
        RigReader.ReadDefinition(entry, NewProgram(cancellation), conventions.Value, new Budget(cancellation)).Checked(conventions.Value, cancellation);

    private ReadingResult ReadHelper(IMethodSymbol helper, CancellationToken cancellation) => ReadingOf(Ids.Of(helper) ?? helper.Name).Get(
        () => RigReader.ReadHelper(helper, NewProgram(cancellation), conventions.Value, new Budget(cancellation)).Checked(conventions.Value, cancellation), cancellation);

    private Once<ReadingResult> ReadingOf(string id) => readings.GetOrAdd(id, static _ => new Once<ReadingResult>());

    private Program NewProgram(CancellationToken cancellation) => new(compilation, cache, models, cancellation, isLive ? facts.Value : null);
}
