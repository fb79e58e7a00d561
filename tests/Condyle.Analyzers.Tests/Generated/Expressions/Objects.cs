namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Objects of the program's own types: made, copied with changes, asked for their members, put together by operators.</summary>
internal sealed class Objects : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        if (wanted is DeclaredType type)
            Made(type, author, offers);
        var known = author.Scope.All.Where(variable => variable.Type is DeclaredType).ToList();
        foreach (var variable in author.Choose.Some(known, 3))
            Asked((DeclaredType)variable.Type, variable.Name, wanted, author, offers);
        if (author.Program.Types.Count > 0 && author.Choose.Chance(20))
        {
            var other = author.Choose.Of(author.Program.Types);
            Asked(other, author.Moving(other), wanted, author, offers);
        }
    }

    private static void Made(DeclaredType type, Author author, Offers offers)
    {
        offers.Add(4, () => $"({Calls.New(type, author, author.Value)})");
        if (type.Holds is { } held)
        {
            offers.Add(3, () => $"new {type} {{ {author.Value(held)}, {{ {author.Value(held)}, {author.Choose.Below(3)} }} }}");
            offers.Add(3, () => $"Trace.Same<{type}>([{author.Value(held)}, .. {Items.Sequence(held, author)}])");
            offers.Add(2, () => $"{author.Moving(type)}[{author.Choose.Any("1..", "..^1", "0..1")}]");
        }

        if (type.IsOrdered)
        {
            offers.Add(1, () => $"{author.Choose.Any("checked", "unchecked", "")}({author.Moving(type)} + {author.Value(type)})");
            offers.Add(1, () => $"(-{author.Moving(type)})");
            offers.Add(1, () => $"({author.Moving(type)} && {author.Value(type)})");
            if (author.Scope.Writable(type) is { Count: > 0 } stepped)
                offers.Add(2, () => author.Choose.Any($"({author.Choose.Of(stepped).Name}++)", $"(++{author.Choose.Of(stepped).Name})"));
        }

        foreach (var sign in type.Operators)
            offers.Add(2, () => $"({author.Moving(type)} {sign} {author.Value(type)})");
        var changed = type.Members.Where(member => member.CanInitialise).ToList();
        if ((type.IsRecord || type.IsValue) && changed.Count > 0)
            offers.Add(3, () => $"({author.Moving(type)} with {{ {string.Join(", ", author.Choose.Some(changed, 2).Select(member => $"{member.Name} = {author.Value(member.Type)}"))} }})");
    }

    private static void Asked(DeclaredType owner, string written, CodeType wanted, Author author, Offers offers)
    {
        foreach (var member in owner.Members.Where(member => member.Type.Equals(wanted)))
            offers.Add(2, () => $"{written}.{member.Name}");
        // An indexer is written with brackets.
        foreach (var method in owner.Methods.Where(method => wanted.Equals(method.Result) && Calls.CanCall(method, author)))
            offers.Add(2, () => method.Name == "this" ? $"{written}[{Calls.Arguments(method, author, author.Value)}]" : $"{written}.{Calls.Call(method, author)}");
        if (wanted is TextType)
            offers.Add(1, () => $"{written}.{owner.Shows}");
        if (owner.IsOrdered && wanted is TruthType)
            offers.Add(3, () => author.Choose.Any($"({written} {author.Choose.Any("<", ">", "==", "!=")} {author.Value(owner)})", $"({written} ? true : false)", $"{written}.Equals({author.Value(owner)})"));
        if (owner.IsOrdered && wanted is NumberType { Name: "int" })
            offers.Add(1, () => author.Choose.Any($"((int){written})", $"{written}.CompareTo({author.Value(owner)})"));
        if (owner.Holds is { } held && held.Equals(wanted))
            offers.Add(2, () => $"{written}[{author.Choose.Any("0", "^1")}]");
    }
}
