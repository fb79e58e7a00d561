using Condyle;
using Quayside.Machine;

namespace Quayside;

/// <summary>The harbour crane's rig: rigid parts without a skin. It runs on its rails, slews without end, luffs on two rams, and hangs its hook plumb on a rope.</summary>
[SkeletonFile("crane.gltf")]
public sealed class Crane : IRigDefinition
{
    /// <inheritdoc/>
    public void Define(RigDraft rig)
    {
        var joints = CraneSkeleton.In(rig);
        var systems = rig.Group("systems_group");

        var world = rig.Control("world").PlacedAt(joints.Root).Shaped(ControlShape.Square, size: 8).Tinted(Tint.White).OnLayer("crane");
        rig.Drive(joints.Root).ByChannels(world);
        var travel = rig.Control("travel").Under(world).PlacedAt(joints.Portal).Lock(Channels.MoveY | Channels.MoveZ | Channels.Turn)
            .LimitMove(Axis.X, -20, 20).Shaped(ControlShape.Box, size: 5).Tinted(Tint.Sand).OnLayer("crane");
        rig.Drive(joints.Portal).ByChannels(travel);
        var slew = rig.Control("slew").Under(travel).PlacedAt(joints.House).Lock(Channels.Move | Channels.TurnX | Channels.TurnZ)
            .Shaped(ControlShape.Ring, size: 5).Tinted(Tint.Amber).OnLayer("crane");
        rig.Drive(joints.House).ByChannels(slew);
        var luff = rig.Control("luff").Under(slew).PlacedAt(joints.Jib).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ)
            .LimitTurn(Axis.X, -30, 33).Shaped(ControlShape.Triangle, size: 3, facing: Axis.X).Tinted(Tint.Coral).OnLayer("crane");
        rig.Drive(joints.Jib).ByChannels(luff);

        foreach (var side in Side.Both)
            Rams.Build(rig, joints, side, slew, luff);
        Hoist.Build(rig, joints, systems, slew);
    }
}
