namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Patterns of every kind.</summary>
internal sealed class Patterns : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (wanted is TruthType)
            offers.Add(5, () => Test(author));
        // What a pattern names can be used where it matched.
        offers.Add(1, () =>
        {
            var subject = Subject(author);
            var value = author.Moving(subject);
            var pattern = Of(subject, author, out var bound);
            return $"({value} is {pattern} ? {Known()} : {author.Value(wanted)})";

            string Known() => author.Inside(Wall.None, () =>
            {
                bound.ForEach(author.Scope.Add);
                return author.Typed(wanted);
            });
        });
    }

    /// <summary>Different constants of a type, as patterns.</summary>
    public static IReadOnlyList<string> Constants(CodeType type) => type switch
    {
        NumberType { Name: "char" } => ["'a'", "'_'", "'7'", "'q'"],
        NumberType { IsReal: true } => [],
        NumberType => ["0", "1", "3", "7", "100"],
        TextType => ["\"\"", "\"arm\"", "\"left\"", "\"a\""],
        TruthType => ["true"],
        EnumType kind => [.. kind.Members.Take(2).Select(member => $"{kind}.{member}")],
        ObjectType => ["null", "3", "\"arm\"", "'a'", "true"],
        _ => [],
    };

    /// <summary>A pattern for a value of a type, with the names that it gives.</summary>
    public static string Of(CodeType type, Author author, out List<Variable> bound)
    {
        bound = [];
        return Write(type, author, bound, 0);
    }

    private static string Test(Author author)
    {
        var subject = Subject(author);
        return $"({author.Moving(subject)} is {Of(subject, author, out _)})";
    }

    private static CodeType Subject(Author author) => author.Choose.Below(9) switch
    {
        0 => AnyType.Object,
        1 => new MaybeType(AnyType.Plain(author)),
        2 => new TupleType(AnyType.Plain(author), AnyType.Plain(author)),
        3 => new ArrayType(AnyType.Plain(author)),
        4 => new CollectionType("List", AnyType.Plain(author)),
        5 when author.Program.Types.Count > 0 => author.Choose.Of(author.Program.Types),
        6 => AnyType.Text,
        _ => AnyType.Plain(author),
    };

    private static string Write(CodeType type, Author author, List<Variable> bound, int depth)
    {
        var choose = author.Choose;
        if (depth > 2 || (depth > 0 && choose.Chance(10)))
            return "_";
        var constants = Constants(type);
        var offers = new Offers();
        if (constants.Count > 0)
        {
            offers.Add(2, () => choose.Of(constants));
            if (constants.Count > 2)
                offers.Add(1, () => $"not ({string.Join(" or ", choose.Some(constants, 2))})");
        }

        offers.Add(2, () => Bind(type, "var", author, bound));
        switch (type)
        {
            case NumberType { Name: not "char" }:
                offers.Add(2, () => $"{choose.Any(">", ">=")} {choose.Between(1, 4)} and {choose.Any("<", "<=")} {choose.Between(7, 90)}");
                offers.Add(1, () => $"< {choose.Between(2, 4)} or > {choose.Between(20, 90)}");
                break;
            case NumberType:
                offers.Add(2, () => ">= 'a' and <= 'z'");
                break;
            case TextType:
                offers.Add(2, () => $"{{ Length: {Write(NumberType.Int, author, bound, depth + 1)} }}");
                offers.Add(1, () => "[>= 'a' and <= 'z', ..]");
                break;
            case ObjectType:
                offers.Add(3, () => Bind(AnyType.Plain(author), null, author, bound));
                offers.Add(1, () => AnyType.Plain(author).Name);
                offers.Add(1, () => $"string {{ Length: {Write(NumberType.Int, author, bound, depth + 1)} }}");
                if (author.Program.Types.Count > 0)
                    offers.Add(2, () => Bind(choose.Of(author.Program.Types), null, author, bound));
                break;
            case MaybeType maybe:
                offers.Add(2, () => choose.Any("null", "not null"));
                offers.Add(2, () => Bind(maybe.Of, null, author, bound));
                break;
            case TupleType tuple:
                offers.Add(4, () => $"({string.Join(", ", tuple.Items.Select(item => Write(item, author, bound, depth + 1)))})");
                break;
            case ArrayType { Item: var item }:
                offers.Add(4, () => List(item, new ArrayType(item), author, bound, depth));
                break;
            case CollectionType { Family: "List", Item: var item }:
                offers.Add(4, () => List(item, null, author, bound, depth));
                break;
            case DeclaredType declared:
                if (declared.Members.Count > 0)
                    offers.Add(3, () => Properties(declared, author, bound, depth));
                if (declared.Parts.Count > 1)
                    offers.Add(2, () => $"({string.Join(", ", declared.Parts.Select(part => Write(part.Type, author, bound, depth + 1)))})");
                if (declared.Derived.Count > 0)
                    offers.Add(2, () => Bind(choose.Of(declared.Derived), null, author, bound));
                break;
        }

        return offers.Take(choose);
    }

    private static string Bind(CodeType type, string? written, Author author, List<Variable> bound)
    {
        var name = author.Name("found");
        bound.Add(new Variable(name, type));
        return $"{written ?? type.Name} {name}";
    }

    private static string Properties(DeclaredType declared, Author author, List<Variable> bound, int depth)
    {
        var some = author.Choose.Some(declared.Members, 2);
        return $"{{ {string.Join(", ", some.Select(member => $"{member.Name}: {Write(member.Type, author, bound, depth + 1)}"))} }}";
    }

    private static string List(CodeType item, CodeType? slice, Author author, List<Variable> bound, int depth)
    {
        var choose = author.Choose;
        var parts = Enumerable.Range(0, choose.Below(3)).Select(_ => Write(item, author, bound, depth + 1)).ToList();
        if (choose.Chance(60))
            parts.Insert(choose.Below(parts.Count + 1), slice is not null && choose.Chance(50) ? ".. " + Bind(slice, "var", author, bound) : "..");
        return $"[{string.Join(", ", parts)}]";
    }
}
