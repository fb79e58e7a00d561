namespace Condyle.Analyzers.Reading;

/// <summary>What the user's own types do for the framework: compare and hash what they are handed, or themselves.</summary>
internal static class OwnMembers
{
    public static readonly IReadOnlyList<MethodRef> Compare = Methods(
        "System.Collections.Generic.IComparer`1.Compare(`0,`0)", "System.Collections.IComparer.Compare(System.Object,System.Object)");

    public static readonly IReadOnlyList<MethodRef> CompareTo = Methods("System.IComparable`1.CompareTo(`0)", "System.IComparable.CompareTo(System.Object)");

    public static readonly IReadOnlyList<MethodRef> AreEqual = Methods(
        "System.Collections.Generic.IEqualityComparer`1.Equals(`0,`0)", "System.Collections.IEqualityComparer.Equals(System.Object,System.Object)");

    public static readonly IReadOnlyList<MethodRef> HashOf = Methods(
        "System.Collections.Generic.IEqualityComparer`1.GetHashCode(`0)", "System.Collections.IEqualityComparer.GetHashCode(System.Object)");

    public static readonly IReadOnlyList<MethodRef> Hash = Methods("System.Object.GetHashCode");

    /// <summary>The code of the first of some methods that an object's type has; none where it has none.</summary>
    public static CodeBody? Find(ObjectValue own, IReadOnlyList<MethodRef> methods, Machine machine)
    {
        foreach (var method in methods)
        {
            if (machine.Program.BodyFor(own.Type, method) is { } body)
                return body;
        }

        return null;
    }

    private static IReadOnlyList<MethodRef> Methods(params string[] ids) => [.. ids.Select(id => new MethodRef("M:" + id, "", ""))];
}
