namespace Condyle.Runtime.Baking;

/// <summary>One channel of a joint over all samples. It takes up room only from when it leaves its rest: what is stored is what will be written.</summary>
internal sealed class ChannelSamples<T>(int count, T rest)
    where T : struct
{
    /// <summary>The values; null while it has stayed at rest.</summary>
    public T[]? Values { get; private set; }

    /// <summary>The value before a sample; at rest before the first.</summary>
    public T Before(int sample) => Values is null || sample == 0 ? rest : Values[sample - 1];

    /// <summary>Room for samples from one on. Those before them are there; those after them must come.</summary>
    public Span<T> Room(int first, int length)
    {
        if (Values is null)
        {
            // Most of it is written once, when its samples come.
            Values = GC.AllocateUninitializedArray<T>(count);
            Values.AsSpan(0, first).Fill(rest);
        }

        return Values.AsSpan(first, length);
    }

    /// <summary>Stores it even at rest.</summary>
    public void Keep()
    {
        if (Values is null)
            Room(count, 0);
    }
}
