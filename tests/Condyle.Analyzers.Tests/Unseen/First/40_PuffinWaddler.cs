using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R40;

public enum PuffinColour { Normal, Winter, Baby }

// The puffins on the breakwater. There are three kinds, and the baby has no feathers to move.
public sealed class PuffinWaddler : IRigDefinition
{
    public static int counter;

    public void Define(RigDraft rig)
    {
        counter = 0;
        var all = rig.Skeleton("puffins");
        float x = 0;
        foreach (PuffinColour colour in new PuffinColour[] { PuffinColour.Normal, PuffinColour.Winter, PuffinColour.Baby })
        {
            var bird = new Puffin();
            bird.rig = rig;
            bird.colour = colour;
            bird.x = x;
            bird.MakeBones(all);
            bird.MakeControls();
            bird.MakeFeet();
            if (bird.HasFeathers())
                bird.MakeWings();
            x += 0.4f;
        }
    }
}

internal class Puffin
{
    public RigDraft rig = null!;
    public PuffinColour colour;
    public float x;
    public string pre = "";
    public Joint body, neck, head, beakTop, beakBottom;
    public Control bodyControl, headControl;
    public Dictionary<string, Joint> wingBones = new Dictionary<string, Joint>();

    public bool HasFeathers()
    {
        if (colour == PuffinColour.Baby)
            return false;
        else
            return true;
    }

    public float Size()
    {
        switch (colour)
        {
            case PuffinColour.Normal: return 1.0f;
            case PuffinColour.Winter: return 0.95f;
            case PuffinColour.Baby: return 0.5f;
            default: return 0;
        }
    }

    public void MakeBones(Skeleton skeleton)
    {
        PuffinWaddler.counter++;
        pre = "p" + PuffinWaddler.counter + "_";
        float b = Size();
        body = skeleton.Root(pre + "body", at: new Vector3(x, 0.13f * b, 0));
        neck = body.Child(pre + "neck", at: new Vector3(0, 0.07f * b, 0.01f));
        head = neck.Child(pre + "head", at: new Vector3(0, 0.04f * b, 0.01f));
        beakTop = head.Child(pre + "beak_top", at: new Vector3(0, 0.005f, 0.03f * b));
        beakBottom = head.Child(pre + "beak_bottom", at: new Vector3(0, -0.005f, 0.03f * b));
    }

    public void MakeControls()
    {
        bodyControl = rig.Control(pre + "waddle").PlacedAt(body);
        Control neckControl = rig.Control(pre + "turn_neck").PlacedAt(neck).Under(bodyControl);
        headControl = rig.Control(pre + "turn_head").PlacedAt(head).Under(neckControl);
        rig.Drive(body).ByChannels(bodyControl);
        rig.Drive(neck).ByChannels(neckControl);
        rig.Drive(head).ByChannels(headControl);

        // beak: one control opens both halves. up half only a little bit
        Control beak = rig.Control(pre + "beak").PlacedAt(beakBottom).Under(headControl);
        beak.Lock(Channels.Move); beak.Lock(Channels.TurnY); beak.Lock(Channels.TurnZ);
        beak.LimitTurn(Axis.X, 0, 30);
        rig.Drive(beakBottom).ByChannels(beak);
        Group stay = rig.Group(pre + "beak_stay_group").Under(headControl).PlacedAt(beakTop);
        Group go = rig.Group(pre + "beak_go_group").Under(beak).PlacedAt(beakTop);
        rig.Blend(beakTop).From(stay, 0.8f).From(go, 0.25f);
    }

    public void MakeWings()
    {
        string[] sides = new string[2];
        sides[0] = "left";
        sides[1] = "right";
        for (int i = 0; i < sides.Length; i++)
        {
            string side = sides[i];
            int m = 1;
            if (side.Equals("right"))
                m = -1;
            wingBones["a_" + side] = body.Child(pre + "wing_a_" + side, at: new Vector3(0.05f * m, 0.04f, 0));
            wingBones["b_" + side] = wingBones["a_" + side].Child(pre + "wing_b_" + side, at: new Vector3(0.06f * m, -0.02f, 0));
            wingBones["c_" + side] = wingBones["b_" + side].Child(pre + "wing_c_" + side, at: new Vector3(0.06f * m, -0.03f, 0));
            Control c = bodyControl;
            foreach (string letter in new string[] { "a", "b", "c" })
            {
                string key = letter + "_" + side;
                if (!wingBones.ContainsKey(key))
                    continue;
                Joint bone = wingBones[key];
                Control next = rig.Control("turn_" + bone.Name).PlacedAt(bone).Under(c);
                next.Lock(Channels.Move);
                if (letter == "a") next.LimitTurn(Axis.Z, m == 1 ? -20 : -110, m == 1 ? 110 : 20);
                if (letter == "b") next.LimitTurn(Axis.Z, -30, 30);
                if (letter == "c") next.LimitTurn(Axis.Z, -30, 30);
                rig.Drive(bone).ByChannels(next);
                c = next;
            }
        }
    }

    public void MakeFeet()
    {
        Group feet = rig.Group(pre + "feet").PlacedAt(bodyControl);
        rig.Drive(feet).ByMatrix(bodyControl);
        foreach (Side side in Side.Both)
        {
            Joint hip = body.Child(pre + "hip_" + side, at: new Vector3(0.03f * side.Sign, -0.04f, 0));
            Joint knee = hip.Child(pre + "knee_" + side, at: new Vector3(0, -0.04f * Size(), -0.01f));
            Joint foot = knee.Child(pre + "foot_" + side, at: new Vector3(0, -0.04f * Size(), 0.02f));
            Chain leg = rig.Chain(hip, foot);
            Copy ik = leg.Copy("ik").Under(feet);
            Control step = rig.Control(pre + "step_" + side).PlacedAt(foot);
            rig.TwoBone(ik).Reach(step);
            // baby puffin slides on its belly, so the legs can be let go
            if (colour == PuffinColour.Baby)
            {
                Copy lazy = leg.Copy("lazy").Under(feet);
                Switch slide = step.Switch("lazy");
                rig.Blend(leg).From(ik, slide.Inverse).From(lazy, slide);
            }
            else
            {
                for (int i = 0; i < leg.Count; i++)
                    rig.Drive(leg[i]).ByChannels(ik.Of(leg[i]));
            }
        }
    }
}
