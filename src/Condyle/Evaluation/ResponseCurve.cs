using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A key of a curve with the slopes by which the curve arrives and leaves.</summary>
internal readonly record struct CurveKey(double At, double Value, double Arrives, double Leaves);

/// <summary>
/// A response's curve. Between keys k and k+1, with d = the distance between them and t = the share of it passed, it is the cubic Hermite spline of
/// glTF 2.0 (appendix C, "Cubic Spline Interpolation"):
/// (2t³ − 3t² + 1)·vₖ + d·(t³ − 2t² + t)·bₖ + (−2t³ + 3t²)·vₖ₊₁ + d·(t³ − t²)·aₖ₊₁, with the slope bₖ by which key k is left and aₖ₊₁ by which the next one is reached.
/// A key without a slope of its own takes on either side that of the straight line to its neighbour, so that two such keys have a straight line between them.
/// </summary>
/// <remarks>Beyond its ends it holds, or goes on straight by the end's slope where it is continued. Continuous; its slope needn't be.</remarks>
internal sealed class ResponseCurve
{
    private ResponseCurve(IReadOnlyList<CurveKey> keys) => Keys = keys;

    /// <summary>At least one, in order.</summary>
    public IReadOnlyList<CurveKey> Keys { get; }

    /// <exception cref="RigGeometryException">A number isn't known, or two keys lie at the same value.</exception>
    public static ResponseCurve Of(RigResponse response)
    {
        if (response.KeysAreOpen)
            throw new RigGeometryException($"The keys of {response.Title} aren't known.");
        var what = $"A key of {response.Title}";
        var keys = response.Keys
            .Select(key => (At: (double)Facts.Known(key.At, what), Value: (double)Facts.Known(key.Value, what), Slope: Facts.Known(key.Slope, what)))
            .OrderBy(key => key.At).ToList();
        var isContinued = Facts.Known(response.IsContinued, $"Whether {response.Title} is continued");
        double? Between(int k) => k < 0 || k + 1 >= keys.Count ? null : (keys[k + 1].Value - keys[k].Value) / (keys[k + 1].At - keys[k].At);
        for (var k = 1; k < keys.Count; k++)
        {
            if (keys[k].At == keys[k - 1].At)
                throw new RigGeometryException($"{Sentence(response.Title)} has two keys at {Invariant.Print(keys[k].At)}. Keep one of them.", response);
        }

        return new([.. keys.Select((key, k) => new CurveKey(
            key.At,
            key.Value,
            k == 0 && !isContinued ? 0 : key.Slope ?? Between(k - 1) ?? Between(k) ?? 0,
            k == keys.Count - 1 && !isContinued ? 0 : key.Slope ?? Between(k) ?? Between(k - 1) ?? 0))]);
    }

    public double At(double x)
    {
        var (first, last) = (Keys[0], Keys[Keys.Count - 1]);
        if (x <= first.At)
            return first.Value + (first.Arrives * (x - first.At));
        if (x >= last.At)
            return last.Value + (last.Leaves * (x - last.At));
        var k = 0;
        while (Keys[k + 1].At < x)
            k++;
        var (from, to) = (Keys[k], Keys[k + 1]);
        var d = to.At - from.At;
        var t = (x - from.At) / d;
        var (t2, t3) = (t * t, t * t * t);
        return (((2 * t3) - (3 * t2) + 1) * from.Value) + (d * (t3 - (2 * t2) + t) * from.Leaves)
            + (((-2 * t3) + (3 * t2)) * to.Value) + (d * (t3 - t2) * to.Arrives);
    }

    private static string Sentence(string title) => char.ToUpperInvariant(title[0]) + title.Substring(1);
}
