using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Tables that one call fills for both sides: <c>Side.Both.ToDictionary(side => side, side => rig.Control(…))</c>.</summary>
internal static class SideTable
{
    /// <summary>The call that filled the table of an element, where it made a node and its other side's and nothing else: who has the one finds the other there. None for other tables.</summary>
    /// <param name="element">The element.</param>
    /// <param name="made">The node.</param>
    /// <param name="path">The way through the code that made it.</param>
    /// <param name="file">The file of the element.</param>
    public static TextSpan? FilledBy(ExpressionSyntax element, int made, ReadPath path, FileReadings file)
    {
        if (path.Calls.Find(made) is not { } making || making.Path != file.Tree.FilePath || RepairEdits.InvocationOf(making, file) is not { } call
            || call.FirstAncestorOrSelf<VariableDeclaratorSyntax>() is not { Initializer.Value: InvocationExpressionSyntax filling } table
            || element is not ElementAccessExpressionSyntax { Expression: IdentifierNameSyntax name } || name.Identifier.ValueText != table.Identifier.ValueText
            || !Replaceable.MeansTheSame(table, element, file.Model) || !Replaceable.IsOnlyAsked(table) || !IsForBothSides(filling, call))
            return null;
        return path.Model.Nodes.Count(node => path.Calls.Find(node.Id) is { } other && other.Path == making.Path && other.Call.Span == making.Call.Span) == Side.Both.Count ? making.Call.Span : null;
    }

    private static bool IsForBothSides(InvocationExpressionSyntax filling, InvocationExpressionSyntax call) =>
        filling is { Expression: MemberAccessExpressionSyntax { Name.Identifier.ValueText: nameof(Enumerable.ToDictionary), Expression: MemberAccessExpressionSyntax { Name.Identifier.ValueText: nameof(Side.Both), Expression: IdentifierNameSyntax { Identifier.ValueText: nameof(Side) } } } }
        && filling.ArgumentList.Arguments is [{ NameColon: null, Expression: SimpleLambdaExpressionSyntax { Body: IdentifierNameSyntax key } keyed }, { NameColon: null, Expression: SimpleLambdaExpressionSyntax { Body: ExpressionSyntax element } }]
        && key.Identifier.ValueText == keyed.Parameter.Identifier.ValueText && RepairEdits.Begins(element, call);
}
