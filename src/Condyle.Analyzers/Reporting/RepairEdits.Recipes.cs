using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reporting;

/// <summary>Edits of a text that a recipe is given, and makes the names of its parts of.</summary>
internal sealed partial class RepairEdits
{
    private PlannedRepair? ReplaceInRecipe(Repair repair, Rule rule)
    {
        if (repair is not ReplaceText replace || TextBehind(replace) is not var (literal, from, to) || readingsOf(literal.Path) is not { } file
            || file.Tree.GetRoot().FindNode(literal.Span, getInnermostNodeForTie: true) is not ExpressionSyntax written)
            return null;
        var isPlain = written is LiteralExpressionSyntax { RawKind: (int)SyntaxKind.StringLiteralExpression, Token.ValueText: var said } && said == from;
        if (!(isPlain || EndsInASide(written, to, file.Model)) || !file.Uses.EachRecipeWants(literal, isPlain ? from : null, to, rule))
            return null;
        var plan = Plan(replace with { Title = $"Name what is built after '{to}'" }, file, literal.Span, new TextEdit(literal.Path, literal.Span, SymbolDisplay.FormatLiteral(to, quote: true)));
        return plan with { IsToBeTried = true }; // code may ask for what is built by its name
    }

    /// <summary>Whether a text has nothing but a side behind its beginning: <c>$"foot_{side}"</c>.</summary>
    private static bool EndsInASide(ExpressionSyntax text, string beginning, SemanticModel model) =>
        text is InterpolatedStringExpressionSyntax { Contents: [InterpolatedStringTextSyntax first, InterpolationSyntax { AlignmentClause: null, FormatClause: null, Expression: var side }] }
        && first.TextToken.ValueText == beginning + "_" && TypeKeys.Is(model.GetTypeInfo(side).Type, typeof(Side)) && !CodeEffects.AreIn(side, model);

    /// <summary>The one literal that a name of a recipe's part comes right by, and what it is to say; none where several would do, or none does.</summary>
    private (Origin Literal, string From, string To)? TextBehind(ReplaceText replace)
    {
        if (replace.From.Length == 0 || path.Calls.Recipes.FirstOrDefault(recipe => recipe.First <= replace.Event && replace.Event < recipe.Last) is not { } recipe)
            return null;
        var behind = new HashSet<(Origin, string, string)>();
        foreach (var text in path.Calls.TextsGivenTo(recipe.Call.Arguments))
        {
            if (!text.TryKnown(out var from) || Instead(from, replace) is not { } to)
                continue;
            // Where it is put together, or others can see it under a name, it isn't known what else it is.
            if (text.Origins is not [var literal] || text.Seams is not [{ Literal: var seam }] || seam != literal)
                return null;
            behind.Add((literal, from, to));
        }

        return behind.Count == 1 ? behind.Single() : null;
    }

    /// <summary>What a text becomes where the whole that has it in it becomes another one; none where that is changed elsewhere, too.</summary>
    private static string? Instead(string from, ReplaceText whole)
    {
        var before = from.Length == 0 ? -1 : whole.From.IndexOf(from, StringComparison.Ordinal);
        var length = whole.To.Length - (whole.From.Length - from.Length);
        if (before < 0 || length <= 0 || before + length > whole.To.Length)
            return null;
        var to = whole.To.Substring(before, length);
        return to != from && whole.From.Replace(from, to) == whole.To ? to : null;
    }
}
