namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A name that stands for a value.</summary>
/// <param name="Name">What is written; several words for a field of another type.</param>
/// <param name="CanWrite">Whether it can be assigned to.</param>
/// <param name="IsPlace">Whether it can be handed on by reference.</param>
/// <param name="CanCapture">Whether a lambda may use it.</param>
/// <param name="IsEverywhere">Whether it is no local: static code sees it too.</param>
/// <param name="IsConstant">Whether the compiler knows its value.</param>
internal sealed record Variable(
    string Name, CodeType Type, bool CanWrite = true, bool IsPlace = true, bool CanCapture = true, bool IsEverywhere = false, bool IsConstant = false);

/// <summary>What a scope hides of the scopes around it.</summary>
internal enum Wall
{
    /// <summary>A block hides nothing.</summary>
    None,

    /// <summary>A lambda or a local function can't use parameters by reference.</summary>
    Lambda,

    /// <summary>Static code sees no locals of the code around it.</summary>
    Static,
}

/// <summary>The names that can be seen from one place in the code.</summary>
internal sealed class Scope(Scope? around, Wall wall)
{
    private readonly List<Variable> own = [];
    private readonly List<Callable> functions = [];

    public void Add(Variable variable) => own.Add(variable);

    public void Add(Callable function) => functions.Add(function);

    /// <summary>The local functions.</summary>
    public IReadOnlyList<Callable> Functions => wall == Wall.Static ? functions : [.. functions, .. around?.Functions ?? []];

    public IReadOnlyList<Variable> All => [.. Visible()];

    /// <summary>The names of a type, the nearest first.</summary>
    public IReadOnlyList<Variable> Of(CodeType type) => [.. Visible().Where(variable => variable.Type.Equals(type))];

    public IReadOnlyList<Variable> Writable(CodeType type) => [.. Of(type).Where(variable => variable.CanWrite)];

    private IEnumerable<Variable> Visible()
    {
        var outer = around?.Visible() ?? [];
        return own.Concat(wall switch
        {
            Wall.Lambda => outer.Where(variable => variable.CanCapture),
            Wall.Static => outer.Where(variable => variable.IsEverywhere),
            _ => outer,
        });
    }
}
