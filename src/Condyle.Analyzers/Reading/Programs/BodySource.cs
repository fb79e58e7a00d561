using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Binds and lowers the bodies of one compilation's methods, and keeps them with their file.</summary>
internal sealed class BodySource(Compilation compilation, CodeCache cache, Func<SyntaxTree, SemanticModel> models, CancellationToken cancellation)
{
    /// <summary>The files whose code was asked for.</summary>
    public HashSet<string> Files { get; } = [];

    /// <summary>The ids of the methods whose code was asked for.</summary>
    public HashSet<string> Methods { get; } = [];

    /// <summary>The parameters that a type's own declaration carries.</summary>
    public static IMethodSymbol? PrimaryConstructorOf(INamedTypeSymbol type) => type.InstanceConstructors.FirstOrDefault(constructor =>
        constructor.DeclaringSyntaxReferences.Any(reference => reference.GetSyntax() is TypeDeclarationSyntax { ParameterList: not null }));

    public CodeBody? Of(IMethodSymbol method)
    {
        Budget.Current.Ask();
        method = Members.Implementation(method);
        var id = Ids.Of(method) ?? method.Name;
        var tree = method.DeclaringSyntaxReferences.FirstOrDefault()?.SyntaxTree ?? method.ContainingType.DeclaringSyntaxReferences.FirstOrDefault()?.SyntaxTree;
        if (tree is null || !compilation.ContainsSyntaxTree(tree) || method.IsAbstract || method.IsExtern)
            return null;
        Files.Add(tree.FilePath);
        Methods.Add(id);
        return method.MethodKind == MethodKind.Constructor
            ? cache.For(tree, compilation).Get("new " + id, compilation, () => Constructor(method, tree))
            : cache.For(tree, compilation).Get(id, compilation, () => Lower(method, tree));
    }

    /// <summary>What runs before the first use of a type: its static initialisers in order, then its static constructor.</summary>
    public IReadOnlyList<CodeBody> StaticInitialisersOf(INamedTypeSymbol type)
    {
        var bodies = new List<CodeBody>();
        foreach (var part in type.DeclaringSyntaxReferences)
        {
            bodies.Add(cache.For(part.SyntaxTree, compilation).Get($"static {TypeKeys.IdOf(type)} {part.Span.Start}", compilation, () =>
                Lowerer.LowerInitialisers(part.SyntaxTree.FilePath, null, Initialisers(part.GetSyntax(cancellation) as TypeDeclarationSyntax, isStatic: true)))!);
        }

        foreach (var constructor in type.StaticConstructors.Where(constructor => !constructor.IsImplicitlyDeclared))
        {
            if (constructor.DeclaringSyntaxReferences.FirstOrDefault()?.SyntaxTree is { } tree)
                bodies.Add(cache.For(tree, compilation).Get(".cctor " + TypeKeys.IdOf(type), compilation, () => Lower(constructor, tree) ?? new CodeBody(constructor.Name, tree.FilePath))!);
        }

        return bodies;
    }

    private IOperation? OperationOf(SyntaxNode code) => CodeNesting.TooDeepIn(code) is { } deep
        ? throw new ReadingStopped($"code lies more than {Limits.SyntaxDepth} deep inside itself", new Origin(deep.SyntaxTree.FilePath, deep.Span))
        : models(code.SyntaxTree).GetOperation(code, cancellation);

    private CodeBody? Lower(IMethodSymbol method, SyntaxTree tree)
    {
        var syntax = method.DeclaringSyntaxReferences.FirstOrDefault()?.GetSyntax(cancellation);
        if (method.AssociatedSymbol is IPropertySymbol property && (Members.IsAuto(property) || syntax is AccessorDeclarationSyntax { Body: null, ExpressionBody: null }))
            return Lowerer.LowerAutoAccessor(tree.FilePath, method, property);
        var content = syntax switch
        {
            BaseMethodDeclarationSyntax { Body: null, ExpressionBody: null } => null,
            AccessorDeclarationSyntax { Body: null, ExpressionBody: null } => null,
            _ => syntax,
        };
        return content is not null && OperationOf(content) is { } operation
            ? Lowerer.Lower(method.Name, tree.FilePath, method, [operation])
            : null;
    }

    // A constructor sets the fields that have initialisers, calls its base, and runs its own body; `this(...)` leaves the first two to another one.
    private CodeBody Constructor(IMethodSymbol method, SyntaxTree tree)
    {
        var type = method.ContainingType;
        var syntax = method.DeclaringSyntaxReferences.FirstOrDefault()?.GetSyntax(cancellation);
        var declared = syntax as ConstructorDeclarationSyntax;
        var callsThis = declared?.Initializer?.ThisOrBaseKeyword.ValueText == "this";
        var initialisers = callsThis
            ? []
            : type.DeclaringSyntaxReferences.SelectMany(part => Initialisers(part.GetSyntax(cancellation) as TypeDeclarationSyntax, isStatic: false)).ToList();
        var operation = declared is null ? null : OperationOf(declared);
        var baseCall = declared is null && syntax is TypeDeclarationSyntax { BaseList.Types: var bases } && bases.OfType<PrimaryConstructorBaseTypeSyntax>().FirstOrDefault() is { } primary
            ? OperationOf(primary) as IInvocationOperation
            : null;
        var implicitBase = declared?.Initializer is null && baseCall is null ? BaseConstructorOf(type) : null;
        var body = Lowerer.LowerConstructor(tree.FilePath, method, syntax is TypeDeclarationSyntax, initialisers, baseCall, implicitBase, operation);
        foreach (var other in initialisers.Select(initialiser => initialiser.Syntax.SyntaxTree).Where(other => other != tree).Distinct())
            body.Holds(other);
        return body;
    }

    private static IMethodSymbol? BaseConstructorOf(INamedTypeSymbol type) =>
        type.BaseType is { } above && SymbolEqualityComparer.Default.Equals(above.ContainingAssembly, type.ContainingAssembly) ? above.InstanceConstructors.FirstOrDefault(constructor => constructor.Parameters.IsEmpty) : null;

    private IEnumerable<IOperation> Initialisers(TypeDeclarationSyntax? type, bool isStatic)
    {
        foreach (var member in type?.Members ?? [])
        {
            if (member.Modifiers.Any(modifier => modifier.ValueText == "static") != isStatic || member.Modifiers.Any(modifier => modifier.ValueText == "const"))
                continue;
            IEnumerable<EqualsValueClauseSyntax?> clauses = member switch
            {
                FieldDeclarationSyntax field => field.Declaration.Variables.Select(variable => variable.Initializer),
                PropertyDeclarationSyntax property => [property.Initializer],
                _ => [],
            };
            foreach (var clause in clauses.OfType<EqualsValueClauseSyntax>())
            {
                if (OperationOf(clause) is { } operation)
                    yield return operation;
            }
        }
    }
}
