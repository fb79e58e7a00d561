namespace Condyle.Analyzers.Reading;

/// <summary>What C# copies when a value is assigned.</summary>
internal static class ValueCopies
{
    /// <summary>The value itself, or a copy of a struct or tuple of the interpreter's.</summary>
    public static object? Of(object? value) => value switch
    {
        TupleValue tuple => new TupleValue([.. tuple.Items.Select(Of)]),
        ObjectValue { Type.IsStruct: true } structure => structure.Copy(),
        _ => value,
    };
}
