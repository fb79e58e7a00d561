namespace Condyle.Analyzers.Reading;

/// <summary>Names of members that are called although no code mentions them.</summary>
internal static class UnspokenNames
{
    /// <summary>What the compiler looks for by itself, extension methods too.</summary>
    public static HashSet<string> OfTheCompiler { get; } =
    [
        "Add", "GetEnumerator", "GetAsyncEnumerator", "GetAwaiter", "Deconstruct", "Dispose", "GetPinnableReference",
        "Select", "SelectMany", "Where", "Join", "GroupJoin", "OrderBy", "OrderByDescending", "ThenBy", "ThenByDescending", "GroupBy", "Cast",
    ];

    /// <summary>What the framework or the compiler calls on an object that it has.</summary>
    public static HashSet<string> OfObjects { get; } =
    [
        .. OfTheCompiler, "ToString", "Equals", "GetHashCode", "Compare", "CompareTo", "MoveNext", "MoveNextAsync", "Current", "Reset", "DisposeAsync", "IsCompleted", "GetResult", "OnCompleted", "UnsafeOnCompleted",
        "AppendLiteral", "AppendFormatted", "Slice", "Count", "Length", "Keys", "Values", "ContainsKey", "TryGetValue", "CopyTo", "Contains", "Format", "TryFormat", "GetFormat", "OnNext", "OnError", "Report", "Clone",
    ];

    /// <summary>Attributes of methods that nobody looks for to call them.</summary>
    public static HashSet<string> OfRemarks { get; } =
        ["SuppressMessage", "Obsolete", "MethodImpl", "Conditional", "Pure", "ExcludeFromCodeCoverage", "DebuggerStepThrough", "DebuggerHidden", "MemberNotNull", "MemberNotNullWhen", "DoesNotReturn"];
}
