namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Objects of types without a name.</summary>
internal sealed class Unnamed : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        string Any() => author.Value(AnyType.Plain(author));
        switch (wanted)
        {
            case TextType:
                offers.Add(1, () => $"new {{ Left = {Any()}, Right = {Any()} }}.ToString()!");
                break;
            case TruthType:
                offers.Add(1, () =>
                {
                    var type = AnyType.Plain(author);
                    return $"new {{ Only = {author.Value(type)} }}.Equals(new {{ Only = {author.Value(type)} }})";
                });
                break;
        }

        if (wanted is TextType or TruthType or NumberType or EnumType)
            offers.Add(1, () => $"new {{ Left = {author.Value(wanted)}, Right = {Any()} }}.Left");
    }
}
