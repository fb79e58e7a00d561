namespace Condyle.Analyzers.Reading;

/// <summary>How collections are made: of nothing, with room, of items, with a comparer.</summary>
internal static class Making
{
    /// <summary>The items that a constructor is handed: none where it gets none; unknown ones make what is made unknown.</summary>
    public static (List<object?> Items, bool AreOpen) ItemsOf(Invocation call)
    {
        for (var i = 0; i < call.Count; i++)
        {
            var type = call.Parameter(i);
            if (IsComparer(type))
                continue;
            if (type is { Shape: >= TypeShape.Char and <= TypeShape.Decimal } || (type is null && call[i] is int))
            {
                if (call[i] is int and < 0)
                    throw OutOfRange();
                continue;
            }

            if (call[i] is null)
                throw new ThrownByCode("System.ArgumentNullException", "The items of a collection are null.");
            return Sequences.ListOf(call[i], call.Machine) is { } items ? (items, false) : ([], true);
        }

        return ([], false);
    }

    /// <summary>The comparer that a constructor is handed, or null.</summary>
    public static object? ComparerOf(Invocation call)
    {
        for (var i = 0; i < call.Count; i++)
        {
            if (IsComparer(call.Parameter(i)))
                return call[i];
        }

        return null;
    }

    public static ThrownByCode OutOfArray() => new("System.IndexOutOfRangeException", "An array has no such item.");

    public static ThrownByCode OutOfRange() => new("System.ArgumentOutOfRangeException", "A collection has no such place.");

    /// <summary>A place that has an item.</summary>
    public static int Place(int place, int count) => place >= 0 && place < count ? place : throw OutOfRange();

    /// <summary>Refuses a stretch that doesn't lie in a collection.</summary>
    public static (int Start, int Count) Stretch(int start, int count, int of)
    {
        if (start < 0 || count < 0)
            throw OutOfRange();
        return start + count <= of ? (start, count) : throw new ThrownByCode("System.ArgumentException", "A collection has no such stretch.");
    }

    private static bool IsComparer(TypeKey? type) => type?.PlainName is "IEqualityComparer" or "IComparer" or "EqualityComparer" or "Comparer" or "StringComparer";
}
