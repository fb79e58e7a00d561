namespace Condyle.Analyzers.Reading;

/// <summary>What arrays, spans, indices and ranges say of themselves.</summary>
internal static class ArrayCalls
{
    public static void Register()
    {
        FrameworkTable.Open("System.Array.GetLength", (_, arguments) => Dimension(arguments) is { } length ? length : null);
        FrameworkTable.Open("System.Array.GetUpperBound", (_, arguments) => Dimension(arguments) is { } length ? length - 1 : null);
        FrameworkTable.Open("System.Array.GetLowerBound", (_, arguments) => Dimension(arguments) is not null ? 0 : null);
        FrameworkTable.Open("System.Array.get_Rank", (_, arguments) => arguments[0] is ArrayValue array ? array.Lengths.Length : null);
        FrameworkTable.Open("System.Array.Clone", (_, arguments) => arguments[0] is ArrayValue array ? new ArrayValue([.. array.Items], array.Lengths) : OpenValue.Any);
        foreach (var type in new[] { "System.Span.", "System.ReadOnlySpan." })
        {
            FrameworkTable.Open(type + ".ctor", (_, arguments) => OfParts(arguments));
            FrameworkTable.Open(type + "get_Length", (_, arguments) => PartOf.CountOf(arguments[0]) is { } count ? count : null);
            FrameworkTable.Open(type + "get_IsEmpty", (_, arguments) => PartOf.CountOf(arguments[0]) is { } count ? count == 0 : null);
            FrameworkTable.Open(type + "get_Empty", (_, _) => new SpanValue([], 0, 0));
            FrameworkTable.Open(type + "Slice", (_, arguments) => Slice(arguments));
            FrameworkTable.Open(type + "ToArray", (machine, arguments) => Sequences.ListOf(arguments[0], machine) is { } items ? new ArrayValue([.. items]) : OpenValue.Any);
            FrameworkTable.Open(type + "ToString", (_, arguments) => arguments[0] switch
            {
                TextValue text => text,
                IStretch { Length: > 0 } span when Enumerable.Range(span.Start, span.Length).All(at => span.Items[at] is char) =>
                    TextValue.Plain(string.Concat(Enumerable.Range(span.Start, span.Length).Select(at => (char)span.Items[at]!))),
                _ => TextValue.Open,
            });
            FrameworkTable.Open(type + "Fill", (machine, arguments) => Fill(machine, arguments[0], arguments[1]));
            FrameworkTable.Overloaded(type + "Clear", (machine, arguments, method) => Fill(machine, arguments[0], Defaults.Of(method.TypeArguments.FirstOrDefault(), machine)));
        }

        FrameworkTable.Open("System.MemoryExtensions.AsSpan", (_, arguments) => arguments.Length == 1 ? MakeSpan.Of(arguments[0]) : Slice([MakeSpan.Of(arguments[0]), .. arguments.Skip(1)]));
        FrameworkTable.Open("System.Index..ctor", (_, arguments) => arguments is [int value, ..] && (arguments.Length == 1 || arguments[1] is bool) ? new IndexValue(value, arguments.Length > 1 && arguments[1] is true) : OpenValue.Any);
        FrameworkTable.Open("System.Index.get_Value", (_, arguments) => arguments[0] is IndexValue index ? index.Value : null);
        FrameworkTable.Open("System.Index.get_IsFromEnd", (_, arguments) => arguments[0] is IndexValue index ? index.FromEnd : null);
        FrameworkTable.Open("System.Index.GetOffset", (_, arguments) => arguments is [IndexValue index, int length] ? index.Of(length) : null);
        FrameworkTable.Open("System.Index.get_Start", (_, _) => new IndexValue(0, FromEnd: false));
        FrameworkTable.Open("System.Index.get_End", (_, _) => new IndexValue(0, FromEnd: true));
        FrameworkTable.Open("System.Index.FromEnd", (_, arguments) => arguments is [int value] ? new IndexValue(value, FromEnd: true) : OpenValue.Any);
        FrameworkTable.Open("System.Index.FromStart", (_, arguments) => arguments is [int value] ? new IndexValue(value, FromEnd: false) : OpenValue.Any);
        FrameworkTable.Open("System.Range..ctor", (_, arguments) => arguments is [IndexValue start, IndexValue end] ? new RangeValue(start, end) : OpenValue.Any);
        FrameworkTable.Open("System.Range.get_Start", (_, arguments) => arguments[0] is RangeValue range ? range.Start : OpenValue.Any);
        FrameworkTable.Open("System.Range.get_End", (_, arguments) => arguments[0] is RangeValue range ? range.End : OpenValue.Any);
        FrameworkTable.Open("System.Range.get_All", (_, _) => new RangeValue(new IndexValue(0, FromEnd: false), new IndexValue(0, FromEnd: true)));
        FrameworkTable.Open("System.Range.Equals", (_, arguments) => arguments is [RangeValue a, RangeValue b] ? a.Equals(b) : null);
        FrameworkTable.Open("System.Index.Equals", (_, arguments) => arguments is [IndexValue a, IndexValue b] ? a.Equals(b) : null);
        FrameworkTable.Open("System.Range.GetOffsetAndLength", (_, arguments) => arguments is [RangeValue range, int length]
            ? new TupleValue([range.Start.Of(length), range.End.Of(length) - range.Start.Of(length)])
            : OpenValue.Any);
        foreach (var type in new[] { "System.Object", "System.Exception" })
            FrameworkTable.Open(type + ".GetType", (_, arguments) => TypeOf(arguments[0]) ?? (object)OpenValue.Any);
        FrameworkTable.Open("System.Reflection.MemberInfo.get_Name", (_, arguments) => arguments[0] is TypeKey { Shape: not TypeShape.Parameter } type ? TextValue.Plain(type.Name) : TextValue.Open);
        FrameworkTable.Open("System.Type.op_Equality", (_, arguments) => arguments is [TypeKey a, TypeKey b] ? a.Equals(b) : null);
        FrameworkTable.Open("System.Type.op_Inequality", (_, arguments) => arguments is [TypeKey a, TypeKey b] ? !a.Equals(b) : null);
    }

