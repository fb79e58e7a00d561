using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;

namespace Unseen.First.R50;

// The upper part was written by the old export script, which is lost. Edit the patches at the bottom instead.
public sealed partial class StraddleCarrier : IRigDefinition
{
    #region export 2019-04-11, 17 joints, 14 controls
    private const string N_FRAME = "frame", N_CAB = "cab", N_MAST = "mast", N_SPREADER = "spreader";
    private const float K_0 = 0.001f;
    private const float K_1 = 2_450 * K_0;
    private const float K_2 = 0.5f * K_1;

    private Joint j_0000, j_0001, j_0002, j_0003, j_0004, j_0005, j_0006, j_0007, j_0008, j_0009, j_0010, j_0011, j_0012, j_0013, j_0014, j_0015, j_0016;
    private Control c_0000, c_0001, c_0002, c_0003, c_0004, c_0005, c_0006, c_0007, c_0008, c_0009, c_0010, c_0011, c_0012, c_0013;
    private Group g_0000, g_0001;

    private void Export_Joints(RigDraft rig)
    {
        Skeleton s_0000 = rig.Skeleton("straddle_carrier");
        j_0000 = s_0000.Root(N_FRAME, JointRole.Helper, new Vector3(0f, 0f, 0f), new Quaternion(0f, 0f, 0f, 1f), new Vector3(1f, 1f, 1f));
        j_0001 = j_0000.Child(N_MAST, JointRole.Deform, new Vector3(0f, 9.2f, 0f), new Quaternion(0f, 0f, 0f, 1f));
        j_0002 = j_0001.Child(N_CAB, JointRole.Deform, new Vector3(K_1, 1.1f, 3.25f), new Quaternion(0f, -0.7071068f, 0f, 0.7071068f));
        j_0003 = j_0001.Child(N_SPREADER, JointRole.Deform, new Vector3(0f, -4.75f, 0f));
        j_0004 = j_0003.Child(N_SPREADER + "_lock_" + 0, at: new Vector3(K_2, -0.3f, 2.9f));
        j_0005 = j_0003.Child(N_SPREADER + "_lock_" + 1, at: new Vector3(-K_2, -0.3f, 2.9f));
        j_0006 = j_0003.Child(N_SPREADER + "_lock_" + 2, at: new Vector3(K_2, -0.3f, -2.9f));
        j_0007 = j_0003.Child(N_SPREADER + "_lock_" + 3, at: new Vector3(-K_2, -0.3f, -2.9f));
        j_0008 = j_0000.Child("wheel_1_left", at: new Vector3(K_1, 0.75f, 3.6f));
        j_0009 = j_0000.Child("wheel_2_left", at: new Vector3(K_1, 0.75f, 1.2f));
        j_0010 = j_0000.Child("wheel_3_left", at: new Vector3(K_1, 0.75f, -1.2f));
        j_0011 = j_0000.Child("wheel_4_left", at: new Vector3(K_1, 0.75f, -3.6f));
        j_0012 = j_0000.Child("wheel_1_right", at: new Vector3(-K_1, 0.75f, 3.6f));
        j_0013 = j_0000.Child("wheel_2_right", at: new Vector3(-K_1, 0.75f, 1.2f));
        j_0014 = j_0000.Child("wheel_3_right", at: new Vector3(-K_1, 0.75f, -1.2f));
        j_0015 = j_0000.Child("wheel_4_right", at: new Vector3(-K_1, 0.75f, -3.6f));
        j_0016 = j_0002.Child("door", at: new Vector3(0.4f, 0f, 0.6f));
    }

    private void Export_Controls(RigDraft rig)
    {
        c_0000 = rig.Control("c_frame").PlacedAt(j_0000);
        c_0001 = rig.Control("c_mast").Under(c_0000).PlacedAt(j_0001).Lock(Channels.All & ~Channels.MoveY);
        c_0002 = rig.Control("c_cab").Under(c_0001).PlacedAt(j_0002).Lock((Channels)0x1EF);
        c_0003 = rig.Control("c_spreader").Under(c_0001).PlacedAt(j_0003).LimitMove((Axis)1, -4f, 4.4f);
        c_0004 = rig.Control("c_lock_0").Under(c_0003).PlacedAt(j_0004).LimitTurn(Axis.Y, 0f, 90f);
        c_0005 = rig.Control("c_lock_1").Under(c_0003).PlacedAt(j_0005).LimitTurn(Axis.Y, 0f, 90f);
        c_0006 = rig.Control("c_lock_2").Under(c_0003).PlacedAt(j_0006).LimitTurn(Axis.Y, 0f, 90f);
        c_0007 = rig.Control("c_lock_3").Under(c_0003).PlacedAt(j_0007).LimitTurn(Axis.Y, 0f, 90f);
        c_0008 = rig.Control("c_wheel_1_left").Under(c_0000).PlacedAt(j_0008).Lock(Channels.Move);
        c_0009 = rig.Control("c_wheel_4_left").Under(c_0000).PlacedAt(j_0011).Lock(Channels.Move);
        c_0010 = rig.Control("c_wheel_1_right").Under(c_0000).PlacedAt(j_0012).Lock(Channels.Move);
        c_0011 = rig.Control("c_wheel_4_right").Under(c_0000).PlacedAt(j_0015).Lock(Channels.Move);
        c_0012 = rig.Control("c_door").Under(c_0002).PlacedAt(j_0016).LimitTurn(Axis.Y, 0f, 110f);
        c_0013 = rig.Control("c_steer").Under(c_0000).PlacedAt(j_0002).LimitTurn(Axis.Y, -35f, 35f);
        g_0000 = rig.Group("g_wheels_left").PlacedAt(c_0000);
        g_0001 = rig.Group("g_wheels_right").PlacedAt(c_0000);
        rig.Drive(g_0000).ByMatrix(c_0000);
        rig.Drive(g_0001).ByMatrix(c_0000);
    }

