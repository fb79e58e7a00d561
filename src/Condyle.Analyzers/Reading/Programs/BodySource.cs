using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Binds and lowers the bodies of one compilation's methods, and keeps them with their file.</summary>
internal sealed class BodySource(Compilation compilation, CodeCache cache, Func<SyntaxTree, SemanticModel> models, Func<string, ISymbol?> find, CancellationToken cancellation)
{
    // What the body that is being lowered is made of.
    private List<SyntaxNode> bound = [];

    /// <summary>The files whose code was asked for.</summary>
    public HashSet<string> Files { get; } = [];

    /// <summary>The ids of the methods whose code was asked for.</summary>
    public HashSet<string> Methods { get; } = [];

    /// <summary>The parameters that a type's own declaration carries.</summary>
    public static IMethodSymbol? PrimaryConstructorOf(INamedTypeSymbol type) => type.InstanceConstructors.FirstOrDefault(constructor =>
        constructor.DeclaringSyntaxReferences.Any(reference => reference.GetSyntax() is TypeDeclarationSyntax { ParameterList: not null }));

    /// <summary>Where a method's code stands; none when its source isn't part of the compilation.</summary>
    public BodyPlace? PlaceOf(IMethodSymbol method)
    {
        method = Members.Implementation(method);
        // What the compiler adds to a record, such as its hash, refers to the record's own declaration.
        if (method is { IsImplicitlyDeclared: true, MethodKind: MethodKind.Ordinary, ContainingType.IsRecord: true })
            return null;
        // A structure without such a constructor is empty: its initialisers run in the constructors that are there.
        if (method is { IsImplicitlyDeclared: true, MethodKind: MethodKind.Constructor, ContainingType.IsValueType: true })
            return null;
        var tree = method.DeclaringSyntaxReferences.FirstOrDefault()?.SyntaxTree ?? method.ContainingType.DeclaringSyntaxReferences.FirstOrDefault()?.SyntaxTree;
        return tree is null || !compilation.ContainsSyntaxTree(tree) || method.IsAbstract || method.IsExtern
            ? null
            : new BodyPlace(method.MethodKind == MethodKind.Constructor ? BodyKind.Constructor : BodyKind.Method, Ids.Of(method) ?? method.Name, tree);
    }

    /// <summary>Where that stands which runs before the first use of a type: its static initialisers in order, then its static constructor.</summary>
    public static IReadOnlyList<BodyPlace> StaticPlacesOf(INamedTypeSymbol type)
    {
        var places = type.DeclaringSyntaxReferences.Select(part => new BodyPlace(BodyKind.StaticInitialisers, TypeKeys.IdOf(type), part.SyntaxTree, PartsIn(part.SyntaxTree, type).Count(other => other.Span.Start < part.Span.Start))).ToList();
        foreach (var constructor in type.StaticConstructors.Where(constructor => !constructor.IsImplicitlyDeclared))
        {
            if (constructor.DeclaringSyntaxReferences.FirstOrDefault()?.SyntaxTree is { } tree)
                places.Add(new BodyPlace(BodyKind.StaticConstructor, Ids.Of(constructor) ?? constructor.Name, tree));
        }

        return places;
    }

    public CodeBody? Of(BodyPlace place)
    {
        Budget.Current.Ask();
        if (place.TreeIn(compilation, cache) is not { } tree)
            return null;
        Files.Add(tree.FilePath);
        Methods.Add(place.Id);
        return cache.For(tree, compilation).Get(place, compilation, () => LoweredAt(place, tree));
    }

    private static IEnumerable<SyntaxReference> PartsIn(SyntaxTree tree, INamedTypeSymbol type) => type.DeclaringSyntaxReferences.Where(part => part.SyntaxTree == tree).OrderBy(part => part.Span.Start);

    private LoweredCode LoweredAt(BodyPlace place, SyntaxTree tree)
    {
        bound = [];
        var body = Lower(place, tree);
        return new LoweredCode(body, bound.TrueForAll(code => code.SyntaxTree == tree) ? bound.ConvertAll(code => code.Span) : null);
    }

    private CodeBody? Lower(BodyPlace place, SyntaxTree tree) => find(place.Id) switch
    {
        INamedTypeSymbol type => Lowerer.LowerInitialisers(
            tree.FilePath, null, Initialisers(PartsIn(tree, type).ElementAtOrDefault(place.Part)?.GetSyntax(cancellation) as TypeDeclarationSyntax, isStatic: true)),
        IMethodSymbol method when place.Kind == BodyKind.Constructor => Constructor(Members.Implementation(method), tree),
        IMethodSymbol method => Lower(Members.Implementation(method), tree),
        _ => null,
    };

    private IOperation? OperationOf(SyntaxNode code)
    {
        bound.Add(code);
        return CodeNesting.TooDeepIn(code) is { } deep
            ? throw new ReadingStopped($"code lies more than {Limits.SyntaxDepth} deep inside itself", new Origin(deep.SyntaxTree.FilePath, deep.Span))
            // It has an operation for all code that is whole.
            : Compiler.Asked(() => (IsAnswered: true, Operation: models(code.SyntaxTree).GetOperation(code, cancellation))) is { IsAnswered: true, Operation: var operation } ? operation
            : throw new ReadingStopped("the compiler itself fails on code that is half typed", new Origin(code.SyntaxTree.FilePath, code.Span));
    }

    private CodeBody? Lower(IMethodSymbol method, SyntaxTree tree)
    {
        var syntax = method.DeclaringSyntaxReferences.FirstOrDefault()?.GetSyntax(cancellation);
        if (method.AssociatedSymbol is IPropertySymbol property && (Members.IsAuto(property) || syntax is AccessorDeclarationSyntax { Body: null, ExpressionBody: null }))
            return Lowerer.LowerAutoAccessor(tree.FilePath, method, property);
        if (method.AssociatedSymbol is IEventSymbol raised && Members.IsPlainEvent(raised))
            return Lowerer.LowerEventAccessor(tree.FilePath, method, raised);
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
        // Of a structure the one without parameters may be nobody's, and then sets nothing.
        var callsThis = declared?.Initializer is { ThisOrBaseKeyword.ValueText: "this" } other
            && !(type.IsValueType && other.ArgumentList.Arguments.Count == 0 && type.InstanceConstructors.Any(constructor => constructor is { Parameters.IsEmpty: true, IsImplicitlyDeclared: true }));
        var initialisers = callsThis
            ? []
            : type.DeclaringSyntaxReferences.SelectMany(part => Initialisers(part.GetSyntax(cancellation) as TypeDeclarationSyntax, isStatic: false)).ToList();
        var operation = declared is null ? null : OperationOf(declared);
        var baseCall = declared is null && syntax is TypeDeclarationSyntax { BaseList.Types: var bases } && bases.OfType<PrimaryConstructorBaseTypeSyntax>().FirstOrDefault() is { } primary
            ? OperationOf(primary) as IInvocationOperation
            : null;
        var implicitBase = declared?.Initializer is null && baseCall is null ? BaseConstructorOf(type) : null;
        var body = Lowerer.LowerConstructor(tree.FilePath, method, syntax is TypeDeclarationSyntax, initialisers, baseCall, implicitBase, operation);
        foreach (var elsewhere in initialisers.Select(initialiser => initialiser.Syntax.SyntaxTree).Where(elsewhere => elsewhere != tree).Distinct())
            body.Holds(elsewhere);
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