    private static int? Dimension(object?[] arguments)
    {
        if (arguments[0] is not ArrayValue array || arguments[1] is not int dimension)
            return null;
        return dimension >= 0 && dimension < array.Lengths.Length
            ? array.Lengths[dimension]
            : throw new ThrownByCode("System.IndexOutOfRangeException", $"An array has no dimension {dimension}.");
    }

    private static object? OfParts(object?[] arguments) => arguments switch
    {
        [var whole] => MakeSpan.Of(whole),
        [var whole, int, int] => Slice([MakeSpan.Of(whole), arguments[1], arguments[2]]),
        _ => OpenValue.Any,
    };

    private static object? Slice(object?[] arguments) => arguments switch
    {
        [_, int start] => PartOf.Take(arguments[0], new RangeValue(new IndexValue(start, FromEnd: false), new IndexValue(0, FromEnd: true))) ?? OpenValue.Any,
        [_, int start, int length] => PartOf.Take(arguments[0], new RangeValue(new IndexValue(start, FromEnd: false), new IndexValue(start + length, FromEnd: false))) ?? OpenValue.Any,
        [_, RangeValue range] => PartOf.Take(arguments[0], range) ?? OpenValue.Any,
        _ => OpenValue.Any,
    };

    private static object? Fill(Machine machine, object? items, object? value)
    {
        if (items is not IStretch known)
            return null;
        machine.Budget.Spend(known.Length);
        for (var i = 0; i < known.Length; i++)
            machine.Write(known.Items, known.Start + i, ValueCopies.Of(value));
        return null;
    }

    private static TypeKey? TypeOf(object? value) => value switch
    {
        ObjectValue { Type: var own } when !own.Id.StartsWith("anonymous ", StringComparison.Ordinal) && own.Parameters.Count == 0 => new TypeKey(own.Id, TypeShape.User) { Name = own.Name },
        EnumValue known => known.Type,
        TextValue => new TypeKey("string", TypeShape.String) { Name = "String" },
        ExceptionValue thrown => new TypeKey(thrown.Type, TypeShape.Other) { Name = thrown.Type.Substring(thrown.Type.LastIndexOf('.') + 1) },
        _ when TypeTests.ShapeOf(value) is { } shape => new TypeKey(KeywordOf(shape), shape) { Name = shape == TypeShape.Bool ? "Boolean" : shape.ToString() },
        _ => null,
    };

    private static string KeywordOf(TypeShape shape) => shape switch
    {
        TypeShape.Int16 => "short",
        TypeShape.UInt16 => "ushort",
        TypeShape.Int32 => "int",
        TypeShape.UInt32 => "uint",
        TypeShape.Int64 => "long",
        TypeShape.UInt64 => "ulong",
        TypeShape.Single => "float",
        _ => shape.ToString().ToLowerInvariant(),
    };
}
