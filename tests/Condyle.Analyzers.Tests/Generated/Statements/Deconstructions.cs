namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Tuples and records taken apart into new and known variables, and swapped.</summary>
internal sealed class Deconstructions : IStatements
{
    public int Weight => 3;

    public bool Fits(Author author) => true;

    public void Write(Author author)
    {
        var choose = author.Choose;
        var records = author.Program.Types.Where(type => type.Parts.Count > 1).ToList();
        if (records.Count > 0 && choose.Chance(30))
        {
            var record = choose.Of(records);
            Apart([.. record.Parts.Select(part => part.Type)], author.Moving(record), author);
            return;
        }

        var swapped = author.Scope.All.Where(variable => variable.CanWrite && author.Scope.Writable(variable.Type).Count > 1).ToList();
        if (swapped.Count > 0 && choose.Chance(35))
        {
            var two = choose.Some(author.Scope.Writable(choose.Of(swapped).Type), 2);
            author.Code.Line($"({two[0].Name}, {two[1].Name}) = ({two[1].Name}, {two[0].Name});");
            return;
        }

        var inner = new TupleType(AnyType.Plain(author), AnyType.Plain(author));
        CodeType[] items = choose.Chance(30) ? [AnyType.Plain(author), inner] : [AnyType.Plain(author), AnyType.Item(author)];
        Apart(items, author.Value(new TupleType(items)), author);
    }

    private static void Apart(IReadOnlyList<CodeType> items, string value, Author author)
    {
        var added = new List<Variable>();
        var targets = items.Select(Target).ToList();
        author.Code.Line($"({string.Join(", ", targets)}) = {value};");
        added.ForEach(author.Scope.Add);

        string Target(CodeType item)
        {
            if (item is TupleType tuple && author.Choose.Chance(60))
                return $"({string.Join(", ", tuple.Items.Select(Target))})";
            if (author.Choose.Chance(15))
                return "_";
            if (author.Scope.Writable(item) is { Count: > 0 } known && author.Choose.Chance(35) && item is not TextType)
                return author.Choose.Of(known).Name;
            var name = author.Name("part");
            added.Add(new Variable(name, item));
            return $"var {name}";
        }
    }
}
