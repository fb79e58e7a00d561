using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Responses: T + rest rotation · moves, R · turn(X) · turn(Y) · turn(Z), S · (1 + scales). What no curve sets stays as it is.</summary>
internal static class ResponseKernel
{
    [SkipLocalsInit]
    [MethodImpl(MethodImplOptions.AggressiveOptimization | MethodImplOptions.NoInlining)]
    public static void Run(ResponseBatch batch, Buffers pose)
    {
        var curve = 0;
        for (var i = 0; i < batch.Channels.Length; i++)
        {
            var (own, channel, sums) = (batch.Bases[i], batch.Channels[i], default(ResponseSums));
            for (; curve < batch.Ends[i]; curve++)
                sums.Add(batch.Components[curve], CurveAccess.At(batch.Curves, curve, pose));

            var move = pose.Moves.Wide(own);
            pose.Moves.Set(channel, sums.Moves ? batch.RestTurns.Constant(i).Rotate(sums.Move, move) : move);
            pose.Turns.Set(channel, Turned(pose.Turns.Wide(own), sums).Trued());
            pose.Scales.Set(channel, Grown(pose.Scales.Wide(own), sums.Grow));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WideVector Grown(in WideVector scale, in WideVector grow) =>
        new(Lanes.FusedMultiplyAdd(scale.X, grow.X, scale.X), Lanes.FusedMultiplyAdd(scale.Y, grow.Y, scale.Y), Lanes.FusedMultiplyAdd(scale.Z, grow.Z, scale.Z));

    /// <summary>X first, then Y as it lies then, then Z.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static WideTurn Turned(WideTurn turn, in ResponseSums sums)
    {
        if (sums.TurnsX)
            turn = turn.AboutFirst(HalfAngle.PartsOfDegrees(sums.Degrees.X));
        if (sums.TurnsY)
            turn = turn.AboutSecond(HalfAngle.PartsOfDegrees(sums.Degrees.Y));
        return sums.TurnsZ ? turn.AboutThird(HalfAngle.PartsOfDegrees(sums.Degrees.Z)) : turn;
    }
}

/// <summary>The sums of a node's curves, and which there are.</summary>
internal struct ResponseSums
{
    public WideVector Move;
    public WideVector Degrees;
    public WideVector Grow;
    private int components;

    public readonly bool Moves => (components & 0b111) != 0;

    public readonly bool TurnsX => (components & (1 << 3)) != 0;

    public readonly bool TurnsY => (components & (1 << 4)) != 0;

    public readonly bool TurnsZ => (components & (1 << 5)) != 0;

    /// <inheritdoc cref="ResponseBatch.Components"/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Add(int component, Lane value)
    {
        components |= 1 << component;
        switch (component)
        {
            case 0: Move.X += value; break;
            case 1: Move.Y += value; break;
            case 2: Move.Z += value; break;
            case 3: Degrees.X += value; break;
            case 4: Degrees.Y += value; break;
            case 5: Degrees.Z += value; break;
            case 6: Grow.X += value; break;
            case 7: Grow.Y += value; break;
            default: Grow.Z += value; break;
        }
    }
}
