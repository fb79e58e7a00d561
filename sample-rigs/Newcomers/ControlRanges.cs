using Condyle;

namespace Newcomers;

/// <summary>Ranges in proportion to a character: a crab and a giant don't reach equally far.</summary>
internal static class ControlRanges
{
    /// <summary>Lets a control move this far, in metres, either way along each of its axes.</summary>
    public static Control LimitMoves(this Control control, float metres) => control
        .LimitMove(Axis.X, -metres, metres)
        .LimitMove(Axis.Y, -metres, metres)
        .LimitMove(Axis.Z, -metres, metres);
}
