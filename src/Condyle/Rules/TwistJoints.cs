using Condyle.Model;

namespace Condyle.Rules;

/// <summary>The repair that takes the twist joints out of a chain, and so out of its copies.</summary>
internal static class TwistJoints
{
    public static GoOn LeftOut(RigChain chain, string title, RigModel model) =>
        new(chain.Id, $".Without({nameof(JointRole)}.{nameof(JointRole.Twist)})", title)
        {
            Gone = [.. model.Copies.SelectMany(copy => copy.Joints).Where(joint => joint.Original is { } original && chain.Joints!.Contains(original) && Is(original)).Select(joint => joint.Id)],
        };

    /// <summary>Whether a joint is known to be one.</summary>
    public static bool Is(RigNode joint) => joint.Role.TryKnown(out var role) && role == JointRole.Twist;
}
