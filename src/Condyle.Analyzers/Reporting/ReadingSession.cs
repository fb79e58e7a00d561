using System.Collections.Concurrent;
using Condyle.Analyzers.Reading;
using Condyle.Naming;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>The readings of one compilation, each made when it is first asked for. It goes with the compilation.</summary>
internal sealed class ReadingSession
{
    private readonly Compilation compilation;
    private readonly INamedTypeSymbol definition;
    private readonly bool isLive;
    private readonly Conventions conventions;
    private readonly CodeCache cache = new();
    private readonly ConcurrentDictionary<SyntaxTree, SemanticModel> models = new();
    private readonly ConcurrentDictionary<ISymbol, ReadingResult> readings = new(SymbolEqualityComparer.Default);
    private readonly ConcurrentDictionary<SyntaxTree, FileReadings> files = new();
    private readonly Lazy<Dictionary<string, SyntaxTree>> trees;

    public ReadingSession(Compilation compilation, INamedTypeSymbol definition, bool isLive)
    {
        this.compilation = compilation;
        this.definition = definition;
        this.isLive = isLive;
        conventions = ConventionsOf(compilation.Assembly);
        trees = new(() => TreesByPath(compilation));
    }

    /// <summary>The findings that lie in one file.</summary>
    public IReadOnlyList<PlannedFinding> FindingsIn(SemanticModel model, CancellationToken cancellation)
    {
        models.TryAdd(model.SyntaxTree, model);
        return RepairPlanner.Plan(ReadingsOf(model.SyntaxTree, cancellation), path => ReadingsOf(path, cancellation), cancellation);
    }

    private FileReadings? ReadingsOf(string path, CancellationToken cancellation) =>
        trees.Value.TryGetValue(path, out var tree) && !GeneratedCode.Includes(tree, compilation, cancellation) ? ReadingsOf(tree, cancellation) : null;

    private FileReadings ReadingsOf(SyntaxTree tree, CancellationToken cancellation)
    {
        if (files.TryGetValue(tree, out var known))
            return known;
        var results = DefinitionsIn(tree, cancellation).Select(type => ReadDefinition(type, cancellation)).ToList();
        var others = TreeReach.Reaching(tree, compilation, cancellation).SelectMany(other => DefinitionsIn(other, cancellation)).ToList();
        var sawAll = !isLive || others.Count <= Limits.LiveDefinitionsForAHelper;
        results.AddRange((sawAll ? others : others.Take(Limits.LiveDefinitionsForAHelper)).Select(type => ReadDefinition(type, cancellation)));
        if (sawAll)
        {
            var reached = new HashSet<string>(results.SelectMany(result => result.Methods));
            results.AddRange(HelpersIn(tree, cancellation)
                .Where(helper => !reached.Contains(helper.GetDocumentationCommentId() ?? ""))
                .Select(helper => ReadHelper(helper, cancellation)));
        }

        return files.GetOrAdd(tree, new FileReadings(ModelOf(tree), results, sawAll));
    }

    private ReadingResult ReadDefinition(INamedTypeSymbol type, CancellationToken cancellation) => Read(type, () =>
    {
        var contract = definition.GetMembers("Define").OfType<IMethodSymbol>().First();
        var define = type.FindImplementationForInterfaceMember(contract) as IMethodSymbol ?? contract;
        return RigReader.ReadDefinition(type, define, NewProgram(cancellation), conventions, new Budget(cancellation));
    }, cancellation);

    private ReadingResult ReadHelper(IMethodSymbol helper, CancellationToken cancellation) =>
        Read(helper, () => RigReader.ReadHelper(helper, NewProgram(cancellation), conventions, new Budget(cancellation)), cancellation);

    private ReadingResult Read(ISymbol key, Func<ReadingResult> read, CancellationToken cancellation)
    {
        if (readings.TryGetValue(key, out var known))
            return known;
        // Two files may ask at once and read twice; a reading that is cancelled must not be kept for the others.
        var result = read();
        return readings.GetOrAdd(key, result with { Paths = [.. result.Paths.Select(path => path with { Findings = RuleBook.Check(path.Model, conventions, cancellation) })] });
    }

    private Program NewProgram(CancellationToken cancellation) => new(compilation, cache, ModelOf, cancellation);

#pragma warning disable RS1030 // The tree at hand brings its own model; those of other files are made once and shared by all readings of the compilation.
    private SemanticModel ModelOf(SyntaxTree tree) => models.GetOrAdd(tree, other => compilation.GetSemanticModel(other));
#pragma warning restore RS1030

    private List<INamedTypeSymbol> DefinitionsIn(SyntaxTree tree, CancellationToken cancellation)
    {
        var found = new List<INamedTypeSymbol>();
        foreach (var declaration in tree.GetRoot(cancellation).DescendantNodes(node => node is not BlockSyntax).OfType<TypeDeclarationSyntax>())
        {
            if (declaration.BaseList is null || ModelOf(tree).GetDeclaredSymbol(declaration, cancellation) is not { IsAbstract: false, TypeKind: TypeKind.Class or TypeKind.Struct } type)
                continue;
            if (type.AllInterfaces.Contains(definition, SymbolEqualityComparer.Default) && !found.Contains(type, SymbolEqualityComparer.Default))
                found.Add(type);
        }

        return found;
    }

    // A method that is handed a draft or a handle can say something about a rig.
    private List<IMethodSymbol> HelpersIn(SyntaxTree tree, CancellationToken cancellation)
    {
        var found = new List<IMethodSymbol>();
        foreach (var declaration in tree.GetRoot(cancellation).DescendantNodes(node => node is not BlockSyntax).OfType<MethodDeclarationSyntax>())
        {
            if (declaration.ParameterList.Parameters.Count == 0 || ModelOf(tree).GetDeclaredSymbol(declaration, cancellation) is not { IsAbstract: false } method)
                continue;
            if (method.Parameters.Any(parameter => TypeKeys.Of(parameter.Type) is { Shape: TypeShape.Condyle, Host: { } host } && (host == typeof(RigDraft) || typeof(IHandle).IsAssignableFrom(host)))
                && !method.ContainingType.AllInterfaces.Contains(definition, SymbolEqualityComparer.Default) | method.Name != "Define")
                found.Add(method);
        }

        return found;
    }

    private static Dictionary<string, SyntaxTree> TreesByPath(Compilation compilation)
    {
        var byPath = new Dictionary<string, SyntaxTree>();
        foreach (var tree in compilation.SyntaxTrees)
            byPath[tree.FilePath] = tree;
        return byPath;
    }

    private static Conventions ConventionsOf(IAssemblySymbol assembly)
    {
        var attribute = assembly.GetAttributes().FirstOrDefault(candidate => candidate.AttributeClass is { } type && TypeKeys.PlainNameOf(type) == typeof(RigConventionsAttribute).FullName);
        var suffix = attribute?.NamedArguments.FirstOrDefault(argument => argument.Key == nameof(RigConventionsAttribute.GroupSuffix)).Value.Value as string;
        return Conventions.From(suffix);
    }
}
