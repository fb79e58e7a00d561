namespace Condyle.Analyzers.Tests.Generated;

/// <summary><c>try</c> with its <c>catch</c>, filters and <c>finally</c>.</summary>
internal sealed class Tries : IStatements
{
    /// <summary>What the programs throw, those that derive from others first.</summary>
    private static readonly string[] Thrown =
    [
        "DivideByZeroException", "OverflowException", "ArithmeticException", "IndexOutOfRangeException", "ArgumentOutOfRangeException", "ArgumentNullException", "ArgumentException",
        "KeyNotFoundException", "InvalidCastException", "NullReferenceException", "FormatException", "Slip", "InvalidOperationException",
    ];

    public int Weight => 3;

    public bool Fits(Author author) => author.Situation.Depth < 3;

    public void Write(Author author)
    {
        var choose = author.Choose;
        var hasFinally = choose.Chance(40);
        if (hasFinally && choose.Chance(40))
        {
            author.Block("try", choose.Between(1, 3));
        }
        else
        {
            author.Block("try", choose.Between(1, 3), situation => situation with { Yields = null });
            Catch(author, 1);
        }

        if (hasFinally)
            author.Block("finally", choose.Between(1, 2), situation => new Situation { Depth = situation.Depth, IsHandler = true });
    }

    /// <summary>Catches whatever a program throws and notes what it was.</summary>
    public static void Catch(Author author, int statements)
    {
        var choose = author.Choose;
        foreach (var type in choose.Some(Thrown, choose.Below(4)))
        {
            var caught = author.Name("caught");
            var filter = choose.Chance(20) ? $" when ({author.PlainTruth()})" : "";
            author.Block($"catch ({type} {caught}){filter}", choose.Below(statements + 1), situation => situation with { Yields = null, IsHandler = true }, () =>
                Observations.Say(author, type is "Slip" ? $"{caught}.Text + \" {caught}\"" : $"\"{type} {caught}\""));
        }

        author.Block("catch (Exception)", 0, situation => situation with { Yields = null }, () => Observations.Say(author, $"\"{author.Name("failed")}\""));
    }
}
