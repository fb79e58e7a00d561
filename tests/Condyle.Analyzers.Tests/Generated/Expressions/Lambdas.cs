namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Lambdas, method groups, and functions that are put together.</summary>
internal sealed class Lambdas : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (wanted is not FunctionType function)
            return;
        offers.Add(6, () => Lambda(function, author, !author.IsInQuery && author.Choose.Chance(40)));
        foreach (var method in author.Program.Methods.Concat(author.Scope.Functions).Where(method => IsGroup(method, function)))
            offers.Add(4, () => $"(({function}){method.Name})");
        if (!author.IsInQuery)
            offers.Add(1, () => Anonymous(function, author));
        if (function.Result is null)
            offers.Add(1, () => $"({author.Moving(function)} + {author.Moving(function)})");
    }

    /// <summary>The smallest lambda of a type.</summary>
    public static string Simple(FunctionType function, Author author) => Written(function, author, "", () => function.Result is { } result
        ? Leaves.Simple(result, author)
        : $"Trace.Note(\"{author.Name("did")}\")");

    public static bool CanBeGroup(Callable method) => method.IsPlain && !method.Name.Contains('<', StringComparison.Ordinal) && !method.Name.Contains("Generic", StringComparison.Ordinal);

    private static bool IsGroup(Callable method, FunctionType function) =>
        CanBeGroup(method) && Equals(method.Result, function.Result) && method.Parameters.Select(parameter => parameter.Type).SequenceEqual(function.Parameters);

    private static string Lambda(FunctionType function, Author author, bool hasBody) => Written(function, author, author.Choose.Chance(10) ? "static " : "", () =>
        hasBody ? author.Body(function.Result, author.Choose.Between(1, 3))
        : function.Result is { } result ? author.Value(result)
        : $"Trace.Note({author.Value(AnyType.Text)})");

    private static string Anonymous(FunctionType function, Author author) => author.Inside(Wall.Lambda, () =>
    {
        List<Parameter> parameters = [.. function.Parameters.Select(parameter => new Parameter(author.Name("with"), parameter))];
        Methods.Begin(parameters, author);
        return $"(({function})(delegate ({Bodies.Parameters(parameters, author)}) {author.Body(function.Result, author.Choose.Between(1, 2))}))";
    });

    private static string Written(FunctionType function, Author author, string modifier, Func<string> body) => author.Inside(modifier.Length > 0 ? Wall.Static : Wall.Lambda, () =>
    {
        var names = function.Parameters.Select(_ => author.Name("with")).ToList();
        for (var i = 0; i < names.Count; i++)
            author.Scope.Add(new Variable(names[i], function.Parameters[i]));
        return $"(({function})({modifier}({string.Join(", ", names)}) => {body()}))";
    });
}
