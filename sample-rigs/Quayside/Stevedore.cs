using Condyle;
using Quayside.Body;

namespace Quayside;

/// <summary>The dock worker's rig: a spine posed by its joints, limbs posed by their ends or by their joints as the shot asks, feet that roll, fingers that curl, a head and eyes that look.</summary>
[SkeletonFile("stevedore.gltf")]
public sealed class Stevedore : IRigDefinition
{
    /// <inheritdoc/>
    public void Define(RigDraft rig)
    {
        var joints = StevedoreSkeleton.In(rig);
        var systems = rig.Group("systems_group");

        // The engine reads the way that he walks from the root; the offset shifts him against it.
        var world = rig.Control("world").PlacedAt(joints.Root).Shaped(ControlShape.Square, size: 0.7f).Tinted(Tint.White).OnLayer("world");
        var offset = rig.Control("offset").Under(world).Shaped(ControlShape.Ring, size: 0.5f).Tinted(Tint.White).OnLayer("world");
        rig.Drive(joints.Root).ByChannels(world);

        var torso = Torso.Build(rig, joints, systems, offset);
        foreach (var side in Side.Both)
        {
            Arm.Build(rig, joints, side, systems, offset, torso);
            Leg.Build(rig, joints, side, systems, offset, torso);
        }
    }
}
