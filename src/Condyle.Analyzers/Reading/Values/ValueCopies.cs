namespace Condyle.Analyzers.Reading;

/// <summary>What C# copies when a value is assigned.</summary>
internal static class ValueCopies
{
    /// <summary>The value itself, or a copy of a struct or tuple of the interpreter's.</summary>
    public static object? Of(object? value) => value switch
    {
        TupleValue { IsPair: false, IsObject: false } tuple => new TupleValue(PartsOf(tuple.Items)),
        ObjectValue { Type.IsStruct: true } structure => structure.Copy(),
        _ => value,
    };

    /// <summary>Copies of the parts of a value.</summary>
    public static object?[] PartsOf(object?[] parts)
    {
        using var level = Budget.Current.Deeper(parts.Length);
        return [.. parts.Select(Of)];
    }
}
