using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

internal enum OutsideWrite
{
    None,

    /// <summary>What a field holds may have been changed, such as the items of a list.</summary>
    Contents,

    /// <summary>Something else may have been stored in the field.</summary>
    Value,
}

/// <summary>What code that may run before a rig is built does to fields: what it sets, a definition doesn't find as it was initialised.</summary>
internal sealed class OutsideWrites(Compilation compilation, Func<SyntaxTree, SemanticModel> models, CancellationToken cancellation)
{
    public OutsideWrite To(string field)
    {
        var name = Ids.NameIn(field).Trim('<', '>');
        var most = OutsideWrite.None;
        foreach (var mention in OutsideCode.Of(compilation, cancellation).MentionsOf(name))
        {
            var use = UseOf(WholeOf(mention));
            if (use.Write > most && SymbolOf(mention) is { } symbol && IdOf(symbol) == field && !IsOfConstructor(mention, symbol) && (use.Write == OutsideWrite.Value || Changes(symbol, use)))
                most = use.Write;
        }

        return most;
    }

    private ISymbol? SymbolOf(SyntaxNode node) => Compiler.Asked(() => models(node.SyntaxTree).GetSymbolInfo(node, cancellation)) is var info && !info.CandidateSymbols.IsDefault ? info.Symbol ?? info.CandidateSymbols.FirstOrDefault() : null;

    private static string? IdOf(ISymbol symbol) => symbol switch
    {
        IFieldSymbol field => Members.IdOf(field),
        IPropertySymbol property => Members.IdOf(property),
        IEventSymbol raised => Members.IdOf(raised),
        IParameterSymbol { ContainingSymbol: IMethodSymbol { MethodKind: MethodKind.Constructor } } parameter => Members.FieldOf(parameter),
        _ => null,
    };

    // What the constructor of an object sets of it, a reading runs itself.
    private static bool IsOfConstructor(SyntaxNode mention, ISymbol symbol) => !symbol.IsStatic
        && mention.FirstAncestorOrSelf<MemberDeclarationSyntax>() is ConstructorDeclarationSyntax or BaseFieldDeclarationSyntax or PropertyDeclarationSyntax { Initializer: not null }
        && mention.FirstAncestorOrSelf<AnonymousFunctionExpressionSyntax>() is null
        && WholeOf(mention) is IdentifierNameSyntax or MemberAccessExpressionSyntax { Expression: ThisExpressionSyntax or BaseExpressionSyntax }
        && mention.FirstAncestorOrSelf<InitializerExpressionSyntax>() is null;

    // The objects of the user's own have fields of their own, which are asked for by themselves.
    private bool Changes(ISymbol symbol, Use use)
    {
        if (TypeOf(symbol) is not { } type)
            return false;
        if (type.IsValueType)
            return !TypeKeys.IsOfUser(type) && (use.IsPartSet || (use.Called is { } part && SymbolOf(part) is (IFieldSymbol or IPropertySymbol) and var element ? Changes(element, UseOf(WholeOf(part))) : Holds(type)));
        return Holds(type) && (use.Called is null || (SymbolOf(use.Called) is IMethodSymbol method && !TypeKeys.IsOfUser(method.ContainingType) && FrameworkTable.Find(TypeKeys.MethodOf(method)) is not { Changes: false }));
    }

    private static ITypeSymbol? TypeOf(ISymbol symbol) => symbol switch
    {
        IFieldSymbol field => field.Type,
        IPropertySymbol property => property.Type,
        IParameterSymbol parameter => parameter.Type,
        _ => null,
    };

    // A tuple holds what its elements hold.
    private static bool Holds(ITypeSymbol type) => type is IArrayTypeSymbol
        || (type is INamedTypeSymbol { IsValueType: true } value && !TypeKeys.IsOfUser(value) && value.TypeArguments.Any(Holds))
        || (type.TypeKind is TypeKind.Class or TypeKind.Interface && type.SpecialType != SpecialType.System_String
            && (!TypeKeys.IsOfUser(type) || Dispatch.BasesOf((INamedTypeSymbol)type).Any(above => above.TypeKind == TypeKind.Class && above.SpecialType == SpecialType.None && !TypeKeys.IsOfUser(above))));

    /// <summary>The member access that a name belongs to, with what only wraps it.</summary>
    private static SyntaxNode WholeOf(SyntaxNode mention)
    {
        var whole = mention.Parent is MemberAccessExpressionSyntax access && access.Name == mention ? access : mention.Parent is MemberBindingExpressionSyntax binding ? binding : mention;
        while (whole.Parent is ParenthesizedExpressionSyntax or PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.SuppressNullableWarningExpression } or CastExpressionSyntax)
            whole = whole.Parent;
        return whole;
    }

    private static Use UseOf(SyntaxNode whole)
    {
        switch (whole.Parent)
        {
            case AssignmentExpressionSyntax assignment when assignment.Left == whole:
            case PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PreIncrementExpression or (int)SyntaxKind.PreDecrementExpression }:
            case PostfixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.PostIncrementExpression or (int)SyntaxKind.PostDecrementExpression }:
            case ArgumentSyntax { RefKindKeyword.RawKind: (int)SyntaxKind.RefKeyword or (int)SyntaxKind.OutKeyword }:
            case RefExpressionSyntax:
                return new Use(OutsideWrite.Value);
            case ArgumentSyntax { Parent: TupleExpressionSyntax tuple }:
                return UseOf(tuple) is { Write: OutsideWrite.Value } written ? written : new Use(OutsideWrite.Contents);
            case MemberAccessExpressionSyntax access when access.Expression == whole:
                return access.Parent is not InvocationExpressionSyntax && UseOf(WholeOf(access.Name)).Write == OutsideWrite.Value ? new Use(OutsideWrite.Contents) { IsPartSet = true } : new Use(OutsideWrite.Contents) { Called = access.Name };
            case ConditionalAccessExpressionSyntax access when access.Expression == whole:
                return access.WhenNotNull is InvocationExpressionSyntax { Expression: MemberBindingExpressionSyntax called } ? new Use(OutsideWrite.Contents) { Called = called.Name } : new Use(OutsideWrite.None);
            case ElementAccessExpressionSyntax access when access.Expression == whole:
                return new Use(UseOf(access).Write == OutsideWrite.Value ? OutsideWrite.Contents : OutsideWrite.None);
            case CommonForEachStatementSyntax or InterpolationSyntax or SpreadElementSyntax or InvocationExpressionSyntax or SwitchExpressionSyntax or SwitchStatementSyntax:
            case IsPatternExpressionSyntax test when !test.Pattern.DescendantNodesAndSelf().Any(part => part is SingleVariableDesignationSyntax):
            case BinaryExpressionSyntax { RawKind: not ((int)SyntaxKind.CoalesceExpression or (int)SyntaxKind.AsExpression) }:
                return new Use(OutsideWrite.None);
            default:
                return new Use(OutsideWrite.Contents);
        }
    }

    /// <summary>What is done to a field where it is mentioned.</summary>
    private readonly record struct Use(OutsideWrite Write)
    {
        /// <summary>The member of what the field holds that is asked for or called.</summary>
        public SyntaxNode? Called { get; init; }

        /// <summary>Whether a part of what it holds is set.</summary>
        public bool IsPartSet { get; init; }
    }
}
