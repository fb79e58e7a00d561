using System;
using System.Linq;
using System.Numerics;
using Condyle;

namespace Unseen.First.R37;

/// <summary>
/// The pilot boat's boarding platform on six jointed struts. The geometry is refused where the map from platform motion to strut lengths is
/// singular, and the range of the platform's handle is the strut's stroke over the derivative of its length, by dual numbers.
/// </summary>
public sealed class PilotPlatform : IRigDefinition
{
    private const double Stroke = 0.18;
    private static readonly Vector3 Rise = new(0, 0.9f, 0);

    public void Define(RigDraft rig)
    {
        var deck = rig.Skeleton("pilot_platform").Root("deck", JointRole.Helper);
        var plate = deck.Child("plate", at: Rise);
        var boat = rig.Control("boat").PlacedAt(deck);
        var platform = rig.Control("platform").Under(boat).PlacedAt(plate);
        rig.Drive(deck).ByChannels(boat);
        rig.Drive(plate).ByChannels(platform);

        var struts = Enumerable.Range(0, 6).Select(Strut.Nth).ToArray();
        var determinant = Determinant(Jacobian(struts));
        if (Math.Abs(determinant) < 1e-6)
            throw new InvalidOperationException(FormattableString.Invariant($"The platform is singular at rest: det = {determinant:E2}."));

        foreach (var axis in Enum.GetValues<Axis>())
        {
            var steepest = struts.Max(strut => Math.Abs(strut.Length(Dual.Variable(0), (int)axis).Slope));
            var range = (float)Math.Round(Stroke / steepest, 3, MidpointRounding.ToZero);
            platform.LimitMove(axis, -range, range).LimitTurn(axis, -12, 12);
        }

        var holder = rig.Group("struts_group").PlacedAt(boat);
        rig.Drive(holder).ByMatrix(boat);
        for (var i = 0; i < struts.Length; i++)
            Rig(rig, deck, holder, platform, in struts[i], i);
    }

    private static void Rig(RigDraft rig, Joint deck, Group holder, Control platform, in Strut strut, int i)
    {
        var foot = deck.Child($"foot_{i}", at: strut.Foot);
        var knuckle = foot.Child($"knuckle_{i}", at: strut.Knuckle - strut.Foot);
        var ball = knuckle.Child($"ball_{i}", at: strut.Ball - strut.Knuckle);
        var chain = rig.Chain(foot, ball).Bending(strut.Outwards);
        var solved = chain.Copy("solved").Under(holder);
        var socket = rig.Group($"socket_{i}_group").Under(platform).PlacedAt(ball);
        rig.TwoBone(solved).Reach(socket);
        foreach (var joint in chain)
            rig.Drive(joint).ByChannels(solved.Of(joint));
    }

    /// <summary>Rows are the Plücker coordinates of the struts' axes: (n, p × n).</summary>
    private static double[,] Jacobian(Strut[] struts)
    {
        var j = new double[6, 6];
        for (var row = 0; row < 6; row++)
        {
            var n = Vector3.Normalize(struts[row].Ball - struts[row].Foot);
            var m = Vector3.Cross(struts[row].Ball, n);
            (j[row, 0], j[row, 1], j[row, 2], j[row, 3], j[row, 4], j[row, 5]) = (n.X, n.Y, n.Z, m.X, m.Y, m.Z);
        }

        return j;
    }

    /// <summary>Gaussian elimination with partial pivoting.</summary>
    private static double Determinant(double[,] given)
    {
        var a = (double[,])given.Clone();
        var n = a.GetLength(0);
        var determinant = 1.0;
        for (var k = 0; k < n; k++)
        {
            var pivot = Enumerable.Range(k, n - k).MaxBy(i => Math.Abs(a[i, k]));
            if (a[pivot, k] == 0)
                return 0;
            if (pivot != k)
            {
                determinant = -determinant;
                for (var j = 0; j < n; j++)
                    (a[k, j], a[pivot, j]) = (a[pivot, j], a[k, j]);
            }

            determinant *= a[k, k];
            for (var i = k + 1; i < n; i++)
            {
                var factor = a[i, k] / a[k, k];
                for (var j = k; j < n; j++)
                    a[i, j] -= factor * a[k, j];
            }
        }

        return determinant;
    }

    internal readonly record struct Strut(Vector3 Foot, Vector3 Knuckle, Vector3 Ball, Vector3 Outwards)
    {
        // Feet in pairs about 0°, 120°, 240°; balls in pairs about 60°, 180°, 300°.
        public static Strut Nth(int i)
        {
            var (pair, parity) = Math.DivRem(i, 2);
            var foot = OnCircle(0.8, (120.0 * pair) + (parity == 0 ? -10 : 10));
            var ball = OnCircle(0.55, (120.0 * pair) + (parity == 0 ? -50 : 50)) + Rise;
            var middle = Vector3.Lerp(foot, ball, 0.5f);
            var outwards = Vector3.Normalize(middle with { Y = 0 });
            return new Strut(foot, middle + (0.15f * outwards), ball, outwards);
        }

        public Dual Length(Dual shift, int axis)
        {
            var d = Ball - Foot;
            Dual[] components = [d.X, d.Y, d.Z];
            components[axis] += shift;
            return Dual.Sqrt(components.Select(c => c * c).Aggregate((sum, square) => sum + square));
        }

        private static Vector3 OnCircle(double radius, double degrees)
        {
            var (sin, cos) = Math.SinCos(double.DegreesToRadians(degrees));
            return new Vector3((float)(radius * sin), 0, (float)(radius * cos));
        }
    }

    /// <summary>a + bε with ε² = 0: a value and its slope.</summary>
    internal readonly struct Dual(double value, double slope) : IEquatable<Dual>
    {
        public double Value { get; } = value;

        public double Slope { get; } = slope;

        public static Dual Variable(double value) => new(value, 1);

        public static Dual Sqrt(Dual x) => Math.Sqrt(x.Value) is var root ? new(root, x.Slope / (2 * root)) : default;

        public static implicit operator Dual(double constant) => new(constant, 0);

        public static Dual operator +(Dual x, Dual y) => new(x.Value + y.Value, x.Slope + y.Slope);

        public static Dual operator *(Dual x, Dual y) => new(x.Value * y.Value, (x.Slope * y.Value) + (x.Value * y.Slope));

        public bool Equals(Dual other) => Value.Equals(other.Value) && Slope.Equals(other.Slope);

        public override bool Equals(object? obj) => obj is Dual other && Equals(other);

        public override int GetHashCode() => HashCode.Combine(Value, Slope);
    }
}
