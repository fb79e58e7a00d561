namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Writes expressions of a wanted type and statements, out of the names in scope and what the program has declared.</summary>
internal sealed class Author(Choices choose)
{
    private const int ExpressionDepth = 2;

    private static readonly IExpressions[] Expressions =
    [
        new Leaves(), new Arithmetic(), new Conversions(), new Comparisons(), new Conditionals(), new Patterns(), new NullOperators(), new Texts(), new TextCalls(), new Steps(), new Maths(),
        new Tuples(), new Unnamed(), new Items(), new Gathered(), new Queries(), new QuerySentences(), new Calls(), new Lambdas(), new Objects(), new Vectors(), new Handles(),
    ];

    private static readonly IStatements[] Kinds =
    [
        new Observations(), new Declarations(), new Assignments(), new Deconstructions(), new Branches(), new Switches(), new Loops(), new Leaving(), new Changes(), new Tries(), new Guards(),
        new LocalFunctions(), new ByReference(), new Captured(), new RigSentences(),
    ];

    private int names;
    private int budget;
    private int depth;

    public Choices Choose => choose;

    public Declared Program { get; } = new();

    public Scope Scope { get; private set; } = new(null, Wall.None);

    public Situation Situation { get; private set; } = new();

    /// <summary>Where statements are written to.</summary>
    public Code Code { get; private set; } = new();

    /// <summary>A name that nothing else has.</summary>
    public string Name(string prefix) => prefix + ++names;

    /// <summary>An expression of a type.</summary>
    public string Value(CodeType type)
    {
        if (depth >= ExpressionDepth || choose.Chance(20))
            return Leaves.Simple(type, this);
        var offers = new Offers();
        foreach (var family in Expressions)
            family.Offer(type, this, offers);
        depth++;
        var text = offers.Take(choose);
        depth--;
        return text;
    }

    /// <summary>An expression that has exactly the type, also where nothing says which one is wanted.</summary>
    public string Typed(CodeType type) => type is CollectionType { Family: "IEnumerable" or "IReadOnlyList" } ? $"(({type}){Value(type)})" : Value(type);

    /// <summary>An expression that the compiler can't calculate, so that nothing about it is an error.</summary>
    public string Moving(CodeType type) => Scope.Of(type).Where(variable => !variable.IsConstant).ToList() is { Count: > 0 } known && (depth >= ExpressionDepth || choose.Chance(85))
        ? choose.Of(known).Name
        : $"Trace.Same<{type}>({Value(type)})";

    /// <summary>A value that doesn't grow however often the statement runs that stores it.</summary>
    public string Stored(CodeType type) => type switch
    {
        TextType => choose.Chance(70) ? $"Trace.Short({Value(type)})" : Leaves.Simple(type, this),
        CollectionType or ArrayType or MapType or ObjectType or TupleType or FunctionType or DeclaredType or MaybeType { Of: not NumberType } => Leaves.Simple(type, this),
        _ => Value(type),
    };

    /// <summary>A lambda that asks whether an item equals a value.</summary>
    public string Equals(CodeType item) => Inside(Wall.Lambda, () => $"one => one.Equals({Value(item)})");

    /// <summary>Whether this is written into a lambda of a query: another one inside of it would make the compiler try all their overloads with each other.</summary>
    public bool IsInQuery { get; private set; }

    /// <summary>Writes a lambda of a query.</summary>
    public string InQuery(Func<string> write)
    {
        var before = IsInQuery;
        IsInQuery = true;
        var text = Inside(Wall.Lambda, write);
        IsInQuery = before;
        return text;
    }

    /// <summary>A condition that is as plain as can be.</summary>
    public string PlainTruth()
    {
        var level = depth;
        depth = ExpressionDepth;
        var text = Moving(AnyType.Truth);
        depth = level;
        return text;
    }

    /// <summary>Writes what lies inside another scope.</summary>
    public void Inside(Wall wall, Action write)
    {
        var around = Scope;
        Scope = new Scope(around, wall);
        write();
        Scope = around;
    }

    public string Inside(Wall wall, Func<string> write)
    {
        var text = "";
        Inside(wall, () => { text = write(); });
        return text;
    }

    /// <summary>Writes what lies in another situation, to other code where it is given.</summary>
    public void In(Situation situation, Action write, Code? code = null)
    {
        var (before, written, level) = (Situation, Code, depth);
        (Situation, Code, depth) = (situation, code ?? Code, 0);
        write();
        (Situation, Code, depth) = (before, written, level);
    }

    /// <summary>A block with a few statements of its own scope.</summary>
    public void Block(string head, int statements, Func<Situation, Situation>? change = null, Action? first = null, Action? last = null)
    {
        var inner = Situation with { Depth = Situation.Depth + 1 };
        In(change?.Invoke(inner) ?? inner, () => Code.Block(head, () => Inside(Wall.None, () =>
        {
            first?.Invoke();
            Statements(statements);
            last?.Invoke();
        })));
    }

    /// <summary>How many statements the next function may have in all its blocks.</summary>
    public void Allow(int statements) => budget = statements;

    public void Statements(int count)
    {
        for (var i = 0; i < count && budget-- > 0; i++)
        {
            var fitting = Kinds.Where(kind => kind.Fits(this)).ToList();
            var offers = new Offers();
            foreach (var kind in fitting)
                offers.Add(kind.Weight, () => { kind.Write(this); return ""; });
            offers.Take(choose);
        }
    }

    /// <summary>The body of a lambda or method on one line: a few statements and a result.</summary>
    public string Body(CodeType? result, int statements)
    {
        var code = new Code();
        In(new Situation { Returns = result, CanReturn = true, Depth = Situation.Depth + 1 }, () => Inside(Wall.None, () =>
        {
            Statements(statements);
            if (result is not null)
                Code.Line($"return {Value(result)};");
        }), code);
        return "{ " + code.OnOneLine() + " }";
    }
}

/// <summary>One family of expressions: the ways in which it can make a value of a type.</summary>
internal interface IExpressions
{
    void Offer(CodeType wanted, Author author, Offers offers);
}

/// <summary>One family of statements.</summary>
internal interface IStatements
{
    int Weight { get; }

    /// <summary>Whether there is something for it to do at this place.</summary>
    bool Fits(Author author);

    void Write(Author author);
}
