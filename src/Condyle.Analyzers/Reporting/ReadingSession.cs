using System.Collections.Concurrent;
using Condyle.Analyzers.Reading;
using Condyle.Naming;
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

    public ReadingSession(Compilation compilation, INamedTypeSymbol definition, bool isLive)
    {
        this.compilation = compilation;
        this.definition = definition;
        this.isLive = isLive;
        conventions = ConventionsOf(compilation.Assembly);
    }

    /// <summary>The findings that lie in one file.</summary>
    public IReadOnlyList<PlannedFinding> FindingsIn(SemanticModel model, CancellationToken cancellation)
    {
        var tree = model.SyntaxTree;
        models.TryAdd(tree, model);
        var own = DefinitionsIn(tree, cancellation);
        var helpers = HelpersIn(tree, cancellation);
        var results = own.Select(type => ReadDefinition(type, cancellation)).ToList();
        var sawAll = true;
        if (helpers.Count > 0 || own.Count == 0)
        {
            var others = TreeReach.Reaching(tree, compilation, cancellation).SelectMany(other => DefinitionsIn(other, cancellation)).ToList();
            sawAll = !isLive || others.Count <= Limits.LiveDefinitionsForAHelper;
            results.AddRange(others.Take(sawAll ? others.Count : Limits.LiveDefinitionsForAHelper).Select(type => ReadDefinition(type, cancellation)));
        }

        if (sawAll)
        {
            var reached = new HashSet<string>(results.SelectMany(result => result.Methods));
            results.AddRange(helpers.Where(helper => !reached.Contains(helper.GetDocumentationCommentId() ?? "")).Select(helper => ReadHelper(helper, cancellation)));
        }

        return RepairPlanner.Plan(results, tree, sawAll);
    }

    private ReadingResult ReadDefinition(INamedTypeSymbol type, CancellationToken cancellation) => Read(type, () =>
    {
        var contract = definition.GetMembers("Define").OfType<IMethodSymbol>().First();
        var define = type.FindImplementationForInterfaceMember(contract) as IMethodSymbol ?? contract;
        return RigReader.ReadDefinition(type, define, NewProgram(cancellation), conventions, cancellation);
    });

    private ReadingResult ReadHelper(IMethodSymbol helper, CancellationToken cancellation) =>
        Read(helper, () => RigReader.ReadHelper(helper, NewProgram(cancellation), conventions, cancellation));

    private ReadingResult Read(ISymbol key, Func<ReadingResult> read)
    {
        if (readings.TryGetValue(key, out var known))
            return known;
        // Two files may ask at once and read twice; a reading that is cancelled must not be kept for the others.
        var result = read();
        return readings.GetOrAdd(key, result);
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

    private static Conventions ConventionsOf(IAssemblySymbol assembly)
    {
        var attribute = assembly.GetAttributes().FirstOrDefault(candidate => candidate.AttributeClass is { } type && TypeKeys.PlainNameOf(type) == typeof(RigConventionsAttribute).FullName);
        var suffix = attribute?.NamedArguments.FirstOrDefault(argument => argument.Key == nameof(RigConventionsAttribute.GroupSuffix)).Value.Value as string;
        return Conventions.From(suffix);
    }
}
