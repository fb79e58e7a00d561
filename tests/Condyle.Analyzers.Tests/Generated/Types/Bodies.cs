namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What the members of the program's own types are made of.</summary>
internal static class Bodies
{
    /// <summary>Writes the members of a type, which see its fields.</summary>
    /// <param name="isStruct">Lambdas can't use the fields of a structure.</param>
    public static void Of(Author author, string head, IEnumerable<Member> fields, bool isStruct, Action write) =>
        author.In(new Situation(), () => author.Code.Block(head, () => author.Inside(Wall.Static, () =>
        {
            Fields(author, fields, isStruct);
            write();
        })), author.Program.Code);

    public static void Fields(Author author, IEnumerable<Member> fields, bool isStruct)
    {
        foreach (var field in fields)
            author.Scope.Add(new Variable(field.Name, field.Type, field.CanWrite, IsPlace: false, CanCapture: !isStruct));
    }

    /// <summary>A method of an object; it is called from outside only, so that none calls itself.</summary>
    public static Callable Method(Author author, string modifiers, CodeType? result = null)
    {
        var method = new Callable(author.Name("Do"), result ?? AnyType.Plain(author), Methods.Parameters(author, author.Choose.Below(2), mayBeByReference: false));
        Write(method, modifiers, author);
        return method;
    }

    public static void Write(Callable method, string modifiers, Author author) =>
        author.In(new Situation { Returns = method.Result, CanReturn = true, Depth = 1 }, () => Methods.Write(method, modifiers, author, author.Choose.Below(3)));

    public static string Parameters(IEnumerable<Parameter> parameters, Author author) => string.Join(", ", parameters.Select(parameter => Methods.Written(parameter, author)));

    /// <summary>Text that shows the fields.</summary>
    public static string Shows(string name, IEnumerable<Member> fields, Author author) =>
        "$\"" + name + string.Concat(fields.Select(field => $"|{{{Shown.Text(field.Type, field.Name, author)}}}")) + "\"";

    public static IReadOnlyList<Parameter> ParametersFor(Author author, int least, int most) =>
        [.. Enumerable.Range(0, author.Choose.Between(least, most)).Select(_ => new Parameter(author.Name("p"), AnyType.Plain(author)))];
}
