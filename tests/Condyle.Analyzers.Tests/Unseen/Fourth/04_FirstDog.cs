using System.Numerics;
using Condyle;

namespace Unseen.Fourth.R04;

// my first rig!! the dock dog
public class FirstDog : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        // skeleton
        Skeleton skeleton = rig.Skeleton("dog");
        Joint pelvis = skeleton.Root("pelvis", JointRole.Deform, new Vector3(0, 0.6f, -0.3f));
        Joint chest = pelvis.Child("chest", JointRole.Deform, new Vector3(0, 0, 0.5f));
        Joint head = chest.Child("head", JointRole.Deform, new Vector3(0, 0.2f, 0.2f));
        Joint shoulderL = chest.Child("shoulder_left", JointRole.Deform, new Vector3(0.1f, -0.05f, 0));
        Joint elbowL = shoulderL.Child("elbow_left", JointRole.Deform, new Vector3(0, -0.25f, -0.03f));
        Joint wristL = elbowL.Child("wrist_left", JointRole.Deform, new Vector3(0, -0.25f, 0.03f));
        Joint shoulderR = chest.Child("shoulder_right", JointRole.Deform, new Vector3(-0.1f, -0.05f, 0));
        Joint elbowR = shoulderR.Child("elbow_right", JointRole.Deform, new Vector3(0, -0.25f, -0.03f));
        Joint wristR = elbowR.Child("wrist_right", JointRole.Deform, new Vector3(0, -0.25f, 0.03f));

        // main controls
        Group systems = rig.Group("systems");
        Control world = rig.Control("world");
        Control body = rig.Control("body");
        body.Under(world);
        body.PlacedAt(pelvis);
        Control chestControl = rig.Control("chest_control");
        chestControl.Under(body);
        chestControl.PlacedAt(chest);
        Control headControl = rig.Control("head_control");
        headControl.Under(chestControl);
        headControl.PlacedAt(head);
        rig.Drive(pelvis).ByChannels(body);
        rig.Drive(chest).ByChannels(chestControl);
        rig.Drive(head).ByMatrix(headControl);

        // left front leg
        Chain legL = rig.Chain(shoulderL, wristL);
        Group legGroupL = rig.Group("leg_left_group");
        legGroupL.Under(systems);
        legGroupL.PlacedAt(shoulderL);
        rig.Drive(legGroupL).ByMatrix(chestControl).KeepingOffset();
        Copy ikL = legL.Copy("ik");
        ikL.Under(legGroupL);
        Copy fkL = legL.Copy("fk");
        fkL.Under(legGroupL);
        Control pawL = rig.Control("paw_left");
        pawL.Under(world);
        pawL.PlacedAt(wristL);
        Control poleL = rig.Control("pole_left");
        poleL.Under(world);
        poleL.PlacedAt(ikL.PolePoint(0.4f));
        rig.TwoBone(ikL).Reach(pawL).Face(poleL);
        Control turnL1 = rig.Control("turn_shoulder_left").Under(chestControl).PlacedAt(shoulderL);
        Control turnL2 = rig.Control("turn_elbow_left").Under(turnL1).PlacedAt(elbowL);
        Control turnL3 = rig.Control("turn_wrist_left").Under(turnL2).PlacedAt(wristL);
        rig.Drive(fkL.Of(shoulderL)).ByChannels(turnL1);
        rig.Drive(fkL.Of(elbowL)).ByChannels(turnL2);
        rig.Drive(fkL.Of(wristL)).ByChannels(turnL3);
        Switch fkSwitchL = pawL.Switch("fk");
        rig.Blend(legL).From(ikL, fkSwitchL.Inverse).From(fkL, fkSwitchL);
        rig.Label("ik_label_left", "IK").ShownBy(fkSwitchL.Inverse);
        rig.Label("fk_label_left", "FK").ShownBy(fkSwitchL);

        // right front leg
        Chain legR = rig.Chain(shoulderR, wristR);
        Group legGroupR = rig.Group("leg_right_group");
        legGroupR.Under(systems);
        legGroupR.PlacedAt(shoulderR);
        rig.Drive(legGroupR).ByMatrix(chestControl).KeepingOffset();
        Copy ikR = legR.Copy("ik");
        ikR.Under(legGroupR);
        Copy fkR = legR.Copy("fk");
        fkR.Under(legGroupR);
        Control pawR = rig.Control("paw_right");
        pawR.Under(world);
        pawR.PlacedAt(wristR);
        Control poleR = rig.Control("pole_right");
        poleR.Under(world);
        poleR.PlacedAt(ikR.PolePoint(0.4f));
        rig.TwoBone(ikR).Reach(pawR).Face(poleR);
        Control turnR1 = rig.Control("turn_shoulder_right").Under(chestControl).PlacedAt(shoulderR);
        Control turnR2 = rig.Control("turn_elbow_right").Under(turnR1).PlacedAt(elbowR);
        Control turnR3 = rig.Control("turn_wrist_right").Under(turnR2).PlacedAt(wristR);
        rig.Drive(fkR.Of(shoulderR)).ByChannels(turnR1);
        rig.Drive(fkR.Of(elbowR)).ByChannels(turnR2);
        rig.Drive(fkR.Of(wristR)).ByChannels(turnR3);
        Switch fkSwitchR = pawR.Switch("fk");
        rig.Blend(legR).From(ikR, fkSwitchL.Inverse).From(fkR, fkSwitchR);
        rig.Label("ik_label_right", "IK").ShownBy(fkSwitchR.Inverse);
        rig.Label("fk_label_right", "FK").ShownBy(fkSwitchR);
    }
}
