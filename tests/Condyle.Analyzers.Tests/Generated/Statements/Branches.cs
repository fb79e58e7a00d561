namespace Condyle.Analyzers.Tests.Generated;

/// <summary><c>if</c> with its <c>else</c>; what a pattern names is used in its block.</summary>
internal sealed class Branches : IStatements
{
    public int Weight => 5;

    public bool Fits(Author author) => author.Situation.Depth < 4;

    public void Write(Author author)
    {
        var choose = author.Choose;
        List<Variable> bound = [];
        var condition = author.Moving(AnyType.Truth);
        if (choose.Chance(30))
        {
            CodeType type = choose.Chance(50) ? AnyType.Object : new MaybeType(AnyType.Plain(author));
            condition = $"{author.Moving(type)} is {Patterns.Of(type, author, out bound)}";
        }

        author.Block($"if ({condition})", choose.Between(1, 3), first: () => bound.ForEach(author.Scope.Add));
        if (choose.Chance(20))
            author.Block($"else if ({author.Moving(AnyType.Truth)})", choose.Between(1, 2));
        if (choose.Chance(40))
            author.Block("else", choose.Between(1, 2));
    }
}
