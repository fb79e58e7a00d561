namespace Condyle.Analyzers.Tests.Generated;

/// <summary>LINQ by query syntax.</summary>
internal sealed class QuerySentences : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (author.IsInQuery)
            return;
        if (wanted is CollectionType { Family: "IEnumerable", Item: var item })
            offers.Add(8, () => Query(item, author));
        if (wanted is ArrayType { Item: not ArrayType and var cell })
            offers.Add(1, () => $"({Query(cell, author)}).ToArray()");
        if (wanted is CollectionType { Family: "List", Item: var kept })
            offers.Add(3, () => $"({Query(kept, author)}).ToList()");
    }

    private static string Query(CodeType item, Author author) => author.InQuery(() =>
    {
        var choose = author.Choose;
        // What is joined can't use the names of the query.
        var joined = choose.Chance(30) ? Items.Sequence(NumberType.Int, author) : null;
        var text = "(" + From(author);
        if (choose.Chance(30))
            text += " " + From(author);
        if (choose.Chance(40))
            text += " " + Let(author);
        if (choose.Chance(50))
            text += $" where {author.Moving(AnyType.Truth)}";
        if (choose.Chance(30))
            text += $" orderby {author.Moving(NumberType.Int)}{choose.Any("", " descending", $", {author.Moving(NumberType.Char)}")}";
        if (joined is not null)
            text += Joined(joined, author);
        return choose.Chance(35) ? text + Grouped(item, author) : text + $" select {author.Value(item)})";
    });

    private static string From(Author author)
    {
        var type = AnyType.Plain(author);
        var (name, items) = (author.Name("from"), Items.Sequence(type, author));
        author.Scope.Add(new Variable(name, type, CanWrite: false, IsPlace: false));
        return $"from {name} in {items}";
    }

    private static string Let(Author author)
    {
        var type = AnyType.Plain(author);
        var (name, value) = (author.Name("let"), author.Value(type));
        author.Scope.Add(new Variable(name, type, CanWrite: false, IsPlace: false));
        return $"let {name} = {value}";
    }

    private static string Joined(string items, Author author)
    {
        var name = author.Name("joined");
        var key = author.Moving(NumberType.Int);
        author.Scope.Add(new Variable(name, NumberType.Int, CanWrite: false, IsPlace: false));
        return $" join {name} in {items} on {key} equals {name}";
    }

    private static string Grouped(CodeType item, Author author)
    {
        var key = AnyType.Plain(author);
        var (group, first) = (author.Name("group"), author.Name("first"));
        var text = $" group {author.Value(item)} by {author.Value(key)} into {group} where {group}.Count() > {author.Choose.Below(2)} let {first} = {group}.First() select {first})";
        return text;
    }
}
