namespace Condyle.Analyzers.Tests.Generated;

/// <summary>All loops, each bounded by the fuel that a program has.</summary>
internal sealed class Loops : IStatements
{
    public int Weight => 6;

    public bool Fits(Author author) => author.Situation.Depth < 3;

    public void Write(Author author)
    {
        switch (author.Choose.Below(8))
        {
            case < 2:
                For(author);
                break;
            case < 5:
                Each(author);
                break;
            case 5:
                Body($"while (Trace.Goes() && {author.Moving(AnyType.Truth)})", author);
                break;
            case 6:
                Body("do", author);
                author.Code.Line($"while (Trace.Goes() && {author.Moving(AnyType.Truth)});");
                break;
            default:
                Again(author);
                break;
        }
    }

    private static void Body(string head, Author author, Action? first = null) =>
        author.Block(head, author.Choose.Between(1, 3), situation => situation with { CanBreak = true }, first);

    private static void For(Author author)
    {
        var choose = author.Choose;
        var (turn, other) = (author.Name("i"), author.Name("j"));
        var hasOther = choose.Chance(25);
        var head = hasOther
            ? $"for (int {turn} = 0, {other} = {choose.Between(1, 4)}; {turn} < {other} && Trace.Goes(); {turn}++, {other}{choose.Any("--", " -= 1")})"
            : choose.Any(
                $"for (var {turn} = 0; {turn} < {choose.Between(1, 4)} && Trace.Goes(); {turn}++)",
                $"for (var {turn} = {choose.Between(1, 4)}; {turn} > 0 && Trace.Goes(); {turn} -= {choose.Between(1, 2)})",
                $"for (var {turn} = 0; Trace.Goes(); {turn}++)");
        Body(head, author, () =>
        {
            author.Scope.Add(new Variable(turn, NumberType.Int));
            if (hasOther)
                author.Scope.Add(new Variable(other, NumberType.Int));
            if (head.Contains("; Trace", StringComparison.Ordinal))
                author.Code.Line($"if ({turn} > {choose.Below(4)}) break;");
        });
    }

    private static void Each(Author author)
    {
        var choose = author.Choose;
        var type = AnyType.Item(author);
        List<Variable> added = [];
        string head;
        if (type is TupleType tuple && choose.Chance(60))
        {
            added = [.. tuple.Items.Select(item => new Variable(author.Name("each"), item, CanWrite: false, IsPlace: false))];
            head = $"foreach (var ({string.Join(", ", added.Select(variable => variable.Name))}) in {Items.Sequence(type, author)})";
        }
        else if (choose.Chance(15))
        {
            var map = new MapType("Dictionary", AnyType.Plain(author), AnyType.Plain(author));
            added = [new(author.Name("key"), map.Key, CanWrite: false, IsPlace: false), new(author.Name("value"), map.Value, CanWrite: false, IsPlace: false)];
            head = $"foreach (var ({added[0].Name}, {added[1].Name}) in {author.Moving(map)})";
        }
        else if (choose.Chance(10))
        {
            added = [new(author.Name("letter"), NumberType.Char, CanWrite: false, IsPlace: false)];
            head = $"foreach (var {added[0].Name} in {author.Moving(AnyType.Text)})";
        }
        else
        {
            added = [new(author.Name("each"), type, CanWrite: false, IsPlace: false)];
            head = $"foreach ({choose.Any("var", type.Name)} {added[0].Name} in {Items.Sequence(type, author)})";
        }

        Body(head, author, () =>
        {
            added.ForEach(author.Scope.Add);
            author.Code.Line("if (!Trace.Goes()) break;");
        });
    }

    /// <summary>A loop out of a label and a jump back to it.</summary>
    private static void Again(Author author)
    {
        var (label, turns) = (author.Name("again"), author.Name("turns"));
        author.Code.Line($"var {turns} = 0;");
        author.Code.Line($"{label}:");
        author.Block("", author.Choose.Between(1, 3));
        author.Code.Line($"if (Trace.Goes() && {turns}++ < {author.Choose.Between(1, 3)} && {author.Moving(AnyType.Truth)}) goto {label};");
    }
}
