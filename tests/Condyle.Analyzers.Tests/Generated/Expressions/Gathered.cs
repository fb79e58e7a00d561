namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Collections that are made of others: collection expressions with spreads, ranges, copies.</summary>
internal sealed class Gathered : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        var choose = author.Choose;
        switch (wanted)
        {
            case ArrayType { Item: not ArrayType } array:
                offers.Add(4, () => $"(({array})[{Parts(array.Item, author)}])");
                offers.Add(2, () => $"{author.Moving(array)}[{Range(author)}]");
                offers.Add(1, () => $"(new {array.Item}[{choose.Below(4)}])");
                offers.Add(1, () => $"{Items.Sequence(array.Item, author)}.ToArray()");
                break;
            case CollectionType { Family: "Queue" or "Stack", Item: var item }:
                offers.Add(3, () => $"new {wanted}({Items.Sequence(item, author)})");
                break;
            case CollectionType { Item: var item } collection:
                offers.Add(5, () => $"(({wanted})[{Parts(item, author)}])");
                if (collection.Family == "List")
                {
                    offers.Add(1, () => $"{Items.Sequence(item, author)}.ToList()");
                    offers.Add(1, () => $"{author.Moving(wanted)}.GetRange(0, {choose.Below(3)})");
                }

                if (collection.Family is "List" or "HashSet")
                    offers.Add(1, () => $"new {wanted}({Items.Sequence(item, author)})");
                if (collection.Family is "ImmutableList" or "ImmutableArray")
                {
                    offers.Add(2, () => $"{author.Moving(wanted)}.{choose.Any("Add", "Remove")}({author.Value(item)})");
                    offers.Add(1, () => $"{Items.Sequence(item, author)}.To{collection.Family}()");
                }

                break;
            case MapType { Family: "Dictionary" } map:
                offers.Add(2, () => $"new {map}({author.Moving(map)})");
                break;
            case MapType { Family: "ImmutableDictionary" } map:
                offers.Add(2, () => $"{author.Moving(map)}.{choose.Any($"SetItem({author.Value(map.Key)}, {author.Value(map.Value)})", $"Remove({author.Value(map.Key)})")}");
                break;
        }
    }

    private static string Parts(CodeType item, Author author) => string.Join(", ", Enumerable.Range(0, author.Choose.Below(4)).Select(_ =>
        author.Choose.Chance(30) ? $".. {Items.Sequence(item, author)}{author.Choose.Any("", ".Take(3)")}" : author.Value(item)));

    private static string Range(Author author) => author.Choose.Any("1..", "..1", "..^1", "^1..", "..", "Trace.Same<Range>(1..)", $"{author.Choose.Below(2)}..{author.Choose.Between(0, 3)}");
}
