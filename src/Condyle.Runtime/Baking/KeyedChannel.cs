using System.Numerics;
using Condyle.Evaluation;

namespace Condyle.Runtime.Baking;

/// <summary>A channel of a baked track as it is played: with a key at every time, or at some of them. It remembers where it was read last.</summary>
internal abstract class KeyedChannel<T, TWide>(T[] values, int[]? keys, float[] times)
{
    private int last;

    /// <summary>The value some way on from one of the times to the next.</summary>
    public TWide At(int frame, double amount)
    {
        if (keys is null)
            return amount == 0 ? Wide(values[frame]) : Between(values[frame], values[frame + 1], amount);
        while (last > 0 && keys[last] > frame)
            last--;
        while (last + 1 < keys.Length && keys[last + 1] <= frame)
            last++;
        var (from, time) = (keys[last], Time(frame, amount));
        if (last + 1 == keys.Length || time <= times[from])
            return Wide(values[last]);
        return Between(values[last], values[last + 1], (time - times[from]) / ((double)times[keys[last + 1]] - times[from]));
    }

    protected abstract TWide Wide(T value);

    protected abstract TWide Between(T from, T to, double amount);

    private double Time(int frame, double amount) => amount == 0 ? times[frame] : times[frame] + (amount * ((double)times[frame + 1] - times[frame]));
}

internal sealed class VectorChannel(Vector3[] values, int[]? keys, float[] times) : KeyedChannel<Vector3, Vector3d>(values, keys, times)
{
    protected override Vector3d Wide(Vector3 value) => value;

    protected override Vector3d Between(Vector3 from, Vector3 to, double amount) => Vector3d.Lerp(from, to, amount);
}

internal sealed class TurnChannel(Quaternion[] values, int[]? keys, float[] times) : KeyedChannel<Quaternion, Quaterniond>(values, keys, times)
{
    protected override Quaterniond Wide(Quaternion value) => ((Quaterniond)value).Normalized();

    protected override Quaterniond Between(Quaternion from, Quaternion to, double amount) => NearRotations.Between(from, to, amount);
}
