using System.Numerics;

namespace Condyle.Runtime.Kernels;

/// <summary>Weighted means of rotations.</summary>
internal static class Average
{
    /// <summary>The iteration ends at a step below this, in radians of the half angle: a float's rounding.</summary>
    public const float Tolerance = 1e-7f;

    /// <summary>The iteration ends after this many steps.</summary>
    public const int MostSteps = 200;

    /// <summary>From <paramref name="a"/> to <paramref name="b"/> on the shortest arc; at a half turn apart, where there are two, on the one that the signs as given say.</summary>
    public static Quaternion Slerp(Quaternion a, Quaternion b, float amount)
    {
        if (Quaternion.Dot(a, b) < 0)
            b = -b;

        // The arc from its chord and that of the supplement: as exact for small angles as for large ones.
        var arc = 2 * MathF.Atan2((a - b).Length(), (a + b).Length());
        if (arc < 1e-3f)
            return Quaternion.Normalize((a * (1 - amount)) + (b * amount));
        var sine = MathF.Sin(arc);
        return Quaternion.Normalize((a * (MathF.Sin((1 - amount) * arc) / sine)) + (b * (MathF.Sin(amount * arc) / sine)));
    }

    /// <summary>
    /// The weighted spherical average (Buss and Fillmore 2001, "Spherical averages and applications to spherical splines and interpolation"),
    /// algorithm A1, from the first rotation of the largest weight. The weights add up to <paramref name="total"/>, above zero.
    /// </summary>
    public static Quaternion Spherical(ReadOnlySpan<Quaternion> turns, ReadOnlySpan<float> weights, float total)
    {
        var start = 0;
        for (var i = 1; i < turns.Length; i++)
        {
            if (weights[i] > weights[start])
                start = i;
        }

        var mean = turns[start];
        for (var count = 0; count < MostSteps; count++)
        {
            var step = Vector3.Zero;
            for (var i = 0; i < turns.Length; i++)
                step += Log(Quaternion.Conjugate(mean) * turns[i]) * (weights[i] / total);
            mean = Quaternion.Normalize(mean * Exp(step));
            if (step.Length() < Tolerance)
                break;
        }

        return mean;
    }

    /// <summary>The half angle along the axis of a rotation's short way.</summary>
    private static Vector3 Log(Quaternion turn)
    {
        if (turn.W < 0)
            turn = -turn;
        var vector = new Vector3(turn.X, turn.Y, turn.Z);
        var sine = vector.Length();
        return sine < 1e-6f ? vector : vector * (MathF.Atan2(sine, turn.W) / sine);
    }

    private static Quaternion Exp(Vector3 halfAngle)
    {
        var angle = halfAngle.Length();
        var vector = angle < 1e-6f ? halfAngle : halfAngle * (MathF.Sin(angle) / angle);
        return new Quaternion(vector, MathF.Cos(angle));
    }
}
