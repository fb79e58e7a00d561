using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Works out the edits of a repair, at the text that is to blame. None where an edit would change anything else of a rig.</summary>
internal static class RepairEdits
{
    private const string Inverse = ".Inverse";

    public static PlannedRepair? Of(Repair repair, ReadPath path, SourceUses uses, SyntaxTree tree, bool sawAll)
    {
        if (path.Calls.Find(repair.Event) is not { } call)
            return null;
        return repair switch
        {
            AppendText append => Append(append, call, uses, tree, sawAll),
            InvertWeight invert => Invert(invert, call, uses, tree, sawAll),
            InverseOf inverse => UseInverseOf(inverse, call, path, uses, tree, sawAll),
            CallInstead instead => uses.EachCallWants(call, other => other is CallInstead same && same.Method == instead.Method)
                ? new PlannedRepair(instead.Title, [new TextEdit(call.Path, call.Call.NameSpan, instead.Method)]) { Blamed = new Origin(call.Path, call.Call.Span) }
                : null,
            _ => null,
        };
    }

    private static PlannedRepair? Append(AppendText append, CallRecord call, SourceUses uses, SyntaxTree tree, bool sawAll)
    {
        if (call.Arguments[append.Argument] is not TextValue text)
            return null;
        foreach (var seam in text.Seams)
        {
            if (uses.EachUseWants(seam, append.Suffix))
            {
                return new PlannedRepair(append.Title, [new TextEdit(seam.Expression.Path, new TextSpan(seam.Position, 0), append.Suffix)])
                {
                    Blamed = seam.Expression,
                };
            }
        }

        // The text is shared with something that is right: append where it is used.
        return sawAll && ArgumentOf(call, append.Argument, tree) is { } argument && uses.EachCallWants(call, other => other is AppendText same && same.Suffix == append.Suffix && same.Argument == append.Argument)
            ? new PlannedRepair(append.Title, AppendCode(call.Path, argument, $" + \"{append.Suffix}\"", IsOperand)) { Blamed = new Origin(call.Path, argument.Span) }
            : null;
    }

    private static PlannedRepair? Invert(InvertWeight invert, CallRecord call, SourceUses uses, SyntaxTree tree, bool sawAll)
    {
        if (!sawAll || ArgumentOf(call, invert.Argument, tree) is not { } argument
            || !uses.EachCallWants(call, other => other is InvertWeight same && same.Argument == invert.Argument))
            return null;
        IReadOnlyList<TextEdit> edits = argument is MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Inverse" } already
            ? [new TextEdit(call.Path, TextSpan.FromBounds(already.Expression.Span.End, already.Span.End), "")]
            : AppendCode(call.Path, argument, Inverse, IsPrimary);
        return new PlannedRepair(invert.Title, edits) { Blamed = new Origin(call.Path, argument.Span) };
    }

    private static PlannedRepair? UseInverseOf(InverseOf inverse, CallRecord call, ReadPath path, SourceUses uses, SyntaxTree tree, bool sawAll)
    {
        if (!sawAll || path.Calls.Find(inverse.OtherEvent) is not { } other || other.Path != call.Path
            || ArgumentOf(call, inverse.Argument, tree) is not { } argument
            || ArgumentOf(other, inverse.OtherArgument, tree) is not { } source
            || !IsPlainName(source)
            || FunctionAround(argument) != FunctionAround(source)
            || !uses.EachCallWants(call, repair => repair is InverseOf same && same.Argument == inverse.Argument))
            return null;
        var text = source is MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Inverse" } already ? already.Expression.ToString() : source + Inverse;
        return new PlannedRepair(inverse.Title, [new TextEdit(call.Path, argument.Span, text)]) { Blamed = new Origin(call.Path, argument.Span) };
    }

    private static IReadOnlyList<TextEdit> AppendCode(string path, ExpressionSyntax expression, string code, Func<ExpressionSyntax, bool> stands) => stands(expression)
        ? [new TextEdit(path, new TextSpan(expression.Span.End, 0), code)]
        : [new TextEdit(path, new TextSpan(expression.SpanStart, 0), "("), new TextEdit(path, new TextSpan(expression.Span.End, 0), ")" + code)];

    private static ExpressionSyntax? ArgumentOf(CallRecord call, int argument, SyntaxTree tree)
    {
        if (call.Path != tree.FilePath || argument >= call.Call.ArgumentSpans.Count || call.Call.ArgumentSpans[argument] is not { } span)
            return null;
        var node = tree.GetRoot().FindNode(span, getInnermostNodeForTie: true);
        return node as ExpressionSyntax;
    }

    private static bool IsPrimary(ExpressionSyntax expression) => expression is IdentifierNameSyntax or MemberAccessExpressionSyntax or InvocationExpressionSyntax
        or ElementAccessExpressionSyntax or ParenthesizedExpressionSyntax or LiteralExpressionSyntax or InterpolatedStringExpressionSyntax or ThisExpressionSyntax;

    private static bool IsOperand(ExpressionSyntax expression) => IsPrimary(expression) || expression is BinaryExpressionSyntax { OperatorToken.ValueText: "+" };

    private static bool IsPlainName(ExpressionSyntax expression) => expression switch
    {
        IdentifierNameSyntax => true,
        MemberAccessExpressionSyntax member => IsPlainName(member.Expression),
        ThisExpressionSyntax => true,
        _ => false,
    };

    private static SyntaxNode? FunctionAround(SyntaxNode node) =>
        node.Ancestors().FirstOrDefault(ancestor => ancestor is BaseMethodDeclarationSyntax or LocalFunctionStatementSyntax or AnonymousFunctionExpressionSyntax or AccessorDeclarationSyntax);
}
