namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Text that is put together: interpolated, concatenated, joined, formatted, built.</summary>
internal sealed class Texts : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (wanted is not TextType)
            return;
        var choose = author.Choose;
        offers.Add(8, () => Interpolated(author));
        offers.Add(4, () => $"({author.Moving(wanted)} + {Piece(author)})");
        offers.Add(1, () => $"({Piece(author)} + {author.Moving(wanted)} + {Piece(author)})");
        offers.Add(1, () => $"string.Concat({Piece(author)}, {author.Moving(wanted)}, {Piece(author)})");
        offers.Add(1, () => $"string.Join({choose.Any("\"_\"", "'_'", "\"\"")}, {author.Moving(new ArrayType(AnyType.Text))})");
        offers.Add(1, () => $"string.Join(\"-\", {Items.Sequence(AnyType.Plain(author), author)})");
        offers.Add(1, () => $"string.Format(\"{{0}}_{{1}}{{{{x}}}}{{0}}\", {Piece(author)}, {Piece(author)})");
        offers.Add(1, () => $"string.Format(\"{{0:D2}}|{{1,4}}\", {author.Value(NumberType.Int)}, {Piece(author)})");
        offers.Add(2, () => Built(author));
        offers.Add(1, () => $"new string({author.Value(NumberType.Char)}, {choose.Below(5)})");
        offers.Add(1, () => Named(author));
        offers.Add(2, () => $"Trace.Which({author.Value(choose.Any(AnyType.Plain(author), AnyType.Object, choose.Of(NumberType.All), new ArrayType(AnyType.Plain(author))))})");
    }

    /// <summary>What can stand in text as it is.</summary>
    private static string Piece(Author author)
    {
        var type = AnyType.Plain(author);
        return type is TextType && author.Choose.Chance(20) ? author.Value(new MaybeType(type)) : author.Value(type);
    }

    private static string Interpolated(Author author)
    {
        var choose = author.Choose;
        var text = "";
        for (var i = choose.Between(1, 3); i > 0; i--)
            text += choose.Any("", "n", "_", "{{", "é") + Hole(author);
        return $"$\"{text}{choose.Any("", "_end")}\"";
    }

    private static string Hole(Author author)
    {
        var choose = author.Choose;
        return choose.Below(8) switch
        {
            0 => $"{{{author.Moving(choose.Of(NumberType.Whole.Where(number => number != NumberType.Char).ToList()))}:{choose.Any("D3", "X", "x4", "D", "G")}}}",
            1 => $"{{{Piece(author)},{choose.Any("5", "-5", "1", "-3")}}}",
            2 when Some(author) is { } known => $"{{{Shown.Text(known.Type, known.Name, author)}}}",
            _ => $"{{{Piece(author)}}}",
        };
    }

    private static Variable? Some(Author author)
    {
        var all = author.Scope.All.Where(variable => variable.Type is not (FunctionType or HandleType { Name: "RigDraft" })).ToList();
        return all.Count == 0 ? null : author.Choose.Of(all);
    }

    private static string Built(Author author)
    {
        var text = author.Choose.Any("new System.Text.StringBuilder()", $"new System.Text.StringBuilder({author.Value(AnyType.Text)})");
        for (var i = author.Choose.Between(1, 3); i > 0; i--)
        {
            text += author.Choose.Below(6) switch
            {
                0 => $".Append({author.Value(NumberType.Char)}, {author.Choose.Below(4)})",
                1 => $".Insert(0, {Piece(author)})",
                2 => $".AppendJoin(\"+\", {author.Moving(new ArrayType(AnyType.Text))})",
                3 => ".AppendFormat(\"<{0}>\", " + Piece(author) + ")",
                _ => $".Append({Piece(author)})",
            };
        }

        return text + ".ToString()";
    }

    private static string Named(Author author) => author.Program.Types is { Count: > 0 } types && author.Choose.Of(types) is { Members: [var member, ..] } type
        ? $"nameof({type}.{member.Name})"
        : "nameof(Trace.Lines)";
}
