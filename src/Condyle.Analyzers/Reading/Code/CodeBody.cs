using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>A function lowered to flat code.</summary>
internal sealed class CodeBody(string name, string path)
{
    private List<WeakReference<SyntaxTree>>? others;

    public string Name { get; } = name;

    /// <summary>The path of the file that it stands in.</summary>
    public string Path { get; } = path;

    public Instruction[] Code { get; set; } = [];

    public IReadOnlyList<Handler> Handlers { get; set; } = [];

    /// <summary>Parameters come first, then locals and temporaries.</summary>
    public int SlotCount { get; set; }

    public int ParameterCount { get; set; }

    /// <summary>The slots whose variables a nested function captures: they hold a cell.</summary>
    public IReadOnlyList<int> CapturedSlots { get; set; } = [];

    public bool IsIterator { get; set; }

    /// <summary>Whether an iterator hands out its items once, to whoever moves it on.</summary>
    public bool IsEnumerator { get; set; }

    /// <summary>The type of an iterator's items; none where it isn't one.</summary>
    public TypeKey? ItemType { get; set; }

    /// <summary>Whether its result comes in a task.</summary>
    public bool IsAsync { get; set; }

    /// <summary>What is created is the result: a constructor.</summary>
    public bool ReturnsThis { get; set; }

    public bool ReturnsValue { get; set; }

    /// <summary>Whether it says in which line it stands.</summary>
    public bool NamesItsLine { get; set; }

    /// <summary>The same function after an edit of its file.</summary>
    public CodeBody Moved(Relocation to, Action<CodeBody> first)
    {
        var moved = (CodeBody)MemberwiseClone();
        // It may hold itself.
        first(moved);
        moved.Code = Array.ConvertAll(Code, instruction => instruction.Moved(to));
        return moved;
    }

    /// <summary>Notes that it holds a place in another file.</summary>
    public void Holds(SyntaxTree other) => (others ??= []).Add(new WeakReference<SyntaxTree>(other));

    /// <summary>Whether it can be kept for a compilation: places in other files are right only as long as those are the very same.</summary>
    public bool Fits(Compilation compilation) => others is null || others.TrueForAll(other => other.TryGetTarget(out var tree) && compilation.ContainsSyntaxTree(tree));
}

/// <summary>A stretch of code whose exceptions are caught: any, or those of a type. What is left has been left already: final parts that a jump out of it runs.</summary>
internal sealed record Handler(JumpLabel Start, JumpLabel End, JumpLabel Target, TypeKey? Catches, IReadOnlyList<(JumpLabel Start, JumpLabel End)> Left)
{
    /// <summary>Whether it runs a final part or says something and lets the exception go on, whatever happens.</summary>
    public bool LetsGo { get; init; }

    public bool Covers(int position) => position >= Start.Position && position < End.Position && !Left.Any(left => position >= left.Start.Position && position < left.End.Position);
}
