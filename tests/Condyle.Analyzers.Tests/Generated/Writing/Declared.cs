namespace Condyle.Analyzers.Tests.Generated;

/// <summary>What a program has declared so far: later code can use it, so that nothing calls itself without end.</summary>
internal sealed class Declared
{
    public List<EnumType> Enums { get; } = [];

    public List<DeclaredType> Types { get; } = [];

    public List<FunctionType> Delegates { get; } = [];

    /// <summary>Static methods, with the type they stand in; they hand out what a call of them is.</summary>
    public List<Callable> Methods { get; } = [];

    /// <summary>Methods that are written behind a dot; the first parameter is what stands before it.</summary>
    public List<Callable> Extensions { get; } = [];

    /// <summary>Properties of extension blocks, by the type they extend.</summary>
    public List<(CodeType On, Member Member)> ExtensionProperties { get; } = [];

    /// <summary>What a rig says first.</summary>
    public List<string> Beginnings { get; } = [];

    /// <summary>What stands outside the rig's own class.</summary>
    public Code Code { get; } = new();
}
