using Condyle.Analyzers.Reading;
using Condyle.Model;
using Condyle.Naming;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>The changes that put what a recipe has said in the place of its call.</summary>
internal static class WrittenOut
{
    /// <summary>None where code has no way to say it, or says it otherwise each time.</summary>
    public static IReadOnlyList<TextChange>? Of(RecipeSite site, RigReading reading, SourceText text)
    {
        var each = site.Times.Select(time => One(time.Path.Log, time.Recipe, site, reading)).ToList();
        if (each.Exists(one => one is null))
            return null;
        var side = each[0]!.Side;
        string? Same(Func<Written, string> part) => SaidNumbers.Written([.. each.Select(one => (part(one!), one!.Numbers, one.OfSide))], side);
        var statements = Enumerable.Range(0, each[0]!.Statements.Count).Select(i => Same(one => one.Statements.ElementAtOrDefault(i) ?? "")).ToList();
        var uses = each[0]!.Uses.Select((use, i) => (use.Expression, Code: Same(one => one.Uses[i].Code))).ToList();
        if (each.Any(one => one!.Statements.Count != statements.Count) || statements.Contains(null) || uses.Exists(use => use.Code is null))
            return null;
        return Changes(site, statements!, uses!, text);
    }

    private static Written? One(EventLog log, RecipeRecord recipe, RecipeSite site, RigReading reading)
    {
        var code = reading.Code;
        var member = site.Statement.FirstAncestorOrSelf<MemberDeclarationSyntax>();
        var names = new LocalNames((member?.DescendantTokens() ?? []).Where(token => token.IsKind(SyntaxKind.IdentifierToken)).Select(token => token.ValueText).Where(word => word != site.Local?.Name), reading.Conventions);
        if (recipe.Result is null || GivenArguments.Of(site, code, names) is not { } given)
            return null;
        var ofSide = recipe.Call.Arguments.OfType<Side>().FirstOrDefault() ?? SideOf(log, recipe, reading.Conventions);
        var side = recipe.Call.Arguments.OfType<Side>().Any() ? given.Side : reading.SideAt(site.Statement.SpanStart);
        var (known, numbers) = (new Dictionary<int, string>(), new SaidNumbers());
        foreach (var (parameter, expression) in given.Expressions)
        {
            var paths = new HandlePaths(log, ofSide, side);
            paths.Walk(recipe.Call.Arguments[parameter], expression);
            foreach (var (path, id) in paths.Found)
            {
                if (id < recipe.First && !known.ContainsKey(id))
                    known.Add(id, path.Replace(".Value", "!.Value"));
            }
        }

        var results = new HandlePaths(log, ofSide, side);
        results.Walk(recipe.Result, "");
        var parts = results.Found.GroupBy(part => part.Path).ToDictionary(part => part.Key, part => (IReadOnlyList<int>)[part.First().Id]);
        foreach (var (path, ids) in results.Lists)
            parts[path] = ids;
        if (ResultUses.Of(site, parts.Keys, code) is not { } uses)
            return null;
        var rig = ((MemberAccessExpressionSyntax)site.Call.Expression).Expression.ToString();
        if (SaidCode.Of(log, recipe.First, recipe.Last, rig, known, uses.Each.SelectMany(use => parts[use.Path]), new SaidValues(reading.Conventions, ofSide, side, numbers), names) is not { } said)
            return null;
        string Part(string path) => results.Lists.Any(list => list.Path == path) ? $"new[] {{ {string.Join(", ", parts[path].Select(said.ExpressionOf))} }}" : said.ExpressionOf(parts[path][0])!;
        var usesCode = uses.Each.Select(use => (use.Expression, Part(use.Path))).ToList();
        return new([.. given.Kept, .. said.Statements], usesCode, numbers, ofSide, side);
    }

    private static List<TextChange> Changes(RecipeSite site, IReadOnlyList<string> statements, IReadOnlyList<(ExpressionSyntax Expression, string Code)> uses, SourceText text)
    {
        var (indent, newLine) = (text.IndentAt(site.Statement.SpanStart), text.NewLineAt(site.Statement.SpanStart));
        var within = uses.Where(use => site.Statement.Span.Contains(use.Expression.Span)).ToList();
        var comments = (within.Count > 0 ? within.Select(use => (SyntaxNode)use.Expression) : [site.Statement]).SelectMany(KeptComments.Of);
        List<string> lines = [.. comments.Where(comment => !statements.Any(statement => statement.Contains(comment))), .. statements];
        if (within.Count > 0)
        {
            var rest = text.ToString(site.Statement.Span);
            foreach (var (expression, code) in within.OrderByDescending(use => use.Expression.SpanStart))
                rest = rest.Remove(expression.SpanStart - site.Statement.SpanStart, expression.Span.Length).Insert(expression.SpanStart - site.Statement.SpanStart, code);
            lines.Add(rest);
        }

        var isInBlock = site.Statement.Parent is BlockSyntax or SwitchSectionSyntax or GlobalStatementSyntax;
        var outer = isInBlock || indent.Length < 4 ? indent : indent.Substring(indent.Contains('\t') ? 1 : 4);
        var all = string.Join(newLine + indent, lines);
        var put = isInBlock ? all : $"{{{newLine}{indent}{all}{newLine}{outer}}}";
        var start = isInBlock ? site.Statement.SpanStart : site.Statement.SpanStart - (indent.Length - outer.Length);
        return [
            new TextChange(TextSpan.FromBounds(start, site.Statement.Span.End), put),
            .. uses.Except(within).Select(use => new TextChange(use.Expression.Span, use.Code)),
        ];
    }

    // A recipe that is given no side has the one that its nodes are called after.
    private static Side? SideOf(EventLog log, RecipeRecord recipe, Conventions conventions) =>
        Enumerable.Range(recipe.First, recipe.Last - recipe.First).Select(id => log[id] is INamedEvent named ? SidedName.Of(named.Name, conventions)?.Side : null).FirstOrDefault(side => side is not null);

    private sealed record Written(IReadOnlyList<string> Statements, IReadOnlyList<(ExpressionSyntax Expression, string Code)> Uses, SaidNumbers Numbers, Side? OfSide, string? Side);
}
