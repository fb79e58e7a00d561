using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R38;

// My first four-legger!! It's the ginger cat that sleeps on the fish crates.
public sealed class HarbourCat : IRigDefinition
{
    // how big is the cat (1 = normal cat, I made it in the wrong unit first)
    private readonly float s = 0.01f;
    private readonly bool withWhiskers = true;
    private readonly int tailBones = 7;

    public void Define(RigDraft rig)
    {
        // ---- bones ----
        var skel = rig.Skeleton("harbour_cat");
        var hips = skel.Root("hips", at: new Vector3(0, 28 * s, -12 * s));
        var belly = hips.Child("belly", at: new Vector3(0, 1 * s, 10 * s));
        var chest = belly.Child("chest", at: new Vector3(0, 0, 11 * s));
        var neck = chest.Child("neck", at: new Vector3(0, 4 * s, 5 * s));
        var head = neck.Child("head", at: new Vector3(0, 6 * s, 4 * s));
        var jaw = head.Child("jaw", at: new Vector3(0, -1.5f * s, 3 * s));
        var earL = head.Child("ear_left", at: new Vector3(2.5f * s, 4 * s, 0));
        var earR = head.Child("ear_right", at: new Vector3(-2.5f * s, 4 * s, 0));

        // ---- main controls ----
        var everything = rig.Group("cat_group");
        var main = rig.Control("cat");
        main = main.PlacedAt(hips);
        var hipsC = rig.Control("cat_hips").Under(main).PlacedAt(hips);
        var bellyC = rig.Control("cat_belly").Under(hipsC).PlacedAt(belly);
        var chestC = rig.Control("cat_chest").Under(bellyC).PlacedAt(chest);
        var neckC = rig.Control("cat_neck").Under(chestC).PlacedAt(neck);
        var headC = rig.Control("cat_head").Under(neckC).PlacedAt(head);
        var jawC = rig.Control("cat_jaw").Under(headC).PlacedAt(jaw);
        var earLC = rig.Control("cat_ear_left").Under(headC).PlacedAt(earL);
        var earRC = rig.Control("cat_ear_right").Under(headC).PlacedAt(earR);
        rig.Drive(hips).ByChannels(hipsC);
        rig.Drive(belly).ByChannels(bellyC);
        rig.Drive(chest).ByChannels(chestC);
        rig.Drive(neck).ByChannels(neckC);
        rig.Drive(head).ByChannels(headC);
        rig.Drive(jaw).ByChannels(jawC);
        rig.Drive(earL).ByChannels(earLC);
        rig.Drive(earR).ByMatrix(earRC); // the ear was jumpy, like this it looks ok

        // cats can not turn the ears all around :)
        List<Control> ears = new List<Control>();
        ears.Add(earLC);
        ears.Add(earRC);
        for (int i = 0; i < ears.Count; i++)
        {
            ears[i].Lock(Channels.Move);
            ears[i].LimitTurn(Axis.Y, -60, 60);
        }

        jawC.LimitTurn(Axis.X, 0, 35);

        // ---- the legs ----
        MakeLeg(rig, everything, chest, chestC, "front", "left");
        MakeLeg(rig, everything, chest, chestC, "front", "right");
        MakeLeg(rig, everything, hips, hipsC, "back", "left");
        MakeLeg(rig, everything, hips, hipsC, "back", "right");

        // ---- tail ----
        Joint lastBone = hips;
        Control lastControl = hipsC;
        string name = "";
        for (int i = 1; i <= tailBones; i = i + 1)
        {
            if (i < 10)
            {
                name = "tail_0" + i;
            }
            else
            {
                name = "tail_" + i;
            }

            float z = -5 * s;
            if (i == 1)
                z = -4 * s; // starts inside of the bum
            var t = lastBone.Child(name, at: new Vector3(0, i > 4 ? 1 * s : 0.5f * s, z));
            var tc = rig.Control("cat_" + name).Under(lastControl).PlacedAt(t);
            tc.Lock(Channels.Move);
            rig.Drive(t).ByChannels(tc);
            lastBone = t;
            lastControl = tc;
        }

        // ---- whiskers (3 on each side) ----
        if (withWhiskers == true)
        {
            for (int a = 0; a < 2; a++)
            {
                for (int b = 0; b < 3; b++)
                {
                    string side = "left";
                    float x = 1.5f * s;
                    if (a == 1)
                    {
                        side = "right";
                        x = x * -1;
                    }

                    var w = head.Child("whisker_" + (b + 1) + "_" + side, at: new Vector3(x, (b - 1) * 0.5f * s, 4 * s));
                    var wc = rig.Control("cat_whisker_" + (b + 1) + "_" + side).Under(headC).PlacedAt(w).Lock(Channels.Move);
                    rig.Drive(w).ByChannels(wc);
                }
            }
        }
    }

    private void MakeLeg(RigDraft rig, Group everything, Joint body, Control bodyControl, string where, string side)
    {
        float x = 5 * s;
        if (side == "right")
            x = -x;
        // front legs bend to the back, back legs bend to the front
        float bend = -3 * s;
        if (where == "back")
        {
            bend = 3 * s;
        }

        var leg1 = body.Child(where + "_upper_" + side, at: new Vector3(x, -2 * s, 0));
        var leg2 = leg1.Child(where + "_lower_" + side, at: new Vector3(0, -12 * s, bend));
        var leg3 = leg2.Child(where + "_paw_" + side, at: new Vector3(0, -11 * s, -bend));

        var legGroup = rig.Group("cat_" + where + "_leg_" + side + "_parts").Under(everything).PlacedAt(bodyControl);
        rig.Drive(legGroup).ByMatrix(bodyControl);

        var chain = rig.Chain(leg1, leg3);
        var ik = chain.Copy("ik").Under(legGroup);
        var fk = chain.Copy("fk").Under(legGroup);

        var paw = rig.Control("cat_" + where + "_paw_" + side).PlacedAt(leg3);
        var knee = rig.Control("cat_" + where + "_knee_" + side).PlacedAt(ik.PolePoint(0.2f));
        rig.TwoBone(ik).Reach(paw).Face(knee);

        var c1 = rig.Control("cat_" + where + "_fk1_" + side).Under(bodyControl).PlacedAt(leg1);
        var c2 = rig.Control("cat_" + where + "_fk2_" + side).Under(c1).PlacedAt(leg2);
        var c3 = rig.Control("cat_" + where + "_fk3_" + side).Under(c2).PlacedAt(leg3);
        rig.Drive(fk.Of(leg1)).ByChannels(c1);
        rig.Drive(fk.Of(leg2)).ByChannels(c2);
        rig.Drive(fk.Of(leg3)).ByChannels(c3);

        var sw = paw.Switch("fk");
        if (where == "front")
            rig.Blend(chain).From(ik, sw.Inverse).From(fk, sw);
        else
            rig.Blend(chain).From(fk, sw).From(ik, sw);
    }
}
