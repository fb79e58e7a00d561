using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.Third.R29;

// Assignment 3 - seagull
// TODO: ask about the tail, does it need more joints?
public class SeagullRig : IRigDefinition
{
    public RigDraft? myRig;
    public Joint body;
    public Joint neck1;
    public Joint neck2;
    public Joint head;
    public Joint beak;
    public Joint tail;
    public List<Joint> leftWing = new List<Joint>();
    public List<Joint> rightWing = new List<Joint>();
    public List<Joint> legs = new List<Joint>();

    public void Define(RigDraft rig)
    {
        myRig = rig;
        leftWing.Clear();
        rightWing.Clear();
        legs.Clear();

        // step 1: make the skeleton
        MakeSkeleton();

        // step 2: make the main control
        Control main = rig.Control("main");
        Control bodyControl = rig.Control("body_control");
        bodyControl.Under(main);
        bodyControl.PlacedAt(body);
        rig.Drive(body).ByChannels(bodyControl);

        // step 3: neck and head
        Control neck1Control = rig.Control("neck_1_control");
        neck1Control.Under(bodyControl);
        neck1Control.PlacedAt(neck1);
        rig.Drive(neck1).ByChannels(neck1Control);

        Control neck2Control = rig.Control("neck_2_control");
        neck2Control.Under(neck1Control);
        neck2Control.PlacedAt(neck2);
        rig.Drive(neck2).ByChannels(neck2Control);

        Control headControl = rig.Control("head_control");
        headControl.Under(neck2Control);
        headControl.PlacedAt(head);
        // matrix seemed smoother here?
        rig.Drive(head).ByMatrix(headControl);

        Control beakControl = rig.Control("beak_control");
        beakControl.Under(headControl);
        beakControl.PlacedAt(beak);
        beakControl.LimitTurn(Axis.X, 0, 35);
        rig.Drive(beak).ByChannels(beakControl);

        Control tailControl = rig.Control("tail_control");
        tailControl.Under(bodyControl);
        tailControl.PlacedAt(tail);
        rig.Drive(tail).ByChannels(tailControl);

        // step 4: wings
        MakeWing(leftWing, "left", bodyControl);
        MakeWing(rightWing, "right", bodyControl);

        // step 5: legs
        Group legGroup = rig.Group("legs");
        legGroup.Under(main);
        for (int i = 0; i < legs.Count; i = i + 3)
        {
            string sideName;
            if (i == 0)
            {
                sideName = "left";
            }
            else
            {
                sideName = "right";
            }

            Chain leg = rig.Chain(legs[i], legs[i + 2]);
            Copy ik = leg.Copy("ik");
            ik.Under(legGroup);
            Control foot = rig.Control("foot_" + sideName);
            foot.Under(main);
            foot.PlacedAt(legs[i + 2]);
            Control knee = rig.Control("knee_" + sideName);
            knee.Under(main);
            knee.PlacedAt(ik.PolePoint(0.1f));
            rig.TwoBone(ik).Reach(foot).Face(knee);
            rig.Blend(leg).From(ik, 1.0f);
        }
    }

    private void MakeSkeleton()
    {
        Skeleton skeleton = myRig!.Skeleton("seagull");
        body = skeleton.Root("body", JointRole.Deform, new Vector3(0, 0.25f, 0));
        neck1 = body.Child("neck_1", JointRole.Deform, new Vector3(0, 0.05f, 0.1f));
        neck2 = neck1.Child("neck_2", JointRole.Deform, new Vector3(0, 0.05f, 0.03f));
        head = neck2.Child("head", JointRole.Deform, new Vector3(0, 0.05f, 0.02f));
        beak = head.Child("beak_lower", JointRole.Deform, new Vector3(0, -0.01f, 0.04f));
        tail = body.Child("tail", JointRole.Deform, new Vector3(0, 0.01f, -0.14f));

        string[] wingNames = { "shoulder", "elbow", "wrist", "feather_a", "feather_b" };
        float[] wingLengths = { 0.05f, 0.14f, 0.16f, 0.1f, 0.1f };
        Joint lastLeft = body;
        Joint lastRight = body;
        for (int i = 0; i < wingNames.Length; i++)
        {
            lastLeft = lastLeft.Child(wingNames[i] + "_left", JointRole.Deform, new Vector3(wingLengths[i], 0, 0));
            lastRight = lastRight.Child(wingNames[i] + "_right", JointRole.Deform, new Vector3(-wingLengths[i], 0, 0));
            leftWing.Add(lastLeft);
            rightWing.Add(lastRight);
        }

        for (int i = 0; i < 2; i++)
        {
            string s = i == 0 ? "_left" : "_right";
            float x = i == 0 ? 0.04f : -0.04f;
            Joint hip = body.Child("hip" + s, JointRole.Deform, new Vector3(x, -0.05f, -0.02f));
            Joint kneeJoint = hip.Child("knee" + s, JointRole.Deform, new Vector3(0, -0.09f, 0.02f));
            Joint ankle = kneeJoint.Child("ankle" + s, JointRole.Deform, new Vector3(0, -0.1f, -0.02f));
            legs.Add(hip);
            legs.Add(kneeJoint);
            legs.Add(ankle);
        }
    }

    private void MakeWing(List<Joint> wing, string sideName, Control parent)
    {
        Control last = parent;
        int counter = 0;
        while (counter < wing.Count)
        {
            Joint joint = wing[counter];
            Control c = myRig!.Control("flap_" + joint.Name);
            c.Under(last);
            c.PlacedAt(joint);
            if (counter > 2)
            {
                c.Lock(Channels.Move);
            }

            myRig.Drive(joint).ByChannels(c);
            last = c;
            counter++;
        }

        Console.WriteLine("wing " + sideName + " done, " + counter + " joints");
    }
}
