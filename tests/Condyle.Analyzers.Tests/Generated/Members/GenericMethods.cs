namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Generic methods, with and without constraints; each is called with several types.</summary>
internal static class GenericMethods
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var name = author.Name("Generic");
        switch (choose.Below(8))
        {
            case 0:
                author.Code.Line($"public static T {name}<T>(T first, T second, bool takesFirst) => takesFirst ? first : second;");
                foreach (var type in Types(author))
                    Add(author, $"{name}{choose.Any("", $"<{type}>")}", type, ("first", type), ("second", type), ("takesFirst", AnyType.Truth));
                break;
            case 1:
                author.Code.Line($"public static string {name}<T>(T value) where T : notnull => $\"<{{value}}>\" + {choose.Any("value.ToString()", "typeof(T).Name.Length.ToString()", "(value is int ? \"int\" : value is string ? \"text\" : \"other\")")};");
                foreach (var type in Types(author).Where(type => type is NumberType { IsReal: false } or TextType or TruthType or EnumType))
                    Add(author, name, AnyType.Text, ("value", type));
                break;
            case 2:
                author.Code.Block($"public static T {name}<T>(params T[] items)", () =>
                {
                    author.Code.Line("var last = default(T)!;");
                    author.Code.Line("foreach (var item in items)");
                    author.Code.Line("    last = item;");
                    author.Code.Line("return last;");
                });
                foreach (var type in Types(author))
                    Add(author, $"{name}<{type}>", type, ("items", new ArrayType(type)));
                break;
            case 3:
                author.Code.Line($"public static List<TOut> {name}<TIn, TOut>(IEnumerable<TIn> items, Func<TIn, TOut> make) {{ var made = new List<TOut>(); foreach (var item in items) made.Add(make(item)); return made; }}");
                var (from, to) = (AnyType.Plain(author), AnyType.Plain(author));
                Add(author, $"{name}<{from}, {to}>", new CollectionType("List", to), ("items", new CollectionType("IEnumerable", from)), ("make", new FunctionType(to, from)));
                break;
            case 4:
                author.Code.Line($"public static string {name}<T>(params ReadOnlySpan<T> items) {{ var text = $\"{{items.Length}}\"; foreach (var item in items) text += item is null ? '-' : '+'; return text; }}");
                foreach (var type in Types(author))
                    Add(author, $"{name}<{type}>", AnyType.Text, ("items", new CollectionType("ReadOnlySpan", type)));
                break;
            case 5:
                author.Code.Line($"public static T {name}<T>(T first, T second) where T : INumber<T> => first {choose.Any("+", "-", "*")} second + T.One;");
                foreach (var type in Types(author).OfType<NumberType>().Where(type => type != NumberType.Char))
                    Add(author, name, type, ("first", type), ("second", type));
                break;
            case 6:
                author.Code.Line($"public static T {name}<T>(bool isNew, T other) where T : new() => isNew ? new T() : other;");
                foreach (var type in Types(author).Where(type => type is NumberType or EnumType or TruthType))
                    Add(author, $"{name}<{type}>", type, ("isNew", AnyType.Truth), ("other", type));
                break;
            default:
                author.Code.Line($"public static bool {name}<T>(T a, T b) where T : IComparable<T> => a.CompareTo(b) {choose.Any("<", ">", "==")} 0;");
                Add(author, name, AnyType.Truth, ("a", NumberType.Int), ("b", NumberType.Int));
                Add(author, name, AnyType.Truth, ("a", NumberType.Double), ("b", NumberType.Double));
                break;
        }
    }

    private static void Add(Author author, string name, CodeType result, params (string Name, CodeType Type)[] parameters) =>
        author.Program.Methods.Add(new Callable("Helpers." + name, result,
            [.. parameters.Select(parameter => new Parameter(parameter.Name, parameter.Type, parameter.Name == "items" && parameter.Type is ArrayType or CollectionType { Family: "ReadOnlySpan" } ? Passing.Params : Passing.Value))]));

    private static CodeType[] Types(Author author) => [NumberType.Int, AnyType.Text, AnyType.Item(author), author.Choose.Of(NumberType.Whole)];
}
