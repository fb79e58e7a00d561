namespace Condyle.Analyzers.Tests.Generated;

/// <summary>New variables, with their type written or not, assigned at once or by ways that meet.</summary>
internal sealed class Declarations : IStatements
{
    public int Weight => 10;

    public bool Fits(Author author) => true;

    public void Write(Author author) => Write(AnyType.Of(author), author);

    /// <summary>The variables that a function begins with, so that there is something to work with.</summary>
    public static void Begin(Author author, int count)
    {
        CodeType[] first = [NumberType.Int, AnyType.Text, AnyType.Truth];
        foreach (var type in author.Choose.Some(first, count))
            Write(type, author);
        Write(AnyType.Item(author), author);
        Write(AnyType.Of(author), author);
    }

    private static void Write(CodeType type, Author author)
    {
        var choose = author.Choose;
        var name = author.Name("v");
        if (choose.Chance(8))
        {
            author.Code.Line($"{type} {name};");
            author.Code.Line($"if ({author.Moving(AnyType.Truth)})");
            author.Code.Line($"    {name} = {author.Value(type)};");
            author.Code.Line("else");
            author.Code.Line($"    {name} = {author.Value(type)};");
        }
        else if (type is NumberType or TextType && choose.Chance(8))
        {
            author.Code.Line($"const {type} {name} = {Leaves.Constant(type, choose)};");
            author.Scope.Add(new Variable(name, type, CanWrite: false, IsPlace: false, IsConstant: true));
            return;
        }
        else
        {
            // What is declared as an interface must stay one: another value may be assigned later.
            author.Code.Line($"{(choose.Chance(60) && type is not CollectionType { Family: "IEnumerable" or "IReadOnlyList" } ? "var" : type.Name)} {name} = {author.Value(type)};");
        }

        author.Scope.Add(new Variable(name, type));
    }
}
