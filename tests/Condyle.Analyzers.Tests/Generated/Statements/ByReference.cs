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
        switch (choose.Below(7))
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
            case 4 when !author.Situation.IsHandler:
                Stack(name, author);
                break;
            case 5 when arrays.Count > 0:
                var walked = choose.Of(arrays);
                author.Code.Line($"foreach (ref var {name} in {walked.Name}.AsSpan())");
                author.Code.Line($"    {name} = {author.Stored(((ArrayType)walked.Type).Item)};");
                break;
            case 6 when places.Count > 0:
                var (one, other) = (choose.Of(places), choose.Of(places));
                author.Code.Line($"ref var {name} = ref ({author.Moving(AnyType.Truth)} ? ref {one.Name} : ref {(other.Type.Equals(one.Type) ? other : one).Name});");
                author.Scope.Add(new Variable(name, one.Type, CanCapture: false));
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

    private static void Stack(string name, Author author)
    {
        var item = author.Choose.Any<CodeType>(NumberType.Int, NumberType.Byte, NumberType.Char, AnyType.Truth);
        author.Code.Line($"Span<{item}> {name} = stackalloc {item}{author.Choose.Any("[2]", $"[] {{ {author.Value(item)}, {author.Value(item)} }}")};");
        author.Code.Line($"{name}[{author.Choose.Any("0", "1", "^1")}] = {author.Value(item)};");
        Observations.Say(author, $"$\"{{{name}[0]}}{{{name}[1..][0]}}\"");
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
