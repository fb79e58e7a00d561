using System.Numerics;
using Condyle;

namespace Quayside.Machine;

/// <summary>The rope over the jib's end and the hook on it.</summary>
internal static class Hoist
{
    private const float Shortest = 2, AtRest = 7, Longest = 18;

    public static void Build(RigDraft rig, CraneSkeleton joints, Group systems, Control slew)
    {
        var swing = rig.Control("swing").Under(Hanging(rig, joints, systems, slew)).PlacedAt(joints.JibEnd).Lock(Channels.Move | Channels.TurnY)
            .LimitTurn(Axis.X, -20, 20).LimitTurn(Axis.Z, -20, 20).Shaped(ControlShape.Ring, size: 1.4f).Tinted(Tint.Teal).OnLayer("rope");
        var middle = rig.Group("rope_middle_group").Under(swing).PlacedAt(rig.Spot(joints.JibEnd, new Vector3(0, -AtRest / 2, 0)));
        var bow = rig.Control("rope_bow").Under(middle).PlacedAt(middle).Lock(Channels.MoveY | Channels.Turn)
            .LimitMove(Axis.X, -0.5f, 0.5f).LimitMove(Axis.Z, -0.5f, 0.5f).Shaped(ControlShape.Diamond, size: 0.6f).Tinted(Tint.Moss).OnLayer("rope");
        var end = rig.Group("rope_end_group").Under(swing).PlacedAt(joints.HookBlock);

        var rope = rig.Chain(joints.RopeJoints[0], joints.HookBlock);
        var curve = rope.Copy("curve").Under(systems);
        rig.Curve(curve).Through(swing).Through(bow).Through(end).Stretching(1);
        foreach (var joint in rope)
            rig.Drive(joint).ByChannels(curve.Of(joint));

        var swivel = rig.Control("swivel").Under(joints.HookBlock).PlacedAt(joints.Hook).Lock(Channels.Move | Channels.TurnX | Channels.TurnZ)
            .Shaped(ControlShape.Ring, size: 1.2f).Tinted(Tint.Violet).OnLayer("rope");
        rig.Drive(joints.Hook).ByChannels(swivel);
        PayOut(rig, swing.Dial("rope", Shortest, Longest, AtRest, DialUnit.Metres).AlsoOn(swivel), joints.StrandJoints, middle, end);
    }

    /// <summary>A group at the jib's end that hangs plumb: it points at the ground right below, which takes the end's way along the ground and nothing else.</summary>
    private static Group Hanging(RigDraft rig, CraneSkeleton joints, Group systems, Control slew)
    {
        var below = rig.Group("plumb_group").Under(systems).PlacedAt(rig.Spot(joints.JibEnd, new Vector3(0, -15, 0)));
        rig.Drive(below).ByChannels(joints.JibEnd).Writing(Channels.MoveX | Channels.MoveZ);

        var end = rig.Group("jib_end_group").Under(systems).PlacedAt(joints.JibEnd);
        rig.Drive(end).ByMatrix(joints.JibEnd);
        var hanging = rig.Group("hanging_group").Under(end).PlacedAt(joints.JibEnd);
        rig.Aim(hanging).At(below).Up(slew, Axis.Z);
        return hanging;
    }

    /// <summary>The hook hangs as far below the jib's end as the dial says, and each strand is as much longer as the rope.</summary>
    private static void PayOut(RigDraft rig, Dial length, JointSet strands, Group middle, Group end)
    {
        rig.Response(length).Key(Shortest, -Shortest).Key(Longest, -Longest).OntoMove(end, Axis.Y);
        rig.Response(length).Key(Shortest, -Shortest / 2).Key(Longest, -Longest / 2).OntoMove(middle, Axis.Y);
        var lengthen = rig.Response(length).Key(Shortest, Shortest / AtRest).Key(Longest, Longest / AtRest);
        foreach (var strand in strands)
            lengthen.OntoScale(strand, Axis.Y);
    }
}
