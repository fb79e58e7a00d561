using System;
using System.Collections.Generic;
using System.Numerics;
using System.Text;
using Condyle;

namespace Unseen.First.R52;

// <summary>
// Seven herrings that swim together. TABLES: printed by shoal.awk from the survey sheet. CODE: mine.
// </summary>
public sealed class HerringShoal : IRigDefinition
{
    /* TABLES BEGIN */
    private static readonly int[] FISH_SIZE = { 26, 24, 25, 22, 27, 23, 24, };
    private static readonly int[][] FISH_AT =
    {
        new[] { 0, 0, 0 }, new[] { 31, -8, -22 }, new[] { -28, 5, -35 }, new[] { 12, 18, -61 },
        new[] { -44, -14, -72 }, new[] { 47, 3, -80 }, new[] { 3, -20, -104 },
    };
    private static readonly byte[] FISH_LEADER = { 255, 0, 0, 1, 2, 1, 3, };
    private static readonly string[] BONE = { "head", "back", "tail", "fluke", "fin", "fin", "lip", };
    private static readonly sbyte[] BONE_UP = { -1, 0, 1, 2, 1, 1, 0, };
    private static readonly sbyte[] BONE_SIDE = { 0, 0, 0, 0, 1, -1, 0, };
    private static readonly float[,] BONE_AT =
    {
        { 0f, 0f, 0f }, { 0f, 0.02f, -0.3f }, { 0f, 0f, -0.35f }, { 0f, 0f, -0.2f },
        { 0.09f, -0.05f, 0.1f }, { -0.09f, -0.05f, 0.1f }, { 0f, -0.04f, 0.08f },
    };
    private static readonly int[] BONE_LIMIT = { 0, 18 << 8 | 6, 26 << 8 | 10, 40 << 8 | 15, 70 << 8 | 70, 70 << 8 | 70, 0 << 8 | 25, };
    private static readonly ulong MASK_HAND_KEYED = 0b0000001_0000000_0000000_0000000_0000000_0000000_1111111UL;
    /* TABLES END */

    public void Define(RigDraft rig)
    {
        int fishes = FISH_SIZE.Length, bones = BONE.Length;
        if (FISH_AT.Length != fishes || FISH_LEADER.Length != fishes || BONE_AT.GetLength(0) != bones || BONE_UP.Length != bones)
            throw new InvalidOperationException("The tables were cut. Print them again.");

        Skeleton skeleton = rig.Skeleton("herring_shoal");
        Joint[,] joints = new Joint[fishes, bones];
        Control[] leads = new Control[fishes];
        LinkedList<int> order = Order();
        for (LinkedListNode<int>? node = order.First; node != null; node = node.Next)
        {
            int f = node.Value;
            float size = FISH_SIZE[f] / 100f;
            for (int b = 0; b < bones; b++)
            {
                string name = NameOf(f, b);
                if (BONE_UP[b] < 0)
                    joints[f, b] = skeleton.Root(name, at: new Vector3(FISH_AT[f][0], FISH_AT[f][1] + 100, FISH_AT[f][2]) * 0.01f);
                else
                    joints[f, b] = joints[f, BONE_UP[b]].Child(name, at: new Vector3(BONE_AT[b, 0], BONE_AT[b, 1], BONE_AT[b, 2]) * size);
            }

            leads[f] = Lead(rig, joints[f, 0], f, leads);
            Wag(rig, joints, leads[f], f);
        }
    }

    // Leaders come before those that follow them. (The sheet isn't sorted, or wasn't when this was written.)
    private static LinkedList<int> Order()
    {
        LinkedList<int> order = new LinkedList<int>();
        for (int f = 0; f < FISH_LEADER.Length; f++)
        {
            LinkedListNode<int>? leader = FISH_LEADER[f] == 255 ? null : order.Find(FISH_LEADER[f]);
            if (leader == null)
                order.AddFirst(f);
            else
                order.AddAfter(leader, f);
        }

        return order;
    }

    private static Control Lead(RigDraft rig, Joint head, int f, Control[] leads)
    {
        Control control = rig.Control("swim_" + f).PlacedAt(head);
        if (FISH_LEADER[f] == 255)
        {
            rig.Drive(head).ByChannels(control);
            return control;
        }

        Control leader = leads[FISH_LEADER[f]];
        Group trail = rig.Group("trail_" + f + "_group").Under(leader).PlacedAt(head);
        Switch follow = control.Switch("follow_" + f, 1f).AlsoOn(leader);
        rig.Blend(head).From(trail, follow).From(control, follow.Inverse);
        return control;
    }

    private static void Wag(RigDraft rig, Joint[,] joints, Control lead, int f)
    {
        Control[] turns = new Control[BONE.Length];
        turns[0] = lead;
        Group body = rig.Group("body_" + f + "_group").PlacedAt(joints[f, 0]);
        rig.Drive(body).ByMatrix(joints[f, 0]);
        for (int b = 1; b < BONE.Length; b++)
        {
            int bit = (f * BONE.Length) + b;
            bool keyed = (MASK_HAND_KEYED >> bit & 1) == 1;
            Joint joint = joints[f, b];
            Node up = BONE_UP[b] == 0 ? body : turns[BONE_UP[b]];
            int wide = BONE_LIMIT[b] >> 8, high = BONE_LIMIT[b] & 0xFF;
            turns[b] = rig.Control("wag_" + joint.Name).Under(up).PlacedAt(joint);
            switch (b)
            {
                case 1:
                case 2:
                case 3:
                    turns[b].Lock(Channels.Move).LimitTurn(Axis.Y, -wide, wide).LimitTurn(Axis.X, -high, high);
                    goto default;
                case 4:
                    turns[b].Lock(Channels.Move).LimitTurn(Axis.Z, -wide, 5);
                    goto default;
                case 5:
                    turns[b].Lock(Channels.Move).LimitTurn(Axis.Z, -5, wide);
                    goto case 6;
                case 6 when keyed:
                    turns[b].LimitTurn(Axis.X, -high, 0);
                    rig.Drive(joint).ByChannels(turns[b]);
                    break;
                case 6:
                default:
                    // Fish that aren't keyed by hand only swim in the distance.
                    if (keyed || b < 4)
                        rig.Drive(joint).ByChannels(turns[b]);
                    else
                        rig.Drive(joint).ByMatrix(turns[b]);
                    break;
            }
        }
    }

    private static string NameOf(int f, int b)
    {
        StringBuilder sb = new StringBuilder(24);
        sb.Append("herring").Append(f).Append('_').Append(BONE[b]);
        if (BONE_SIDE[b] != 0)
            sb.AppendFormat("_{0}", BONE_SIDE[b] > 0 ? "left" : "right");
        return sb.ToString();
    }
}
