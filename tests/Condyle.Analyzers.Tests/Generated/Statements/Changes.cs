namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Changes to what arrays and collections hold.</summary>
internal sealed class Changes : IStatements
{
    public int Weight => 7;

    public bool Fits(Author author) => Changed(author).Count > 0;

    public void Write(Author author)
    {
        var known = author.Choose.Of(Changed(author));
        author.Code.Line(Change(known.Name, known.Type, author) + ";");
    }

    private static List<Variable> Changed(Author author) =>
        [.. author.Scope.All.Where(variable => variable.Type is ArrayType or GridType or CollectionType { Family: "List" or "HashSet" or "Queue" or "Stack" } or MapType { Family: "Dictionary" })];

    private static string Change(string name, CodeType type, Author author)
    {
        var choose = author.Choose;
        string At() => choose.Chance(85) ? choose.Any("0", "0", "0", "1", "1", "^1", "^1", "Trace.Same<Index>(^1)") : author.Value(NumberType.Int);
        return type switch
        {
            ArrayType { Item: NumberType number } when choose.Chance(40) && number != NumberType.Char => $"{name}[{At()}] {choose.Any("+=", "-=", "*=")} {author.Value(number)}",
            ArrayType array when choose.Chance(15) => choose.Any($"Array.Reverse({name})", $"{name}.CopyTo({name}, 0)", $"Array.Fill({name}, {author.Stored(array.Item)})"),
            ArrayType array when choose.Chance(10) => $"Trace.At({name}, {choose.Below(2)}) = {author.Stored(array.Item)}",
            ArrayType array => $"{name}[{At()}] = {author.Stored(array.Item)}",
            GridType grid => $"{name}[{choose.Below(2)}, {choose.Below(2)}] = {author.Stored(grid.Item)}",
            CollectionType { Family: "List", Item: var item } => List(name, item, author),
            CollectionType { Family: "HashSet", Item: var item } => Set(name, item, author),
            CollectionType { Family: "Queue", Item: var item } => choose.Any($"{name}.Enqueue({author.Stored(item)})", $"{name}.Enqueue({author.Stored(item)})", $"{name}.TryDequeue(out _)", $"{name}.Dequeue()"),
            CollectionType { Family: "Stack", Item: var item } => choose.Any($"{name}.Push({author.Stored(item)})", $"{name}.Push({author.Stored(item)})", $"{name}.TryPop(out _)", $"{name}.Pop()"),
            _ => Map(name, (MapType)type, author),
        };
    }

    private static string List(string name, CodeType item, Author author)
    {
        var choose = author.Choose;
        return choose.Below(12) switch
        {
            < 4 => $"{name}.Add({author.Stored(item)})",
            4 => $"{name}.Insert({choose.Below(2)}, {author.Stored(item)})",
            5 => $"{name}.RemoveAt({choose.Below(2)})",
            6 => $"{name}.Remove({author.Value(item)})",
            7 => choose.Any($"{name}.Reverse()", $"{name}.Clear()", $"{name}.RemoveAll({author.Equals(item)})"),
            8 => $"{name}.AddRange({Items.Sequence(item, author)}.Take(2).ToArray())",
            9 when item is NumberType { IsReal: false } or DeclaredType { IsOrdered: true } => $"{name}.Sort()",
            10 => $"{name}.ForEach(one => Trace.Note({Shown.Text(item, "one", author)}))",
            _ => $"{name}[{choose.Any("0", "^1", "1")}] = {author.Stored(item)}",
        };
    }

    private static string Set(string name, CodeType item, Author author) => author.Choose.Below(6) switch
    {
        < 3 => $"{name}.Add({author.Stored(item)})",
        3 => $"{name}.Remove({author.Value(item)})",
        4 => $"{name}.{author.Choose.Any("UnionWith", "ExceptWith", "IntersectWith", "SymmetricExceptWith")}({Items.Sequence(item, author)}.Take(2).ToArray())",
        _ => $"{name}.RemoveWhere({author.Equals(item)})",
    };

    private static string Map(string name, MapType map, Author author) => author.Choose.Below(6) switch
    {
        < 2 => $"{name}[{author.Value(map.Key)}] = {author.Stored(map.Value)}",
        2 => $"{name}.TryAdd({author.Value(map.Key)}, {author.Stored(map.Value)})",
        3 => $"{name}.Remove({author.Value(map.Key)})",
        4 when map.Value is NumberType { Name: "int" } => $"{name}[{author.Value(map.Key)}] += {author.Value(map.Value)}",
        _ => $"{name}.Add({author.Value(map.Key)}, {author.Stored(map.Value)})",
    };
}
