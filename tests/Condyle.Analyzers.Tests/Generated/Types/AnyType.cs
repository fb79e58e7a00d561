namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Picks types for variables, parameters and fields.</summary>
internal static class AnyType
{
    public static TextType Text { get; } = new();

    public static TruthType Truth { get; } = new();

    public static HandleType Rig { get; } = new("RigDraft");

    public static HandleType Control { get; } = new("Control");

    public static HandleType Group { get; } = new("Group");

    public static HandleType Joint { get; } = new("Joint");

    public static VectorType Vector { get; } = new("Vector3");

    public static VectorType Turn { get; } = new("Quaternion");

    public static ObjectType Object { get; } = new();

    public static IReadOnlyList<string> ItemFamilies { get; } = ["List", "HashSet", "Queue", "Stack", "ImmutableArray", "ImmutableList", "IEnumerable", "IReadOnlyList"];

    /// <summary>A whole number, mostly an <c>int</c>.</summary>
    public static NumberType Whole(Choices choose) => choose.Chance(60) ? NumberType.Int : choose.Of(NumberType.Whole);

    public static NumberType Number(Choices choose) => choose.Chance(50) ? NumberType.Int : choose.Of(NumberType.All);

    /// <summary>A type that can be an item or a key, and whose equality is by value.</summary>
    public static CodeType Plain(Author author) => author.Choose.Chance(50) && Known(author) is { } known ? known : author.Choose.Below(12) switch
    {
        < 4 => NumberType.Int,
        < 5 => author.Choose.Of(NumberType.Whole),
        < 8 => Text,
        < 9 => NumberType.Char,
        < 10 => Truth,
        _ => author.Program.Enums.Count > 0 ? author.Choose.Of(author.Program.Enums) : NumberType.Int,
    };

    /// <summary>The type of a name in scope, so that what is declared is used.</summary>
    private static CodeType? Known(Author author)
    {
        var known = author.Scope.All.Where(variable => variable.Type is NumberType { IsReal: false } or TextType or TruthType or EnumType).ToList();
        return known.Count > 0 ? author.Choose.Of(known).Type : null;
    }

    /// <summary>A type of an item.</summary>
    public static CodeType Item(Author author) => author.Choose.Below(12) switch
    {
        < 8 => Plain(author),
        < 9 => new TupleType(Plain(author), Plain(author)),
        < 10 => Control,
        _ => author.Program.Types.Count > 0 ? author.Choose.Of(author.Program.Types) : Text,
    };

    public static CodeType Of(Author author)
    {
        var choose = author.Choose;
        return choose.Below(30) switch
        {
            < 7 => Number(choose),
            < 10 => Text,
            < 11 => Truth,
            < 13 => Plain(author),
            < 14 => new TupleType(Plain(author), choose.Chance(30) ? new TupleType(Plain(author), Plain(author)) : Item(author)),
            < 16 => new ArrayType(choose.Chance(15) ? new ArrayType(Plain(author)) : Item(author)),
            < 17 => new GridType(Plain(author)),
            < 20 => new CollectionType(choose.Of(ItemFamilies), Item(author)),
            < 21 => new MapType(choose.Chance(75) ? "Dictionary" : "ImmutableDictionary", choose.Chance(15) ? new TupleType(Plain(author), Plain(author)) : Key(author), Item(author)),
            < 23 => new MaybeType(Plain(author)),
            < 24 => Function(author),
            < 25 => choose.Any<CodeType>(Vector, Control, Group),
            < 26 => Object,
            _ => author.Program.Types.Count > 0 ? choose.Of(author.Program.Types) : NumberType.Int,
        };
    }

    /// <summary>A type of a key: sometimes one that says itself when two are equal.</summary>
    private static CodeType Key(Author author) => author.Choose.Chance(25) && author.Program.Types.Where(type => type.IsOrdered || type.IsRecord).ToList() is { Count: > 0 } own
        ? author.Choose.Of(own)
        : Plain(author);

    /// <summary>A type of functions, often one that a method of the program has.</summary>
    public static FunctionType Function(Author author)
    {
        if (author.Program.Delegates.Count > 0 && author.Choose.Chance(25))
            return author.Choose.Of(author.Program.Delegates);
        var methods = author.Program.Methods.Concat(author.Scope.Functions).Where(Lambdas.CanBeGroup).ToList();
        if (methods.Count > 0 && author.Choose.Chance(50))
        {
            var method = author.Choose.Of(methods);
            return new(method.Result, [.. method.Parameters.Select(parameter => parameter.Type)]);
        }

        return new(author.Choose.Chance(80) ? Plain(author) : null, [.. Enumerable.Range(0, author.Choose.Below(3)).Select(_ => Plain(author))]);
    }
}
