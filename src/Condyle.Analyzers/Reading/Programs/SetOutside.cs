using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Reading;

/// <summary>What others may have set before a rig is built, of the fields that a reading found as they were initialised.</summary>
internal sealed class SetOutside(Compilation compilation, Func<SyntaxTree, SemanticModel> models, CancellationToken cancellation)
{
    private readonly OutsideWrites writes = new(compilation, models, cancellation);
    private readonly Dictionary<string, OutsideWrite> known = [];
    private readonly HashSet<string> asked = [];

    /// <summary>Whether any code may run before a rig is built.</summary>
    public bool IsPossible => !OutsideCode.Of(compilation, cancellation).IsEmpty;

    /// <summary>What is known to be done to a field; that is asked for once a path has been read.</summary>
    public OutsideWrite To(string field)
    {
        if (known.TryGetValue(field, out var write))
            return write;
        asked.Add(field);
        return OutsideWrite.None;
    }

    /// <summary>Looks up the fields that were asked for.</summary>
    /// <returns>Whether one of them was taken as it was initialised although others set it.</returns>
    public bool FindsMore()
    {
        var finds = false;
        foreach (var field in asked)
            finds |= (known[field] = writes.To(field)) != OutsideWrite.None;
        asked.Clear();
        return finds;
    }
}
