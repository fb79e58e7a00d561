using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Tests.Generated;

/// <summary>The constructs that the reading promises to understand.</summary>
internal static class Constructs
{
    public static IReadOnlyList<Construct> All { get; } =
    [
        .. Values(), .. Text(), .. Collections(), .. Flow(), .. Patterns(), .. Functions(), .. Types(), .. Queries(),
    ];

    private static IEnumerable<Construct> Values() =>
    [
        Of<LocalDeclarationStatementSyntax>("constants", local => local.IsConst),
        Of<FieldDeclarationSyntax>("static readonly fields", field => Has(field, SyntaxKind.StaticKeyword) && Has(field, SyntaxKind.ReadOnlyKeyword)),
        Of<AssignmentExpressionSyntax>("reassignments", assignment => assignment is { RawKind: (int)SyntaxKind.SimpleAssignmentExpression, Left: IdentifierNameSyntax }),
        Of<AssignmentExpressionSyntax>("compound assignments", assignment => assignment.IsKind(SyntaxKind.AddAssignmentExpression)),
        Of<PostfixUnaryExpressionSyntax>("steps", step => step.IsKind(SyntaxKind.PostIncrementExpression)),
        Of<BinaryExpressionSyntax>("arithmetic", binary => binary.IsKind(SyntaxKind.MultiplyExpression)),
        Of<BinaryExpressionSyntax>("shifts", binary => binary.IsKind(SyntaxKind.UnsignedRightShiftExpression)),
        Of<CheckedExpressionSyntax>("checked calculations"),
        Of<CastExpressionSyntax>("casts"),
        Of<TupleExpressionSyntax>("tuples"),
        Of<TupleExpressionSyntax>("named tuples", tuple => tuple.Arguments.Any(argument => argument.NameColon is not null)),
        Of<AssignmentExpressionSyntax>("deconstructions", assignment => assignment.Left is TupleExpressionSyntax),
        Of<ConditionalExpressionSyntax>("conditional expressions"),
        Of<BinaryExpressionSyntax>("??", binary => binary.IsKind(SyntaxKind.CoalesceExpression)),
        Of<AssignmentExpressionSyntax>("??=", assignment => assignment.IsKind(SyntaxKind.CoalesceAssignmentExpression)),
        Of<ConditionalAccessExpressionSyntax>("?."),
        Of<ConditionalAccessExpressionSyntax>("?. assigned to", access => access.WhenNotNull is AssignmentExpressionSyntax),
        Of<ThrowExpressionSyntax>("throw expressions"),
        Of<RefExpressionSyntax>("references"),
        Of<ConditionalExpressionSyntax>("conditional references", choice => choice.WhenTrue is RefExpressionSyntax),
        Calls("System.Numerics maths", "Cross", "Dot", "Lerp", "CreateFromAxisAngle"),
    ];

    private static IEnumerable<Construct> Text() =>
    [
        Of<InterpolatedStringExpressionSyntax>("interpolated strings"),
        Of<InterpolationSyntax>("formats in holes", hole => hole.FormatClause is not null),
        Of<InterpolationSyntax>("widths of holes", hole => hole.AlignmentClause is not null),
        Of<LiteralExpressionSyntax>("raw strings", literal => literal.Token.IsKind(SyntaxKind.SingleLineRawStringLiteralToken)),
        Of<BinaryExpressionSyntax>("concatenated strings", binary => binary.IsKind(SyntaxKind.AddExpression) && binary.Left is InterpolatedStringExpressionSyntax or LiteralExpressionSyntax { RawKind: (int)SyntaxKind.StringLiteralExpression }),
        Of<InvocationExpressionSyntax>("nameof", call => call.Expression.ToString() == "nameof"),
        Of<ObjectCreationExpressionSyntax>("string builders", creation => creation.Type.ToString().EndsWith("StringBuilder", StringComparison.Ordinal)),
        Calls("formatted strings", "Format"),
        Calls("ordinal text operations", "Replace", "Substring", "Split"),
    ];

    private static IEnumerable<Construct> Collections() =>
    [
        Of<ArrayCreationExpressionSyntax>("arrays"),
        Of<ArrayRankSpecifierSyntax>("arrays of two dimensions", rank => rank.Rank == 2),
        Of<ArrayTypeSyntax>("arrays of arrays", array => array.RankSpecifiers.Count == 2),
        Of<GenericNameSyntax>("lists", name => name.Identifier.Text == "List"),
        Of<GenericNameSyntax>("dictionaries", name => name.Identifier.Text == "Dictionary"),
        Of<GenericNameSyntax>("sets", name => name.Identifier.Text == "HashSet"),
        Of<GenericNameSyntax>("immutable collections", name => name.Identifier.Text.StartsWith("Immutable", StringComparison.Ordinal)),
        Of<GenericNameSyntax>("spans", name => name.Identifier.Text == "Span"),
        Of<StackAllocArrayCreationExpressionSyntax>("stackalloc"),
        Of<CollectionExpressionSyntax>("collection expressions"),
        Of<SpreadElementSyntax>("spreads"),
        Of<InitializerExpressionSyntax>("collection initialisers", initializer => initializer.IsKind(SyntaxKind.CollectionInitializerExpression)),
        Of<InitializerExpressionSyntax>("object initialisers", initializer => initializer.IsKind(SyntaxKind.ObjectInitializerExpression)),
        Of<PrefixUnaryExpressionSyntax>("indices from the end", index => index.IsKind(SyntaxKind.IndexExpression)),
        Of<RangeExpressionSyntax>("ranges"),
    ];

