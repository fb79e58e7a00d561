namespace Condyle.Analyzers.Reading;

/// <summary>Equality of values as C# has it for keys: strings by their characters, tuples, structs and records by their parts, objects by identity.</summary>
internal class KnownEquality : IEqualityComparer<object?>
{
    public static KnownEquality Instance { get; } = new();

    /// <summary>Whether two places hold the very same, so that it makes no difference which of them is meant.</summary>
    public static IEqualityComparer<object?> Same { get; } = new SameState();

    protected KnownEquality()
    {
    }

    public new bool Equals(object? a, object? b) => (a, b) switch
    {
        _ when ReferenceEquals(a, b) => true,
        (null, _) or (_, null) => false,
        (TextValue x, TextValue y) => AreEqual(x, y),
        (TupleValue x, TupleValue y) => PartsAreEqual(x.Items, y.Items),
        (ObjectValue x, _) when AreEqual(x, b) is { } answer => answer,
        (ObjectValue x, ObjectValue y) => x.Type.ComparesByParts && x.Type == y.Type && PartsAreEqual(x.Fields, y.Fields),
        (OpenValue, _) or (_, OpenValue) => false,
        _ => OthersAreEqual(a, b),
    };

    public int GetHashCode(object? value) => value switch
    {
        null => 0,
        TextValue text => HashOf(text),
        TupleValue tuple => HashOf(tuple.Items),
        ObjectValue own when HashOf(own) is { } hash => hash,
        ObjectValue { Type.ComparesByParts: true } parts => HashOf(parts.Fields),
        ObjectValue identity => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(identity),
        _ => HashOfOther(value),
    };

    /// <summary>Whether nothing in a value is open, so that comparing it gives a sure answer.</summary>
    public static bool IsKnown(object? value) => value switch
    {
        OpenValue => false,
        TextValue text => !text.Text.IsOpen,
        TupleValue tuple => PartsAreKnown(tuple.Items),
        ObjectValue { Type.ComparesByParts: true } parts => PartsAreKnown(parts.Fields),
        IHandle handle => !Handles.IsOpen(handle),
        _ => true,
    };

    /// <summary>The answer of the objects' own code; none where they have none.</summary>
    protected virtual bool? AreEqual(ObjectValue a, object b) => null;

    protected virtual int? HashOf(ObjectValue value) => null;

    protected virtual bool AreEqual(TextValue a, TextValue b) => a.TryKnown(out var x) && b.TryKnown(out var y) && x == y;

    protected virtual int HashOf(TextValue text) => text.ToString().GetHashCode();

    protected virtual bool OthersAreEqual(object a, object b) => a.Equals(b);

    protected virtual int HashOfOther(object value) => value.GetHashCode();

    private bool PartsAreEqual(object?[] a, object?[] b)
    {
        using var level = Budget.Current.Deeper(a.Length);
        return a.SequenceEqual(b, this);
    }

    private static bool PartsAreKnown(object?[] parts)
    {
        using var level = Budget.Current.Deeper(parts.Length);
        return parts.All(IsKnown);
    }

    private int HashOf(object?[] parts)
    {
        using var level = Budget.Current.Deeper(parts.Length);
        return parts.Aggregate(17, (hash, part) => (hash * 31) + GetHashCode(part));
    }
}
