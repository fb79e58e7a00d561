namespace Condyle.Analyzers.Reading;

/// <summary>The sizes that the framework gives its hash tables.</summary>
internal static class Primes
{
    private static readonly int[] Sizes =
    [
        3, 7, 11, 17, 23, 29, 37, 47, 59, 71, 89, 107, 131, 163, 197, 239, 293, 353, 431, 521, 631, 761, 919, 1103, 1327, 1597, 1931, 2333, 2801, 3371, 4049, 4861,
        5839, 7013, 8419, 10103, 12143, 14591, 17519, 21023, 25229, 30293, 36353, 43627, 52361, 62851, 75431, 90523, 108631, 130363, 156437, 187751, 225307,
    ];

    /// <summary>The size that has room for as many.</summary>
    public static int RoomFor(int count) => Sizes.FirstOrDefault(size => size >= count) is > 0 and var size ? size : int.MaxValue;

    /// <summary>The size of a table that grew until it held as many.</summary>
    public static int RoomOf(int count)
    {
        var size = RoomFor(0);
        while (size < count)
            size = RoomFor(2 * size);
        return size;
    }
}
