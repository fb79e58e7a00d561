using System.Numerics;
using Condyle;

namespace Unseen.First.R07;

// The ship's cat. The back legs are like the front legs but I changed the names.
public sealed class ShipsCat : IRigDefinition
{
    public void Define(RigDraft rig)
    {
        Skeleton skeleton = rig.Skeleton("ships_cat");
        Joint pelvis = skeleton.Root("pelvis", JointRole.Deform, new Vector3(0, 0.25f, -0.12f));
        Joint chest = pelvis.Child("chest", JointRole.Deform, new Vector3(0, 0.01f, 0.2f));
        Joint neck = chest.Child("neck", JointRole.Deform, new Vector3(0, 0.05f, 0.06f));
        Joint head = neck.Child("head", JointRole.Deform, new Vector3(0, 0.05f, 0.04f));

        Control cat = rig.Control("cat");
        Control pelvisControl = rig.Control("pelvis" + "_ctl");
        pelvisControl = pelvisControl.Under(cat);
        pelvisControl = pelvisControl.PlacedAt(pelvis);
        rig.Drive(pelvis).ByChannels(pelvisControl);
        Control chestControl = rig.Control("chest" + "_ctl");
        chestControl = chestControl.Under(pelvisControl);
        chestControl = chestControl.PlacedAt(chest);
        rig.Drive(chest).ByChannels(chestControl);
        Control neckControl = rig.Control("neck" + "_ctl");
        neckControl = neckControl.Under(chestControl);
        neckControl = neckControl.PlacedAt(neck);
        rig.Drive(neck).ByChannels(neckControl);
        Control headControl = rig.Control("head" + "_ctl");
        headControl = headControl.Under(neckControl);
        headControl = headControl.PlacedAt(head);
        rig.Drive(head).ByChannels(headControl);

        // the tail has seven bones
        int number = 1;
        Joint lastTail = pelvis;
        Control lastTailControl = pelvisControl;
        while (number <= 7)
        {
            string tailName = "tail" + number;
            Vector3 offset = new Vector3(0, 0, -0.05f);
            if (number == 1)
            {
                offset = new Vector3(0, 0.03f, -0.06f);
            }

            Joint tail = lastTail.Child(tailName, JointRole.Deform, offset);
            Control tailControl = rig.Control(tailName + "_ctl").Under(lastTailControl).PlacedAt(tail);
            rig.Drive(tail).ByChannels(tailControl);
            lastTail = tail;
            lastTailControl = tailControl;
            number = number + 1;
        }

        Group legs = rig.Group("legs");

        // front legs
        Joint shoulderLeft = chest.Child("shoulder_left", JointRole.Deform, new Vector3(0.04f, -0.02f, 0.02f));
        Joint elbowLeft = shoulderLeft.Child("elbow_left", JointRole.Deform, new Vector3(0, -0.1f, -0.03f));
        Joint pawLeft = elbowLeft.Child("paw_left", JointRole.Deform, new Vector3(0, -0.12f, 0.02f));
        Joint shoulderRight = chest.Child("shoulder_right", JointRole.Deform, new Vector3(-0.04f, -0.02f, 0.02f));
        Joint elbowRight = shoulderRight.Child("elbow_right", JointRole.Deform, new Vector3(0, -0.1f, -0.03f));
        Joint pawRight = elbowRight.Child("paw_right", JointRole.Deform, new Vector3(0, -0.12f, 0.02f));
        MakeLeg(rig, "front", "left", shoulderLeft, pawLeft, chestControl, cat, legs);
        MakeLeg(rig, "front", "right", shoulderRight, pawRight, chestControl, cat, legs);

        // back legs
        Joint hipLeft = pelvis.Child("hip_left", JointRole.Deform, new Vector3(0.04f, -0.02f, 0));
        Joint kneeLeft = hipLeft.Child("knee_left", JointRole.Deform, new Vector3(0, -0.1f, 0.04f));
        Joint hockLeft = kneeLeft.Child("hock_left", JointRole.Deform, new Vector3(0, -0.11f, -0.05f));
        Joint hipRight = pelvis.Child("hip_right", JointRole.Deform, new Vector3(-0.04f, -0.02f, 0));
        Joint kneeRight = hipRight.Child("knee_right", JointRole.Deform, new Vector3(0, -0.1f, 0.04f));
        Joint hockRight = kneeRight.Child("hock_right", JointRole.Deform, new Vector3(0, -0.11f, -0.05f));
        MakeLeg(rig, "back", "left", hipLeft, hockLeft, pelvisControl, cat, legs);
        MakeLeg(rig, "back", "right", hipRight, hockRight, pelvisControl, cat, legs);

        // ears, one bone each
        string[] ears = new string[2];
        ears[0] = "left";
        ears[1] = "right";
        for (int i = 0; i < ears.Length; i++)
        {
            float x = 0.02f;
            if (ears[i] == "right")
            {
                x = x * -1;
            }

            Joint ear = head.Child("ear_" + ears[i], JointRole.Deform, new Vector3(x, 0.03f, 0));
            Control earControl = rig.Control("ear_" + ears[i] + "_ctl").Under(headControl).PlacedAt(ear).Lock(Channels.Move);
            rig.Drive(ear).ByChannels(earControl);
        }
    }

    private void MakeLeg(RigDraft rig, string which, string side, Joint first, Joint last, Control body, Control cat, Group legs)
    {
        Chain chain = rig.Chain(first, last);
        Group group = rig.Group(which + "_leg_" + side).Under(legs).PlacedAt(body);
        rig.Drive(group).ByMatrix(body);
        Copy ik = chain.Copy("ik").Under(group);
        Control foot = rig.Control(which + "_foot_" + side).Under(cat).PlacedAt(last);
        Control pole = rig.Control(which + "_pole_" + side).Under(cat).PlacedAt(ik.PolePoint(0.2f));
        rig.TwoBone(ik).Reach(foot).Face(pole);
        Copy fk = chain.Copy("fk").Under(group);
        Control a = rig.Control("fk_" + chain[0].Name).Under(body).PlacedAt(chain[0]);
        rig.Drive(fk.Of(chain[0])).ByChannels(a);
        Control b = rig.Control("fk_" + chain[1].Name).Under(a).PlacedAt(chain[1]);
        rig.Drive(fk.Of(chain[1])).ByChannels(b);
        Control c = rig.Control("fk_" + chain[2].Name).Under(b).PlacedAt(chain[2]);
        rig.Drive(fk.Of(chain[2])).ByChannels(c);
        Switch amount = foot.Switch("fk");
        rig.Blend(chain).From(ik, amount.Inverse).From(fk, amount);
    }
}
