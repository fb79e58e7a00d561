using System;
using System.Collections.Generic;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R35;

/// <summary>
/// A hawser between bollard and fairlead. At rest it hangs in the catenary y = a·cosh((x − x₀)/a) + c, parametrised by arc length;
/// its joints are weighted over three handles by the Bernstein polynomials of degree two, which are a partition of unity.
/// </summary>
public sealed class SlackHawser : IRigDefinition
{
    private const int N = 9;
    private static readonly Vector3 P = new(-4f, 1.1f, 0.5f), Q = new(6f, 3.4f, 2.5f);

    public void Define(RigDraft rig)
    {
        var curve = Catenary.Through(P, Q, length: 1.12 * (Q - P).Length());
        var frames = Frames(curve).ToArray();

        var joints = new Joint[N + 1];
        for (var i = 0; i <= N; i++)
        {
            if (i == 0)
            {
                joints[i] = rig.Skeleton("slack_hawser").Root("strand_0", at: frames[0].Translation, turned: Quaternion.CreateFromRotationMatrix(frames[0]));
                continue;
            }

            // Row vectors: world = local · parent, so local = world · parent⁻¹.
            if (!Matrix4x4.Invert(frames[i - 1], out var inverse) || !Matrix4x4.Decompose(frames[i] * inverse, out _, out var q, out var t))
                throw new ArithmeticException($"The frame at {i} is singular.");
            joints[i] = joints[i - 1].Child($"strand_{i}", at: t, turned: Quaternion.Normalize(q));
        }

        var quay = rig.Control("quay").PlacedAt(joints[0]);
        var ship = rig.Control("ship").PlacedAt(joints[N]);
        var sag = rig.Control("sag").PlacedAt(joints[N / 2]).Lock(Channels.Turn);
        sag.LimitMove(Axis.Y, (float)(-0.5 * curve.Depth), (float)(0.25 * curve.Depth));
        var taut = ship.Switch("taut").AlsoOn(quay);
        Control[] handles = [quay, sag, ship];

        foreach (var (joint, i) in joints.Select((joint, i) => (joint, i)))
        {
            var t = (float)i / N;
            var blend = rig.Blend(joint);
            for (var k = 0; k < handles.Length; k++)
            {
                var slack = Rider(rig, handles[k], joint, "slack");
                blend.From(slack, Bernstein(2, k, t) * taut.Inverse);
                if (k != 1)
                    blend.From(Rider(rig, handles[k], joint, "taut"), (k == 0 ? 1 - t : t) * taut);
            }
        }
    }

    private static Group Rider(RigDraft rig, Control handle, Joint joint, string tag) =>
        rig.Group($"{tag}_{handle}_{joint}_group").Under(handle).PlacedAt(joint);

    private static float Bernstein(int n, int k, float t) => Binomial(n, k) * MathF.Pow(t, k) * MathF.Pow(1 - t, n - k);

    private static int Binomial(int n, int k) => k == 0 || k == n ? 1 : Binomial(n - 1, k - 1) + Binomial(n - 1, k);

    /// <summary>Frames of the curve with z along the tangent and y as near to up as that allows.</summary>
    private static IEnumerable<Matrix4x4> Frames(Catenary curve)
    {
        for (var i = 0; i <= N; i++)
        {
            var (point, tangent) = curve.At(curve.Length * i / N);
            var x = Vector3.Normalize(Vector3.Cross(Vector3.UnitY, tangent));
            var y = Vector3.Cross(tangent, x);
            yield return new Matrix4x4(x.X, x.Y, x.Z, 0, y.X, y.Y, y.Z, 0, tangent.X, tangent.Y, tangent.Z, 0, point.X, point.Y, point.Z, 1);
        }
    }
}

/// <summary>A hanging curve of given length between two points.</summary>
internal sealed class Catenary
{
    private readonly Vector3 from, along;
    private readonly double a, x0, s0, y0;

    private Catenary(Vector3 from, Vector3 along, double a, double x0, double length)
    {
        (this.from, this.along, this.a, this.x0, Length) = (from, along, a, x0, length);
        s0 = a * Math.Sinh(-x0 / a);
        y0 = a * Math.Cosh(-x0 / a);
    }

    public double Length { get; }

    /// <summary>How far the lowest point lies below the first one, or zero if the curve rises all the way.</summary>
    public double Depth => Math.Max(0, y0 - a);

    public static Catenary Through(Vector3 p, Vector3 q, double length)
    {
        var flat = q - p with { Y = p.Y };
        flat.Y = 0;
        double d = flat.Length(), v = q.Y - p.Y;
        if (length * length <= (d * d) + (v * v))
            throw new ArgumentOutOfRangeException(nameof(length), length, "The hawser is shorter than the chord.");

        // √(L² − v²) = 2a·sinh(d/2a). With u = d/2a: sinh(u)/u = r, and f(u) = sinh u − r·u is convex, so Newton from the right converges.
        var r = Math.Sqrt((length * length) - (v * v)) / d;
        var u = Newton(u => Math.Sinh(u) - (r * u), u => Math.Cosh(u) - r, start: Math.Sqrt(6 * (r - 1)) + 1);
        var a = d / (2 * u);
        var x0 = (d / 2) - (a * Math.Atanh(v / length));
        return new Catenary(p, Vector3.Normalize(flat), a, x0, length);
    }

    public (Vector3 Point, Vector3 Tangent) At(double s)
    {
        var x = x0 + (a * Math.Asinh((s + s0) / a));
        var y = (a * Math.Cosh((x - x0) / a)) - y0;
        var slope = Math.Sinh((x - x0) / a);
        var point = from + ((float)x * along) + ((float)y * Vector3.UnitY);
        return (point, Vector3.Normalize(along + ((float)slope * Vector3.UnitY)));
    }

    private static double Newton(Func<double, double> f, Func<double, double> df, double start, double tolerance = 1e-12)
    {
        var x = start;
        for (var step = double.PositiveInfinity; Math.Abs(step) > tolerance * Math.Abs(x);)
        {
            step = f(x) / df(x);
            x -= step;
        }

        return x;
    }
}
