namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What strings and characters can be asked and made into.</summary>
internal sealed class TextCalls : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        var choose = author.Choose;
        string Text() => author.Moving(AnyType.Text);
        string Char() => author.Value(NumberType.Char);
        string Whole() => choose.Chance(70) ? choose.Between(0, 4).ToString() : author.Value(NumberType.Int);
        switch (wanted)
        {
            case TextType:
                offers.Add(2, () => Text() + choose.Any(".Trim()", ".TrimStart('a')", ".TrimEnd('_')", ".ToUpperInvariant()", ".ToLowerInvariant()", ".ToString()"));
                offers.Add(2, () => $"{Text()}.Replace({choose.Any($"\"a\", {author.Value(wanted)}", $"{Char()}, {Char()}", "\"_\", \"\"")})");
                offers.Add(2, () => $"{Text()}{choose.Any("[1..]", "[..1]", "[^2..]", "[..^1]", $"[{choose.Below(2)}..{choose.Between(1, 3)}]")}");
                offers.Add(2, () => $"{Text()}.Substring({choose.Any("1", "0, 2", "2", Whole())})");
                offers.Add(1, () => $"{Text()}.{choose.Any("PadLeft", "PadRight")}({choose.Between(0, 8)}{choose.Any("", ", '.'")})");
                offers.Add(1, () => $"{Text()}.Insert({choose.Below(3)}, {author.Value(wanted)})");
                offers.Add(1, () => $"{Text()}.Remove({choose.Below(3)}{choose.Any("", ", 1")})");
                offers.Add(1, () => $"string.Concat({Text()}.Reverse())");
                offers.Add(1, () => $"{Char()}.ToString()");
                offers.Add(1, () => $"{author.Moving(NumberType.Int)}.ToString({choose.Any("", "\"D4\"", "\"X\"", "CultureInfo.InvariantCulture")})");
                offers.Add(1, () => $"new string({Text()}.Where(letter => letter != 'a').ToArray())");
                break;
            case NumberType { Name: "int" }:
                offers.Add(2, () => $"{Text()}.Length");
                offers.Add(1, () => $"{Text()}.{choose.Any("IndexOf", "LastIndexOf")}({Char()})");
                offers.Add(1, () => $"{Text()}.IndexOf({author.Value(AnyType.Text)}, StringComparison.Ordinal)");
                offers.Add(1, () => $"Math.Sign(string.CompareOrdinal({Text()}, {author.Value(AnyType.Text)}))");
                offers.Add(1, () => $"int.Parse({choose.Any("\"12\"", $"{author.Moving(wanted)}.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture")})");
                break;
            case NumberType { Name: "char" }:
                offers.Add(2, () => $"{Text()}{choose.Any("[0]", "[^1]", $"[{Whole()}]")}");
                offers.Add(1, () => $"char.{choose.Any("ToUpperInvariant", "ToLowerInvariant")}({Char()})");
                break;
            case TruthType:
                offers.Add(2, () => $"{Text()}.{choose.Any("StartsWith", "EndsWith", "Contains")}({Char()})");
                offers.Add(1, () => $"{Text()}.{choose.Any("StartsWith", "EndsWith", "Contains", "Equals")}({author.Value(AnyType.Text)}, StringComparison.Ordinal)");
                offers.Add(1, () => $"string.{choose.Any("IsNullOrEmpty", "IsNullOrWhiteSpace")}({author.Value(new MaybeType(AnyType.Text))})");
                offers.Add(1, () => $"{Text()}.Contains({author.Value(AnyType.Text)})");
                offers.Add(1, () => $"char.{choose.Any("IsDigit", "IsLetter", "IsUpper", "IsWhiteSpace", "IsLetterOrDigit")}({Char()})");
                offers.Add(1, () => $"string.Equals({choose.Any("\"Left\"", "nameof(Trace)")}, {author.Moving(AnyType.Truth)} ? \"LEFT\" : \"trace\", StringComparison.OrdinalIgnoreCase)");
                break;
            case ArrayType { Item: TextType }:
                offers.Add(2, () => $"{Text()}.Split({choose.Any("'_'", "','", "\"a\"", "'_', StringSplitOptions.RemoveEmptyEntries", "new[] { '_', 'a' }")})");
                break;
            case ArrayType { Item: NumberType { Name: "char" } }:
                offers.Add(2, () => $"{Text()}.ToCharArray()");
                break;
        }
    }
}
