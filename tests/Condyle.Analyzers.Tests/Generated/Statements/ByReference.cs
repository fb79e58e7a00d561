namespace Condyle.Analyzers.Tests.Generated;

/// <summary>References to variables, items and fields, spans over arrays, and what <c>out</c> gives.</summary>
internal sealed class ByReference : IStatements
{
    public int Weight => 3;

    public bool Fits(Author author) => author.Situation is { IsIterator: false, CanAwait: false };

    public void Write(Author author)
    {
        var choose = author.Choose;
        var arrays = author.Scope.All.Where(variable => variable.Type is ArrayType { Item: not ArrayType }).ToList();
        var places = author.Scope.All.Where(variable => variable is { CanWrite: true, IsPlace: true } && variable.Type is NumberType or TextType or EnumType or DeclaredType).ToList();
        var gives = author.Program.Methods.Where(method => method.Parameters.Any(parameter => parameter.Passing == Passing.Out) && Calls.CanCall(method, author)).ToList();
        var name = author.Name("at");
        switch (choose.Below(4))
        {
            case 0 when arrays.Count > 0:
                var array = choose.Of(arrays);
                author.Code.Line($"ref var {name} = ref {array.Name}[{choose.Any("0", "1", "^1")}];");
                author.Scope.Add(new Variable(name, ((ArrayType)array.Type).Item, CanCapture: false));
                break;
            case 1 when places.Count > 0:
                var place = choose.Of(places);
                author.Code.Line($"ref {place.Type} {name} = ref {place.Name};");
                author.Scope.Add(new Variable(name, place.Type, CanCapture: false));
                break;
            case 2 when arrays.Count > 0:
                Span(name, choose.Of(arrays), author);
                break;
            case 3 when gives.Count > 0:
                Give(choose.Of(gives), author);
                break;
            default:
                author.Code.Line($"_ = {author.Value(AnyType.Of(author))};");
                break;
        }
    }

    private static void Span(string name, Variable array, Author author)
    {
        var item = ((ArrayType)array.Type).Item;
        author.Code.Line($"Span<{item}> {name} = {array.Name}{author.Choose.Any("", ".AsSpan()", ".AsSpan(1)", ".AsSpan()[1..]")};");
        author.Code.Line($"if ({name}.Length > 1) {name}[{author.Choose.Any("0", "1", "^1")}] = {author.Stored(item)};");
        Observations.Say(author, $"$\"{author.Name("span")} {{{name}.Length}}\"");
    }

    private static void Give(Callable method, Author author)
    {
        List<Variable> given = [];
        var arguments = method.Parameters.Select(parameter =>
        {
            if (parameter.Passing is Passing.Ref)
                return "ref " + author.Choose.Of(author.Scope.Writable(parameter.Type).Where(variable => variable.IsPlace).ToList()).Name;
            if (parameter.Passing is not Passing.Out)
                return author.Value(parameter.Type);
            given.Add(new Variable(author.Name("given"), parameter.Type));
            return $"out var {given[^1].Name}";
        }).ToList();
        author.Code.Line($"{method.Name}({string.Join(", ", arguments)});");
        given.ForEach(author.Scope.Add);
    }
}
