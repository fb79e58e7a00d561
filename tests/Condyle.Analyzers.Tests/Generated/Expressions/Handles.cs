namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Elements of the rig as values.</summary>
internal sealed class Handles : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        switch (wanted)
        {
            case HandleType { Name: "Control" or "Group" }:
                offers.Add(2, () => $"{Rig(author)}.{wanted}({author.Value(AnyType.Text)})");
                offers.Add(1, () => $"{Rig(author)}.{wanted}({author.Value(AnyType.Text)}).Under({author.Moving(AnyType.Control)})");
                break;
            case TextType:
                offers.Add(1, () => $"{author.Moving(author.Choose.Any(AnyType.Control, AnyType.Group))}.Name");
                offers.Add(1, () => $"$\"{{{author.Moving(AnyType.Control)}}}\"");
                break;
        }
    }

    /// <summary>The draft, by whichever name it is known here.</summary>
    public static string Rig(Author author) => author.Choose.Of(author.Scope.Of(AnyType.Rig)).Name;
}
