namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Static fields, constants and properties, initialised in their order; a static constructor makes the moment certain where it can be seen.</summary>
internal static class Statics
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var name = author.Name("Statics");
        var fields = new List<Variable>();
        author.In(new Situation(), () => author.Code.Block($"internal static class {name}", () => author.Inside(Wall.Static, () =>
        {
            for (var i = choose.Between(2, 4); i > 0; i--)
            {
                var (field, type) = (author.Name("Shared"), AnyType.Of(author));
                var isReadOnly = choose.Chance(40);
                var kept = isReadOnly ? "readonly " : "";
                var accessors = isReadOnly ? "" : choose.Any("", " { get; set; }");
                author.Code.Line($"public static {kept}{type} {field}{accessors} = {author.Value(type)};");
                var known = new Variable($"{name}.{field}", type, CanWrite: !isReadOnly, IsPlace: false, IsEverywhere: true);
                fields.Add(known);
                author.Scope.Add(known);
            }

            author.Code.Line($"static {name}() => Trace.Note(\"{name} begins\");");
        })), author.Program.Code);
        fields.ForEach(author.Scope.Add);
    }
}
