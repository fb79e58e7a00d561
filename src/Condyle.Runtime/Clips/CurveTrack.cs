using System.Numerics;

namespace Condyle.Runtime;

/// <summary>Keys of a value that goes from one to the next as a glTF 2.0 sampler has it (specification, appendix C).</summary>
internal abstract class CurveTrack<T> : Track<T>
    where T : struct
{
    private readonly List<T?> slopesIn = [];
    private readonly List<T?> slopesOut = [];

    public Interpolation Interpolation { get; set; }

    /// <summary>The slope with which the spline comes to a key, in units a second.</summary>
    public T SlopeInto(int key) => (key < slopesIn.Count ? slopesIn[key] : null) ?? Natural(key);

    /// <summary>The slope with which the spline leaves a key, in units a second.</summary>
    public T SlopeOutOf(int key) => (key < slopesOut.Count ? slopesOut[key] : null) ?? Natural(key);

    /// <summary>Makes the track a spline whose slopes at a key are these; false when there is no key at that time.</summary>
    public bool TrySlope(float at, Func<T, T> slopeAt, KeySide side)
    {
        var key = IndexOf(at);
        if (key < 0)
            return false;
        Interpolation = Interpolation.Spline;
        while (slopesIn.Count < Times.Count)
        {
            slopesIn.Add(null);
            slopesOut.Add(null);
        }

        if (side != KeySide.After)
            slopesIn[key] = slopeAt(Values[key]);
        if (side != KeySide.Before)
            slopesOut[key] = slopeAt(Values[key]);
        return true;
    }

    protected override T Between(int earlier, float time)
    {
        var (from, to) = (Times[earlier], Times[earlier + 1]);
        var amount = (time - from) / (to - from);
        return Interpolation switch
        {
            Interpolation.Step => Values[earlier],
            Interpolation.Linear => Straight(Values[earlier], Values[earlier + 1], amount),
            _ => Spline(earlier, to - from, amount),
        };
    }

    protected override void Insert(int index, T value)
    {
        base.Insert(index, value);
        if (slopesIn.Count == 0)
            return;
        slopesIn.Insert(index, null);
        slopesOut.Insert(index, null);
    }

    protected abstract T Straight(T from, T to, float amount);

    /// <summary>A sum of four values, each times a factor; a turn is brought to unit length.</summary>
    protected abstract T Sum((float Factor, T Value) a, (float Factor, T Value) b, (float Factor, T Value) c, (float Factor, T Value) d);

    /// <summary>The slope from one key to another.</summary>
    protected abstract T Slope(T from, T to, float seconds);

    /// <summary>Turns the slopes of a key over, as its value was.</summary>
    protected void TurnOverSlopes(int key, Func<T, T> over)
    {
        if (key >= slopesIn.Count)
            return;
        slopesIn[key] = slopesIn[key] is { } into ? over(into) : null;
        slopesOut[key] = slopesOut[key] is { } outOf ? over(outOf) : null;
    }

    /// <summary>Where no slope was said: from the key before to the key after; the first and the last key are left and reached at rest.</summary>
    private T Natural(int key) => key == 0 || key == Times.Count - 1 ? default : Slope(Values[key - 1], Values[key + 1], Times[key + 1] - Times[key - 1]);

    private T Spline(int earlier, float seconds, float t)
    {
        var (t2, t3) = (t * t, t * t * t);
        return Sum(
            ((2 * t3) - (3 * t2) + 1, Values[earlier]),
            (seconds * (t3 - (2 * t2) + t), SlopeOutOf(earlier)),
            ((-2 * t3) + (3 * t2), Values[earlier + 1]),
            (seconds * (t3 - t2), SlopeInto(earlier + 1)));
    }
}

internal sealed class VectorTrack : CurveTrack<Vector3>
{
    protected override Vector3 Straight(Vector3 from, Vector3 to, float amount) => Vector3.Lerp(from, to, amount);

    protected override Vector3 Sum((float Factor, Vector3 Value) a, (float Factor, Vector3 Value) b, (float Factor, Vector3 Value) c, (float Factor, Vector3 Value) d) =>
        (a.Factor * a.Value) + (b.Factor * b.Value) + (c.Factor * c.Value) + (d.Factor * d.Value);

    protected override Vector3 Slope(Vector3 from, Vector3 to, float seconds) => (to - from) / seconds;
}

/// <summary>Turns. Keys that are added one by one stand on the side of the key before them, so that a spline goes the short way too.</summary>
internal sealed class TurnTrack : CurveTrack<Quaternion>
{
    /// <summary>Whether the keys keep the signs that they are given: a spline from a file goes the way that its file says.</summary>
    public bool KeepsSigns { get; init; }

    protected override void Insert(int index, Quaternion value)
    {
        base.Insert(index, value);
        if (KeepsSigns)
            return;
        TryTurnOver(index);
        for (var key = index + 1; key < Values.Count && TryTurnOver(key); key++)
        {
        }
    }

    private bool TryTurnOver(int key)
    {
        if (key == 0 || Quaternion.Dot(Values[key - 1], Values[key]) >= 0)
            return false;
        Replace(key, -Values[key]);
        TurnOverSlopes(key, slope => -slope);
        return true;
    }

    protected override Quaternion Straight(Quaternion from, Quaternion to, float amount) => Quaternion.Slerp(from, to, amount);

    protected override Quaternion Sum((float Factor, Quaternion Value) a, (float Factor, Quaternion Value) b, (float Factor, Quaternion Value) c, (float Factor, Quaternion Value) d)
    {
        var sum = (a.Value * a.Factor) + (b.Value * b.Factor) + (c.Value * c.Factor) + (d.Value * d.Factor);
        return sum.LengthSquared() > 0 ? Quaternion.Normalize(sum) : a.Value;
    }

    protected override Quaternion Slope(Quaternion from, Quaternion to, float seconds) => (to - from) * (1 / seconds);
}

internal sealed class NumberTrack : CurveTrack<float>
{
    protected override float Straight(float from, float to, float amount) => from + ((to - from) * amount);

    protected override float Sum((float Factor, float Value) a, (float Factor, float Value) b, (float Factor, float Value) c, (float Factor, float Value) d) =>
        (a.Factor * a.Value) + (b.Factor * b.Value) + (c.Factor * c.Value) + (d.Factor * d.Value);

    protected override float Slope(float from, float to, float seconds) => (to - from) / seconds;
}
