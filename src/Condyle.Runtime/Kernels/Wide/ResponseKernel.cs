using System.Numerics;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Responses: T + rest rotation · moves, R · turn(X) · turn(Y) · turn(Z), S · (1 + scales).</summary>
internal static class ResponseKernel
{
    /// <summary>Adding and taking it away rounds a float to a whole number.</summary>
    private const float Whole = 3 << 22;

    private static readonly Vector3[] Units = [Vector3.UnitX, Vector3.UnitY, Vector3.UnitZ];

    public static void Run(ResponseBatch batch, Buffers pose)
    {
        var curve = 0;
        for (var i = 0; i < batch.Channels.Length; i++)
        {
            var (move, degrees, grow) = (WideVector.Zero, WideVector.Zero, WideVector.Zero);
            for (; curve < batch.Ends[i]; curve++)
            {
                var component = batch.Components[curve];
                var along = WideVector.All(Units[component % 3]) * CurveAccess.At(batch.Curves, curve, pose);
                if (component < 3)
                    move += along;
                else if (component < 6)
                    degrees += along;
                else
                    grow += along;
            }

            var (own, channel) = (batch.Bases[i], batch.Channels[i]);
            pose.Moves.Set(channel, batch.RestTurns.Constant(i).Rotate(move, pose.Moves.Wide(own)));
            pose.Turns.Set(channel, (pose.Turns.Wide(own) * Turned(degrees)).Trued());
            pose.Scales.Set(channel, Grown(pose.Scales.Wide(own), grow));
        }
    }

    private static WideVector Grown(in WideVector scale, in WideVector grow) =>
        new(Lanes.FusedMultiplyAdd(scale.X, grow.X, scale.X), Lanes.FusedMultiplyAdd(scale.Y, grow.Y, scale.Y), Lanes.FusedMultiplyAdd(scale.Z, grow.Z, scale.Z));

    /// <summary>X first, then Y as it lies then, then Z.</summary>
    private static WideTurn Turned(in WideVector degrees)
    {
        var (x, y, z) = (Half(degrees.X), Half(degrees.Y), Half(degrees.Z));
        return new WideTurn(x.Sine, Lane.Zero, Lane.Zero, x.Cosine) * new WideTurn(Lane.Zero, y.Sine, Lane.Zero, y.Cosine) * new WideTurn(Lane.Zero, Lane.Zero, z.Sine, z.Cosine);
    }

    /// <summary>Sine and cosine of half an angle, without its whole turns: a quarter turn at most.</summary>
    private static (Lane Sine, Lane Cosine) Half(Lane degrees)
    {
        var (whole, quarter) = (Lanes.Create(Whole), Lanes.Create(MathF.PI / 2));
        var turns = Lanes.FusedMultiplyAdd(degrees, Lanes.Create(1f / 360), whole) - whole;
        var half = Lanes.FusedMultiplyAdd(turns, Lanes.Create(-360f), degrees) * Lanes.Create(MathF.PI / 360);
        half = Lanes.MaxNative(-quarter, Lanes.MinNative(quarter, half));
        var squared = half * half;
        return (half * Arc.Sine(squared), Arc.Cosine(squared));
    }
}
