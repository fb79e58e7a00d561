using System.Reflection;

namespace Condyle.Analyzers.Reading;

/// <summary>The documentation id of a member of Condyle, as the compiler writes it for the same member's symbol.</summary>
internal static class DocId
{
    public static string Of(MethodBase method)
    {
        var name = method.IsConstructor ? "#ctor" : method.Name;
        var parameters = method.GetParameters();
        var id = $"M:{NameOf(method.DeclaringType!)}.{name}";
        if (parameters.Length > 0)
            id += $"({string.Join(",", parameters.Select(parameter => NameOf(parameter.ParameterType)))})";
        if (method is MethodInfo { Name: "op_Implicit" or "op_Explicit" } conversion)
            id += "~" + NameOf(conversion.ReturnType);
        return id;
    }

    private static string NameOf(Type type)
    {
        if (type.IsByRef)
            return NameOf(type.GetElementType()!) + "@";
        if (type.IsArray)
            return NameOf(type.GetElementType()!) + "[]";
        if (!type.IsGenericType)
            return type.FullName!.Replace('+', '.');
        var definition = type.GetGenericTypeDefinition().FullName!;
        return $"{definition.Substring(0, definition.IndexOf('`'))}{{{string.Join(",", type.GetGenericArguments().Select(NameOf))}}}";
    }
}
