using System;
using System.Numerics;
using Condyle;

namespace Unseen.First.R39;

/*
 * Old lighthouse keeper with his lantern.
 * He is the first character I rig alone so I wrote everything out, then I see better what is what.
 */
public sealed class LighthouseKeeper : IRigDefinition
{
    private RigDraft? theRig;
    private readonly Joint[] spine = new Joint[5];
    private readonly Control[] spineControls = new Control[5];
    private int made = 0;

    public void Define(RigDraft rig)
    {
        theRig = rig;
        var skeleton = rig.Skeleton("lighthouse_keeper");
        string[] names = { "pelvis", "waist", "chest", "neck", "head" };
        float[] heights = { 0.95f, 0.14f, 0.24f, 0.22f, 0.1f };
        for (int i = 0; i < 5; i++)
        {
            if (i == 0)
                spine[i] = skeleton.Root(names[i], at: new Vector3(0, heights[i], 0));
            else
                spine[i] = spine[i - 1].Child(names[i], at: new Vector3(0, heights[i], 0));
        }

        var keeper = NewControl("keeper", spine[0]);
        var body = NewControl("body", spine[0]).Under(keeper);
        for (int i = 0; i < 5; i++)
        {
            spineControls[i] = NewControl("turn_" + names[i], spine[i]);
            if (i == 0)
                spineControls[i].Under(body);
            if (i > 0)
                spineControls[i].Under(spineControls[i - 1]);
            if (i != 0)
                spineControls[i].Lock(Channels.Move);
            rig.Drive(spine[i]).ByChannels(spineControls[i]);
        }

        var systems = rig.Group("systems_group");

        // LEFT ARM (he holds the lantern)
        var shoulderL = spine[2].Child("shoulder_left", at: new Vector3(0.19f, 0.17f, 0));
        var elbowL = shoulderL.Child("elbow_left", at: new Vector3(0.04f, -0.29f, -0.03f));
        var wristL = elbowL.Child("wrist_left", at: new Vector3(0, -0.24f, 0.08f));
        var lantern = wristL.Child("lantern", JointRole.Helper, at: new Vector3(0, -0.1f, 0.02f));
        var armL = rig.Chain(shoulderL, wristL);
        var armGroupL = rig.Group("arm_left_group").Under(systems).PlacedAt(spineControls[2]);
        rig.Drive(armGroupL).ByMatrix(spineControls[2]);
        var ikL = armL.Copy("ik").Under(armGroupL);
        var fkL = armL.Copy("fk").Under(armGroupL);
        var handL = NewControl("hand_left", wristL).Under(keeper);
        var poleL = rig.Control("elbow_pole_left").PlacedAt(ikL.PolePoint(0.5f)).Under(keeper);
        made++;
        rig.TwoBone(ikL).Reach(handL).Face(poleL);
        var fkL1 = NewControl("turn_shoulder_left", shoulderL).Under(spineControls[2]);
        var fkL2 = NewControl("turn_elbow_left", elbowL).Under(fkL1);
        var fkL3 = NewControl("turn_wrist_left", wristL).Under(fkL2);
        rig.Drive(fkL.Of(shoulderL)).ByChannels(fkL1);
        rig.Drive(fkL.Of(elbowL)).ByChannels(fkL2);
        rig.Drive(fkL.Of(wristL)).ByChannels(fkL3);
        var switchL = handL.Switch("fk");
        rig.Blend(armL).From(ikL, switchL.Inverse).From(fkL, switchL);
        rig.Label("ik_label_left", "IK").ShownBy(switchL.Inverse).Under(handL);
        rig.Label("fk_label_left", "FK").ShownBy(switchL).Under(handL);

        // RIGHT ARM = left arm copied, x is minus
        var shoulderR = spine[2].Child("shoulder_right", at: new Vector3(-0.19f, 0.17f, 0));
        var elbowR = shoulderR.Child("elbow_right", at: new Vector3(-0.04f, -0.29f, -0.03f));
        var wristR = elbowR.Child("wrist_right", at: new Vector3(0, -0.24f, 0.08f));
        var armR = rig.Chain(shoulderR, wristR);
        var armGroupR = rig.Group("arm_right_group").Under(systems).PlacedAt(spineControls[2]);
        rig.Drive(armGroupR).ByMatrix(spineControls[2]);
        var ikR = armR.Copy("ik").Under(armGroupR);
        var fkR = armR.Copy("fk").Under(armGroupR);
        var handR = NewControl("hand_right", wristR).Under(keeper);
        var poleR = rig.Control("elbow_pole_right").PlacedAt(ikR.PolePoint(0.5f)).Under(keeper);
        made++;
        rig.TwoBone(ikR).Reach(handR).Face(poleR);
        var fkR1 = NewControl("turn_shoulder_right", shoulderR).Under(spineControls[2]);
        var fkR2 = NewControl("turn_elbow_right", elbowR).Under(fkR1);
        var fkR3 = NewControl("turn_wrist_right", wristR).Under(fkR2);
        rig.Drive(fkR.Of(shoulderR)).ByChannels(fkR1);
        rig.Drive(fkR.Of(elbowR)).ByChannels(fkR2);
        rig.Drive(fkR.Of(wristR)).ByChannels(fkR3);
        var switchR = handR.Switch("fk");
        rig.Blend(armR).From(ikR, switchR.Inverse).From(fkR, switchL);
        rig.Label("ik_label_right", "IK").ShownBy(switchR.Inverse).Under(handR);
        rig.Label("fk_label_right", "FK").ShownBy(switchR).Under(handR);

        // lantern hangs down, it can follow the hand or hang in the world
        var lanternInHand = rig.Group("lantern_in_hand_group").Under(systems).PlacedAt(lantern);
        rig.Drive(lanternInHand).ByMatrix(wristL).KeepingOffset();
        var lanternFree = NewControl("lantern", lantern).Under(keeper);
        var hang = lanternFree.Switch("in_hand", 1.0f);
        rig.Blend(lantern).From(lanternInHand, hang).From(lanternFree, hang.Inverse);

        Legs(systems);

        // just to be sure that I did not forget one
        if (made != 22)
            throw new Exception("keeper should have 22 controls but has " + made);
    }

