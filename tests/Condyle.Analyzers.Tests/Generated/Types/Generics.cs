namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Generic classes with static members of each construction, and interfaces with static abstract members.</summary>
internal static class Generics
{
    public static void Declare(Author author)
    {
        if (author.Choose.Chance(50))
            Box(author);
        else
            Rated(author);
    }

    private static void Box(Author author)
    {
        var name = author.Name("Box");
        author.Program.Code.Block($"internal class {name}<T>(T first) where T : notnull", () =>
        {
            author.Program.Code.Line("public static int Made;");
            author.Program.Code.Line("private readonly List<T> items = [first];");
            author.Program.Code.Line("public int Number { get; } = ++Made;");
            author.Program.Code.Line("public T Last => items[^1];");
            author.Program.Code.Line($"public {name}<T> With(T item) {{ items.Add(item); return this; }}");
            author.Program.Code.Line("public TOut Fold<TOut>(TOut seed, Func<TOut, T, TOut> step) { foreach (var item in items) seed = step(seed, item); return seed; }");
            author.Program.Code.Line("public IEnumerator<T> GetEnumerator() => items.GetEnumerator();");
            author.Program.Code.Line("public override string ToString() => $\"box {Number} of {Made}: {string.Join(\"+\", items)}\";");
        });
        foreach (var item in new[] { NumberType.Int, AnyType.Plain(author) }.Distinct().Where(type => type is not NumberType { IsReal: true }))
        {
            var type = new DeclaredType($"{name}<{item}>", isStruct: false) { Shows = "ToString()" };
            type.Members.AddRange([new Member("Last", item, CanWrite: false), new Member("Number", NumberType.Int, CanWrite: false)]);
            type.Methods.AddRange([
                new Callable("With", type, [new Parameter("item", item)]),
                new Callable("Fold", NumberType.Int, [new Parameter("seed", NumberType.Int), new Parameter("step", new FunctionType(NumberType.Int, NumberType.Int, item))])]);
            type.Constructors.Add(new Callable(type.Name, type, [new Parameter("first", item)]));
            author.Program.Types.Add(type);
        }
    }

    private static void Rated(Author author)
    {
        var (contract, a, b, code) = (author.Name("IRated"), author.Name("Rated"), author.Name("Rated"), author.Program.Code);
        code.Block($"internal interface {contract}<TSelf> where TSelf : {contract}<TSelf>", () =>
        {
            code.Line("static abstract TSelf Make(int rate);");
            code.Line("static virtual string Word => \"plain\";");
            code.Line("static abstract TSelf operator +(TSelf left, TSelf right);");
            code.Line("int Rate { get; }");
        });
        foreach (var name in new[] { a, b })
        {
            code.Block($"internal readonly record struct {name}(int Rate) : {contract}<{name}>", () =>
            {
                code.Line($"public static {name} Make(int rate) => new({author.Inside(Wall.Static, () =>
                {
                    author.Scope.Add(new Variable("rate", NumberType.Int));
                    return author.Value(NumberType.Int);
                })});");
                code.Line($"public static {name} operator +({name} left, {name} right) => new(unchecked(left.Rate {author.Choose.Any("+", "-", "*")} right.Rate));");
                if (name == a)
                    code.Line($"public static string Word => \"{name}\";");
            });
        }

        var (sums, sum) = (author.Name("Sums"), author.Name("Sum"));
        code.Block($"internal static class {sums}", () =>
        {
            code.Line($"public static T Total<T>(IEnumerable<int> rates) where T : {contract}<T> {{ var total = T.Make(0); foreach (var rate in rates) total += T.Make(rate); return total; }}");
            code.Line($"public static string {sum}<T>(IEnumerable<int> rates) where T : {contract}<T> => T.Word + Total<T>(rates).Rate;");
        });
        foreach (var name in new[] { a, b })
            author.Program.Methods.Add(new Callable($"{sums}.{sum}<{name}>", AnyType.Text, [new Parameter("rates", new CollectionType("IEnumerable", NumberType.Int))]));
    }
}
