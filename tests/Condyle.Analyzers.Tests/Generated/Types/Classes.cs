namespace Condyle.Analyzers.Tests.Generated;

/// <summary>An interface, an abstract class and classes below it: what is overridden, called on the base, initialised in which order.</summary>
internal static class Classes
{
    public static void Declare(Author author)
    {
        var contract = Interface(author);
        var top = WriteTop(author, contract);
        for (var i = author.Choose.Between(1, 2); i > 0; i--)
        {
            var below = Below(author, top, contract);
            top.Type.Derived.Add(below);
            contract.Derived.Add(below);
            author.Program.Types.Add(below);
        }

        author.Program.Types.Add(top.Type);
        author.Program.Types.Add(contract);
    }

    private static DeclaredType Interface(Author author)
    {
        var type = new DeclaredType(author.Name("IThing"), isStruct: false);
        var (asked, given) = (new Callable(author.Name("Ask"), AnyType.Plain(author), []), new Callable(author.Name("Give"), AnyType.Plain(author), []));
        type.Methods.AddRange([asked, given]);
        Bodies.Of(author, $"internal interface {type}", [], isStruct: false, () =>
        {
            author.Code.Line("string Describe();");
            author.Code.Line($"{asked.Result} {asked.Name}();");
            author.Code.Line($"{given.Result} {given.Name}() => {author.Inside(Wall.None, () =>
            {
                author.Scope.Add(new Variable($"{asked.Name}()", asked.Result!, CanWrite: false, IsPlace: false));
                return author.Value(given.Result!);
            })};");
        });
        return type;
    }

    private static Top WriteTop(Author author, DeclaredType contract)
    {
        var choose = author.Choose;
        var type = new DeclaredType(author.Name("Base"), isStruct: false);
        var field = new Member(author.Name("Field"), AnyType.Plain(author), CanWrite: true);
        var top = new Top(
            type,
            field,
            new Parameter(author.Name("p"), AnyType.Plain(author)),
            new Callable(author.Name("May"), AnyType.Plain(author), Bodies.ParametersFor(author, 0, 1)),
            new Callable(author.Name("Must"), AnyType.Plain(author), Bodies.ParametersFor(author, 0, 1)),
            new Member(author.Name("Virtual"), AnyType.Plain(author), CanWrite: false),
            AsksVirtually: choose.Chance(50));
        Bodies.Of(author, $"internal abstract class {type} : {contract}", [], isStruct: false, () =>
        {
            author.Code.Line($"public {field.Type} {field.Name} = Trace.Seen({author.Value(field.Type)}, \"{field.Name}\");");
            author.Code.Block($"protected {type}({Bodies.Parameters([top.Given], author)})", () => author.Inside(Wall.None, () =>
            {
                Methods.Begin([top.Given], author);
                Bodies.Fields(author, [field], isStruct: false);
                author.Code.Line($"Trace.Note(\"{type} \" + {Shown.Text(top.Given.Type, top.Given.Name, author)});");
                if (choose.Chance(50))
                    author.Code.Line($"_ = {Calls.Call(top.May, author)};");
                author.Statements(choose.Below(2));
            }));
            Bodies.Fields(author, [field], isStruct: false);
            Bodies.Write(top.May, "public virtual ", author);
            author.Code.Line($"public abstract {top.Must.Result} {top.Must.Name}({Bodies.Parameters(top.Must.Parameters, author)});");
            author.Code.Line($"public virtual {top.Property.Type} {top.Property.Name} => {author.Value(top.Property.Type)};");
            var asked = contract.Methods[0];
            author.Code.Line($"public {(top.AsksVirtually ? "virtual " : "")}{asked.Result} {asked.Name}() => {author.Value(asked.Result!)};");
            author.Code.Line($"public virtual string Describe() => {Bodies.Shows(type.Name, [field], author)};");
        });
        type.Members.AddRange([field, top.Property]);
        type.Methods.AddRange([top.May, top.Must, contract.Methods[0]]);
        return top;
    }

    private static DeclaredType Below(Author author, Top top, DeclaredType contract)
    {
        var choose = author.Choose;
        var type = new DeclaredType(author.Name("Class"), isStruct: false);
        var isPrimary = choose.Chance(50);
        Parameter[] parameters = [new(author.Name("p"), AnyType.Plain(author)), new(author.Name("p"), AnyType.Plain(author))];
        var property = new Member(author.Name("Property"), AnyType.Plain(author), CanWrite: true, CanInitialise: true);
        var written = Bodies.Parameters(parameters, author);
        string Given() => author.Inside(Wall.Static, () =>
        {
            Methods.Begin(parameters, author);
            return author.Value(top.Given.Type);
        });
        var handedOn = Given();
        Bodies.Of(author, $"internal {choose.Any("sealed ", "")}class {type}{(isPrimary ? $"({written})" : "")} : {top.Type}{(isPrimary ? $"({handedOn})" : "")}, {contract}", [], isStruct: false, () =>
        {
            author.Code.Line($"public {property.Type} {property.Name} {{ get; set; }} = Trace.Seen({author.Value(property.Type)}, \"{property.Name}\");");
            if (!isPrimary)
            {
                author.Code.Block($"public {type}({written}) : base({handedOn})", () => author.Inside(Wall.None, () =>
                {
                    Methods.Begin(parameters, author);
                    Bodies.Fields(author, [property, top.Field], isStruct: false);
                    author.Statements(choose.Below(3));
                }));
            }

            Bodies.Fields(author, [property, top.Field], isStruct: false);
            if (isPrimary)
                Bodies.Fields(author, parameters.Select(parameter => new Member(parameter.Name, parameter.Type, CanWrite: true)), isStruct: false);
            Bodies.Write(top.Must, "public override ", author);
            if (choose.Chance(50))
                author.Code.Line($"public override {top.Property.Type} {top.Property.Name} => {author.Value(top.Property.Type)};");
            if (choose.Chance(60))
                Override(author, top.May, "public override ");
            if (top.AsksVirtually && choose.Chance(50))
                Override(author, contract.Methods[0], "public override ");
            if (choose.Chance(30))
                author.Code.Line($"{contract.Methods[1].Result} {contract}.{contract.Methods[1].Name}() => {author.Value(contract.Methods[1].Result!)};");
            if (choose.Chance(50))
                author.Code.Line($"public override string Describe() => base.Describe() + {Bodies.Shows(type.Name, [property], author)};");
        });
        type.Members.AddRange([property, top.Field, top.Property]);
        type.Methods.AddRange([top.May, top.Must]);
        type.Constructors.Add(new Callable(type.Name, type, parameters));
        return type;
    }

    /// <summary>An override that may call what it overrides.</summary>
    private static void Override(Author author, Callable method, string modifiers)
    {
        author.Inside(Wall.None, () =>
        {
            if (method.Parameters.Count == 0)
                author.Scope.Add(new Variable($"base.{method.Name}()", method.Result!, CanWrite: false, IsPlace: false));
            Bodies.Write(method, modifiers, author);
        });
    }

    private sealed record Top(DeclaredType Type, Member Field, Parameter Given, Callable May, Callable Must, Member Property, bool AsksVirtually);
}
