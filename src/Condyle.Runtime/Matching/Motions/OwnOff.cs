using Condyle.Evaluation;
using Condyle.Runtime.Baking;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>How far a joint is off by itself: as seen from the nearest joint above that the motion has, or in the world where there is none.</summary>
/// <remarks>
/// Controls can hold a limb right that a dial would turn too, and what hangs from it and has no control is off all the same. With the dial turned the limb goes wrong until it is matched anew, and only as seen from the limb is what hangs from it right.
/// </remarks>
internal sealed class OwnOff
{
    private const int None = -1;

    private readonly int[] above;

    /// <param name="rig">The rig.</param>
    /// <param name="from">The joint of the motion for each of the rig's; −1 where there is none.</param>
    public OwnOff(CompiledRig rig, int[] from)
    {
        above = new int[rig.Joints.Count];
        foreach (var joint in rig.Joints)
            above[joint.Index] = joint.Parent < 0 ? None : from[joint.Parent] >= 0 ? joint.Parent : above[joint.Parent];
    }

    public Off Of(RigInstance live, IReadOnlyList<Affine3d> should, int joint)
    {
        var (stands, right) = (live.Place(joint), Place.Of(should[joint]));
        return above[joint] is var seenFrom and not None
            ? Off.Between(stands.SeenFrom(live.Place(seenFrom)), right.SeenFrom(Place.Of(should[seenFrom])))
            : Off.Between(stands, right);
    }
}
