using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Which nodes belong to one limb: they stand at joints of one side of which one hangs under the other.</summary>
internal static class Limbs
{
    /// <summary>So many joints are followed from one to the one above; no limb has more.</summary>
    private const int MostJoints = 64;

    public static bool AreOne(RigNode? a, RigNode? b, SidePairs pairs) =>
        JointOf(a) is { } one && JointOf(b) is { } other && pairs.SideOf(one) is { } side && side == pairs.SideOf(other) && (IsUnder(one, other, side, pairs) || IsUnder(other, one, side, pairs));

    /// <summary>The joint at which a node stands, or beside or before which it does; none where there is none.</summary>
    public static RigNode? JointOf(RigNode? node)
    {
        for (var steps = 0; steps < MostJoints && node is not null; steps++)
        {
            switch (Stand.Of(node)?.At)
            {
                case RigNode joint: return joint;
                case RigPointBeside beside: node = beside.Node; break;
                case RigPolePoint { Chain.Joints: { Count: > 0 } joints }: return joints[joints.Count / 2];
                default: return null;
            }
        }

        return null;
    }

    private static bool IsUnder(RigNode joint, RigNode above, Side side, SidePairs pairs)
    {
        var at = joint;
        for (var steps = 0; steps < MostJoints && at is not null && pairs.SideOf(at) == side; steps++)
        {
            if (at == above)
                return true;
            at = at.Parent.TryKnown(out var parent) ? parent : null;
        }

        return false;
    }
}
