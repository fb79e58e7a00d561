namespace Condyle.Analyzers.Tests.Generated;

/// <summary><c>using</c>, <c>lock</c>, <c>checked</c> and plain blocks.</summary>
internal sealed class Guards : IStatements
{
    public int Weight => 2;

    public bool Fits(Author author) => author.Situation.Depth < 3;

    public void Write(Author author)
    {
        var choose = author.Choose;
        var held = author.Name("held");
        switch (choose.Below(6))
        {
            case 0:
                author.Block($"using (var {held} = new Held({author.Value(AnyType.Text)}))", choose.Between(1, 2));
                break;
            case 1:
                author.Block("", choose.Between(1, 3), first: () => author.Code.Line($"using var {held} = new Held(\"{held}\");"));
                break;
            case 2 when !author.Situation.CanAwait && !author.Situation.IsIterator:
                author.Block("lock (Trace.Lines)", choose.Between(1, 2));
                break;
            case 3:
                author.Block("checked", choose.Between(1, 2));
                break;
            case 4:
                author.Block("unchecked", choose.Between(1, 2));
                break;
            case 5 when choose.Chance(30):
                author.Code.Line(";");
                break;
            default:
                author.Block("", choose.Between(1, 2));
                break;
        }
    }
}
