namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Functions that are made in a loop and run after it: each has the variables of its own turn.</summary>
internal sealed class Captured : IStatements
{
    public int Weight => 1;

    public bool Fits(Author author) => author.Situation.Depth < 3;

    public void Write(Author author)
    {
        var choose = author.Choose;
        var (kept, turn, each) = (author.Name("kept"), author.Name("i"), author.Name("each"));
        var item = AnyType.Plain(author);
        var isFor = choose.Chance(50);
        author.Code.Line($"var {kept} = new List<Func<string>>();");
        author.Block(isFor ? $"for (var {turn} = 0; {turn} < 3 && Trace.Goes(); {turn}++)" : $"foreach (var {each} in {Items.Sequence(item, author)})", choose.Below(2), first: () =>
        {
            author.Code.Line("if (!Trace.Goes()) break;");
            var made = isFor ? new Variable(turn, NumberType.Int, CanWrite: false, IsPlace: false) : new Variable(each, item, CanWrite: false, IsPlace: false);
            author.Scope.Add(made);
            var (inner, type) = (author.Name("v"), AnyType.Plain(author));
            author.Code.Line($"var {inner} = {author.Value(type)};");
            author.Scope.Add(new Variable(inner, type));
            author.Code.Line($"{kept}.Add({author.Inside(Wall.Lambda, () => $"() => {Shown.Text(made.Type, made.Name, author)} + {author.Value(AnyType.Text)} + {Shown.Text(type, inner, author)}")});");
        });
        author.Code.Line($"foreach (var {each}_kept in {kept})");
        author.Code.Line($"    Trace.Note({each}_kept());");
    }
}
