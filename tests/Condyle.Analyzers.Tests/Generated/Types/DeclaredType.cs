namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A class, structure, record or interface of the program's.</summary>
internal sealed class DeclaredType(string name, bool isStruct) : CodeType(name)
{
    /// <summary>Its fields and properties.</summary>
    public List<Member> Members { get; } = [];

    public List<Callable> Methods { get; } = [];

    /// <summary>How objects of it, or of types below it, are made.</summary>
    public List<Callable> Constructors { get; } = [];

    /// <summary>Types that come of it and can stand in its place.</summary>
    public List<DeclaredType> Derived { get; } = [];

    /// <summary>The operators that take two of it and give one.</summary>
    public List<string> Operators { get; } = [];

    public bool IsRecord { get; init; }

    /// <summary>Whether two of it can be compared, stepped and asked for their truth.</summary>
    public bool IsOrdered { get; init; }

    /// <summary>Whether a number can be added to it where it is, and stored in it at an index.</summary>
    public bool Grows { get; init; }

    /// <summary>What it is a collection of; none where it is none.</summary>
    public CodeType? Holds { get; init; }

    /// <summary>The types of a record's parameters, in order.</summary>
    public IReadOnlyList<Member> Parts { get; init; } = [];

    /// <summary>How its text is made of an object of it.</summary>
    public string Shows { get; init; } = "Describe()";

    public override bool IsValue => isStruct;
}

/// <summary>A field or property.</summary>
internal sealed record Member(string Name, CodeType Type, bool CanWrite, bool CanInitialise = false);

/// <summary>How a parameter is handed over.</summary>
internal enum Passing
{
    Value,
    Optional,
    Ref,
    Out,
    In,
    Params,
}

internal sealed record Parameter(string Name, CodeType Type, Passing Passing = Passing.Value);

/// <summary>Something that can be called.</summary>
/// <param name="Name">What is written before the parenthesis; for a method of an object what follows its dot.</param>
internal sealed record Callable(string Name, CodeType? Result, IReadOnlyList<Parameter> Parameters)
{
    /// <summary>Whether a method group of it can become a <c>Func</c> or <c>Action</c>.</summary>
    public bool IsPlain => Parameters.All(parameter => parameter.Passing == Passing.Value);
}
