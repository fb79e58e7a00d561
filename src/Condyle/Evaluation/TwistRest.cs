using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>A twist joint: the share of the roll that it takes, and its rotation in the carrier's frame at rest.</summary>
internal readonly record struct TwistJoint(RigNode Node, double Share, Quaterniond Turn);

/// <summary>What a twist's rest gives it.</summary>
/// <param name="Start">The node from which the roll counts.</param>
/// <param name="End">The node whose roll it is.</param>
/// <param name="IsCarriedByEnd">Whether the joints hang below the end and are turned back from it; else they are turned from the start.</param>
/// <param name="IsEndBelow">Whether the end hangs below the joints, so that it is known only by the frame that its own sentence gives it.</param>
/// <param name="Axis">The direction of the bone in the carrier's frame; none where the bone has no length, so that there is no roll.</param>
/// <param name="EndInStart">The end in the start's frame.</param>
/// <param name="EndTurn">The end's rotation as the start sees it.</param>
/// <param name="Joints">The twist joints in their order.</param>
internal sealed record TwistRest(RigNode Start, RigNode End, bool IsCarriedByEnd, bool IsEndBelow, Vector3d Axis, Affine3d EndInStart, Quaterniond EndTurn, IReadOnlyList<TwistJoint> Joints)
{
    public RigNode Carrier => IsCarriedByEnd ? End : Start;

    /// <summary>The rest of a twist; none where the sentence is unfinished.</summary>
    /// <exception cref="RigGeometryException">Something isn't known.</exception>
    public static TwistRest? Of(RigTwist twist, RigModel model, RestPose rest)
    {
        if (twist.Joints is not { } known || known.Any(joint => joint is not { IsUnknown: false }))
            throw new RigGeometryException($"The joints of {twist.Title} aren't known.");
        if (Facts.Known(twist.Ends, $"Between which nodes {twist.Title} is") is not var (start, end) || known.Count == 0)
            return null;
        var joints = known.OfType<RigNode>().ToList();
        var carriedByEnd = joints[0].Above.FirstOrDefault(above => above == start || above == end) == end && start != end;
        var carrier = rest.WorldOf(carriedByEnd ? end : start);
        var bone = (carriedByEnd ? BelowOf(end, joints, model, rest) : rest.WorldOf(end).Origin) - carrier.Origin;
        var shares = Facts.Known(twist.Shares, $"How {twist.Title} is shared") is { } said
            ? Evenly(Facts.Known(said.First, $"The first share of {twist.Title}"), Facts.Known(said.Last, $"The last share of {twist.Title}"), joints.Count)
            : joints.Select(joint => Along(bone, rest.WorldOf(joint).Origin - carrier.Origin) - (carriedByEnd ? 1 : 0));
        return new(
            start, end, carriedByEnd,
            end.Above.Any(joints.Contains),
            carrier.Rotation.Inverse.Rotate(bone.Direction ?? Vector3d.Zero),
            rest.WorldOf(start).Inverse() * rest.WorldOf(end),
            rest.WorldOf(start).Rotation.Inverse * rest.WorldOf(end).Rotation,
            [.. joints.Zip(shares, (joint, share) => new TwistJoint(joint, share, carrier.Rotation.Inverse * rest.WorldOf(joint).Rotation))]);
    }

    /// <summary>From one number to another in even steps.</summary>
    public static IEnumerable<double> Evenly(double first, double last, int count) =>
        Enumerable.Range(0, count).Select(i => count == 1 ? first : first + ((last - first) * i / (count - 1)));

    /// <summary>How far along a bone a point lies, from 0 to 1.</summary>
    private static double Along(Vector3d bone, Vector3d point) => bone.Length > Vector3d.Tiny ? Math.Min(Math.Max(Vector3d.Dot(bone, point) / Vector3d.Dot(bone, bone), 0), 1) : 0;

    /// <summary>Where the bone below a node ends: at the first joint below that is no twist joint, else at the last twist joint.</summary>
    private static Vector3d BelowOf(RigNode end, List<RigNode> joints, RigModel model, RestPose rest) => rest.WorldOf(model.Nodes
        .Find(node => node.IsExported && !joints.Contains(node) && AboveTwists(node, joints) == end) ?? joints[joints.Count - 1]).Origin;

    /// <summary>What a node hangs under, its twist joints passed over.</summary>
    private static RigNode? AboveTwists(RigNode node, List<RigNode> joints)
    {
        var at = ParentOf(node);
        for (var left = joints.Count; left > 0 && at is not null && joints.Contains(at); left--)
            at = ParentOf(at);
        return at;
    }

    private static RigNode? ParentOf(RigNode node) => node.Parent.TryKnown(out var parent) ? parent : null;
}
