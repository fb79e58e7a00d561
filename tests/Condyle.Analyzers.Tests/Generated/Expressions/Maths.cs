namespace Condyle.Analyzers.Tests.Generated;

/// <summary><c>Math</c> and <c>MathF</c>, as far as they are exact everywhere.</summary>
internal sealed class Maths : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (wanted is not NumberType number || number == NumberType.Char)
            return;
        var choose = author.Choose;
        string One() => author.Moving(number);
        offers.Add(1, () => $"Math.{choose.Any("Min", "Max")}({One()}, {author.Value(number)})");
        offers.Add(1, () => $"Math.Clamp({One()}, {One()}, {One()})");
        if (number.IsSigned)
            offers.Add(1, () => $"Math.Abs({One()})");
        if (number == NumberType.Int)
        {
            offers.Add(1, () => $"Math.Sign({author.Moving(choose.Any(NumberType.Int, NumberType.Float, NumberType.Decimal, NumberType.SByte))})");
            offers.Add(1, () => $"Math.DivRem({One()}, {One()}).{choose.Any("Quotient", "Remainder")}");
            offers.Add(1, () => choose.Any("int.MaxValue", "((int)byte.MaxValue)", "sizeof(long)", "((int)short.MinValue)"));
        }

        if (number == NumberType.Double || number == NumberType.Decimal)
        {
            offers.Add(2, () => $"Math.{choose.Any("Floor", "Ceiling", "Truncate", "Round")}({One()})");
            offers.Add(1, () => $"Math.Round({One()}, {choose.Below(3)}{choose.Any("", ", MidpointRounding.AwayFromZero")})");
        }

        if (number == NumberType.Double)
            offers.Add(1, () => $"Math.Sqrt({One()})");
        if (number == NumberType.Float)
            offers.Add(2, () => $"MathF.{choose.Any("Floor", "Ceiling", "Truncate", "Round", "Sqrt", "Abs")}({One()})");
    }
}
