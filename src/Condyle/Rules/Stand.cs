using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Where a node rests by what was said, not by numbers: at a joint, at a spot, or at the world's origin.</summary>
/// <param name="At">The joint or the spot; none for the world's origin.</param>
/// <param name="IsClean">Whether its frame there is one without scale.</param>
internal readonly record struct Stand(RigElement? At, bool IsClean)
{
    /// <summary>So many nodes are followed from one to the next; what is placed on still more isn't known.</summary>
    private const int MostSteps = 64;

    /// <summary>None where it isn't known.</summary>
    public static Stand? Of(RigNode node)
    {
        var isClean = false;
        for (var steps = 0; steps < MostSteps && !node.IsUnknown; steps++)
        {
            if (node.IsExported)
                return new(node, isClean);
            if (!node.Placement.TryKnown(out var placement) || placement is AsImage)
                return null;
            if (placement is AtSpot spot)
                return new(spot.Spot, true);
            if (placement is AtNode at)
            {
                (node, isClean) = (at.Target, true);
                continue;
            }

            if (!node.Parent.TryKnown(out var parent))
                return null;
            if (parent is null)
                return new(null, true);
            node = parent;
        }

        return null;
    }
}
