using System.Numerics;

namespace Condyle.Runtime;

/// <summary>Keys of one value over time, in order of time, read as a glTF 2.0 sampler is: held before the first key and after the last.</summary>
internal abstract class Track<T>
    where T : struct
{
    private readonly List<float> times = [];
    private readonly List<T> values = [];
    private readonly SortedDictionary<Channels, float> uses = [];

    public Interpolation Interpolation { get; set; }

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
        foreach (var channel in ChannelNames.Each(used))
            uses.TryAdd(channel, at);
        times.Insert(~index, at);
        values.Insert(~index, value);
        return true;
    }

    public T At(float time)
    {
        var index = times.BinarySearch(time);
        if (index >= 0)
            return values[index];
        var next = ~index;
        if (next == 0)
            return values[0];
        if (next == times.Count || Interpolation == Interpolation.Step)
            return values[next - 1];
        var (from, to) = (times[next - 1], times[next]);
        return Between(values[next - 1], values[next], (time - from) / (to - from));
    }

    protected abstract T Between(T from, T to, float amount);
}

internal sealed class VectorTrack : Track<Vector3>
{
    protected override Vector3 Between(Vector3 from, Vector3 to, float amount) => Vector3.Lerp(from, to, amount);
}

internal sealed class TurnTrack : Track<Quaternion>
{
    protected override Quaternion Between(Quaternion from, Quaternion to, float amount) => Quaternion.Slerp(from, to, amount);
}

internal sealed class NumberTrack : Track<float>
{
    protected override float Between(float from, float to, float amount) => from + ((to - from) * amount);
}

/// <summary>An option of a choice, by its name.</summary>
internal readonly record struct PickedOption(string Name);

/// <summary>Options by their names. Nothing lies between two of them: the earlier one stays picked.</summary>
internal sealed class ChoiceTrack : Track<PickedOption>
{
    protected override PickedOption Between(PickedOption from, PickedOption to, float amount) => from;
}

/// <summary>The same by their indices.</summary>
internal sealed class PickTrack : Track<int>
{
    protected override int Between(int from, int to, float amount) => from;
}
