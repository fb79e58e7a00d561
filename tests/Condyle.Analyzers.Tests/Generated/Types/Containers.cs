namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A collection of the program's own: gone through, indexed from both ends, sliced, filled by an initialiser, taken apart.</summary>
internal static class Containers
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var (item, code) = (AnyType.Plain(author), author.Program.Code);
        var type = new DeclaredType(author.Name("Rope"), isStruct: false) { Shows = "ToString()", Holds = item };
        var (name, each) = (type.Name, author.Name("each"));
        code.Block($"internal sealed class {name} : IEnumerable<{item}>", () =>
        {
            code.Line($"private readonly List<{item}> items = [];");
            code.Line($"public void Add({item} item) => items.Add(item);");
            code.Line($"public void Add({item} item, int times) {{ for (var i = 0; i < times; i++) items.Add(item); }}");
            code.Line("public int Length => items.Count;");
            code.Line($"public {item} this[int index] {{ get => items[index]; set => items[index] = value; }}");
            code.Line($"public {name} Slice(int start, int length) => [.. items.GetRange(start, length)];");
            code.Line($"public void Deconstruct(out {item} first, out int length) {{ first = items[0]; length = items.Count; }}");
            code.Block($"public IEnumerator<{item}> GetEnumerator()", () =>
            {
                code.Line("try");
                code.Line($"{{ foreach (var item in items) yield return {choose.Any("item", "Trace.Seen(item, \"walked\")")}; }}");
                code.Line("finally { Trace.Note(\"walked through\"); }");
            });
            code.Line("System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();");
            code.Line($"public override string ToString() => \"rope \" + string.Join(\"+\", items.Select({each} => {Shown.Text(item, each, author)}));");
        });
        type.Members.Add(new Member("Length", NumberType.Int, CanWrite: false));
        type.Methods.Add(new Callable("this", item, [new Parameter("index", NumberType.Int)]));
        type.Constructors.Add(new Callable(name, type, []));
        author.Program.Types.Add(type);
    }
}
