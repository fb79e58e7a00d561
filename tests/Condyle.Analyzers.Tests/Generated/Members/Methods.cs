namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Methods with parameters of every kind.</summary>
internal static class Methods
{
    /// <summary>A static method of the program's, which later code calls.</summary>
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var method = new Callable(author.Name("Method"), AnyType.Of(author), Parameters(author, choose.Below(4), mayBeByReference: true));
        author.In(new Situation { Returns = method.Result, CanReturn = true }, () =>
            author.Inside(Wall.Static, () => Write(method, "public static ", author, choose.Between(0, 5))), author.Code);
        author.Program.Methods.Add(method with { Name = "Helpers." + method.Name });
    }

    public static IReadOnlyList<Parameter> Parameters(Author author, int count, bool mayBeByReference)
    {
        var choose = author.Choose;
        var parameters = new List<Parameter>();
        for (var i = 0; i < count; i++)
        {
            var passing = !mayBeByReference ? Passing.Value : choose.Below(10) switch { 0 => Passing.Ref, 1 => Passing.Out, 2 => Passing.In, _ => Passing.Value };
            parameters.Add(new Parameter(author.Name("p"), passing == Passing.Value ? AnyType.Of(author) : AnyType.Plain(author), passing));
        }

        if (choose.Chance(25))
            parameters.Add(new Parameter(author.Name("p"), choose.Any<CodeType>(NumberType.Int, AnyType.Text, AnyType.Truth, NumberType.Double), Passing.Optional));
        else if (choose.Chance(15))
            parameters.Add(new Parameter(author.Name("p"), choose.Chance(60) ? new ArrayType(AnyType.Plain(author)) : new CollectionType(choose.Any("List", "IEnumerable"), AnyType.Plain(author)), Passing.Params));
        return parameters;
    }

    /// <summary>A whole method; its parameters are in scope of its body only.</summary>
    public static void Write(Callable method, string modifiers, Author author, int statements)
    {
        var parameters = string.Join(", ", method.Parameters.Select(parameter => Written(parameter, author)));
        author.Code.Block($"{modifiers}{method.Result?.Name ?? "void"} {method.Name}({parameters})", () => author.Inside(Wall.None, () =>
        {
            Begin(method.Parameters, author);
            if (statements > 2)
                Declarations.Begin(author, author.Choose.Below(3));
            author.Statements(statements);
            if (method.Result is { } result)
                author.Code.Line($"return {author.Value(result)};");
        }));
    }

    /// <summary>Brings parameters into scope; those that are given back get their value first.</summary>
    public static void Begin(IReadOnlyList<Parameter> parameters, Author author)
    {
        foreach (var parameter in parameters.Where(parameter => parameter.Passing == Passing.Out))
            author.Code.Line($"{parameter.Name} = {Leaves.Made(parameter.Type, author)};");
        foreach (var parameter in parameters)
        {
            var isReference = parameter.Passing is Passing.Ref or Passing.Out or Passing.In;
            author.Scope.Add(new Variable(parameter.Name, parameter.Type, CanWrite: parameter.Passing != Passing.In, IsPlace: parameter.Passing != Passing.In, CanCapture: !isReference));
        }
    }

    public static string Written(Parameter parameter, Author author) => parameter.Passing switch
    {
        Passing.Ref => $"ref {parameter.Type} {parameter.Name}",
        Passing.Out => $"out {parameter.Type} {parameter.Name}",
        Passing.In => $"in {parameter.Type} {parameter.Name}",
        Passing.Params => $"params {parameter.Type} {parameter.Name}",
        Passing.Optional => $"{parameter.Type} {parameter.Name} = {(parameter.Type is TruthType ? "true" : Leaves.Constant(parameter.Type, author.Choose))}",
        _ => $"{parameter.Type} {parameter.Name}",
    };
}
