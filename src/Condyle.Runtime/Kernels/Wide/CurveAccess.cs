using System.Runtime.CompilerServices;
using Lane = System.Runtime.Intrinsics.Vector128<float>;
using Lanes = System.Runtime.Intrinsics.Vector128;

namespace Condyle.Runtime.Kernels.One;

/// <summary>Reads curves at their inputs.</summary>
internal static class CurveAccess
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane At(Curves curves, int curve, Buffers pose)
    {
        var x = pose.Inputs.Wide(curves.Inputs[curve]);
        var piece = curve == 0 ? 0 : curves.Ends[curve - 1];
        var value = Piece(curves, piece, x);
        for (piece++; piece < curves.Ends[curve]; piece++)
            value = Lanes.ConditionalSelect(Lanes.LessThan(x, Lanes.Create(curves.Until[piece - 1])), value, Piece(curves, piece, x));
        return value;
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane Piece(Curves curves, int piece, Lane x)
    {
        var u = x - Lanes.Create(curves.From[piece]);
        var sum = Lanes.FusedMultiplyAdd(Lanes.Create(curves.Cubes[piece]), u, Lanes.Create(curves.Squares[piece]));
        sum = Lanes.FusedMultiplyAdd(sum, u, Lanes.Create(curves.Slopes[piece]));
        return Lanes.FusedMultiplyAdd(sum, u, Lanes.Create(curves.Values[piece]));
    }
}
