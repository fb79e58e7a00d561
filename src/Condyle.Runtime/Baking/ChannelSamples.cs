namespace Condyle.Runtime.Baking;

/// <summary>One channel of a joint over all samples. It takes up room only from when it leaves its rest: what is stored is what will be written.</summary>
internal sealed class ChannelSamples<T>(int count, T rest)
    where T : struct
{
    /// <summary>The values; null while it has stayed at rest.</summary>
    public T[]? Values { get; private set; }

    public T Before(int sample) => Values is null || sample == 0 ? rest : Values[sample - 1];

    public void Take(int sample, T value, bool isAtRest)
    {
        if (Values is null)
        {
            if (isAtRest)
                return;
            Keep();
        }

        Values![sample] = value;
    }

    /// <summary>Stores it even at rest.</summary>
    public void Keep()
    {
        if (Values is not null)
            return;
        Values = new T[count];
        Array.Fill(Values, rest);
    }
}
