using Condyle.Analyzers.Reading;
using Condyle.Naming;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>
/// Statements that say one side, and what turns that into whichever side a loop has: <c>Side.Left</c>, <c>joints.Elbow.Left</c>, a mark in a name,
/// and the sign of a vector's X.
/// </summary>
internal sealed class SidedCode
{
    private readonly RigReading reading;
    private readonly List<TextChange> changes = [];
    private readonly HashSet<Side> said = [];

    private SidedCode(RigReading reading, string variable)
    {
        this.reading = reading;
        Variable = variable;
    }

    /// <summary>The side that the statements say.</summary>
    public Side Side => said.Single();

    /// <summary>What the loop's side is called.</summary>
    public string Variable { get; }

    public IReadOnlyList<TextChange> Changes => changes;

    /// <summary>What statements say of sides; none where they say no side or both.</summary>
    public static SidedCode? Of(IReadOnlyList<StatementSyntax> statements, RigReading reading)
    {
        var variable = reading.Code.LookupSymbols(statements[0].SpanStart, name: "side").IsEmpty ? "side" : "eachSide";
        var code = new SidedCode(reading, variable);
        var nodes = statements.SelectMany(statement => statement.DescendantNodes()).ToList();
        nodes.ForEach(code.Take);
        if (code.said.Count != 1)
            return null;
        nodes.ForEach(code.TakeVector);
        return code;
    }

    private void Take(SyntaxNode node)
    {
        switch (node)
        {
            case MemberAccessExpressionSyntax { Name.Identifier.ValueText: nameof(Side.Left) or nameof(Side.Right) } member:
                Take(member, member.Name.Identifier.ValueText == nameof(Side.Left) ? Side.Left : Side.Right);
                break;
            case LiteralExpressionSyntax literal when literal.IsKind(SyntaxKind.StringLiteralExpression):
                if (Replaced(literal.Token.ValueText) is { } name && literal.Token.Text == SymbolDisplay.FormatLiteral(literal.Token.ValueText, quote: true) && literal.Token.ValueText.IndexOfAny(['{', '}']) < 0)
                    changes.Add(new(literal.Span, $"$\"{SymbolDisplay.FormatLiteral(name, quote: false)}\""));
                break;
            case InterpolatedStringTextSyntax text:
                if (Replaced(text.TextToken.ValueText) is { } piece && text.TextToken.Text == text.TextToken.ValueText)
                    changes.Add(new(text.Span, piece));
                break;
        }
    }

    private void Take(MemberAccessExpressionSyntax member, Side side)
    {
        var owner = reading.Code.GetSymbolInfo(member).Symbol?.ContainingType;
        var name = owner is null ? null : TypeKeys.PlainNameOf(owner);
        if (name == typeof(Side).FullName)
            changes.Add(new(member.Span, Variable));
        else if (name == typeof(JointPair).FullName || name == typeof(JointSetPair).FullName)
            changes.Add(new(TextSpan.FromBounds(member.OperatorToken.SpanStart, member.Span.End), $"[{Variable}]"));
        else
            return;
        said.Add(side);
    }

    /// <summary>A name with the side's word left to the loop; none where it says no side, or marks sides by other words than the loop's.</summary>
    private string? Replaced(string name)
    {
        var conventions = reading.Conventions;
        if (SidedName.Of(name, conventions) is not { } sided)
            return null;
        var (mark, other) = (conventions.MarkOf(sided.Side), conventions.MarkOf(sided.Side.Opposite));
        var word = sided.Side.ToString();
        if (mark.IndexOf(word, StringComparison.Ordinal) is not (>= 0 and var at) || mark.Remove(at, word.Length).Insert(at, sided.Side.Opposite.ToString()) != other)
            return null;
        said.Add(sided.Side);
        return name.Remove(sided.MarkAt + at, word.Length).Insert(sided.MarkAt + at, $"{{{Variable}}}");
    }

    private void TakeVector(SyntaxNode node)
    {
        if (node is not BaseObjectCreationExpressionSyntax { ArgumentList.Arguments: [{ Expression: var x }, _, _] } vector
            || node.Parent is ArgumentSyntax { NameColon.Name.Identifier.ValueText: "scaled" }
            || reading.Code.GetTypeInfo(vector).Type is not INamedTypeSymbol type || TypeKeys.PlainNameOf(type) != "System.Numerics.Vector3"
            || reading.Code.GetConstantValue(x) is not { HasValue: true, Value: IConvertible value } || Convert.ToDouble(value, System.Globalization.CultureInfo.InvariantCulture) == 0)
            return;
        var isNegated = x is PrefixUnaryExpressionSyntax { Operand: LiteralExpressionSyntax } && x.IsKind(SyntaxKind.UnaryMinusExpression);
        if (x is not LiteralExpressionSyntax && !isNegated)
            return;
        // On the right, a loop's sign is minus one.
        var plain = Side == Side.Left ? x.ToString() : isNegated ? ((PrefixUnaryExpressionSyntax)x).Operand.ToString() : "-" + x;
        changes.Add(new(x.Span, $"{plain} * {Variable}.{nameof(Side.Sign)}"));
    }
}
