namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Conditional and switch expressions.</summary>
internal sealed class Conditionals : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        offers.Add(2, () => $"({author.Moving(AnyType.Truth)} ? {author.Typed(wanted)} : {author.Value(wanted)})");
        offers.Add(2, () => Switch(wanted, author));
    }

    /// <summary>Arms with guards come first, so that none of them hides another one, then constants, then whatever is left.</summary>
    private static string Switch(CodeType wanted, Author author)
    {
        var choose = author.Choose;
        CodeType subject = choose.Below(4) switch
        {
            0 => AnyType.Object,
            1 => new TupleType(AnyType.Plain(author), AnyType.Plain(author)),
            _ => AnyType.Plain(author),
        };
        var written = author.Moving(subject);
        var arms = new List<string>();
        for (var i = choose.Below(3); i > 0; i--)
        {
            arms.Add(author.Inside(Wall.None, () =>
            {
                var pattern = Patterns.Of(subject, author, out var bound);
                bound.ForEach(author.Scope.Add);
                return $"{pattern} when {author.Moving(AnyType.Truth)} => {author.Typed(wanted)}";
            }));
        }

        foreach (var constant in choose.Some(Patterns.Constants(subject), choose.Below(4)))
            arms.Add($"{constant} => {author.Typed(wanted)}");
        arms.Add(arms.Count == 0 || choose.Chance(85) ? $"_ => {author.Typed(wanted)}" : $"_ => throw new InvalidOperationException(\"{author.Name("arm")}\")");
        return $"({written} switch {{ {string.Join(", ", arms)} }})";
    }
}
