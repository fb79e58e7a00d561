namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Local functions, with what they capture, and static ones.</summary>
internal sealed class LocalFunctions : IStatements
{
    public int Weight => 2;

    public bool Fits(Author author) => author.Situation.Depth < 3;

    public void Write(Author author)
    {
        var choose = author.Choose;
        var isStatic = choose.Chance(20);
        var function = new Callable(author.Name("Local"), AnyType.Plain(author), Methods.Parameters(author, choose.Below(3), mayBeByReference: false));
        author.In(new Situation { Returns = function.Result, CanReturn = true, Depth = author.Situation.Depth + 1 }, () =>
            author.Inside(isStatic ? Wall.Static : Wall.Lambda, () => Methods.Write(function, isStatic ? "static " : "", author, choose.Between(0, 3))));
        author.Scope.Add(function);
    }
}
