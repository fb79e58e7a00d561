namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Methods that call themselves, or each other, until a number runs out.</summary>
internal static class Recursions
{
    public static void Declare(Author author)
    {
        var (name, result) = (author.Name("Down"), AnyType.Plain(author));
        List<Parameter> parameters = [new(author.Name("left"), NumberType.Int), new(author.Name("p"), result)];
        var other = author.Choose.Chance(35) ? author.Name("Down") : name;
        Write(name, other, result, parameters, author);
        if (other != name)
            Write(other, name, result, parameters, author);
        author.Program.Methods.Add(new Callable("Helpers." + name, result, parameters));
    }

    private static void Write(string name, string next, CodeType result, List<Parameter> parameters, Author author)
    {
        var left = parameters[0].Name;
        var head = $"public static {result} {name}({string.Join(", ", parameters.Select(parameter => Methods.Written(parameter, author)))})";
        author.Code.Block(head, () => author.Inside(Wall.Static, () => author.In(new Situation { Returns = result, CanReturn = true }, () =>
        {
            author.Scope.Add(new Variable(left, NumberType.Int, CanWrite: false, IsPlace: false));
            author.Scope.Add(new Variable(parameters[1].Name, result));
            author.Statements(author.Choose.Below(3));
            var call = $"{next}(Math.Min({left}, {author.Choose.Between(2, 5)}) - 1, {author.Stored(result)})";
            var deeper = result switch
            {
                TextType => $"Trace.Short({call} + {author.Value(result)})",
                NumberType { Name: "int" } => $"unchecked({call} {author.Choose.Any("+", "-", "*")} {author.Value(result)})",
                _ => call,
            };
            author.Code.Line($"return {left} > 0 && Trace.Goes() ? {deeper} : {author.Value(result)};");
        })));
    }
}
