namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Async methods that never wait, asked for their result at once.</summary>
internal static class AsyncMethods
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var (result, name) = (AnyType.Plain(author), author.Name("Later"));
        var parameters = Methods.Parameters(author, choose.Below(2), mayBeByReference: false);
        var written = string.Join(", ", parameters.Select(parameter => Methods.Written(parameter, author)));
        var stream = choose.Chance(30) ? Stream(author) : null;
        author.Code.Block($"public static async {choose.Any("Task", "ValueTask")}<{result}> {name}({written})", () => author.Inside(Wall.Static, () =>
        {
            Methods.Begin(parameters, author);
            author.In(new Situation { Returns = result, CanReturn = true, CanAwait = true }, () =>
            {
                author.Statements(choose.Below(3));
                if (stream is not null)
                    author.Code.Line($"await foreach (var each in {stream}()) Trace.Note($\"each {{each}}\");");
                author.Code.Line(choose.Any("await Task.CompletedTask;", $"Trace.Note($\"{{await Task.FromResult({author.Value(AnyType.Plain(author))})}}\");"));
                author.Code.Line($"return {author.Value(result)};");
            });
        }));
        var now = new Callable(author.Name("Now"), result, parameters);
        author.Code.Line($"public static {result} {now.Name}({written}) => {name}({string.Join(", ", parameters.Select(parameter => parameter.Name))}).{choose.Any("GetAwaiter().GetResult()", "Result")};");
        author.Program.Methods.Add(now with { Name = "Helpers." + now.Name });
    }

    /// <summary>An iterator that may be waited for, and its name.</summary>
    private static string Stream(Author author)
    {
        var (item, name) = (AnyType.Plain(author), author.Name("Stream"));
        author.Code.Block($"public static async IAsyncEnumerable<{item}> {name}()", () => author.Inside(Wall.Static, () =>
        {
            author.In(new Situation { Yields = item, IsIterator = true, CanAwait = true }, () =>
            {
                author.Statements(author.Choose.Between(1, 3));
                author.Code.Line("await Task.CompletedTask;");
                author.Code.Line($"yield return {author.Value(item)};");
            });
        }));
        return name;
    }
}
