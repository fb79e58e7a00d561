namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Calculations with all primitive types, checked and unchecked.</summary>
internal sealed class Arithmetic : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (wanted is EnumType { IsFlags: true } flags)
        {
            offers.Add(3, () => $"({author.Moving(flags)} {author.Choose.Any("|", "&", "^")} {author.Value(flags)})");
            offers.Add(1, () => $"(~{author.Moving(flags)})");
        }

        if (wanted is not NumberType number)
            return;
        offers.Add(8, () => Binary(number, author));
        offers.Add(2, () => Unary(number, author));
        if (!number.IsReal)
            offers.Add(2, () => Shift(number, author));
    }

    private static string Binary(NumberType wanted, Author author)
    {
        var choose = author.Choose;
        var left = choose.Chance(60) ? wanted : choose.Of(NumberType.All);
        var right = choose.Chance(60) ? left : choose.Of(NumberType.All);
        if (NumberType.Together(left, right) is not { } together)
            (left, right, together) = (wanted, wanted, NumberType.Together(wanted, wanted)!);
        var sign = together.IsReal ? choose.Any("+", "-", "*", "/", "%") : choose.Any("+", "-", "*", "/", "%", "&", "|", "^");
        // A constant zero behind a division is an error of the compiler's.
        var operand = sign is "/" or "%" ? author.Moving(right) : author.Value(right);
        return Fitted($"{author.Moving(left)} {sign} {operand}", together, wanted, choose);
    }

    private static string Unary(NumberType wanted, Author author)
    {
        var together = NumberType.Together(wanted, wanted)!;
        var sign = wanted.IsReal ? "-" : author.Choose.Any("-", "~", "+");
        if (sign == "-" && together == NumberType.ULong)
            sign = "~";
        if (sign == "-" && together == NumberType.UInt)
            together = NumberType.Long;
        return Fitted($"{sign}{author.Moving(wanted)}", together, wanted, author.Choose);
    }

    private static string Shift(NumberType wanted, Author author) => Fitted(
        $"{author.Moving(wanted)} {author.Choose.Any("<<", ">>", ">>>")} {author.Value(NumberType.Int)}", NumberType.Together(wanted, wanted)!, wanted, author.Choose);

    /// <summary>A calculation as the type that is wanted, with or without a check whether it fits.</summary>
    private static string Fitted(string calculation, NumberType made, NumberType wanted, Choices choose)
    {
        var check = choose.Any("", "", "checked", "unchecked");
        if (made.IsReal && !wanted.IsReal && made != NumberType.Decimal)
            check = "checked"; // what an unchecked one gives isn't specified
        return made == wanted ? $"{check}({calculation})" : $"{check}(({wanted})({calculation}))";
    }
}
