namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Iterators: they run as far as they are asked.</summary>
internal static class Iterators
{
    public static void Declare(Author author)
    {
        var item = AnyType.Plain(author);
        var method = new Callable(author.Name("Walk"), new CollectionType("IEnumerable", item), Methods.Parameters(author, author.Choose.Below(3), mayBeByReference: false));
        var parameters = string.Join(", ", method.Parameters.Select(parameter => Methods.Written(parameter, author)));
        author.Code.Block($"public static {method.Result} {method.Name}({parameters})", () => author.Inside(Wall.Static, () =>
        {
            Methods.Begin(method.Parameters, author);
            author.In(new Situation { Yields = item, IsIterator = true, CanReturn = true }, () =>
            {
                author.Code.Line($"Trace.Note(\"{method.Name} begins\");");
                author.Statements(author.Choose.Between(2, 5));
                author.Code.Line($"yield return {author.Value(item)};");
                author.Code.Line($"Trace.Note(\"{method.Name} ends\");");
            });
        }));
        author.Program.Methods.Add(method with { Name = "Helpers." + method.Name });
    }
}
