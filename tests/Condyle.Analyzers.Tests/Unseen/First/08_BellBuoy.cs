using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R08;

// Bell buoy with a cage, four clappers and a mooring chain of ten links.
public sealed class BellBuoy : IRigDefinition
{
    public int linkCount = 10;
    public bool hasLamp = true;
    public bool hasBird = false;

    public void Define(RigDraft rig)
    {
        // names and their parents, the parent is an index into the same list, -1 means none
        string[] names = { "float", "cage", "bell", "lamp", "clapper_n", "clapper_e", "clapper_s", "clapper_w", "bird" };
        int[] parents = { -1, 0, 1, 1, 2, 2, 2, 2, 3 };
        float[] x = { 0, 0, 0, 0, 0, 0.2f, 0, -0.2f, 0 };
        float[] y = { 0, 0.6f, 0.5f, 1.4f, -0.1f, -0.1f, -0.1f, -0.1f, 0.2f };
        float[] z = { 0, 0, 0, 0, 0.2f, 0, -0.2f, 0, 0 };

        Joint[] joints = new Joint[names.Length];
        Control[] controls = new Control[names.Length];
        bool[] done = new bool[names.Length];
        Skeleton skeleton = rig.Skeleton("bell_buoy");
        Group parts = rig.Group("parts_group");

        int left = names.Length;
        if (!hasBird)
        {
            done[8] = true;
            left--;
        }

        if (!hasLamp)
        {
            done[3] = true;
            left--;
        }

        bool found = true;
        while (left > 0 && found)
        {
            found = false;
            for (int i = 0; i < names.Length; i++)
            {
                if (done[i])
                    continue;
                int p = parents[i];
                if (p != -1 && !done[p])
                    continue;

                Vector3 at = new Vector3(x[i], y[i], z[i]);
                if (p == -1)
                    joints[i] = skeleton.Root(names[i], at: at);
                else
                    joints[i] = joints[p].Child(names[i], at: at);

                controls[i] = rig.Control(names[i] + "_control").PlacedAt(joints[i]);
                if (p == -1)
                    controls[i] = controls[i].Under(parts);
                else
                    controls[i] = controls[i].Under(controls[p]);

                // the clappers were jumping about until I used the matrix
                bool isClapper = false;
                if (names[i].Length > 7)
                {
                    if (names[i].Substring(0, 7) == "clapper")
                    {
                        isClapper = true;
                    }
                }

                if (isClapper)
                    rig.Drive(joints[i]).ByMatrix(controls[i]);
                else
                    rig.Drive(joints[i]).ByChannels(controls[i]);

                done[i] = true;
                found = true;
                left--;
            }
        }

        // the chain hangs from the float
        List<Joint> links = new List<Joint>();
        List<Control> linkControls = new List<Control>();
        int count = 0;
        do
        {
            Joint above;
            Node aboveControl;
            if (count == 0)
            {
                above = joints[0];
                aboveControl = controls[0];
            }
            else
            {
                above = links[count - 1];
                aboveControl = linkControls[linkControls.Count - 1];
            }

            string number = (count + 1).ToString();
            if (number.Length < 2)
                number = "0" + number;
            string name = "link_" + number;
            links.Add(above.Child(name, at: new Vector3(0, -0.3f, 0.02f * (count % 2))));
            Control c = rig.Control(name + "_control");
            c = c.Under(aboveControl);
            c = c.PlacedAt(links[count]);
            if (count % 2 == 0)
                c = c.Lock(Channels.TurnX);
            else
                c = c.Lock(Channels.TurnZ);
            rig.Drive(links[count]).ByChannels(c);
            linkControls.Add(c);
            count++;
        }
        while (count < linkCount);

        // longest name, for the label
        string longest = "";
        foreach (Joint link in links)
        {
            if (link.Name.Length > longest.Length)
                longest = link.Name;
        }

        Label label = rig.Label("chain_label", "chain of " + links.Count + ", first is " + longest);
        label.Under(controls[0]);
    }
}
