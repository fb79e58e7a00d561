using Condyle.Analyzers.Reporting;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>What a recipe's call is given, by expressions that may be said again; what may not is kept in a local before.</summary>
internal sealed class GivenArguments
{
    private readonly List<string> kept = [];
    private readonly List<(int Parameter, string Expression)> expressions = [];

    /// <summary>The statements that keep arguments, in the order in which they are given.</summary>
    public IReadOnlyList<string> Kept => kept;

    /// <summary>The expressions of what leads to handles, by the parameter's place.</summary>
    public IReadOnlyList<(int Parameter, string Expression)> Expressions => expressions;

    /// <summary>The expression that the side is given by; none where it is one side, or where none is given.</summary>
    public string? Side { get; private set; }

    /// <summary>None where an argument does something when it is worked out that would be lost.</summary>
    public static GivenArguments? Of(RecipeSite site, SemanticModel code, LocalNames names)
    {
        if (code.GetSymbolInfo(site.Call).Symbol is not IMethodSymbol method)
            return null;
        var given = new GivenArguments();
        var arguments = site.Call.ArgumentList.Arguments;
        for (var i = 0; i < arguments.Count; i++)
        {
            var parameter = arguments[i].NameColon is { } named ? method.Parameters.FirstOrDefault(each => each.Name == named.Name.Identifier.ValueText) : method.Parameters.ElementAtOrDefault(i);
            if (parameter is null || !given.Take(arguments[i].Expression, parameter, code, names))
                return null;
        }

        return given;
    }

    private bool Take(ExpressionSyntax expression, IParameterSymbol parameter, SemanticModel code, LocalNames names)
    {
        var doesSomething = CodeEffects.AreIn(expression, code);
        var mayBeSaidAgain = !doesSomething && !expression.DescendantNodesAndSelf().Any(node => node is BaseObjectCreationExpressionSyntax or CollectionExpressionSyntax
            or ArrayCreationExpressionSyntax or ImplicitArrayCreationExpressionSyntax or ConditionalExpressionSyntax or WithExpressionSyntax);
        if (parameter.Type.Name == nameof(Condyle.Side))
        {
            Side = mayBeSaidAgain && expression is not MemberAccessExpressionSyntax { Name.Identifier.ValueText: nameof(Condyle.Side.Left) or nameof(Condyle.Side.Right) } ? expression.ToString() : null;
            return mayBeSaidAgain;
        }

        // Options and plain values are in what is said.
        if (parameter.Type.Name.EndsWith("Options", StringComparison.Ordinal) || parameter.Type.SpecialType != SpecialType.None || parameter.Type.Name == "Vector3")
            return !doesSomething;
        if (mayBeSaidAgain)
        {
            expressions.Add((parameter.Ordinal, expression.ToString()));
            return true;
        }

        var local = names.Free(parameter.Name);
        var isTyped = code.GetTypeInfo(expression).Type is null || expression is ImplicitObjectCreationExpressionSyntax;
        kept.Add($"{(isTyped ? parameter.Type.ToMinimalDisplayString(code, expression.SpanStart) : "var")} {local} = {expression};");
        expressions.Add((parameter.Ordinal, local));
        return true;
    }
}
