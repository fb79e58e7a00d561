namespace Condyle.Analyzers.Reading;

/// <summary>Equality of values as C# has it for keys: strings by their characters, tuples, structs and records by their parts, objects by identity.</summary>
internal sealed class KnownEquality : IEqualityComparer<object>
{
    public static KnownEquality Instance { get; } = new();

    /// <summary>The same for values that may be null.</summary>
    public static IEqualityComparer<object?> Same { get; } = new Nullable();

    public new bool Equals(object? a, object? b)
    {
        using var level = NestingGuard.Deeper();
        return AreEqual(a, b);
    }

    public int GetHashCode(object value)
    {
        using var level = NestingGuard.Deeper();
        return value switch
        {
            TextValue text => text.ToString().GetHashCode(),
            TupleValue tuple => HashOf(tuple.Items),
            ObjectValue { Type.ComparesByParts: true } parts => HashOf(parts.Fields),
            ObjectValue identity => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(identity),
            _ => value.GetHashCode(),
        };
    }

    /// <summary>Whether nothing in a value is open, so that comparing it gives a sure answer.</summary>
    public static bool IsKnown(object? value)
    {
        using var level = NestingGuard.Deeper();
        return value switch
        {
            OpenValue => false,
            TextValue text => !text.Text.IsOpen,
            TupleValue tuple => tuple.Items.All(IsKnown),
            ObjectValue { Type.ComparesByParts: true } parts => parts.Fields.All(IsKnown),
            IHandle handle => !handle.Draft.IsOpen(handle.Id),
            _ => true,
        };
    }

    private static bool AreEqual(object? a, object? b) => (a, b) switch
    {
        _ when ReferenceEquals(a, b) => true,
        (null, _) or (_, null) => false,
        (TextValue x, TextValue y) => x.TryKnown(out var s) && y.TryKnown(out var t) && s == t,
        (TupleValue x, TupleValue y) => x.Items.SequenceEqual(y.Items, Same),
        (ObjectValue x, ObjectValue y) => x.Type.ComparesByParts && x.Type == y.Type && x.Fields.SequenceEqual(y.Fields, Same),
        (OpenValue, _) or (_, OpenValue) => false,
        _ => a.Equals(b),
    };

    private int HashOf(object?[] parts) => parts.Aggregate(17, (hash, part) => (hash * 31) + (part is null ? 0 : GetHashCode(part)));

    private sealed class Nullable : IEqualityComparer<object?>
    {
        bool IEqualityComparer<object?>.Equals(object? a, object? b) => Instance.Equals(a, b);

        public int GetHashCode(object? value) => value is null ? 0 : Instance.GetHashCode(value);
    }
}
