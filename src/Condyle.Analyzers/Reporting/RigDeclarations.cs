using System.Globalization;
using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Which rig definitions, and which methods that can say something about a rig, the files of a compilation declare.</summary>
internal sealed class RigDeclarations(INamedTypeSymbol definition, Func<SyntaxTree, SemanticModel> models, Lazy<DeclaredFacts> facts)
{
    public IReadOnlyList<RigEntry> DefinitionsIn(SyntaxTree tree, CancellationToken cancellation) =>
        facts.Value.Of("definitions", tree.FilePath, Declarations.PrintOf(tree).ToString(CultureInfo.InvariantCulture), () => (IReadOnlyList<RigEntry>)[.. TypesIn(tree, cancellation)
            .Where(declaration => declaration.BaseList is not null)
            .Select(declaration => models(tree).GetDeclaredSymbol(declaration, cancellation))
            .Where(type => type is { IsAbstract: false, TypeKind: TypeKind.Class or TypeKind.Struct } && IsDefinition(type))
            .Distinct<INamedTypeSymbol?>(SymbolEqualityComparer.Default)
            .Select(type => RigEntry.Of(type!, DefineOf(type!)))]);

    /// <summary>The methods that are handed a draft or a handle.</summary>
    public IReadOnlyList<IMethodSymbol> HelpersIn(SyntaxTree tree, CancellationToken cancellation)
    {
        var found = new List<IMethodSymbol>();
        foreach (var declaration in TypesIn(tree, cancellation))
        {
            // The model takes longer to find one method than the type takes to list them all.
            var spans = new HashSet<TextSpan>(declaration.Members.OfType<MethodDeclarationSyntax>().Where(method => method.ParameterList.Parameters.Count > 0).Select(method => method.Span));
            if (spans.Count > 0 && models(tree).GetDeclaredSymbol(declaration, cancellation) is { } type)
                found.AddRange(type.GetMembers().OfType<IMethodSymbol>().Where(method => method is { IsAbstract: false, Parameters.Length: > 0 } && LiesIn(spans, Members.Implementation(method)) && IsHelper(method)));
        }

        return found;

        bool LiesIn(HashSet<TextSpan> spans, IMethodSymbol method) => method.DeclaringSyntaxReferences.Any(part => part.SyntaxTree == tree && spans.Contains(part.Span));
    }

    private bool IsHelper(IMethodSymbol method) =>
        method.Parameters.Any(parameter => IsOfRigs(TypeKeys.Of(parameter.Type))) && !(method.Name == "Define" && IsDefinition(method.ContainingType));

    private IMethodSymbol DefineOf(INamedTypeSymbol type)
    {
        var contract = definition.GetMembers("Define").OfType<IMethodSymbol>().First();
        return type.FindImplementationForInterfaceMember(contract) as IMethodSymbol ?? contract;
    }

    private bool IsDefinition(INamedTypeSymbol type) => type.AllInterfaces.Contains(definition, SymbolEqualityComparer.Default);

    private static bool IsOfRigs(TypeKey type) =>
        type is { Shape: TypeShape.Condyle, Host: { } host } && (host == typeof(RigDraft) || typeof(IHandle).IsAssignableFrom(host));

    private static IEnumerable<TypeDeclarationSyntax> TypesIn(SyntaxTree tree, CancellationToken cancellation) =>
        tree.GetRoot(cancellation) is CompilationUnitSyntax file ? TypesIn(file.Members) : [];

    private static IEnumerable<TypeDeclarationSyntax> TypesIn(SyntaxList<MemberDeclarationSyntax> members)
    {
        foreach (var member in members)
        {
            if (member is TypeDeclarationSyntax type)
                yield return type;
            var inner = member switch
            {
                BaseNamespaceDeclarationSyntax space => space.Members,
                TypeDeclarationSyntax around => around.Members,
                _ => default,
            };
            foreach (var nested in TypesIn(inner))
                yield return nested;
        }
    }
}
