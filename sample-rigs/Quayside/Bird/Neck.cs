using System.Numerics;
using Condyle;

namespace Quayside.Bird;

/// <summary>A neck that lies along a curve, with a head on it that turns by itself or looks at something, and a beak that opens.</summary>
internal static class Neck
{
    public static void Build(RigDraft rig, GullSkeleton joints, Group systems, Control space, Control body)
    {
        var bones = rig.Chain(joints.NeckJoints[0], joints.Head);
        var parts = rig.Group("neck_group").Under(systems).PlacedAt(body);
        rig.Drive(parts).ByMatrix(body);
        var root = rig.Group("neck_root_group").Under(parts).PlacedAt(bones.Root);
        var top = rig.Control("neck").Under(body).PlacedAt(rig.Spot(bones.Tip, Vector3.Zero))
            .LimitMove(Axis.X, -0.06f, 0.06f).LimitMove(Axis.Y, -0.06f, 0.05f).LimitMove(Axis.Z, -0.05f, 0.08f)
            .LimitTurn(Axis.X, -50, 50).LimitTurn(Axis.Y, -60, 60).LimitTurn(Axis.Z, -40, 40)
            .Shaped(ControlShape.Ring, size: 0.12f).Tinted(Tint.Amber).OnLayer("neck");
        var middle = rig.Control("neck_middle").Under(Halfway(rig, joints, body, top)).PlacedAt(rig.Spot(joints.NeckJoints[2], Vector3.Zero)).Lock(Channels.Turn)
            .LimitMove(Axis.X, -0.03f, 0.03f).LimitMove(Axis.Y, -0.02f, 0.02f).LimitMove(Axis.Z, -0.03f, 0.03f)
            .Shaped(ControlShape.Diamond, size: 0.05f).Tinted(Tint.Amber).OnLayer("neck");

        var curve = bones.Copy("curve").Under(parts);
        rig.Curve(curve).Through(root).Through(middle).Through(top);
        foreach (var joint in joints.NeckJoints)
            rig.Drive(joint).ByChannels(curve.Of(joint));

        // The neck keeps its length, so the head stands where the neck ends; it is turned as the neck's control is.
        var end = rig.Group("neck_end_group").Under(top).PlacedAt(joints.Head);
        rig.Drive(end).ByChannels(curve.Tip).Writing(Channels.Move);
        var head = rig.Head(joints.Head, under: end, space: space);
        head.Turn.LimitTurn(Axis.X, -60, 60).LimitTurn(Axis.Y, -60, 60).LimitTurn(Axis.Z, -80, 80)
            .Shaped(ControlShape.Ring, size: 0.09f).Tinted(Tint.Moss).OnLayer("head");
        head.Look.Shaped(ControlShape.Cross, size: 0.08f, facing: Axis.Z).Tinted(Tint.Moss).OnLayer("head");

        var beak = rig.Control("beak").Under(joints.Head).PlacedAt(joints.Jaw).Lock(Channels.Move | Channels.TurnY | Channels.TurnZ)
            .LimitTurn(Axis.X, 0, 35).Shaped(ControlShape.Triangle, size: 0.04f, facing: Axis.X).Tinted(Tint.Moss).OnLayer("head");
        rig.Drive(joints.Jaw).ByChannels(beak);
    }

    /// <summary>A group at the neck's middle that goes half the way of the neck's control, so that the curve stays smooth.</summary>
    private static Group Halfway(RigDraft rig, GullSkeleton joints, Control body, Control top)
    {
        var middle = rig.Spot(joints.NeckJoints[2], Vector3.Zero);
        var still = rig.Group("neck_still_group").Under(body).PlacedAt(middle);
        var along = rig.Group("neck_along_group").Under(top).PlacedAt(middle);
        var halfway = rig.Group("neck_halfway_group").Under(body).PlacedAt(middle);
        rig.Blend(halfway).From(still, 0.5f).From(along, 0.5f);
        return halfway;
    }
}
