namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Names in scope, literals, and the smallest object of every type.</summary>
internal sealed class Leaves : IExpressions
{
    private static readonly string[] Words = ["\"\"", "\"a\"", "\"arm\"", "\"left\"", "\"Crane_Hook\"", "\"x1\"", "@\"c\\d\"", "\"\"\"q\"t\"\"\"", "\"é\"", "\" pad \"", "\"a,b,c\""];

    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        offers.Add(4, () => Simple(wanted, author));
        offers.Add(1, () => $"Trace.Seen<{wanted}>({author.Value(wanted)}, \"{author.Name("seen")}\")");
        if (wanted is NumberType or TruthType or EnumType or TupleType or MaybeType or ObjectType)
            offers.Add(1, () => $"default({wanted})");
    }

    /// <summary>A name of a type, or the smallest expression that makes one.</summary>
    public static string Simple(CodeType type, Author author)
    {
        var known = author.Scope.Of(type);
        return known.Count > 0 && author.Choose.Chance(65) ? author.Choose.Of(known).Name : Made(type, author);
    }

    public static string Made(CodeType type, Author author)
    {
        var choose = author.Choose;
        string One(CodeType item) => Simple(item, author);
        string Few(CodeType item) => string.Join(", ", Enumerable.Range(0, choose.Chance(10) ? 0 : choose.Between(1, 3)).Select(_ => One(item)));
        return type switch
        {
            NumberType number => Number(number, choose),
            TruthType => choose.Any("true", "false"),
            TextType => choose.Of(Words),
            EnumType kind => $"{kind}.{choose.Of(kind.Members)}",
            MaybeType maybe => choose.Chance(35) ? $"(({maybe})null)" : $"(({maybe}){One(maybe.Of)})",
            TupleType tuple => $"({string.Join(", ", tuple.Items.Select(One))})",
            ArrayType { Item: ArrayType inner } => $"(new {inner}[] {{ {One(inner)}, {One(inner)} }})",
            ArrayType array => $"(new {array.Item}[] {{ {Few(array.Item)} }})",
            GridType grid => $"(new {grid.Item}[,] {{ {{ {One(grid.Item)}, {One(grid.Item)} }}, {{ {One(grid.Item)}, {One(grid.Item)} }} }})",
            CollectionType { Family: "IEnumerable" or "IReadOnlyList", Item: var item } => $"(({type})new {item}[] {{ {Few(item)} }})",
            CollectionType { Family: "ImmutableArray" or "ImmutableList", Item: var item } collection => $"{collection.Family}.Create<{item}>(new {item}[] {{ {Few(item)} }})",
            CollectionType { Family: "List" or "HashSet", Item: var item } => $"new {type} {{ {Few(item)} }}",
            CollectionType { Item: var item } => $"new {type}(new {item}[] {{ {Few(item)} }})",
            MapType { Family: "Dictionary" } map => $"new {map} {{ [{One(map.Key)}] = {One(map.Value)}, [{One(map.Key)}] = {One(map.Value)} }}",
            MapType map => $"ImmutableDictionary<{map.Key}, {map.Value}>.Empty.SetItem({One(map.Key)}, {One(map.Value)})",
            FunctionType function => Lambdas.Simple(function, author),
            ObjectType => $"((object){One(AnyType.Plain(author))})",
            DeclaredType declared => Calls.New(declared, author, One),
            VectorType { Name: "Vector3" } => $"new Vector3({One(NumberType.Float)}, {choose.Between(-3, 3)}, {choose.Between(-3, 3)})",
            VectorType => "Quaternion.Identity",
            HandleType { Name: "RigDraft" } => "State.Rig",
            HandleType handle => $"State.{handle}",
            _ => throw new InvalidOperationException($"There is no smallest {type}."),
        };
    }

    /// <summary>A literal.</summary>
    public static string Constant(CodeType type, Choices choose) => type is NumberType number ? Number(number, choose) : choose.Of(Words);

    private static string Number(NumberType type, Choices choose)
    {
        var small = choose.Any("0", "1", "2", "3", "5", "7", "10", "64", "100");
        return type.Name switch
        {
            "int" => choose.Chance(80) ? small : choose.Any("int.MaxValue", "int.MinValue", "(-1)", "(-7)", "0x7F", "1_000"),
            "char" => choose.Any("'a'", "'Z'", "'_'", "'7'", "'é'"),
            "sbyte" => choose.Any("((sbyte)127)", "((sbyte)(-128))", "((sbyte)(-3))", $"((sbyte){small})"),
            "byte" => choose.Any("((byte)255)", $"((byte){small})"),
            "short" => choose.Any("short.MaxValue", "((short)(-5))", $"((short){small})"),
            "ushort" => choose.Any("ushort.MaxValue", $"((ushort){small})"),
            "uint" => choose.Any("uint.MaxValue", $"{small}u"),
            "long" => choose.Any("long.MaxValue", "long.MinValue", "(-9L)", $"{small}L"),
            "ulong" => choose.Any("ulong.MaxValue", $"{small}UL"),
            "float" => choose.Any("0.1f", "2.5f", "(-0.75f)", "1e6f", $"{small}f"),
            "double" => choose.Any("0.1", "2.5", "(-0.75)", "1e9", $"{small}.0"),
            _ => choose.Any("0.1m", "2.50m", "(-0.75m)", $"{small}m"),
        };
    }
}
