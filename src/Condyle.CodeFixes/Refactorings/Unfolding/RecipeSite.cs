using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>A call of a recipe in the code, and each time that it was made.</summary>
/// <param name="Statement">The statement that it stands in.</param>
/// <param name="Call">The call.</param>
/// <param name="Local">The local that keeps what it gives back; none where nothing does.</param>
/// <param name="Times">Each time that it was made, with the log of its way.</param>
internal sealed record RecipeSite(StatementSyntax Statement, InvocationExpressionSyntax Call, ILocalSymbol? Local, IReadOnlyList<(ReadPath Path, RecipeRecord Recipe)> Times)
{
    private static readonly HashSet<string> Names = [.. DraftMember.All.Values.Where(member => member.IsRecipe).Select(member => member.Called.Name)];

    /// <summary>Whether it is worth reading: the statement calls something that is named as a recipe.</summary>
    public static bool MayBeAt(SyntaxNode root, TextSpan span) => StatementAt(root, span) is { } statement && CallsIn(statement).Any();

    public static RecipeSite? At(SyntaxNode root, TextSpan span, RigReading reading)
    {
        if (StatementAt(root, span) is not { } statement)
            return null;
        var sites = new List<RecipeSite>();
        foreach (var call in CallsIn(statement))
        {
            var name = ((MemberAccessExpressionSyntax)call.Expression).Name.Span;
            var times = reading.Paths.SelectMany(path => path.Calls.Recipes
                .Where(recipe => recipe.Call.Path == reading.Code.SyntaxTree.FilePath && recipe.Call.Call.NameSpan == name).Select(recipe => (path, recipe))).ToList();
            if (times.Count > 0)
                sites.Add(new(statement, call, LocalOf(statement, call, reading.Code), times));
        }

        return sites.Count == 1 ? sites[0] : sites.Find(site => ((MemberAccessExpressionSyntax)site.Call.Expression).Name.Span.IntersectsWith(span));
    }

    private static StatementSyntax? StatementAt(SyntaxNode root, TextSpan span) =>
        root.FindNode(span).FirstAncestorOrSelf<StatementSyntax>() is { } statement and (ExpressionStatementSyntax or LocalDeclarationStatementSyntax) ? statement : null;

    private static IEnumerable<InvocationExpressionSyntax> CallsIn(StatementSyntax statement) =>
        statement.DescendantNodes(node => node is not (AnonymousFunctionExpressionSyntax or ConditionalAccessExpressionSyntax)).OfType<InvocationExpressionSyntax>()
            .Where(call => call.Expression is MemberAccessExpressionSyntax { Expression: IdentifierNameSyntax, Name.Identifier.ValueText: var name } && Names.Contains(name));

    private static ILocalSymbol? LocalOf(StatementSyntax statement, InvocationExpressionSyntax call, SemanticModel code) =>
        statement is LocalDeclarationStatementSyntax { Declaration.Variables: [{ Initializer.Value: var value } declared] } && value == call ? code.GetDeclaredSymbol(declared) as ILocalSymbol : null;
}
