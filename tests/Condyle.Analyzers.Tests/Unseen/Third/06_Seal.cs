using System.Numerics;
using Condyle;

namespace Unseen.Third.R06;

/*
 * seal.cs - harbour seal
 *
 * One table of joints, parents before children. Flags say what each gets.
 */
public sealed class Seal : IRigDefinition
{
    private const int F_CTL = 0x01;     /* gets a control        */
    private const int F_NOMOVE = 0x02;  /* lock translation      */
    private const int F_HELPER = 0x04;  /* no skin               */
    private const int F_FLIP = 0x08;    /* root of a flipper     */
    private const int F_LIMX = 0x10;    /* limit about x         */

    private const int NONE = -1;
    private const int NSPINE = 9;
    private const int NFLIP = 4;
    private const int NWHISK = 5;

    private static readonly string[] names = new string[128];
    private static readonly int[] parent = new int[128];
    private static readonly int[] flags = new int[128];
    private static readonly float[] pos = new float[128 * 3];
    private static int count;

    private static int put(string name, int par, int fl, float x, float y, float z)
    {
        int i = count++;
        names[i] = name;
        parent[i] = par;
        flags[i] = fl;
        pos[i * 3 + 0] = x;
        pos[i * 3 + 1] = y;
        pos[i * 3 + 2] = z;
        return i;
    }

    private static void fill_table()
    {
        int i, s, root, last, head;
        float sx;

        count = 0;
        root = put("pelvis", NONE, F_CTL, 0.0f, 0.25f, 0.0f);
        last = root;
        for (i = 0; i < NSPINE; i++)
            last = put("spine_" + i, last, F_CTL | (i > 0 ? F_NOMOVE : 0), 0.0f, i < 5 ? 0.01f : 0.03f, 0.12f);
        head = put("head", last, F_CTL | F_NOMOVE | F_LIMX, 0.0f, 0.05f, 0.10f);
        put("jaw", head, F_CTL | F_NOMOVE | F_LIMX, 0.0f, -0.03f, 0.04f);

        for (s = 0; s < 2; s++)
        {
            sx = s == 0 ? 1.0f : -1.0f;
            string side = s == 0 ? "_left" : "_right";

            i = put("shoulder" + side, 6, F_FLIP, 0.15f * sx, -0.05f, 0.02f);
            i = put("elbow" + side, i, 0, 0.12f * sx, -0.06f, -0.03f);
            i = put("wrist" + side, i, 0, 0.14f * sx, -0.04f, 0.03f);
            put("claws" + side, i, F_CTL, 0.08f * sx, 0.0f, 0.0f);

            i = put("hip" + side, root, F_FLIP, 0.08f * sx, -0.02f, -0.10f);
            i = put("knee" + side, i, 0, 0.03f * sx, 0.0f, -0.14f);
            i = put("ankle" + side, i, 0, -0.02f * sx, 0.0f, -0.14f);
            put("web" + side, i, F_CTL, 0.01f * sx, 0.0f, -0.12f);

            for (i = 0; i < NWHISK; i++)
                put("whisker_" + i + side, head, F_CTL | F_NOMOVE | F_HELPER, 0.03f * sx, -0.02f + 0.006f * i, 0.06f);
        }
    }

    public void Define(RigDraft rig)
    {
        Joint[] joint = new Joint[128];
        Control[] ctl = new Control[128];
        Skeleton skel;
        Control world;
        Group sys;
        int i, p;

        fill_table();

        skel = rig.Skeleton("seal");
        for (i = 0; i < count; i++)
        {
            Vector3 at = new Vector3(pos[i * 3], pos[i * 3 + 1], pos[i * 3 + 2]);
            JointRole role = (flags[i] & F_HELPER) != 0 ? JointRole.Helper : JointRole.Deform;
            if (parent[i] == NONE)
                joint[i] = skel.Root(names[i], role, at);
            else
                joint[i] = joint[parent[i]].Child(names[i], role, at);
        }

        world = rig.Control("world");
        sys = rig.Group("sys");

        for (i = 0; i < count; i++)
        {
            if ((flags[i] & F_CTL) == 0)
                continue;

            /* nearest parent that has a control */
            p = parent[i];
            while (p != NONE && (flags[p] & F_CTL) == 0)
                p = parent[p];

            ctl[i] = rig.Control(names[i] + "_ctl");
            if (p == NONE)
                ctl[i].Under(world);
            else if (p != parent[i])
                ctl[i].Under(joint[parent[i]]);
            else
                ctl[i].Under(ctl[p]);
            ctl[i].PlacedAt(joint[i]);
            if ((flags[i] & F_NOMOVE) != 0)
                ctl[i].Lock(Channels.Move);
            if ((flags[i] & F_LIMX) != 0)
                ctl[i].LimitTurn(Axis.X, -40.0f, 40.0f);
            rig.Drive(joint[i]).ByChannels(ctl[i]);
        }

        for (i = 0; i < count; i++)
        {
            if ((flags[i] & F_FLIP) != 0)
                flipper(rig, joint, i, sys, ctl[parent[i]], world);
        }
    }

    /* root, +1 and +2 are the bones; they lie next to each other in the table */
    private static void flipper(RigDraft rig, Joint[] joint, int i, Group sys, Control above, Control world)
    {
        Chain ch = rig.Chain(joint[i], joint[i + 2]);
        Group g = rig.Group(names[i] + "_flipper_group").Under(sys).PlacedAt(joint[i]);
        Copy ik, fk;
        Control goal, pole, c;
        Node up;
        Switch sw;
        int k;

        rig.Drive(g).ByMatrix(above).KeepingOffset();
        ik = ch.Copy("ik").Under(g);
        fk = ch.Copy("fk").Under(g);

        goal = rig.Control(names[i + 2] + "_goal").Under(world).PlacedAt(joint[i + 2]);
        pole = rig.Control(names[i + 1] + "_pole").Under(above).PlacedAt(ch.PolePoint(0.25f));
        rig.TwoBone(ik).Reach(goal).Face(pole);

        up = above;
        for (k = 0; k < NFLIP - 1; k++)
        {
            c = rig.Control(names[i + k] + "_fk").Under(up).PlacedAt(joint[i + k]);
            rig.Drive(fk.Of(joint[i + k])).ByChannels(c);
            up = c;
        }

        sw = goal.Switch("fk", 1.0f);
        rig.Blend(ch).From(fk, sw).From(ik, sw.Inverse);
    }
}
