using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Joints that are named alike but for a number: the links of a tail, the wheels of a carriage.</summary>
internal sealed class JointSeries
{
    private const int Fewest = 3;

    private readonly Dictionary<(RigSkeleton?, string), List<RigNode>> rows = [];
    private readonly Dictionary<(RigSkeleton?, string), int> moved = [];

    public JointSeries(IEnumerable<RigNode> joints, Moves moves)
    {
        foreach (var joint in joints)
        {
            if (KeyOf(joint) is not { } key)
                continue;
            if (!rows.TryGetValue(key, out var row))
                rows[key] = row = [];
            row.Add(joint);
            if (moves.Certainly(joint))
                moved[key] = moved.TryGetValue(key, out var count) ? count + 1 : 1;
        }
    }

    /// <summary>The row of which all joints but this one are moved; none where it is at an end of it, as a chain's first joint may be held and its last one be a mere end.</summary>
    public List<RigNode>? Of(RigNode joint)
    {
        if (KeyOf(joint) is not { } key || !rows.TryGetValue(key, out var row) || row.Count < Fewest || !moved.TryGetValue(key, out var count) || count != row.Count - 1 || !joint.Parent.TryKnown(out var above))
            return null;
        var isBetween = row.Contains(above!) && row.Exists(other => IsBelow(other, joint));
        return isBetween || row.TrueForAll(other => IsBelow(other, above)) ? row : null;
    }

    private static bool IsBelow(RigNode joint, RigNode? above) => above is not null && joint.Parent.TryKnown(out var parent) && parent == above;

    private static (RigSkeleton?, string)? KeyOf(RigNode joint)
    {
        if (!joint.Name.TryKnown(out var name))
            return null;
        var end = name.Length;
        while (end > 0 && !char.IsDigit(name[end - 1]))
            end--;
        var start = end;
        while (start > 0 && char.IsDigit(name[start - 1]))
            start--;
        return start == end ? null : (joint.Skeleton, name.Substring(0, start) + "#" + name.Substring(end));
    }
}
