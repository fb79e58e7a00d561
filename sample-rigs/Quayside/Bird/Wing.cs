using Condyle;

namespace Quayside.Bird;

/// <summary>
/// A wing: one dial folds its joints and its feathers together, and each joint has a control on top of that. The quills, the long feathers of the hand,
/// spread and bend by a control of their own.
/// </summary>
internal static class Wing
{
    public static void Build(RigDraft rig, GullSkeleton joints, Side side, Control body)
    {
        var (shoulderFold, shoulder) = Turn(rig, joints.Shoulder[side], side, body, size: 0.16f);
        var (elbowFold, elbow) = Turn(rig, joints.Elbow[side], side, shoulder, size: 0.12f);
        var (wristFold, wrist) = Turn(rig, joints.Wrist[side], side, elbow, size: 0.1f);
        shoulder.LimitTurn(Axis.X, -25, 45).LimitTurn(side, Axis.Y, -40, 40).LimitTurn(side, Axis.Z, -70, 60);
        elbow.Lock(Channels.TurnY).LimitTurn(Axis.X, -40, 100).LimitTurn(side, Axis.Z, -20, 20);
        wrist.LimitTurn(Axis.X, -30, 110).LimitTurn(side, Axis.Y, -30, 30).LimitTurn(side, Axis.Z, -35, 35);

        // The upper arm swings back and rolls until the wing stands upright at the body's side; forearm and hand fold along it like a Z, around the body.
        var fold = shoulder.Dial("fold", from: 0, to: 1, unit: DialUnit.Share).AlsoOn(wrist);
        rig.Response(fold).Key(0, 0).Key(1, 52).OntoTurn(shoulderFold, Axis.X);
        rig.Response(fold).Key(0, 0).Key(1, 78 * side.Sign).OntoTurn(shoulderFold, Axis.Y);
        rig.Response(fold).Key(0, 0).Key(1, 118).OntoTurn(elbowFold, Axis.X);
        rig.Response(fold).Key(0, 0).Key(1, 17 * side.Sign).OntoTurn(elbowFold, Axis.Z);
        rig.Response(fold).Key(0, 0).Key(1, 132).OntoTurn(wristFold, Axis.X);
        rig.Response(fold).Key(0, 0).Key(1, 5 * side.Sign).OntoTurn(wristFold, Axis.Z);
        Fold(rig, fold, joints.TertialJoints[side], side, first: 86, last: 80, inwards: 18);
        Fold(rig, fold, joints.SecondaryJoints[side], side, first: -44, last: -56, inwards: 11);
        Fold(rig, fold, joints.PrimaryJoints[side], side, first: 54, last: 3, inwards: 4);

        Quills(rig, joints.PrimaryJoints[side], side, wrist, joints.Wrist[side]);
    }

    /// <summary>A group that folds, and in it a control that turns the joint on top.</summary>
    private static (Group Fold, Control Turn) Turn(RigDraft rig, Joint joint, Side side, Control above, float size)
    {
        var fold = rig.Group($"fold_{joint}_group").Under(above).PlacedAt(joint);
        var turn = rig.Control($"turn_{joint}").Under(fold).PlacedAt(joint).Lock(Channels.Move)
            .Shaped(ControlShape.Ring, size).Tinted(Sides.TintOf(side)).OnLayer("wings");
        rig.Drive(joint).ByChannels(turn);
        return (fold, turn);
    }

    /// <summary>A row of feathers closes along its bone, from its first to its last, and lies down on the body.</summary>
    private static void Fold(RigDraft rig, Dial fold, JointSet feathers, Side side, float first, float last, float inwards)
    {
        var lie = rig.Response(fold).Key(0, 0).Key(1, -inwards * side.Sign);
        for (var i = 0; i < feathers.Count; i++)
        {
            rig.Response(fold).Key(0, 0).Key(1, first + ((last - first) * i / (feathers.Count - 1))).OntoTurn(feathers[i], Axis.X);
            lie.OntoTurn(feathers[i], Axis.Z);
        }
    }

    /// <summary>The outermost quill goes all the way with the control, the others by shares.</summary>
    private static void Quills(RigDraft rig, JointSet feathers, Side side, Control wrist, Joint hand)
    {
        var quills = rig.Control($"quills_{side}").Under(wrist).PlacedAt(hand).Lock(Channels.Move | Channels.TurnY)
            .LimitTurn(Axis.X, -15, 12).LimitTurn(side, Axis.Z, -30, 30)
            .Shaped(ControlShape.Diamond, size: 0.12f, facing: Axis.X).Tinted(Sides.TintOf(side)).OnLayer("feathers");
        for (var i = 0; i < feathers.Count; i++)
        {
            var share = (i + 1f) / feathers.Count;
            rig.Response(rig.Angle(quills).About(Axis.X)).Key(-15, 15 * share).Key(12, -12 * share).OntoTurn(feathers[i], Axis.X);
            rig.Response(rig.Angle(quills).About(Axis.Z)).Key(-30, 30 * share).Key(30, -30 * share).OntoTurn(feathers[i], Axis.Z);
        }
    }
}
