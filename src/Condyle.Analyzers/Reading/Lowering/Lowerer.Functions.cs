using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Functions as values: lambdas, local functions, method groups.</summary>
internal sealed partial class Lowerer
{
    private void Lambda(IAnonymousFunctionOperation lambda)
    {
        var (nested, captures) = LowerNested(lambda.Symbol, lambda.Body, "a lambda");
        Emit(new MakeFunction(nested, captures));
    }

    private (CodeBody Body, IReadOnlyList<(int, int)> Captures) LowerNested(IMethodSymbol symbol, IOperation? content, string name)
    {
        var nested = new CodeBody(name, body.Path) { ParameterCount = symbol.Parameters.Length, ReturnsValue = !symbol.ReturnsVoid, IsAsync = symbol.IsAsync };
        var lowerer = new Lowerer(nested, symbol, this, shared);
        lowerer.DeclareVariables(symbol);
        lowerer.Statement(content);
        lowerer.Finish(content is null ? [] : [content]);
        return (nested, lowerer.captured);
    }

    // All functions of a block are known before the first is lowered, so that they can call themselves and each other.
    private void DeclareLocalFunctions(IReadOnlyList<ILocalFunctionOperation> functions)
    {
        foreach (var function in functions)
        {
            localFunctions[function.Symbol] = new CodeBody(function.Symbol.Name, body.Path) { ParameterCount = function.Symbol.Parameters.Length, ReturnsValue = !function.Symbol.ReturnsVoid, IsAsync = function.Symbol.IsAsync };
            localCaptures[function.Symbol] = new List<(int, int)>();
        }

        foreach (var function in functions)
        {
            var lowerer = new Lowerer(localFunctions[function.Symbol], function.Symbol, this, shared);
            lowerer.DeclareVariables(function.Symbol);
            lowerer.Statement(function.Body);
            lowerer.Finish(function.Body is { } content ? [content] : []);
            ((List<(int, int)>)localCaptures[function.Symbol]).AddRange(lowerer.captured);
        }
    }

    private void LoadLocalFunction(IMethodSymbol symbol)
    {
        List<KeyValuePair<string, TypeKey>>? generic = symbol.TypeParameters.IsEmpty
            ? null
            : [.. symbol.OriginalDefinition.TypeParameters.Zip(symbol.TypeArguments, (parameter, argument) => new KeyValuePair<string, TypeKey>(TypeKeys.ParameterIdOf(parameter), TypeKeys.Of(argument)))];
        symbol = symbol.OriginalDefinition;
        for (var from = this; from is not null; from = from.outer)
        {
            if (!from.localFunctions.TryGetValue(symbol, out var function))
                continue;
            if (from == this)
            {
                Emit(new MakeFunction(function, localCaptures[symbol], isNamed: true, generic));
                return;
            }

            // Called from a nested function: what it captures must be captured here too.
            Emit(new MakeFunction(function, new OuterCaptures(this, from, from.localCaptures[symbol]), isNamed: true, generic));
            return;
        }

        Emit(new Unread($"the local function '{symbol.Name}'", null));
    }

    private void MethodGroup(IMethodReferenceOperation reference)
    {
        var method = reference.Method;
        if (method.MethodKind == MethodKind.LocalFunction)
        {
            LoadLocalFunction(method);
            return;
        }

        if (!method.IsStatic)
            Value(reference.Instance);
        // A delegate keeps a structure as it is when it is made.
        if (reference.Instance?.Type is { IsValueType: true })
            Emit(new CopyValue());
        var called = ExtensionOf(method) ?? method;
        var call = CallOf(called, called.Parameters.Length, null, reference.Syntax, [], waiting: Waiting.Returns);
        call.Span = reference.Syntax.Span;
        Emit(new MakeMethodFunction(call, TypeKeys.MethodOf(method), method.Parameters.Length));
    }
}
