using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Condyle.Analyzers.Reading;

/// <summary>Whether the code waits for the task that a call gives, as far as its syntax tells.</summary>
internal sealed partial class Lowerer
{
    private static Waiting WaitingFor(SyntaxNode call) => call.Parent switch
    {
        AwaitExpressionSyntax => Waiting.Awaits,
        ParenthesizedExpressionSyntax parentheses => WaitingFor(parentheses),
        ReturnStatementSyntax or ArrowExpressionClauseSyntax => Waiting.Returns,
        LambdaExpressionSyntax lambda when lambda.ExpressionBody == call => Waiting.Returns,
        MemberAccessExpressionSyntax access when access.Expression == call => access.Name.Identifier.ValueText switch
        {
            "Result" or "Wait" or "GetAwaiter" => Waiting.Blocks,
            "ConfigureAwait" or "AsTask" when access.Parent is InvocationExpressionSyntax passedOn => WaitingFor(passedOn),
            _ => Waiting.None,
        },
        _ => Waiting.None,
    };
}
