namespace Condyle.Analyzers.Reading;

/// <summary>What types say of themselves.</summary>
internal static class TypeCalls
{
    public static void Register()
    {
        foreach (var type in new[] { "System.Object", "System.Exception" })
            FrameworkTable.Add(type, "GetType", call => TypeOf(call[0]) ?? (object)OpenValue.Any);
        FrameworkTable.Add("System.Reflection.MemberInfo", "get_Name", call => call[0] is TypeKey { Shape: not (TypeShape.Parameter or TypeShape.Nullable) } type ? TextValue.Plain(type.Name) : TextValue.Open);
        FrameworkTable.Add("System.Type", "op_Equality", call => call.Arguments is [TypeKey a, TypeKey b] ? a.Equals(b) : null);
        FrameworkTable.Add("System.Type", "op_Inequality", call => call.Arguments is [TypeKey a, TypeKey b] ? !a.Equals(b) : null);
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
