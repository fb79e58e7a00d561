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
    private readonly ConcurrentDictionary<ISymbol, Once<ReadingResult>> readings = new(SymbolEqualityComparer.Default);
    private readonly ConcurrentDictionary<SyntaxTree, FileReadings> files = new();
    private readonly Lazy<Conventions> conventions;
    private readonly Lazy<Dictionary<string, SyntaxTree?>> trees;

    /// <param name="compilation">What is read.</param>
    /// <param name="definition">The interface of a rig definition.</param>
    /// <param name="isLive">Whether somebody is typing, so that a helper is only read again for some of the rigs that share it.</param>
    /// <param name="models">Gives the model of a file. Bodies are bound there, so it should be the one in which whoever asks for findings binds them too.</param>
    public ReadingSession(Compilation compilation, INamedTypeSymbol definition, bool isLive, Func<SyntaxTree, SemanticModel> models)
    {
        this.compilation = compilation;
        this.isLive = isLive;
        this.models = models;
        declarations = new RigDeclarations(definition, models);
        reach = new TreeReach(compilation);
        conventions = new(() => ConventionsOf(compilation.Assembly));
        trees = new(() => TreesByPath(compilation));
    }

    /// <summary>The findings that lie in one file.</summary>
    public IReadOnlyList<PlannedFinding> FindingsIn(SyntaxTree tree, CancellationToken cancellation)
    {
        var found = RepairPlanner.Plan(ReadingsOf(tree, cancellation), path => ReadingsOf(path, cancellation), cancellation);
        return found.Count > 0 && trees.Value[tree.FilePath] is null ? [] : found;
    }

    private FileReadings? ReadingsOf(string path, CancellationToken cancellation) =>
        trees.Value.TryGetValue(path, out var file) && file is { } tree && !GeneratedCode.Includes(tree, compilation, cancellation) ? ReadingsOf(tree, cancellation) : null;

    private FileReadings ReadingsOf(SyntaxTree tree, CancellationToken cancellation)
    {
        if (files.TryGetValue(tree, out var known))
            return known;
        var own = declarations.DefinitionsIn(tree, cancellation);
        // A definition in parts may lie here and there.
        var others = reach.Reaching(tree, cancellation).SelectMany(other => declarations.DefinitionsIn(other, cancellation))
            .Where(other => !own.Contains(other, SymbolEqualityComparer.Default)).Distinct<INamedTypeSymbol>(SymbolEqualityComparer.Default);
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

    private List<ReadingResult> ReadDefinitions(IReadOnlyList<INamedTypeSymbol> types, CancellationToken cancellation)
    {
        // Where another file is having some of them read, the rest comes first.
        foreach (var type in types)
            ReadingOf(type).TryGet(() => ReadDefinition(type, cancellation));
        return [.. types.Select(type => ReadingOf(type).Get(() => ReadDefinition(type, cancellation), cancellation))];
    }

    private ReadingResult ReadDefinition(INamedTypeSymbol type, CancellationToken cancellation) =>
        RigReader.ReadDefinition(type, declarations.DefineOf(type), NewProgram(cancellation), conventions.Value, new Budget(cancellation)).Checked(conventions.Value, cancellation);

    private ReadingResult ReadHelper(IMethodSymbol helper, CancellationToken cancellation) => ReadingOf(helper).Get(
        () => RigReader.ReadHelper(helper, NewProgram(cancellation), conventions.Value, new Budget(cancellation)).Checked(conventions.Value, cancellation), cancellation);

    private Once<ReadingResult> ReadingOf(ISymbol read) => readings.GetOrAdd(read, static _ => new Once<ReadingResult>());

    private Program NewProgram(CancellationToken cancellation) => new(compilation, cache, models, cancellation);

    // A place is told by its file's path: where two files have the same, which of them is meant isn't known.
    private static Dictionary<string, SyntaxTree?> TreesByPath(Compilation compilation)
    {
        var byPath = new Dictionary<string, SyntaxTree?>();
        foreach (var tree in compilation.SyntaxTrees)
            byPath[tree.FilePath] = byPath.ContainsKey(tree.FilePath) ? null : tree;
        return byPath;
    }

    private static Conventions ConventionsOf(IAssemblySymbol assembly)
    {
        var attribute = assembly.GetAttributes().FirstOrDefault(candidate => candidate.AttributeClass is { } type && TypeKeys.PlainNameOf(type) == typeof(RigConventionsAttribute).FullName);
        var suffix = attribute?.NamedArguments.FirstOrDefault(argument => argument.Key == nameof(RigConventionsAttribute.GroupSuffix)).Value.Value as string;
        return Conventions.From(suffix);
    }
}
