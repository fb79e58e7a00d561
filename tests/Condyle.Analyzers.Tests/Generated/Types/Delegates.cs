namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Types of delegates, and a class with an event of one.</summary>
internal static class Delegates
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var code = author.Program.Code;
        var result = choose.Chance(60) ? AnyType.Plain(author) : null;
        var type = new FunctionType(author.Name("Turn"), result, [.. Enumerable.Range(0, choose.Between(1, 2)).Select(_ => AnyType.Plain(author))]);
        var parameters = type.Parameters.Select(parameter => new Parameter(author.Name("p"), parameter)).ToList();
        var written = Bodies.Parameters(parameters, author);
        var given = string.Join(", ", parameters.Select(parameter => parameter.Name));
        code.Line($"internal delegate {result?.Name ?? "void"} {type}({written});");
        author.Program.Delegates.Add(type);
        if (choose.Chance(50))
            return;
        var bell = new DeclaredType(author.Name("Bell"), isStruct: false) { Shows = "ToString()" };
        var (add, remove, ring) = (new Callable("With", bell, [new Parameter("more", type)]), new Callable("Without", bell, [new Parameter("less", type)]), new Callable("Ring", AnyType.Text, parameters));
        code.Block($"internal sealed class {bell}", () =>
        {
            code.Line($"public event {type}? Rung;");
            code.Line("public int Count { get; private set; }");
            code.Line($"public {bell} With({type} more) {{ Rung += more; Count++; return this; }}");
            code.Line($"public {bell} Without({type} less) {{ Rung -= less; return this; }}");
            code.Line(result is null
                ? $"public string Ring({written}) {{ Rung?.Invoke({given}); return Rung is null ? \"none\" : \"rung\"; }}"
                : $"public string Ring({written}) => $\"{{(Rung is {{ }} rung ? rung({given}) : default)}}\";");
            code.Line("public override string ToString() => $\"bell {Count}\";");
        });
        bell.Members.Add(new Member("Count", NumberType.Int, CanWrite: false));
        bell.Methods.AddRange([add, remove, ring]);
        bell.Constructors.Add(new Callable(bell.Name, bell, []));
        author.Program.Types.Add(bell);
    }
}
