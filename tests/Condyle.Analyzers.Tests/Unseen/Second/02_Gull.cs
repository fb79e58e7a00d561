using System.Numerics;
using Condyle;

namespace Unseen.Second.R02;

// GULL - fly cycle + standing on bollard. Ask me before you change names, the clips use them!
public sealed class Gull : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // ---------- SKELETON ----------
        var skeleton = rig.Skeleton("gull");
        var root = skeleton.Root("root");
        var body = root.Child("body", at: new Vector3(0, 0.18f, 0));
        var neck = body.Child("neck", at: new Vector3(0, 0.05f, 0.12f));
        var head = neck.Child("head", at: new Vector3(0, 0.06f, 0.04f));
        var beak = head.Child("beak", at: new Vector3(0, -0.01f, 0.05f));
        var tail = body.Child("tail", at: new Vector3(0, 0.01f, -0.16f));

        var wingLeft1 = body.Child("shoulder_left", at: new Vector3(0.05f, 0.05f, 0.06f));
        var wingLeft2 = wingLeft1.Child("elbow_left", at: new Vector3(0.18f, 0, -0.05f));
        var wingLeft3 = wingLeft2.Child("wrist_left", at: new Vector3(0.20f, 0, 0.05f));
        var wingLeft4 = wingLeft3.Child("feather_left", at: new Vector3(0.22f, 0, -0.04f));

        var wingRight1 = body.Child("shoulder_right", at: new Vector3(-0.05f, 0.05f, 0.06f));
        var wingRight2 = wingRight1.Child("elbow_right", at: new Vector3(-0.18f, 0, -0.05f));
        var wingRight3 = wingRight2.Child("wrist_right", at: new Vector3(-0.20f, 0, 0.05f));
        var wingRight4 = wingRight3.Child("feather_right", at: new Vector3(-0.22f, 0, -0.04f));

        // ---------- MAIN CONTROLS ----------
        var worldControl = rig.Control("world").PlacedAt(root);
        rig.Drive(root).ByChannels(worldControl);

        var bodyControl = rig.Control("body_move").Under(worldControl).PlacedAt(body);
        rig.Drive(body).ByChannels(bodyControl);

        var neckControl = rig.Control("neck_turn").Under(bodyControl).PlacedAt(neck).Lock(Channels.Move);
        rig.Drive(neck).ByChannels(neckControl);

        var headControl = rig.Control("head_turn").Under(neckControl).PlacedAt(head).Lock(Channels.Move);
        rig.Drive(head).ByChannels(headControl);

        var beakControl = rig.Control("beak_open").Under(headControl).PlacedAt(beak).Lock(Channels.Move);
        beakControl.LimitTurn(Axis.X, 0, 35);
        rig.Drive(beak).ByChannels(beakControl);

        var tailControl = rig.Control("tail_turn").Under(bodyControl).PlacedAt(tail);
        rig.Drive(tail).ByMatrix(tailControl);

        // ---------- LEFT WING ----------
        var wingLeftGroup = rig.Group("wing_left_group").Under(bodyControl).PlacedAt(wingLeft1);

        var flapLeft = rig.Control("flap_left").Under(wingLeftGroup).PlacedAt(wingLeft1).Lock(Channels.Move);
        rig.Drive(wingLeft1).ByChannels(flapLeft);
        var foldLeft = rig.Control("fold_left").Under(flapLeft).PlacedAt(wingLeft2).Lock(Channels.Move);
        foldLeft.LimitTurn(Axis.Y, -140, 5);
        rig.Drive(wingLeft2).ByChannels(foldLeft);
        var handLeft = rig.Control("hand_left").Under(foldLeft).PlacedAt(wingLeft3).Lock(Channels.Move);
        handLeft.LimitTurn(Axis.Y, -5, 150);
        rig.Drive(wingLeft3).ByChannels(handLeft);
        var featherLeft = rig.Control("feathers_left").Under(handLeft).PlacedAt(wingLeft4).Lock(Channels.Move);
        rig.Drive(wingLeft4).ByChannels(featherLeft);

        // ---------- RIGHT WING ---------- (copy of left, limits flipped)
        var wingRightGroup = rig.Group("wing_right_group").Under(bodyControl).PlacedAt(wingRight1);

        var flapRight = rig.Control("flap_right").Under(wingRightGroup).PlacedAt(wingRight1).Lock(Channels.Move);
        rig.Drive(wingRight1).ByChannels(flapRight);
        var foldRight = rig.Control("fold_right").Under(flapRight).PlacedAt(wingRight2).Lock(Channels.Move);
        foldRight.LimitTurn(Axis.Y, -5, 140);
        rig.Drive(wingRight2).ByChannels(foldRight);
        var handRight = rig.Control("hand_right").Under(foldRight).PlacedAt(wingRight3).Lock(Channels.Move);
        handRight.LimitTurn(Axis.Y, -150, 5);
        rig.Drive(wingRight3).ByChannels(handRight);
        var featherRight = rig.Control("feathers_right").Under(handRight).PlacedAt(wingRight4).Lock(Channels.Move);
        rig.Drive(wingRight4).ByChannels(featherRight);

        // show the animators what is what
        rig.Label("left_wing_text", "L").Under(flapLeft).ShownBy(1);
        rig.Label("right_wing_text", "R").Under(flapRight).ShownBy(1);
    }
}
