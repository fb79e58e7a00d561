namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Structures: copied on assignment, changed by their own methods, with operators, conversions and an indexer.</summary>
internal static class Structures
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var name = author.Name("Struct");
        List<Member> fields = [.. Enumerable.Range(0, choose.Between(1, 3)).Select(_ => new Member(author.Name("Part"), AnyType.Plain(author), CanWrite: true, CanInitialise: true))];
        var property = new Member(author.Name("Half"), AnyType.Plain(author), CanWrite: false);
        var type = new DeclaredType(name, isStruct: true) { Shows = choose.Any("Describe()", "ToString()") };
        List<Callable> methods = [];
        Bodies.Of(author, $"internal struct {name}", fields, isStruct: true, () =>
        {
            foreach (var field in fields)
                author.Code.Line($"public {field.Type} {field.Name};");
            Constructor(type, fields, author);
            author.Inside(Wall.Static, () =>
            {
                Bodies.Fields(author, fields.Select(field => field with { CanWrite = false }), isStruct: true);
                author.Code.Line($"public readonly {property.Type} {property.Name} => {author.Value(property.Type)};");
            });
            methods.Add(Bodies.Method(author, "public "));
            var shows = Bodies.Shows(name, fields, author);
            author.Code.Line($"public readonly {(type.Shows[0] == 'T' ? "override " : "")}string {type.Shows} => {shows};");
            if (choose.Chance(60))
                Operator(type, fields, author);
            if (choose.Chance(40))
                methods.Add(Indexer(author));
            if (choose.Chance(40))
                Conversions(type, fields, author);
        });
        type.Members.AddRange([.. fields, property]);
        type.Methods.AddRange(methods);
        author.Program.Types.Add(type);
    }

    public static Callable Indexer(Author author)
    {
        var indexer = new Callable("this", AnyType.Plain(author), [new Parameter(author.Name("at"), NumberType.Int)]);
        author.Code.Line($"public {indexer.Result} this[{Methods.Written(indexer.Parameters[0], author)}] => {author.Inside(Wall.None, () =>
        {
            Methods.Begin(indexer.Parameters, author);
            return author.Value(indexer.Result!);
        })};");
        return indexer;
    }

    private static void Constructor(DeclaredType type, List<Member> fields, Author author)
    {
        List<Parameter> parameters = [.. fields.Select(field => new Parameter(author.Name("p"), field.Type))];
        author.Code.Block($"public {type}({Bodies.Parameters(parameters, author)})", () =>
        {
            for (var i = 0; i < fields.Count; i++)
                author.Code.Line($"{fields[i].Name} = {parameters[i].Name};");
        });
        type.Constructors.Add(new Callable(type.Name, type, parameters));
    }

    private static void Operator(DeclaredType type, List<Member> fields, Author author)
    {
        var sign = author.Choose.Any("+", "-", "*", "|");
        author.Code.Line($"public static {type} operator {sign}({type} left, {type} right) => {author.Inside(Wall.Static, () =>
        {
            foreach (var field in fields)
            {
                author.Scope.Add(new Variable("left." + field.Name, field.Type, IsPlace: false));
                author.Scope.Add(new Variable("right." + field.Name, field.Type, IsPlace: false));
            }

            return $"new({string.Join(", ", fields.Select(field => author.Value(field.Type)))})";
        })};");
        type.Operators.Add(sign);
    }

    private static void Conversions(DeclaredType type, List<Member> fields, Author author)
    {
        author.Code.Line($"public static {author.Choose.Any("implicit", "explicit")} operator {type}(long given) => {author.Inside(Wall.Static, () =>
        {
            author.Scope.Add(new Variable("given", NumberType.Long));
            return $"new({string.Join(", ", fields.Select(field => author.Value(field.Type)))})";
        })};");
        var (convert, from) = (author.Name("Convert"), author.Name("p"));
        author.Code.Line($"public static {type} {convert}(int {from}) => ({type}){from};");
        author.Program.Methods.Add(new Callable($"{type}.{convert}", type, [new Parameter(from, NumberType.Int)]));
    }
}