    private void Export_Relations(RigDraft rig)
    {
        int[] from = { 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12 };
        int[] to = { 0, 1, 2, 3, 4, 5, 6, 7, 8, 11, 12, 15, 16 };
        for (int i = 0; i < from.Length && i < to.Length; i++)
        {
            if (skipped.Contains(to[i]))
                continue;
            rig.Drive(J(to[i])).ByChannels(C(from[i]));
        }
    }

    private Joint J(int id) => id switch
    {
        0 => j_0000,
        1 => j_0001,
        2 => j_0002,
        3 => j_0003,
        4 => j_0004,
        5 => j_0005,
        6 => j_0006,
        7 => j_0007,
        8 => j_0008,
        9 => j_0009,
        10 => j_0010,
        11 => j_0011,
        12 => j_0012,
        13 => j_0013,
        14 => j_0014,
        15 => j_0015,
        16 => j_0016,
        _ => throw new ArgumentOutOfRangeException(nameof(id), id, "no such joint in the export"),
    };

    private Control C(int id) => id switch
    {
        0 => c_0000,
        1 => c_0001,
        2 => c_0002,
        3 => c_0003,
        4 => c_0004,
        5 => c_0005,
        6 => c_0006,
        7 => c_0007,
        8 => c_0008,
        9 => c_0009,
        10 => c_0010,
        11 => c_0011,
        12 => c_0012,
        13 => c_0013,
        _ => throw new ArgumentOutOfRangeException(nameof(id), id, "no such control in the export"),
    };
    #endregion
}

public sealed partial class StraddleCarrier
{
    // Joints that a patch takes care of.
    private readonly HashSet<int> skipped = new HashSet<int>();

    public void Define(RigDraft rig)
    {
        Export_Joints(rig);
        Export_Controls(rig);
        Patch_01_LocksTurnTogether(rig);
        Export_Relations(rig);
        Patch_02_MiddleWheels(rig);
        Patch_03_GroupsAreKnownToTheDustScript(rig);
    }

    // The script gave each lock its own control. They keep it, and a switch on the spreader makes all of them follow the first.
    private void Patch_01_LocksTurnTogether(RigDraft rig)
    {
        Switch together = c_0003.Switch("together", 1f);
        for (int id = 5; id <= 7; id++)
        {
            skipped.Add(id);
            Group like = rig.Group("g_" + J(id).Name + "_like_first_group").Under(c_0003).PlacedAt(J(id));
            Group turned = rig.Group("g_" + J(id).Name + "_turned_group").Under(c_0004).PlacedAt(c_0004);
            rig.Drive(like).ByMatrix(turned).KeepingOffset();
            rig.Blend(J(id)).From(like, together).From(C(id), together.Inverse);
        }
    }

    // The export only has the outer wheels. The middle ones take a half of each, until the real steering angles are known.
    private void Patch_02_MiddleWheels(RigDraft rig)
    {
        (int front, int middle, int rear, Group parts)[] rows = { (8, 9, 11, g_0000), (8, 10, 11, g_0000), (12, 13, 15, g_0001), (12, 14, 15, g_0001) };
        foreach ((int front, int middle, int rear, Group parts) in rows)
        {
            float near = middle % 2 == 1 ? 0.75f : 0.25f;
            if (middle > 12)
                near = 1 - ((middle - 12) * 0.5f) + 0.25f;
            Group a = rig.Group($"g_{J(middle)}_front_group").Under(parts).PlacedAt(J(middle));
            Group b = rig.Group($"g_{J(middle)}_rear_group").Under(parts).PlacedAt(J(middle));
            rig.Drive(a).ByMatrix(J(front)).KeepingOffset();
            rig.Drive(b).ByMatrix(J(rear)).KeepingOffset();
            rig.Blend(J(middle)).From(a, near).From(b, 1 - near);
        }
    }

    private void Patch_03_GroupsAreKnownToTheDustScript(RigDraft rig)
    {
        foreach (Group group in new[] { g_0000, g_0001 })
            group.Accept("CDY1001", "the dust effects look for " + group.Name);
        rig.Label("l_steer", "STEER").Under(c_0013).ShownBy(1f);
    }
}
