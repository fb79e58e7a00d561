using System.Numerics;
using Condyle;

namespace Unseen.Third.R30;

public class HarbourDog : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // skeleton
        var skel = rig.Skeleton("harbour_dog");
        var root = skel.Root("root", JointRole.Helper);
        var pelvis = root.Child("pelvis", at: new Vector3(0f, 0.52f, -0.25f));
        var loin = pelvis.Child("loin", at: new Vector3(0f, 0.02f, 0.16f));
        var chest = loin.Child("chest", at: new Vector3(0f, 0.01f, 0.2f));
        var neck = chest.Child("neck", at: new Vector3(0f, 0.08f, 0.12f));
        var head = neck.Child("head", at: new Vector3(0f, 0.12f, 0.08f));
        var jaw = head.Child("jaw", at: new Vector3(0f, -0.03f, 0.05f));
        var ear_left = head.Child("ear_left", at: new Vector3(0.05f, 0.05f, -0.01f));
        var ear_right = head.Child("ear_right", at: new Vector3(-0.05f, 0.05f, -0.01f));
        var tail_1 = pelvis.Child("tail_1", at: new Vector3(0f, 0.03f, -0.08f));
        var tail_2 = tail_1.Child("tail_2", at: new Vector3(0f, 0.02f, -0.1f));
        var tail_3 = tail_2.Child("tail_3", at: new Vector3(0f, 0.02f, -0.1f));

        // left legs
        var shoulder_left = chest.Child("shoulder_left", at: new Vector3(0.09f, -0.06f, 0.05f));
        var elbow_left = shoulder_left.Child("elbow_left", at: new Vector3(0f, -0.2f, -0.04f));
        var wrist_left = elbow_left.Child("wrist_left", at: new Vector3(0f, -0.22f, 0.03f));
        var paw_left = wrist_left.Child("paw_left", at: new Vector3(0f, -0.05f, 0.04f));
        var hip_left = pelvis.Child("hip_left", at: new Vector3(0.08f, -0.03f, 0f));
        var knee_left = hip_left.Child("knee_left", at: new Vector3(0f, -0.2f, 0.06f));
        var hock_left = knee_left.Child("hock_left", at: new Vector3(0f, -0.18f, -0.1f));
        var toes_left = hock_left.Child("toes_left", at: new Vector3(0f, -0.1f, 0.03f));

        // right legs
        var shoulder_right = chest.Child("shoulder_right", at: new Vector3(-0.09f, -0.06f, 0.05f));
        var elbow_right = shoulder_right.Child("elbow_right", at: new Vector3(0f, -0.2f, -0.04f));
        var wrist_right = elbow_right.Child("wrist_right", at: new Vector3(0f, -0.22f, 0.03f));
        var paw_right = wrist_right.Child("paw_right", at: new Vector3(0f, -0.05f, 0.04f));
        var hip_right = pelvis.Child("hip_right", at: new Vector3(-0.08f, -0.03f, 0f));
        var knee_right = hip_right.Child("knee_right", at: new Vector3(0f, -0.2f, 0.06f));
        var hock_right = knee_right.Child("hock_right", at: new Vector3(0f, -0.18f, -0.1f));
        var toes_right = hock_right.Child("toes_right", at: new Vector3(0f, -0.1f, 0.03f));

        // groups
        var systems = rig.Group("systems_group");
        var frontLeft = rig.Group("front_left_group").Under(systems);
        var frontRight = rig.Group("front_right_grp").Under(systems);
        var hindLeft = rig.Group("hind_left_group").Under(systems);
        var hindRight = rig.Group("hind_right_group").Under(systems);

        // trunk
        var world = rig.Control("world");
        var pelvisC = rig.Control("hips").Under(world).PlacedAt(pelvis);
        var loinC = rig.Control("turn_loin").Under(pelvisC).PlacedAt(loin);
        var chestC = rig.Control("turn_chest").Under(loinC).PlacedAt(chest);
        var neckC = rig.Control("turn_neck").Under(chestC).PlacedAt(neck);
        var headC = rig.Control("turn_head").Under(neckC).PlacedAt(head);
        var jawC = rig.Control("turn_jaw").Under(headC).PlacedAt(jaw).LimitTurn(Axis.X, -5f, 40f);
        rig.Drive(root).ByChannels(world);
        rig.Drive(pelvis).ByChannels(pelvisC);
        rig.Drive(loin).ByChannels(loinC);
        rig.Drive(chest).ByChannels(chestC);
        rig.Drive(neck).ByChannels(neckC);
        rig.Drive(head).ByChannels(headC);
        rig.Drive(jaw).ByChannels(jawC);

        // tail
        var tail1C = rig.Control("wag_1").Under(pelvisC).PlacedAt(tail_1);
        var tail2C = rig.Control("wag_2").Under(tail1C).PlacedAt(tail_2);
        var tail3C = rig.Control("wag_3").Under(tail2C).PlacedAt(tail_3);
        rig.Drive(tail_1).ByChannels(tail1C);
        rig.Drive(tail_2).ByChannels(tail2C);
        rig.Drive(tail_3).ByChannels(tail3C);

        // ears
        var earLeftC = rig.Control("prick_left").Under(headC).PlacedAt(ear_left).Lock(Channels.Move);
        rig.Drive(ear_left).ByChannels(earLeftC);
        var earRightC = rig.Control("prick_right").Under(headC).PlacedAt(ear_right).Lock(Channels.Move);
        rig.Drive(ear_right).ByChannels(earRightC);

        // front left
        rig.Drive(frontLeft).ByMatrix(chestC).KeepingOffset();
        var frontLegLeft = rig.Chain(shoulder_left, wrist_left);
        var frontLegLeftIk = frontLegLeft.Copy("ik").Under(frontLeft);
        var frontLegLeftFk = frontLegLeft.Copy("fk").Under(frontLeft);
        var pawLeftC = rig.Control("front_paw_left").Under(world).PlacedAt(wrist_left);
        var elbowLeftC = rig.Control("elbow_pole_left").Under(world).PlacedAt(frontLegLeftIk.PolePoint(0.3f));
        rig.TwoBone(frontLegLeftIk).Reach(pawLeftC).Face(elbowLeftC);
        var shoulderLeftC = rig.Control("turn_shoulder_left").Under(chestC).PlacedAt(shoulder_left);
        var elbowTurnLeftC = rig.Control("turn_elbow_left").Under(shoulderLeftC).PlacedAt(elbow_left);
        var wristLeftC = rig.Control("turn_wrist_left").Under(elbowTurnLeftC).PlacedAt(wrist_left);
        rig.Drive(frontLegLeftFk.Of(shoulder_left)).ByChannels(shoulderLeftC);
        rig.Drive(frontLegLeftFk.Of(elbow_left)).ByChannels(elbowTurnLeftC);
        rig.Drive(frontLegLeftFk.Of(wrist_left)).ByChannels(wristLeftC);
        var fkFrontLeft = pawLeftC.Switch("fk").AlsoOn(shoulderLeftC);
        rig.Blend(frontLegLeft).From(frontLegLeftIk, fkFrontLeft.Inverse).From(frontLegLeftFk, fkFrontLeft);
        rig.Label("front_left_ik_label", "IK").ShownBy(fkFrontLeft.Inverse);
        rig.Label("front_left_fk_label", "FK").ShownBy(fkFrontLeft);
        var pawBendLeftC = rig.Control("paw_bend_left").Under(pawLeftC).PlacedAt(paw_left);
        rig.Drive(paw_left).ByChannels(pawBendLeftC);

        // front right
        rig.Drive(frontRight).ByMatrix(chestC).KeepingOffset();
        var frontLegRight = rig.Chain(shoulder_right, wrist_right);
        var frontLegRightIk = frontLegRight.Copy("ik").Under(frontRight);
        var frontLegRightFk = frontLegRight.Copy("fk").Under(frontRight);
        var pawRightC = rig.Control("front_paw_right").Under(world).PlacedAt(wrist_right);
        var elbowRightC = rig.Control("elbow_pole_right").Under(world).PlacedAt(frontLegRightIk.PolePoint(0.3f));
        rig.TwoBone(frontLegRightIk).Reach(pawRightC).Face(elbowRightC);
        var shoulderRightC = rig.Control("turn_shoulder_right").Under(chestC).PlacedAt(shoulder_right);
        var elbowTurnRightC = rig.Control("turn_elbow_right").Under(shoulderRightC).PlacedAt(elbow_right);
        var wristRightC = rig.Control("turn_wrist_right").Under(elbowTurnRightC).PlacedAt(wrist_right);
        rig.Drive(frontLegRightFk.Of(shoulder_right)).ByChannels(shoulderRightC);
        rig.Drive(frontLegRightFk.Of(elbow_right)).ByChannels(elbowTurnRightC);
        rig.Drive(frontLegRightFk.Of(wrist_right)).ByChannels(wristRightC);
        var fkFrontRight = pawRightC.Switch("fk").AlsoOn(shoulderRightC);
        rig.Blend(frontLegRight).From(frontLegRightIk, fkFrontLeft.Inverse).From(frontLegRightFk, fkFrontRight);
        rig.Label("front_right_ik_label", "IK").ShownBy(fkFrontRight.Inverse);
        rig.Label("front_right_fk_label", "FK").ShownBy(fkFrontRight);
        var pawBendRightC = rig.Control("paw_bend_right").Under(pawRightC).PlacedAt(paw_right);
        rig.Drive(paw_right).ByChannels(pawBendRightC);

        // hind left
        rig.Drive(hindLeft).ByMatrix(pelvisC).KeepingOffset();
        var hindLegLeft = rig.Chain(hip_left, hock_left);
        var hindLegLeftIk = hindLegLeft.Copy("ik").Under(hindLeft);
        var hockLeftC = rig.Control("hind_paw_left").Under(world).PlacedAt(hock_left);
        var kneeLeftC = rig.Control("knee_pole_left").Under(world).PlacedAt(hindLegLeftIk.PolePoint(0.3f));
        rig.TwoBone(hindLegLeftIk).Reach(hockLeftC).Face(kneeLeftC);
        rig.Blend(hindLegLeft).From(hindLegLeftIk, 1f);
        var toesLeftC = rig.Control("toe_bend_left").Under(hockLeftC).PlacedAt(toes_left);
        rig.Drive(toes_left).ByChannels(toesLeftC);

        // hind right
        rig.Drive(hindRight).ByMatrix(pelvisC).KeepingOffset();
        var hindLegRight = rig.Chain(hip_right, hock_right);
        var hindLegRightIk = hindLegRight.Copy("ik").Under(hindRight);
        var hockRightC = rig.Control("hind_paw_right").Under(world).PlacedAt(hock_right);
        var kneeRightC = rig.Control("knee_pole_right").Under(world).PlacedAt(hindLegRightIk.PolePoint(0.3f));
        rig.TwoBone(hindLegRightIk).Reach(hockRightC).Face(kneeRightC);
        rig.Blend(hindLegRight).From(hindLegRightIk, 1f);
        var toesRightC = rig.Control("toe_bend_right").Under(hockRightC).PlacedAt(toes_right);
        rig.Drive(toes_right).ByMatrix(toesRightC);
    }
}
