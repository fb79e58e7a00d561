namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Records, by reference and by value, and records that derive from others.</summary>
internal static class Records
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var isStruct = choose.Chance(35);
        var type = Write(author, isStruct, null);
        author.Program.Types.Add(type);
        if (isStruct || choose.Chance(50))
            return;
        var derived = Write(author, false, type);
        type.Derived.Add(derived);
        author.Program.Types.Add(derived);
    }

    private static DeclaredType Write(Author author, bool isStruct, DeclaredType? above)
    {
        var choose = author.Choose;
        var name = author.Name("Record");
        var inherited = above?.Parts ?? [];
        List<Member> own = [.. Enumerable.Range(0, choose.Between(1, 3)).Select(_ => new Member(author.Name("Part"), AnyType.Plain(author), CanWrite: isStruct, CanInitialise: true))];
        List<Member> parts = [.. inherited, .. own];
        var extra = new Member(author.Name("Extra"), AnyType.Plain(author), CanWrite: false, CanInitialise: true);
        var type = new DeclaredType(name, isStruct) { IsRecord = true, Parts = parts, Shows = choose.Any("ToString()", "Describe()") };
        var head = $"internal {(isStruct ? "record struct" : "record")} {name}({string.Join(", ", parts.Select(part => $"{part.Type} {part.Name}"))})"
            + (above is null ? "" : $" : {above}({string.Join(", ", inherited.Select(part => part.Name))})");
        Callable? method = null;
        Bodies.Of(author, head, [], isStruct, () =>
        {
            author.Code.Line($"public {extra.Type} {extra.Name} {{ get; init; }} = {author.Inside(Wall.None, () => author.Value(extra.Type))};");
            Bodies.Fields(author, parts.Select(part => part with { CanWrite = false }), isStruct);
            Bodies.Fields(author, [extra], isStruct);
            method = Bodies.Method(author, "public ");
            author.Code.Line($"public {(above is null ? isStruct ? "" : "virtual " : "override ")}string Describe() => {Bodies.Shows(name, [.. parts, extra], author)};");
        });
        type.Members.AddRange([.. parts, extra]);
        type.Methods.Add(method!);
        type.Constructors.Add(new Callable(name, type, [.. parts.Select(part => new Parameter(part.Name, part.Type))]));
        return type;
    }
}
