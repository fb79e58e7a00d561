namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Comparing and equality, and what is made of truths.</summary>
internal sealed class Comparisons : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (wanted is not TruthType truth)
            return;
        var choose = author.Choose;
        offers.Add(6, () => Compare(author));
        offers.Add(3, () => Equal(author));
        offers.Add(3, () => $"({author.Moving(truth)} {choose.Any("&&", "||", "&", "|", "^")} {author.Value(truth)})");
        offers.Add(1, () => $"(!{author.Moving(truth)})");
        if (author.Program.Enums.FirstOrDefault(kind => kind.IsFlags) is { } flags)
            offers.Add(1, () => $"{author.Moving(flags)}.HasFlag({author.Value(flags)})");
    }

    private static string Compare(Author author)
    {
        var choose = author.Choose;
        var sign = choose.Any("<", "<=", ">", ">=", "==", "!=");
        var (left, right) = (choose.Of(NumberType.All), choose.Of(NumberType.All));
        if (choose.Chance(60) || NumberType.Together(left, right) is null)
            right = left;
        return $"({author.Moving(left)} {sign} {author.Moving(right)})";
    }

    private static string Equal(Author author)
    {
        var choose = author.Choose;
        var plain = AnyType.Plain(author);
        CodeType type = choose.Below(6) switch
        {
            0 => new TupleType(plain, AnyType.Plain(author)),
            1 => new MaybeType(plain),
            2 when author.Program.Types.Where(declared => declared.IsRecord).ToList() is { Count: > 0 } records => choose.Of(records),
            3 when author.Scope.Of(AnyType.Control).Count > 0 => AnyType.Control,
            _ => plain,
        };
        return choose.Chance(75)
            ? $"({author.Moving(type)} {choose.Any("==", "!=")} {author.Value(type)})"
            : choose.Chance(50) ? $"{author.Moving(type)}.Equals({author.Value(type)})" : $"object.Equals({author.Moving(type)}, {author.Value(type)})";
    }
}
