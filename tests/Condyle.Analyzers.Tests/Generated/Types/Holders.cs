namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A class in two parts whose properties keep what they are given in their own way, with a type inside of it and an operator that changes it.</summary>
internal static class Holders
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var type = new DeclaredType(author.Name("Holder"), isStruct: false) { Shows = "ToString()", Grows = true };
        var given = new Member(author.Name("Given"), AnyType.Plain(author), CanWrite: false, CanInitialise: true);
        var kept = new Member(author.Name("Kept"), AnyType.Plain(author), CanWrite: true, CanInitialise: true);
        var inner = new Member("Nested.Count", NumberType.Int, CanWrite: true, CanInitialise: true);
        var parameter = new Parameter(author.Name("p"), given.Type);
        Bodies.Of(author, $"internal sealed partial class {type}", [], isStruct: false, () =>
        {
            author.Code.Line($"public required {given.Type} {given.Name} {{ get; init; }}");
            author.Code.Line($"public {kept.Type} {kept.Name} {{ get => Trace.Seen(field, \"asked\"); set => field = {Kept(kept, author)}; }} = {author.Value(kept.Type)};");
            author.Code.Line($"public string Once => field ??= Trace.Seen(\"{author.Name("once")}\", \"made\");");
            author.Code.Line("public Inner Nested { get; } = new();");
            author.Code.Line("[System.Diagnostics.CodeAnalysis.SetsRequiredMembers]");
            author.Code.Line($"public {type}({Bodies.Parameters([parameter], author)}) => {given.Name} = {parameter.Name};");
        });
        Bodies.Of(author, $"partial class {type}", [given, kept], isStruct: false, () =>
        {
            author.Code.Line("private int size;");
            author.Code.Line($"public int this[int at] {{ get => size + at; set => size = unchecked(value {choose.Any("+", "-", "*")} at); }}");
            author.Code.Line($"public void operator +=(int by) => size = unchecked(size {choose.Any("+", "-", "^")} by);");
            author.Code.Line($"public override string ToString() => {Bodies.Shows(type.Name, [given, kept], author)} + Once + size + Nested.Count;");
            author.Code.Line($"public sealed class Inner {{ public int Count = {choose.Below(4)}; public static int Made; }}");
        });
        type.Members.AddRange([given, kept, inner]);
        type.Methods.Add(new Callable("this", NumberType.Int, [new Parameter("at", NumberType.Int)]));
        type.Constructors.Add(new Callable(type.Name, type, [parameter]));
        author.Program.Types.Add(type);
    }

    private static string Kept(Member kept, Author author) => author.Inside(Wall.Static, () =>
    {
        author.Scope.Add(new Variable("value", kept.Type));
        return author.Choose.Chance(50) ? "value" : author.Value(kept.Type);
    });
}
