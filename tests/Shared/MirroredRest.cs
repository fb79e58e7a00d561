using System.Numerics;

namespace Condyle.Tests.Shared;

/// <summary>The mirror image of a frame over the character's YZ plane, in the two conventions of the trade (common practice, no source).</summary>
internal static class MirroredRest
{
    public static Vector3 Of(Vector3 point) => point with { X = -point.X };

    /// <summary>The frame with the same axes mirrored and X turned round: turns about X go the same way on both sides, those about Y and Z opposite ways.</summary>
    public static Quaternion Facing(Quaternion turn) => new(turn.X, -turn.Y, -turn.Z, turn.W);

    /// <summary>The frame with all axes mirrored and turned round: equal turns make the mirror image, moves go opposite ways.</summary>
    public static Quaternion Behaving(Quaternion turn) => Facing(turn) * new Quaternion(1, 0, 0, 0);
}