    private static IEnumerable<Construct> Flow() =>
    [
        Of<ForStatementSyntax>("for"),
        Of<ForEachStatementSyntax>("foreach"),
        Of<ForEachVariableStatementSyntax>("foreach that takes apart"),
        Of<ForEachStatementSyntax>("foreach over references", loop => loop.Type is RefTypeSyntax),
        Of<WhileStatementSyntax>("while"),
        Of<DoStatementSyntax>("do"),
        Of<BreakStatementSyntax>("break"),
        Of<ContinueStatementSyntax>("continue"),
        Of<GotoStatementSyntax>("goto", jump => jump.IsKind(SyntaxKind.GotoStatement)),
        Of<GotoStatementSyntax>("goto case", jump => jump.IsKind(SyntaxKind.GotoCaseStatement)),
        Of<IfStatementSyntax>("if"),
        Of<ElseClauseSyntax>("else"),
        Of<SwitchStatementSyntax>("switch statements"),
        Of<SwitchExpressionSyntax>("switch expressions"),
        Of<ReturnStatementSyntax>("return out of a loop", statement => statement.Ancestors().Any(outer => outer is ForStatementSyntax or CommonForEachStatementSyntax or WhileStatementSyntax)),
        Of<ReturnStatementSyntax>("return out of try", statement => statement.Ancestors().OfType<TryStatementSyntax>().Any(attempt => attempt.Finally is not null)),
        Of<TryStatementSyntax>("try"),
        Of<CatchFilterClauseSyntax>("catch filters"),
        Of<FinallyClauseSyntax>("finally"),
        Of<ThrowStatementSyntax>("throw"),
        Of<UsingStatementSyntax>("using"),
        Of<LocalDeclarationStatementSyntax>("using declarations", local => !local.UsingKeyword.IsKind(SyntaxKind.None)),
        Of<LockStatementSyntax>("lock"),
        Of<CheckedStatementSyntax>("checked blocks"),
    ];

    private static IEnumerable<Construct> Patterns() =>
    [
        Of<ConstantPatternSyntax>("constant patterns"),
        Of<DeclarationPatternSyntax>("type patterns with a name"),
        Of<VarPatternSyntax>("var patterns"),
        Of<RelationalPatternSyntax>("relational patterns"),
        Of<BinaryPatternSyntax>("and patterns", pattern => pattern.IsKind(SyntaxKind.AndPattern)),
        Of<BinaryPatternSyntax>("or patterns", pattern => pattern.IsKind(SyntaxKind.OrPattern)),
        Of<UnaryPatternSyntax>("not patterns"),
        Of<RecursivePatternSyntax>("property patterns", pattern => pattern.PropertyPatternClause is not null),
        Of<RecursivePatternSyntax>("positional patterns", pattern => pattern.PositionalPatternClause is not null),
        Of<ExpressionColonSyntax>("patterns of inner properties"),
        Of<ListPatternSyntax>("list patterns"),
        Of<SlicePatternSyntax>("slice patterns"),
        Of<DiscardPatternSyntax>("discards"),
        Of<WhenClauseSyntax>("guards"),
    ];

    private static IEnumerable<Construct> Functions() =>
    [
        Of<LocalFunctionStatementSyntax>("local functions"),
        Of<LocalFunctionStatementSyntax>("static local functions", function => Has(function.Modifiers, SyntaxKind.StaticKeyword)),
        Of<LambdaExpressionSyntax>("lambdas", lambda => lambda.ExpressionBody is not null),
        Of<LambdaExpressionSyntax>("lambdas with statements", lambda => lambda.Block is not null),
        Of<AnonymousMethodExpressionSyntax>("anonymous methods"),
        Of<CastExpressionSyntax>("method groups", cast => cast is { Type: GenericNameSyntax { Identifier.Text: "Func" }, Expression: NameSyntax or MemberAccessExpressionSyntax }),
        Of<ParameterSyntax>("optional parameters", parameter => parameter.Default is not null),
        Of<ArgumentSyntax>("named arguments", argument => argument is { NameColon: not null, Parent.Parent: InvocationExpressionSyntax }),
        Of<ParameterSyntax>("params", parameter => Has(parameter.Modifiers, SyntaxKind.ParamsKeyword)),
        Of<ParameterSyntax>("params that are spans", parameter => Has(parameter.Modifiers, SyntaxKind.ParamsKeyword) && parameter.Type is GenericNameSyntax { Identifier.Text: "ReadOnlySpan" }),
        Of<ParameterSyntax>("ref parameters", parameter => Has(parameter.Modifiers, SyntaxKind.RefKeyword)),
        Of<ParameterSyntax>("out parameters", parameter => Has(parameter.Modifiers, SyntaxKind.OutKeyword)),
        Of<ParameterSyntax>("in parameters", parameter => Has(parameter.Modifiers, SyntaxKind.InKeyword)),
        Of<ParameterSyntax>("extension methods", parameter => Has(parameter.Modifiers, SyntaxKind.ThisKeyword)),
        Of<MemberDeclarationSyntax>("extension members", member => member.Parent.IsKind(SyntaxKind.ExtensionBlockDeclaration)),
        Of<MethodDeclarationSyntax>("generic methods", method => method.TypeParameterList is not null),
        Of<TypeParameterConstraintClauseSyntax>("constraints"),
        Of<MethodDeclarationSyntax>("recursion", method => method.DescendantNodes().OfType<InvocationExpressionSyntax>().Any(call => call.Expression.ToString() == method.Identifier.Text)),
        Of<YieldStatementSyntax>("iterators"),
        Of<AwaitExpressionSyntax>("await"),
        Of<ForEachStatementSyntax>("await foreach", loop => !loop.AwaitKeyword.IsKind(SyntaxKind.None)),
    ];

