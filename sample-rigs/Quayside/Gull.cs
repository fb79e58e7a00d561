using System.Numerics;
using Condyle;
using Quayside.Bird;

namespace Quayside;

/// <summary>The gull's rig: wings that fold by a dial, a neck that curves below a head that looks, a tail that fans, and legs that stand.</summary>
[SkeletonFile("gull.gltf")]
public sealed class Gull : IRigDefinition
{
    /// <inheritdoc/>
    public void Define(RigDraft rig)
    {
        var joints = GullSkeleton.In(rig);
        var systems = rig.Group("systems_group");

        var world = rig.Control("world").PlacedAt(joints.Root).Shaped(ControlShape.Square, size: 0.5f).Tinted(Tint.White).OnLayer("body");
        rig.Drive(joints.Root).ByChannels(world);
        var offset = rig.Control("offset").Under(world).PlacedAt(joints.Root).Shaped(ControlShape.Ring, size: 0.4f).Tinted(Tint.White).OnLayer("body");

        // At the trunk, but level as the world: what an animator calls up and forwards isn't along its bone.
        var body = rig.Control("body").Under(offset).PlacedAt(rig.Spot(joints.Trunk, Vector3.Zero)).Shaped(ControlShape.Box, size: 0.2f).Tinted(Tint.Amber).OnLayer("body");
        rig.Drive(joints.Trunk).ByChannels(body).KeepingOffset();

        Neck.Build(rig, joints, systems, offset, body);
        TailFan.Build(rig, joints, body);
        foreach (var side in Side.Both)
        {
            Wing.Build(rig, joints, side, body);
            Leg.Build(rig, joints, side, systems, offset, body);
        }
    }
}
