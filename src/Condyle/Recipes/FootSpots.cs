using System.Numerics;
using Condyle.Model;

namespace Condyle.Recipes;

/// <summary>Where a foot meets the ground, as far as its joints at rest tell.</summary>
/// <remarks>The heel lies behind the ankle by a third of the way to the toes, the tip in front of the toes by half of it. Common practice, no source.</remarks>
internal sealed class FootSpots(RigDraft rig, BipedJoints joints, Joint ankle, Joint toes)
{
    public Fact<Vector3> Heel(Fact<Vector3?> said) => Spot(said, ankle, -1f / 3);

    public Fact<Vector3> Tip(Fact<Vector3?> said) => Spot(said, toes, 0.5f);

    private Fact<Vector3> Spot(Fact<Vector3?> said, Joint beside, float share)
    {
        if (!said.TryKnown(out var known))
            return Fact<Vector3>.Open;
        if (known is { } given)
            return given;
        if (!rig.RestOf(ankle).TryKnown(out var back) || !rig.RestOf(toes).TryKnown(out var front) || !rig.RestOf(beside).TryKnown(out var from))
            return Fact<Vector3>.Open;
        var length = (float)Math.Abs(front.Origin.Z - back.Origin.Z);
        return Ground.TryKnown(out var ground) ? new Vector3(0, (float)Math.Min(0, ground - from.Origin.Y), length * share) : Fact<Vector3>.Open;
    }

    // A character stands where its root is.
    private Fact<double> Ground => !joints.RootFact.TryKnown(out var root) ? Fact<double>.Open
        : root is null ? 0
        : rig.RestOf(root.Value).TryKnown(out var rest) ? rest.Origin.Y
        : Fact<double>.Open;
}