    private void Legs(Group systems)
    {
        int n = 0;
        while (n < 2)
        {
            string side = n == 0 ? "left" : "right";
            float mirror = n == 0 ? 1 : -1;
            var hip = spine[0].Child("hip_" + side, at: new Vector3(0.1f * mirror, -0.05f, 0));
            var knee = hip.Child("knee_" + side, at: new Vector3(0, -0.42f, 0.03f));
            var ankle = knee.Child("ankle_" + side, at: new Vector3(0, -0.4f, -0.04f));
            var toes = ankle.Child("toes_" + side, at: new Vector3(0, -0.06f, 0.14f));
            var leg = theRig!.Chain(hip, ankle);
            var legGroup = theRig.Group("leg_" + side).Under(systems).PlacedAt(spineControls[0]);
            theRig.Drive(legGroup).ByMatrix(spineControls[0]);
            var ik = leg.Copy("ik").Under(legGroup);
            var foot = NewControl("foot_" + side, ankle);
            var kneePole = theRig.Control("knee_pole_" + side).PlacedAt(ik.PolePoint(0.5f));
            theRig.TwoBone(ik).Reach(foot).Face(kneePole);
            theRig.Drive(hip).ByChannels(ik.Root);
            theRig.Drive(knee).ByChannels(ik.Of(knee));
            theRig.Drive(ankle).ByChannels(ik.Tip);
            var toesControl = NewControl("toes_" + side, toes).Under(foot).Lock(Channels.Move | Channels.TurnY);
            theRig.Drive(toes).ByChannels(toesControl);
            n++;
        }
    }

    private Control NewControl(string name, Joint where)
    {
        if (name == "")
            name = "control" + made;
        made = made + 1;
        return theRig!.ControlAt(name, where);
    }
}

internal static class RigShortcuts
{
    public static Control ControlAt(this RigDraft rig, string name, Joint where)
    {
        return rig.Control(name).PlacedAt(where);
    }
}
