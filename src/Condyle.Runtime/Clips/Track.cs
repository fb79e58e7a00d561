namespace Condyle.Runtime;

/// <summary>Keys of one value, in order of time. Each holds until the next, the first one also before it.</summary>
internal class Track<T> : Motion<T>
    where T : struct
{
    private readonly List<float> times = [];
    private readonly List<T> values = [];
    private readonly SortedDictionary<Channels, float> uses = [];

    public IReadOnlyList<float> Times => times;

    public IReadOnlyList<T> Values => values;

    /// <summary>Each channel that a key takes away from its rest, and the time of the first key that was said to.</summary>
    public IReadOnlyDictionary<Channels, float> Uses => uses;

    /// <summary>Adds a key; false when there is one at that time already.</summary>
    public bool TryAdd(float at, T value, Channels used)
    {
        var index = times.BinarySearch(at);
        if (index >= 0)
            return false;
        Use(used, at);
        times.Insert(~index, at);
        Insert(~index, value);
        return true;
    }

    /// <summary>Says that a key takes channels away from their rest.</summary>
    public void Use(Channels used, float at)
    {
        foreach (var channel in ChannelNames.Each(used))
            uses.TryAdd(channel, at);
    }

    public override T At(float time)
    {
        var index = times.BinarySearch(time);
        if (index >= 0)
            return values[index];
        var next = ~index;
        return next == 0 ? values[0]
            : next == times.Count ? values[^1]
            : Between(next - 1, time);
    }

    /// <summary>The value after a key and before the next.</summary>
    protected virtual T Between(int earlier, float time) => values[earlier];

    protected virtual void Insert(int index, T value) => values.Insert(index, value);

    protected void Replace(int index, T value) => values[index] = value;

    protected int IndexOf(float at) => times.BinarySearch(at);
}

/// <summary>An option of a choice, by its name.</summary>
internal readonly record struct PickedOption(string Name);
