namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Assignments and steps inside of expressions: they show in which order things happen.</summary>
internal sealed class Steps : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        var writable = author.Scope.Writable(wanted);
        if (writable.Count == 0)
            return;
        var choose = author.Choose;
        offers.Add(1, () => $"({choose.Of(writable).Name} = {author.Stored(wanted)})");
        if (wanted is not NumberType number)
            return;
        offers.Add(2, () => choose.Any("({0}++)", "({0}--)", "(++{0})", "(--{0})").Replace("{0}", choose.Of(writable).Name, StringComparison.Ordinal));
        if (number != NumberType.Char)
            offers.Add(2, () => $"({choose.Of(writable).Name} {choose.Any("+=", "-=", "*=")} {author.Value(number)})");
    }
}
