namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Static fields, constants and properties, initialised in their order; a static constructor makes the moment certain.</summary>
internal static class Statics
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var name = author.Name("Statics");
        var fields = new List<Variable>();
        // The compiler takes what a readonly field has for something that never changes, and may look at it later than it is written.
        var areReadOnly = choose.Chance(40);
        author.In(new Situation(), () => author.Code.Block($"internal static class {name}", () => author.Inside(Wall.Static, () =>
        {
            for (var i = choose.Between(2, 4); i > 0; i--)
            {
                var (field, type) = (author.Name("Shared"), AnyType.Of(author));
                var isReadOnly = areReadOnly && choose.Chance(70);
                var kept = isReadOnly ? "readonly " : "";
                var accessors = isReadOnly ? "" : choose.Any("", " { get; set; }");
                author.Code.Line($"public static {kept}{type} {field}{accessors} = {author.Value(type)};");
                var known = new Variable($"{name}.{field}", type, CanWrite: !isReadOnly, IsPlace: false, IsEverywhere: true);
                fields.Add(known);
                author.Scope.Add(known);
            }

            if (areReadOnly)
                author.Code.Line("public static void Begin() { }");
            author.Code.Line($"static {name}() => Trace.Note(\"{name} begins\");");
        })), author.Program.Code);
        if (areReadOnly)
            author.Program.Beginnings.Add($"try {{ {name}.Begin(); }} catch (TypeInitializationException) {{ Trace.Note(\"{name} fails\"); }}");
        fields.ForEach(author.Scope.Add);
    }
}
