namespace Condyle.Analyzers.Tests.Generated;

/// <summary><c>??</c>, <c>?.</c>, <c>?[]</c>, <c>!</c>, and calculations with values that may be null.</summary>
internal sealed class NullOperators : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        var choose = author.Choose;
        if (wanted is TextType or TruthType or NumberType or EnumType)
            offers.Add(3, () => $"({author.Moving(new MaybeType(wanted))} ?? {author.Value(wanted)})");
        if (wanted is TextType or TruthType or NumberType or EnumType)
            offers.Add(1, () => $"({author.Moving(new MaybeType(wanted))} ?? throw new Slip(\"{author.Name("none")}\"))");
        if (wanted is NumberType { Name: "int" })
        {
            offers.Add(1, () => $"({author.Moving(new MaybeType(AnyType.Text))}?.Length ?? {author.Value(wanted)})");
            offers.Add(1, () => $"{author.Moving(new MaybeType(wanted))}.GetValueOrDefault({author.Value(wanted)})");
        }

        if (wanted is TruthType)
        {
            offers.Add(1, () => $"{author.Moving(new MaybeType(AnyType.Whole(choose)))}.HasValue");
            offers.Add(1, () => $"({author.Moving(new MaybeType(NumberType.Int))} {choose.Any("<", ">", "==", "!=")} {author.Value(new MaybeType(NumberType.Int))})");
            offers.Add(1, () => $"(({author.Moving(new MaybeType(AnyType.Truth))} {choose.Any("&", "|")} {author.Value(new MaybeType(AnyType.Truth))}) == true)");
        }

        if (wanted is NumberType or EnumType)
            offers.Add(1, () => $"{author.Moving(new MaybeType(wanted))}{choose.Any("!.Value", ".GetValueOrDefault()")}");
        if (wanted is MaybeType { Of: NumberType number } lifted)
        {
            if (number == NumberType.Int || number == NumberType.Long)
                offers.Add(3, () => $"{choose.Any("", "checked")}({author.Moving(lifted)} {choose.Any("+", "-", "*")} {author.Value(lifted)})");
            offers.Add(1, () => $"(({wanted}){author.Value(number)})");
        }

        if (wanted is MaybeType { Of: NumberType { Name: "int" } })
            offers.Add(2, () => $"{author.Moving(new MaybeType(AnyType.Text))}?.Length");
        if (wanted is MaybeType { Of: NumberType { Name: "char" } })
            offers.Add(1, () => $"{author.Moving(new MaybeType(AnyType.Text))}?[0]");
        if (wanted is MaybeType { Of: TextType })
        {
            offers.Add(2, () => $"{author.Moving(wanted)}?.ToUpperInvariant()");
            offers.Add(1, () => $"{author.Moving(new MaybeType(NumberType.Int))}?.ToString()");
        }

        if (wanted is TextType or NumberType { Name: "int" } && author.Scope.Writable(new MaybeType(wanted)) is { Count: > 0 } writable)
            offers.Add(1, () => $"({choose.Of(writable).Name} ??= {author.Stored(wanted)})");
    }
}
