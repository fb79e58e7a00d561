using Condyle;
using Quayside.Body;

namespace Quayside;

/// <summary>The dock worker's rig: a spine posed by its joints, and limbs posed by their ends or by their joints as the shot asks.</summary>
[SkeletonFile("stevedore.gltf")]
public sealed class Stevedore : IRigDefinition
{
    /// <inheritdoc/>
    public void Define(RigDraft rig)
    {
        var joints = StevedoreSkeleton.In(rig);
        var systems = rig.Group("systems_group");

        // The engine reads the way that he walks from the root; the offset shifts him against it.
        var world = rig.Control("world").PlacedAt(joints.Root).Shaped(ControlShape.Square, size: 0.7f);
        var offset = rig.Control("offset").Under(world).Shaped(ControlShape.Ring, size: 0.5f);
        rig.Drive(joints.Root).ByChannels(world);

        var torso = Torso.Build(rig, joints, offset);
        foreach (var side in Side.Both)
        {
            Arm.Build(rig, joints, side, systems, offset, torso.Chest);
            Leg.Build(rig, joints, side, systems, offset, torso.Hips);
        }
    }
}
