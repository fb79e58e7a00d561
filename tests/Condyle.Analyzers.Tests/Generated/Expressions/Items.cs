namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What arrays and collections hold, and what they can be asked.</summary>
internal sealed class Items : IExpressions
{
    private static readonly string[] Families = ["List", "HashSet", "Queue", "Stack", "ImmutableArray", "ImmutableList", "IEnumerable", "IReadOnlyList"];

    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        var held = author.Scope.All.Where(variable => variable.Type is ArrayType or GridType or CollectionType or MapType).ToList();
        foreach (var variable in author.Choose.Some(held, 4))
            Of(variable.Type, variable.Name, wanted, author, offers);
        if (wanted is not (NumberType or TextType or TruthType or EnumType))
            return;
        CodeType fresh = author.Choose.Below(6) switch
        {
            0 => new ArrayType(wanted),
            1 => new GridType(wanted),
            2 => new MapType(author.Choose.Any("Dictionary", "ImmutableDictionary"), AnyType.Plain(author), wanted),
            3 => new ArrayType(new ArrayType(wanted)),
            _ => new CollectionType(author.Choose.Of(AnyType.ItemFamilies), wanted),
        };
        var made = new Offers();
        Of(fresh, $"Trace.Same<{fresh}>({author.Value(fresh)})", wanted, author, made);
        if (!made.AreNone)
            offers.Add(2, () => made.Take(author.Choose));
    }

    /// <summary>Something of which the items can be gone through.</summary>
    public static string Sequence(CodeType item, Author author)
    {
        var choose = author.Choose;
        var known = author.Scope.All.Where(variable =>
            (variable.Type is ArrayType { Item: var one } && one.Equals(item)) || (variable.Type is CollectionType { Item: var other } && other.Equals(item))
            || (variable.Type is DeclaredType { Holds: { } own } && own.Equals(item))).ToList();
        if (known.Count > 0 && choose.Chance(75))
            return choose.Of(known).Name;
        if (item is NumberType { Name: "int" } && choose.Chance(30))
            return $"Enumerable.Range({choose.Between(-1, 3)}, {choose.Between(0, 4)})";
        if (item is EnumType && choose.Chance(25))
            return $"Enum.GetValues<{item}>()";
        return choose.Chance(50) ? author.Moving(new CollectionType(choose.Of(Families), item)) : author.Moving(new ArrayType(item));
    }

    private static void Of(CodeType type, string written, CodeType wanted, Author author, Offers offers)
    {
        var choose = author.Choose;
        string At() => choose.Chance(85) ? choose.Any("0", "0", "0", "1", "1", "^1", "^1", "Trace.Same<Index>(^1)") : author.Value(NumberType.Int);
        switch (type)
        {
            case ArrayType { Item: ArrayType { Item: var item } } when item.Equals(wanted):
                offers.Add(2, () => $"{written}[{choose.Below(2)}][{At()}]");
                break;
            case ArrayType { Item: var item } when item.Equals(wanted):
                offers.Add(3, () => $"{written}[{At()}]");
                break;
            case GridType { Item: var item } when item.Equals(wanted):
                offers.Add(3, () => $"{written}[{choose.Below(2)}, {choose.Any("0", "1", choose.Chance(80) ? "1" : author.Value(NumberType.Int))}]");
                break;
            case MapType map when map.Value.Equals(wanted):
                offers.Add(3, () => Looked(written, map, author));
                break;
            case CollectionType { Item: var item } collection when item.Equals(wanted):
                if (collection.Family is "List" or "IReadOnlyList" or "ImmutableArray" or "ImmutableList")
                    offers.Add(3, () => $"{written}[{(collection.Family == "List" ? At() : choose.Any("0", "0", choose.Chance(80) ? "1" : author.Value(NumberType.Int)))}]");
                if (collection.Family is "Queue" or "Stack")
                    offers.Add(3, () => $"{written}.{choose.Any("Peek", collection.Family == "Queue" ? "Dequeue" : "Pop")}()");
                break;
        }

        if (wanted is NumberType { Name: "int" })
            Counted(type, written, author, offers);
        if (wanted is TruthType)
            Asked(type, written, author, offers);
    }

    private static void Counted(CodeType type, string written, Author author, Offers offers)
    {
        var choose = author.Choose;
        switch (type)
        {
            case ArrayType or CollectionType { Family: "ImmutableArray" }:
                offers.Add(1, () => written + ".Length");
                break;
            case GridType:
                offers.Add(1, () => written + choose.Any(".Length", ".GetLength(0)", ".GetLength(1)", ".Rank", ".GetUpperBound(0)"));
                break;
            case CollectionType { Family: "IEnumerable" }:
                offers.Add(1, () => written + ".Count()");
                break;
            case CollectionType or MapType:
                offers.Add(1, () => written + ".Count");
                break;
        }

        if (type is CollectionType { Family: "List" or "ImmutableList", Item: var item })
            offers.Add(1, () => $"{written}.{choose.Any("IndexOf", "LastIndexOf")}({author.Value(item)})");
        if (type is CollectionType { Family: "List", Item: var found })
            offers.Add(1, () => $"{written}.FindIndex({author.Equals(found)})");
    }

    private static void Asked(CodeType type, string written, Author author, Offers offers)
    {
        var choose = author.Choose;
        switch (type)
        {
            case CollectionType { Item: var item } collection:
                offers.Add(1, () => $"{written}.Contains({author.Value(item)})");
                if (collection.Family == "HashSet")
                    offers.Add(1, () => choose.Any($"{written}.Add({author.Value(item)})", $"{written}.{choose.Any("SetEquals", "Overlaps", "IsSubsetOf", "IsSupersetOf")}({Sequence(item, author)})"));
                if (collection.Family == "List")
                    offers.Add(1, () => $"{written}.{choose.Any("Exists", "TrueForAll")}({author.Equals(item)})");
                break;
            case ArrayType { Item: not ArrayType and var item }:
                offers.Add(1, () => $"(Array.IndexOf({written}, {author.Value(item)}) >= 0)");
                break;
            case MapType map:
                offers.Add(1, () => $"{written}.ContainsKey({author.Value(map.Key)})");
                break;
        }
    }

    private static string Looked(string written, MapType map, Author author)
    {
        var key = author.Value(map.Key);
        var found = author.Name("got");
        return author.Choose.Below(3) switch
        {
            0 => $"{written}[{key}]",
            1 => $"({written}.TryGetValue({key}, out var {found}) ? {found} : {author.Value(map.Value)})",
            _ => $"{written}.GetValueOrDefault({key}, {author.Value(map.Value)})",
        };
    }
}
