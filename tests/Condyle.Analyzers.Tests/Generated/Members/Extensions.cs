namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Extension methods and extension blocks.</summary>
internal static class Extensions
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        author.In(new Situation(), () => author.Code.Block($"internal static class {author.Name("Extensions")}", () =>
        {
            for (var i = choose.Between(1, 3); i > 0; i--)
            {
                if (choose.Chance(50))
                    Method(author);
                else
                    Block(author);
            }
        }), author.Program.Code);
    }

    private static void Method(Author author)
    {
        var on = new Parameter(author.Name("self"), AnyType.Plain(author));
        var method = new Callable(author.Name("Extend"), AnyType.Plain(author), [on, .. Methods.Parameters(author, author.Choose.Below(2), mayBeByReference: false)]);
        var parameters = string.Join(", ", method.Parameters.Select(parameter => Methods.Written(parameter, author)));
        author.Code.Line($"public static {method.Result} {method.Name}(this {parameters}) => {Body(method.Parameters, method.Result!, author)};");
        author.Program.Extensions.Add(method);
    }

    private static void Block(Author author)
    {
        var on = new Parameter(author.Name("self"), AnyType.Plain(author));
        var property = new Member(author.Name("Extra"), AnyType.Plain(author), CanWrite: false);
        var method = new Callable(author.Name("Extend"), AnyType.Plain(author), [new Parameter(author.Name("p"), AnyType.Plain(author))]);
        author.Code.Block($"extension({on.Type} {on.Name})", () =>
        {
            author.Code.Line($"public {property.Type} {property.Name} => {Body([on], property.Type, author)};");
            author.Code.Line($"public {method.Result} {method.Name}({Methods.Written(method.Parameters[0], author)}) => {Body([on, .. method.Parameters], method.Result!, author)};");
        });
        author.Program.ExtensionProperties.Add((on.Type, property));
        author.Program.Extensions.Add(method with { Parameters = [on, .. method.Parameters] });
    }

    private static string Body(IReadOnlyList<Parameter> parameters, CodeType result, Author author) => author.Inside(Wall.Static, () =>
    {
        Methods.Begin(parameters, author);
        return author.Value(result);
    });
}
