namespace Condyle.Analyzers.Tests.Generated;

/// <summary><c>switch</c> statements, with patterns, several labels, and jumps from case to case.</summary>
internal sealed class Switches : IStatements
{
    public int Weight => 3;

    public bool Fits(Author author) => author.Situation.Depth < 4;

    public void Write(Author author)
    {
        var choose = author.Choose;
        CodeType subject = choose.Chance(20) ? AnyType.Object : AnyType.Plain(author);
        var constants = choose.Some(Patterns.Constants(subject), choose.Between(1, 4));
        author.Code.Block($"switch ({author.Moving(subject)})", () =>
        {
            if (choose.Chance(40))
            {
                author.Inside(Wall.None, () =>
                {
                    var pattern = Patterns.Of(subject, author, out var bound);
                    bound.ForEach(author.Scope.Add);
                    author.Code.Line($"case {pattern} when {author.Moving(AnyType.Truth)}:");
                    Section(author, []);
                });
            }

            for (var i = 0; i < constants.Count; i++)
            {
                author.Code.Line($"case {constants[i]}:");
                if (choose.Chance(25) && i + 1 < constants.Count)
                    author.Code.Line($"case {constants[++i]}:");
                // Jumps lead forward only, so that they end.
                Section(author, [.. constants.Skip(i + 1).Where(later => later != "null").Select(later => $"goto case {later};")]);
            }

            author.Code.Line("default:");
            Section(author, []);
        });
    }

    private static void Section(Author author, IReadOnlyList<string> jumps) => author.Block("", author.Choose.Between(1, 2), last: () =>
        author.Code.Line(jumps.Count > 0 && author.Choose.Chance(35) ? author.Choose.Of(jumps) : "break;"));
}
