namespace Condyle.Analyzers.Tests.Generated;

/// <summary>LINQ by methods, lazy and not; what the lambdas note shows in which order they run.</summary>
internal sealed class Queries : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (author.IsInQuery)
            return;
        var choose = author.Choose;
        if (wanted is CollectionType { Family: "IEnumerable", Item: var item })
        {
            offers.Add(8, () => Query(item, author));
            return;
        }

        if (wanted is CollectionType { Family: "List" or "HashSet" or "ImmutableArray", Item: var kept } collection)
            offers.Add(2, () => $"{Query(kept, author)}.To{collection.Family}()");
        if (wanted is ArrayType { Item: not ArrayType and var cell })
            offers.Add(2, () => $"{Query(cell, author)}.ToArray()");
        if (wanted is NumberType or TextType or TruthType or EnumType)
        {
            offers.Add(2, () => $"{Query(wanted, author)}.{choose.Any("First", "Last", "FirstOrDefault", "LastOrDefault", "Single", "SingleOrDefault")}({choose.Any("", Where(wanted, author))})"
                + (wanted is TextType ? "!" : ""));
            offers.Add(1, () => $"{Query(wanted, author)}.{choose.Any("ElementAt", "ElementAtOrDefault")}({choose.Below(3)})" + (wanted is TextType ? "!" : ""));
            offers.Add(1, () => $"{Query(wanted, author)}.DefaultIfEmpty({author.Value(wanted)}).First()");
            offers.Add(1, () => $"{Query(wanted, author)}.{choose.Any("MinBy", "MaxBy")}({To(wanted, NumberType.Int, author)})" + (wanted is TextType ? "!" : ""));
            offers.Add(1, () => Folded(wanted, author));
        }

        if (wanted is NumberType number && (number == NumberType.Int || number == NumberType.Long || number == NumberType.Float || number == NumberType.Double || number == NumberType.Decimal))
        {
            offers.Add(1, () => $"{Query(number, author)}.{choose.Any("Sum", "Min", "Max")}()");
            var from = AnyType.Plain(author);
            offers.Add(1, () => $"{Query(from, author)}.{choose.Any("Sum", "Min", "Max")}({To(from, number, author)})");
        }

        if (wanted is NumberType { Name: "int" })
        {
            var from = AnyType.Plain(author);
            offers.Add(2, () => $"{Query(from, author)}.Count({choose.Any("", Where(from, author))})");
        }

        if (wanted is TruthType)
        {
            var from = AnyType.Plain(author);
            offers.Add(2, () => $"{Query(from, author)}.{choose.Any("Any", "All")}({Where(from, author)})");
            offers.Add(1, () => $"{Query(from, author)}.SequenceEqual({Items.Sequence(from, author)})");
            offers.Add(1, () => $"{Query(from, author)}.Contains({author.Value(from)})");
        }

        if (wanted is MapType { Family: "Dictionary" } map)
        {
            var each = author.Name("key");
            offers.Add(2, () => $"{Items.Sequence(map.Key, author)}.Distinct().ToDictionary({each} => {each}, {To(map.Key, map.Value, author)})");
        }
    }

    /// <summary>A query that gives items of a type.</summary>
    public static string Query(CodeType item, Author author)
    {
        var from = author.Choose.Chance(60) ? item : AnyType.Plain(author);
        var text = Items.Sequence(from, author);
        for (var steps = author.Choose.Below(3); steps > 0; steps--)
            text += Step(from, author);
        if (!from.Equals(item))
            text += author.Choose.Chance(30) ? $".SelectMany({Many(from, item, author)})" : $".Select({To(from, item, author)})";
        return text;
    }

    /// <summary>A lambda from an item to a value.</summary>
    public static string To(CodeType from, CodeType to, Author author, bool withIndex = false) => author.InQuery(() =>
    {
        var name = author.Name("item");
        author.Scope.Add(new Variable(name, from));
        if (!withIndex)
            return author.Choose.Chance(10) ? $"{name} => {author.Body(to, 1)}" : $"{name} => {author.Value(to)}";
        var index = author.Name("index");
        author.Scope.Add(new Variable(index, NumberType.Int));
        return $"({name}, {index}) => {author.Value(to)}";
    });

    private static string Where(CodeType from, Author author) => author.InQuery(() =>
    {
        var name = author.Name("item");
        author.Scope.Add(new Variable(name, from));
        var test = author.Moving(AnyType.Truth);
        return author.Choose.Chance(30) ? $"{name} => Trace.Seen({test}, \"{author.Name("where")}\")" : $"{name} => {test}";
    });

    private static string Step(CodeType item, Author author)
    {
        var choose = author.Choose;
        return choose.Below(20) switch
        {
            0 => $".Where({Where(item, author)})",
            1 => $".Select({To(item, item, author)})",
            2 => $".Select({To(item, item, author, withIndex: true)})",
            3 => $".{choose.Any("Take", "Skip", "TakeLast", "SkipLast")}({choose.Below(3)})",
            4 => $".{choose.Any("TakeWhile", "SkipWhile")}({Where(item, author)})",
            5 => $".Concat({Items.Sequence(item, author)})",
            6 => $".{choose.Any("Append", "Prepend")}({author.Value(item)})",
            7 => ".AsEnumerable().Reverse()",
            8 => ".Distinct()",
            9 => $".{choose.Any("OrderBy", "OrderByDescending")}({To(item, NumberType.Int, author)})",
            10 when choose.Chance(50) => $".OrderBy({To(item, AnyType.Text, author)}, StringComparer.Ordinal)",
            10 => $".OrderBy({To(item, NumberType.Int, author)}).{choose.Any("ThenBy", "ThenByDescending")}({To(item, NumberType.Char, author)})",
            11 => $".{choose.Any("Union", "Intersect", "Except")}({Items.Sequence(item, author)})",
            12 => $".Zip({Items.Sequence(NumberType.Int, author)}, (left, right) => left)",
            13 => $".DistinctBy({To(item, AnyType.Plain(author), author)})",
            14 => $".GroupBy({To(item, AnyType.Plain(author), author)}).Select(bunch => bunch.{choose.Any("First", "Last")}())",
            15 => $".Chunk({choose.Between(1, 2)}).Select(chunk => chunk[0])",
            16 => $".SelectMany({Many(item, item, author)})",
            17 => $".ToLookup({To(item, NumberType.Int, author)}).SelectMany(bunch => bunch)",
            18 => $".Index().Where(pair => pair.Index != {choose.Below(2)}).Select(pair => pair.Item)",
            _ => $".Where({Where(item, author)})",
        };
    }

    private static string Many(CodeType from, CodeType item, Author author) => author.InQuery(() =>
    {
        var name = author.Name("item");
        author.Scope.Add(new Variable(name, from));
        return $"{name} => new {item}[] {{ {author.Value(item)}, {author.Value(item)} }}";
    });

    private static string Folded(CodeType wanted, Author author)
    {
        var from = AnyType.Plain(author);
        return author.InQuery(() =>
        {
            var (sum, each) = (author.Name("sum"), author.Name("each"));
            var (items, seed) = (Query(from, author), author.Value(wanted));
            author.Scope.Add(new Variable(sum, wanted));
            author.Scope.Add(new Variable(each, from));
            return $"{items}.Aggregate({seed}, ({sum}, {each}) => {author.Stored(wanted)})";
        });
    }
}
