namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Tuples and their parts.</summary>
internal sealed class Tuples : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (wanted is TupleType tuple)
        {
            offers.Add(6, () => $"({string.Join(", ", tuple.Items.Select(author.Value))})");
            return;
        }

        if (wanted is not (NumberType or TextType or TruthType or EnumType))
            return;
        foreach (var (name, part) in Parts(wanted, author))
            offers.Add(1, () => $"{name}.Item{part}");
        offers.Add(1, () => $"({author.Value(wanted)}, {author.Value(AnyType.Plain(author))}).Item1");
        offers.Add(1, () => $"(First: {author.Value(AnyType.Plain(author))}, Second: {author.Value(wanted)}).Second");
    }

    private static IEnumerable<(string Name, int Part)> Parts(CodeType wanted, Author author) =>
        from variable in author.Scope.All
        where variable.Type is TupleType
        from part in ((TupleType)variable.Type).Items.Select((item, index) => (item, index))
        where part.item.Equals(wanted)
        select (variable.Name, part.index + 1);
}
