using Condyle;

namespace Quayside;

/// <summary>The two sides' frames mirror each other: X turns the same way on both, Y and Z turn opposite ways.</summary>
internal static class Mirrored
{
    /// <summary>Limits a turn about Y or Z in the left side's sense.</summary>
    public static Control LimitTurn(this Control control, Side side, Axis axis, float fromDegrees, float toDegrees) =>
        side == Side.Left ? control.LimitTurn(axis, fromDegrees, toDegrees) : control.LimitTurn(axis, -toDegrees, -fromDegrees);
}
