namespace Condyle.Analyzers.Reading;

/// <summary>
/// In which order hashed collections hand out what they hold. The mutable ones keep the order of their places. The immutable ones go by
/// hash, which is known of small numbers, and of texts differs from run to run; of the others nothing is said.
/// </summary>
internal static class HashOrder
{
    public static IEnumerable<HashTable.Entry> Entries(HashTable table, string typeName, object? comparer)
    {
        var isSilent = ImmutableNames.IsFrozen(typeName) || typeName is MapValue.OldTable or MapValue.Concurrent;
        if (table.Count <= 1 || !(ImmutableNames.IsHashed(typeName) || isSilent))
            return table.Entries();
        if (isSilent || comparer is not null)
            throw Unknown();
        var hashed = table.Entries().Select(entry => (Hash: HashOf(EnumValue.NumberOf(entry.Key)) ?? throw Unknown(), Entry: entry)).OrderBy(pair => pair.Hash).ToList();
        return hashed.Zip(hashed.Skip(1), (a, b) => a.Hash == b.Hash).Contains(true) ? throw Unknown() : hashed.Select(pair => pair.Entry);
    }

    private static int? HashOf(object? key) => key switch
    {
        bool value => value ? 1 : 0,
        char value => value | (value << 16),
        sbyte value => value,
        byte value => value,
        short value => value,
        ushort value => value,
        int value => value,
        uint value => unchecked((int)value),
        long value => unchecked((int)value ^ (int)(value >> 32)),
        _ => null,
    };

    private static SequenceIsOpen Unknown() => new("the order in which a hashed collection hands out its items isn't known");
}
