using System.Numerics;
using Condyle.Model;

namespace Condyle.Evaluation;

/// <summary>What a chain's rest says about its axes and its bend; what the rest leaves unclear is none.</summary>
internal sealed class ChainFrame
{
    private ChainFrame(RigChain chain, IReadOnlyList<Affine3d> frames)
    {
        Declared = chain.Bend.TryKnown(out var towards) ? towards : null;
        var points = frames.Select(frame => frame.Origin).ToList();
        BoneAxes = [.. points.Skip(1).Select((next, i) => LocalAxis.Along(next - points[i], frames[i]))];
        BoneAxis = BoneAxes.Distinct().Count() == 1 ? BoneAxes[0] : null;
        if (points.Count < 3)
            return;

        var at = Bend.MiddleOf(points.Count);
        var (root, middle, tip) = (points[0], points[at], points[points.Count - 1]);
        var line = Bend.LineOf(root, middle, tip);
        IsStraight = Bend.Of(root, middle, tip) is null;
        Direction = Bend.Of(root, middle, tip) ?? (Declared is { } declared ? Bend.Declared(declared, line) : null);
        PreferredBend = Math.Atan2(Vector3d.Cross(middle - root, tip - middle).Length, Vector3d.Dot(middle - root, tip - middle));
        if (Direction is { } side)
            BendAxis = LocalAxis.Along(Vector3d.Cross(side, line), frames[at]);
    }

    /// <summary>For each joint but the tip, its own axis that runs along its bone.</summary>
    public IReadOnlyList<LocalAxis?> BoneAxes { get; }

    /// <summary>The bone axis on which all joints agree.</summary>
    public LocalAxis? BoneAxis { get; }

    /// <summary>The middle joint's own axis about which a positive turn bends the chain further.</summary>
    public LocalAxis? BendAxis { get; }

    /// <summary>The angle between the lines before and after the middle joint at rest, in radians: 0 for a straight chain, π for a folded one.</summary>
    public double PreferredBend { get; }

    public bool IsStraight { get; }

    /// <summary>The direction to which the chain bends in the world at rest: inferred, else declared.</summary>
    public Vector3d? Direction { get; }

    /// <summary>The declared direction of the bend, as it was said.</summary>
    public Vector3? Declared { get; }

    /// <summary>The frame of a chain; none where the rest of a joint isn't known.</summary>
    public static ChainFrame? Of(RigChain chain, RestPose rest)
    {
        var frames = new List<Affine3d>();
        foreach (var joint in chain.Joints ?? [])
        {
            if (!rest.TryWorldOf(joint, out var world))
                return null;
            frames.Add(world);
        }

        return frames.Count == 0 ? null : new ChainFrame(chain, frames);
    }
}
