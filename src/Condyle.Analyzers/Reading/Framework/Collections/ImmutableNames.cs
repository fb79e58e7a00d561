namespace Condyle.Analyzers.Reading;

/// <summary>The names of the immutable and the frozen collections.</summary>
internal static class ImmutableNames
{
    public const string Array = Space + "ImmutableArray";
    public const string List = Space + "ImmutableList";
    public const string Queue = Space + "ImmutableQueue";
    public const string Stack = Space + "ImmutableStack";
    public const string HashSet = Space + "ImmutableHashSet";
    public const string SortedSet = Space + "ImmutableSortedSet";
    public const string Dictionary = Space + "ImmutableDictionary";
    public const string SortedDictionary = Space + "ImmutableSortedDictionary";
    public const string FrozenSet = Frozen + "FrozenSet";
    public const string FrozenDictionary = Frozen + "FrozenDictionary";
    private const string Space = "System.Collections.Immutable.";
    private const string Frozen = "System.Collections.Frozen.";

    public static bool IsHashed(string type) => type.StartsWith(HashSet, StringComparison.Ordinal) || type.StartsWith(Dictionary, StringComparison.Ordinal);

    public static bool IsFrozen(string type) => type.StartsWith(Frozen, StringComparison.Ordinal);
}
