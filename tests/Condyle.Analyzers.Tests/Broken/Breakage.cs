using System.Globalization;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using static Microsoft.CodeAnalysis.CSharp.SyntaxFactory;

namespace Condyle.Analyzers.Tests.Broken;

/// <summary>One slip of a rigger, made mechanically at a random place of the code.</summary>
/// <param name="Name">What is done.</param>
/// <param name="Of">What may stand instead of a piece of code; nothing where it isn't for that kind.</param>
internal sealed record Breakage(string Name, Func<SyntaxNode, SemanticModel, Random, SyntaxNode?> Of)
{
    public static IReadOnlyList<Breakage> All { get; } =
    [
        new("drop an inverse", (node, _, _) => node is MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Inverse" } inverse ? inverse.Expression : null),
        new("add an inverse", (node, model, _) => node is ArgumentSyntax { Expression: IdentifierNameSyntax name } argument && TypeOf(name, model) is nameof(Switch) or nameof(Weight)
            ? argument.WithExpression(Member(name, "Inverse")) : null),
        new("take another thing of its kind", Retarget),
        new("swap the side", (node, _, _) => node is IdentifierNameSyntax { Identifier.ValueText: "Left" or "Right" } side && node.Parent is MemberAccessExpressionSyntax access && access.Name == side
            ? IdentifierName(side.Identifier.ValueText == "Left" ? "Right" : "Left").WithTriviaFrom(side) : null),
        new("index by the other side", (node, model, _) => node is ArgumentSyntax { Parent: BracketedArgumentListSyntax, Expression: IdentifierNameSyntax name } argument && TypeOf(name, model) == nameof(Side)
            ? argument.WithExpression(Member(name, "Opposite")) : null),
        new("drop the group's suffix", (node, _, _) => Reworded(node, text => text.EndsWith("_group", StringComparison.Ordinal) ? text[..^"_group".Length] : null)),
        new("call it after the other side", (node, _, _) => Reworded(node, text =>
            text.Contains("_left", StringComparison.Ordinal) ? text.Replace("_left", "_right", StringComparison.Ordinal)
            : text.Contains("_right", StringComparison.Ordinal) ? text.Replace("_right", "_left", StringComparison.Ordinal) : null)),
        new("give it a name that can't be", (node, _, _) => Reworded(node, text => text.Contains('_', StringComparison.Ordinal) ? text.Replace('_', ' ') : null)),
        new("take another text of the file", (node, _, random) => node is LiteralExpressionSyntax { RawKind: (int)SyntaxKind.StringLiteralExpression } literal
            ? Other(literal, random) : null),
        new("drive the other way", (node, _, _) => node is IdentifierNameSyntax { Identifier.ValueText: "ByMatrix" or "ByChannels" } way
            ? IdentifierName(way.Identifier.ValueText == "ByMatrix" ? "ByChannels" : "ByMatrix").WithTriviaFrom(way) : null),
        new("drop a link of the sentence", (node, model, _) => node is InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Expression: InvocationExpressionSyntax before } } call && IsOurs(call, model)
            ? before.WithTriviaFrom(call) : null),
        new("keep an offset", (node, model, _) => node is InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name.Identifier.ValueText: "ByChannels" } } call && IsOurs(call, model)
            ? InvocationExpression(Member(call, "KeepingOffset")) : null),
        new("unlock a group", (node, model, _) => node is InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Group" } } call && IsOurs(call, model)
            ? InvocationExpression(Member(call, "Unlock"), ArgumentList([Argument(ParseExpression("Channels.All"))])) : null),
        new("delete a sentence", (node, model, _) => node is ExpressionStatementSyntax { Expression: InvocationExpressionSyntax call } statement && IsOurs(call, model)
            ? EmptyStatement().WithTriviaFrom(statement) : null),
        new("change a number", Renumber),
        new("change a number of a range or a key", (node, model, random) => CallAround(node) is "LimitTurn" or "LimitMove" or "Dial" or "Switch" or "Key" ? Renumber(node, model, random) : null),
        new("hang it elsewhere", (node, model, random) => node is ArgumentSyntax { Expression: IdentifierNameSyntax name } argument && CallAround(name) == "Under" ? Rehung(argument, model, random) : null),
        new("take another joint", (node, model, random) => node is IdentifierNameSyntax { Parent: MemberAccessExpressionSyntax access } name && access.Name == name
            && model.GetSymbolInfo(name).Symbol is IPropertySymbol { ContainingType: { } skeleton, Type: { Name: nameof(Joint) or nameof(JointPair) } type } joint && Others(skeleton.GetMembers().OfType<IPropertySymbol>(), joint, type) is { Count: > 0 } others
                ? IdentifierName(others[random.Next(others.Count)]).WithTriviaFrom(name) : null),
    ];

    private static SyntaxNode? Retarget(SyntaxNode node, SemanticModel model, Random random)
    {
        if (node is not ArgumentSyntax { Expression: IdentifierNameSyntax name } argument || model.GetSymbolInfo(name).Symbol is not (ILocalSymbol or IParameterSymbol) || !IsCondyle(model.GetTypeInfo(name).Type))
            return null;
        var type = model.GetTypeInfo(name).Type;
        var others = model.LookupSymbols(node.SpanStart).Where(symbol => symbol.Name != name.Identifier.ValueText && SymbolEqualityComparer.Default.Equals(TypeOf(symbol), type)).OrderBy(symbol => symbol.Name, StringComparer.Ordinal).ToList();
        return others.Count == 0 ? null : argument.WithExpression(IdentifierName(others[random.Next(others.Count)].Name));
    }

    private static ArgumentSyntax? Rehung(ArgumentSyntax argument, SemanticModel model, Random random)
    {
        var nodes = model.LookupSymbols(argument.SpanStart).Where(symbol => symbol.Name != argument.ToString() && TypeOf(symbol) is { Name: nameof(Control) or nameof(Group) or nameof(Joint) or nameof(Node) } type && IsCondyle(type))
            .Select(symbol => symbol.Name).Order(StringComparer.Ordinal).ToList();
        return nodes.Count == 0 ? null : argument.WithExpression(IdentifierName(nodes[random.Next(nodes.Count)]));
    }

    private static List<string> Others(IEnumerable<IPropertySymbol> properties, ISymbol joint, ITypeSymbol type) => [.. properties
        .Where(other => !other.IsIndexer && !other.Equals(joint, SymbolEqualityComparer.Default) && SymbolEqualityComparer.Default.Equals(other.Type, type)).Select(other => other.Name).Order(StringComparer.Ordinal)];

    private static string? CallAround(SyntaxNode node) => node.Ancestors().OfType<InvocationExpressionSyntax>().FirstOrDefault()?.Expression is MemberAccessExpressionSyntax called ? called.Name.Identifier.ValueText : null;

    private static LiteralExpressionSyntax? Other(LiteralExpressionSyntax literal, Random random)
    {
        var texts = literal.SyntaxTree.GetRoot().DescendantNodes().OfType<LiteralExpressionSyntax>()
            .Where(other => other.IsKind(SyntaxKind.StringLiteralExpression) && other.Token.ValueText != literal.Token.ValueText).Select(other => other.Token.ValueText).Distinct().ToList();
        return texts.Count == 0 ? null : LiteralExpression(SyntaxKind.StringLiteralExpression, Literal(texts[random.Next(texts.Count)]));
    }

    private static SyntaxNode? Renumber(SyntaxNode node, SemanticModel model, Random random)
    {
        if (node is not LiteralExpressionSyntax { Token.Value: float or double or int } literal)
            return null;
        var value = Convert.ToDouble(literal.Token.Value, CultureInfo.InvariantCulture);
        double[] others = [-value, value * 10, value + 1, 0, value / 2];
        var other = others[random.Next(others.Length)];
        return other == value ? null : ParseExpression(literal.Token.Value switch
        {
            int => ((int)other).ToString(CultureInfo.InvariantCulture),
            float => other.ToString("R", CultureInfo.InvariantCulture) + "f",
            _ => other.ToString("R", CultureInfo.InvariantCulture) + "d",
        });
    }

    private static SyntaxNode? Reworded(SyntaxNode node, Func<string, string?> change) => node switch
    {
        LiteralExpressionSyntax { RawKind: (int)SyntaxKind.StringLiteralExpression } literal when change(literal.Token.ValueText) is { } text => LiteralExpression(SyntaxKind.StringLiteralExpression, Literal(text)),
        InterpolatedStringTextSyntax piece when change(piece.TextToken.ValueText) is { } text => InterpolatedStringText(Token(default, SyntaxKind.InterpolatedStringTextToken, text, text, default)),
        _ => null,
    };

    private static MemberAccessExpressionSyntax Member(ExpressionSyntax of, string name) => MemberAccessExpression(SyntaxKind.SimpleMemberAccessExpression, of, IdentifierName(name));

    private static bool IsOurs(InvocationExpressionSyntax call, SemanticModel model) => IsCondyle(model.GetSymbolInfo(call).Symbol?.ContainingType);

    private static bool IsCondyle(ITypeSymbol? type) => type?.ContainingNamespace?.Name == nameof(Condyle) && type.ContainingAssembly.Name == nameof(Condyle);

    private static string? TypeOf(ExpressionSyntax expression, SemanticModel model) => model.GetTypeInfo(expression).Type is { } type && IsCondyle(type) ? type.Name : null;

    private static ITypeSymbol? TypeOf(ISymbol symbol) => symbol switch { ILocalSymbol local => local.Type, IParameterSymbol parameter => parameter.Type, _ => null };
}
