using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Finds the variables that nested functions share with the function around them.</summary>
internal static class Captures
{
    /// <param name="roots">The function's code.</param>
    /// <param name="iterates">Whether the function itself hands out items.</param>
    public static HashSet<ISymbol> In(IEnumerable<IOperation> roots, out bool iterates)
    {
        iterates = false;
        var found = new HashSet<ISymbol>(SymbolEqualityComparer.Default);
        var pending = new Stack<(IOperation Operation, IMethodSymbol? Around)>(roots.Select(root => (root, (IMethodSymbol?)null)));
        while (pending.Count > 0)
        {
            var (operation, function) = pending.Pop();
            iterates |= function is null && IsYield(operation);
            ISymbol? variable = operation switch
            {
                ILocalReferenceOperation local => local.Local,
                IParameterReferenceOperation parameter => parameter.Parameter,
                _ => null,
            };
            if (variable is not null && function is not null && !SymbolEqualityComparer.Default.Equals(variable.ContainingSymbol, function))
                found.Add(variable);
            var inside = operation switch
            {
                IAnonymousFunctionOperation lambda => lambda.Symbol,
                ILocalFunctionOperation local => local.Symbol,
                _ => function,
            };
            foreach (var child in operation.ChildOperations)
                pending.Push((child, inside));
        }

        return found;
    }

    public static bool IsYield(IOperation operation) => operation.Kind is OperationKind.YieldReturn or OperationKind.YieldBreak;

    /// <summary>The operations of a function without those of the functions nested in it.</summary>
    public static IEnumerable<IOperation> OwnDescendants(IOperation root)
    {
        var pending = new Stack<IOperation>([root]);
        while (pending.Count > 0)
        {
            var operation = pending.Pop();
            yield return operation;
            if (operation is IAnonymousFunctionOperation or ILocalFunctionOperation && operation != root)
                continue;
            foreach (var child in operation.ChildOperations)
                pending.Push(child);
        }
    }
}
