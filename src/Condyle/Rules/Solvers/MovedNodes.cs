using Condyle.Model;

namespace Condyle.Rules;

/// <summary>The nodes of a rig that some sentence moves, and the one begun last that does.</summary>
internal static class MovedNodes
{
    private static readonly IReadOnlyList<RigNode?> Unknown = [null];

    /// <summary>None where a sentence moves a node of which it isn't known which one it is.</summary>
    public static Dictionary<RigNode, RigElement>? In(RigModel model)
    {
        var moved = new Dictionary<RigNode, RigElement>();
        foreach (var sentence in model.WritingSentences.Concat(model.Falloffs).Concat(model.Responses))
        {
            foreach (var node in TargetsOf(sentence))
            {
                if (node is not { IsUnknown: false })
                    return null;
                moved[node] = sentence;
            }
        }

        return moved;
    }

    private static IReadOnlyList<RigNode?> TargetsOf(RigElement sentence) => sentence switch
    {
        RigDrive drive => [drive.Target],
        RigBlend { Chain: { } chain } => chain.Joints ?? Unknown,
        RigBlend blend => [blend.Node],
        RigSolver { Copy: { IsUnknown: false } copy } => copy.Joints,
        RigCurve { Copy: { IsUnknown: false } copy } => copy.Joints,
        RigAim aim => [aim.Node],
        RigTwist twist => twist.Joints ?? Unknown,
        RigFalloff falloff => falloff.Joints ?? Unknown,
        RigSpace space => [space.Control],
        RigResponse response => response.TargetsAreOpen ? Unknown : [.. response.Targets.Where(target => target.Way != ResponseWay.Morph).Select(target => target.Node)],
        _ => Unknown,
    };
}