    private static IEnumerable<Construct> Types() =>
    [
        Of<RecordDeclarationSyntax>("records", record => record.IsKind(SyntaxKind.RecordDeclaration)),
        Of<RecordDeclarationSyntax>("record structs", record => record.IsKind(SyntaxKind.RecordStructDeclaration)),
        Of<WithExpressionSyntax>("with"),
        Of<StructDeclarationSyntax>("structs"),
        Of<ClassDeclarationSyntax>("classes", type => type.BaseList is not null && !Has(type, SyntaxKind.PartialKeyword)),
        Of<ClassDeclarationSyntax>("generic classes", type => type.TypeParameterList is not null),
        Of<ClassDeclarationSyntax>("partial types", type => Has(type, SyntaxKind.PartialKeyword)),
        Of<ClassDeclarationSyntax>("primary constructors", type => type.ParameterList is not null),
        Of<ClassDeclarationSyntax>("types inside of types", type => type.Parent is ClassDeclarationSyntax),
        Of<EnumDeclarationSyntax>("enums"),
        Of<EnumDeclarationSyntax>("flags", type => type.AttributeLists.Count > 0),
        Of<InterfaceDeclarationSyntax>("interfaces"),
        Of<MethodDeclarationSyntax>("bodies in interfaces", method => method is { Parent: InterfaceDeclarationSyntax, ExpressionBody: not null }),
        Of<MethodDeclarationSyntax>("static members of interfaces", method => method.Parent is InterfaceDeclarationSyntax && Has(method, SyntaxKind.StaticKeyword)),
        Of<MethodDeclarationSyntax>("virtual methods", method => Has(method, SyntaxKind.VirtualKeyword)),
        Of<PropertyDeclarationSyntax>("virtual properties", property => Has(property, SyntaxKind.VirtualKeyword)),
        Of<PropertyDeclarationSyntax>("required properties", property => Has(property, SyntaxKind.RequiredKeyword)),
        Of<ExpressionSyntax>("properties that keep their value", expression => expression.IsKind(SyntaxKind.FieldExpression)),
        Of<BaseExpressionSyntax>("base"),
        Of<IndexerDeclarationSyntax>("indexers"),
        Of<OperatorDeclarationSyntax>("operators"),
        Of<OperatorDeclarationSyntax>("operators that change their object", operation => operation.OperatorToken.IsKind(SyntaxKind.PlusEqualsToken)),
        Of<ConversionOperatorDeclarationSyntax>("conversions"),
        Of<DelegateDeclarationSyntax>("delegates"),
        Of<EventFieldDeclarationSyntax>("events"),
        Of<ConstructorDeclarationSyntax>("static constructors", constructor => Has(constructor, SyntaxKind.StaticKeyword)),
        Of<AnonymousObjectCreationExpressionSyntax>("objects without a type's name"),
    ];

    private static IEnumerable<Construct> Queries() =>
    [
        Of<QueryExpressionSyntax>("queries"),
        Of<GroupClauseSyntax>("group by"),
        Of<JoinClauseSyntax>("join"),
        Of<OrderByClauseSyntax>("orderby"),
        .. new[] { "Where", "Select", "SelectMany", "OrderBy", "GroupBy", "Zip", "Aggregate", "ToDictionary", "Distinct", "Any", "Sum", "First", "Chunk" }.Select(name => Calls(name, name)),
    ];

    private static Construct Of<T>(string name, Func<T, bool>? isAt = null)
        where T : SyntaxNode => new(name, typeof(T), node => isAt is null || isAt((T)node));

    private static Construct Calls(string name, params string[] methods) =>
        Of<InvocationExpressionSyntax>(name, call => call.Expression is MemberAccessExpressionSyntax member && methods.Contains(member.Name.Identifier.Text));

    private static bool Has(MemberDeclarationSyntax member, SyntaxKind modifier) => Has(member.Modifiers, modifier);

    private static bool Has(SyntaxTokenList modifiers, SyntaxKind modifier) => modifiers.Any(modifier);
}
