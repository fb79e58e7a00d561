namespace Condyle.Analyzers.Tests.Generated;

/// <summary><c>break</c>, <c>continue</c>, <c>return</c>, <c>throw</c> and <c>yield</c>.</summary>
internal sealed class Leaving : IStatements
{
    public int Weight => 3;

    public bool Fits(Author author) => author.Situation is { CanBreak: true } or { Yields: not null } or { CanReturn: true, Depth: > 0 };

    public void Write(Author author)
    {
        var choose = author.Choose;
        var situation = author.Situation;
        var offers = new Offers();
        if (situation.CanBreak)
            offers.Add(3, () => choose.Any("break;", "continue;"));
        if (situation.Yields is { } item)
            offers.Add(8, () => $"yield return {author.Value(item)};");
        if (situation is { CanReturn: true, Depth: > 0 })
            offers.Add(1, () => situation.IsIterator ? "yield break;" : situation.Returns is { } result ? $"return {author.Value(result)};" : "return;");
        if (situation is { CanReturn: true, Depth: > 1 })
            offers.Add(1, () => $"throw new {choose.Any("InvalidOperationException", "ArgumentException", "Slip")}({author.Value(AnyType.Text)});");
        if (offers.AreNone)
            return;
        var leave = offers.Take(choose);
        author.Code.Line(leave.StartsWith("yield return", StringComparison.Ordinal) ? leave : $"if ({author.Moving(AnyType.Truth)}) {leave}");
    }
}
