namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Casts between primitive types, enums, <c>object</c>, and from types of the program's.</summary>
internal sealed class Conversions : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        var choose = author.Choose;
        switch (wanted)
        {
            case NumberType number:
                offers.Add(3, () => Cast(choose.Of(NumberType.All), number, author));
                offers.Add(1, () => $"(({number})(object){author.Value(number)})");
                if (!number.IsReal && author.Program.Enums.Count > 0)
                    offers.Add(1, () => $"(({number}){author.Moving(choose.Of(author.Program.Enums))})");
                break;
            case DeclaredType { IsOrdered: true }:
                offers.Add(1, () => $"(({wanted}){author.Moving(NumberType.Int)})");
                break;
            case EnumType kind:
                offers.Add(1, () => $"(({kind}){author.Moving(kind.Under)})");
                offers.Add(1, () => $"(({kind})(object){author.Value(kind)})");
                break;
            case ObjectType:
                offers.Add(4, () => $"((object){author.Value(AnyType.Plain(author))})");
                offers.Add(1, () => $"((object){author.Value(AnyType.Item(author))})");
                break;
            case TextType:
                offers.Add(1, () => $"((string)(object){author.Value(wanted)})");
                offers.Add(1, () => $"(({author.Value(AnyType.Object)} as string) ?? {author.Value(wanted)})");
                break;
            case CollectionType { Family: "IEnumerable", Item: var item }:
                offers.Add(3, () => $"(({wanted}){author.Value(new CollectionType(choose.Any("List", "HashSet", "Queue", "IReadOnlyList"), item))})");
                break;
        }
    }

    private static string Cast(NumberType from, NumberType to, Author author)
    {
        var check = from.IsReal && !to.IsReal && from != NumberType.Decimal ? "checked" : author.Choose.Any("", "checked", "unchecked");
        return $"{check}(({to}){author.Moving(from)})";
    }
}
