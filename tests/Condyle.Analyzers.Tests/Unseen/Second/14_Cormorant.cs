using System;
using System.Collections.Generic;
using System.Numerics;
using Condyle;
using Bone = Condyle.Joint;
using Handle = Condyle.Control;

namespace Unseen.Second.R14;

/// <summary>Cormorant drying its wings on a pile. Only stands, never flies.</summary>
public sealed class Cormorant : IRigDefinition
{
    private const int kNeckBones = 5;
    private const int kWingBones = 3;
    private const int kLeft = 0;
    private const int kRight = 1;

    private static readonly Vector3[] s_wingOffsets =
    {
        new Vector3(0.06f, 0.06f, 0.02f),
        new Vector3(0.20f, 0.02f, -0.04f),
        new Vector3(0.19f, -0.03f, 0.05f),
    };

    private static readonly float[] s_neckLimits = { 20f, 30f, 45f, 45f, 60f };

    private readonly Bone[] m_neck = new Bone[kNeckBones];
    private readonly Bone[,] m_wings = new Bone[2, kWingBones];
    private readonly Stack<Handle> m_parents = new Stack<Handle>();
    private RigDraft? m_rig;
    private Bone m_pelvis;

    public void Define(RigDraft rig)
    {
        m_rig = rig;
        CreateBones(out m_pelvis);

        Handle pelvis;
        if (!TryCreateHandle("stand", m_pelvis, Channels.None, out pelvis))
            return;

        using (new ParentScope(m_parents, pelvis))
        {
            CreateNeck();
            for (int side = kLeft; side <= kRight; ++side)
                CreateWing(side);
        }
    }

    private void CreateBones(out Bone pelvis)
    {
        pelvis = m_rig!.Skeleton("cormorant").Root("pelvis", JointRole.Deform, new Vector3(0f, 0.35f, 0f));

        Bone last = pelvis;
        for (int i = 0; i != kNeckBones; ++i)
        {
            // S-curve
            float z = (i & 1) == 0 ? 0.03f : -0.02f;
            last = m_neck[i] = last.Child("neck_" + (char)('a' + i), JointRole.Deform, new Vector3(0f, i == 0 ? 0.12f : 0.07f, z));
        }

        for (int side = kLeft; side <= kRight; ++side)
        {
            last = m_neck[0];
            for (int i = 0; i != kWingBones; ++i)
            {
                Vector3 offset = s_wingOffsets[i];
                if (side == kRight)
                    Mirror(ref offset);
                last = last.Child(WingName(i, side), JointRole.Deform, offset);
                m_wings[side, i] = last;
            }
        }
    }

    private void CreateNeck()
    {
        int depth = 0;
        for (int i = 0; i != kNeckBones; ++i)
        {
            Handle handle;
            Channels locks = Channels.Move;
            if (i < 2)
                locks |= Channels.TurnZ;
            if (!TryCreateHandle("bend_" + m_neck[i].Name, m_neck[i], locks, out handle))
                break;
            handle.LimitTurn(Axis.X, -s_neckLimits[i], s_neckLimits[i]);
            m_parents.Push(handle);
            ++depth;
        }

        while (depth-- > 0)
            m_parents.Pop();
    }

    private void CreateWing(int side)
    {
        Channels[] locks = { Channels.Move, Channels.Move | Channels.TurnX, Channels.Move & ~Channels.MoveX };
        Handle shoulder = default, unused;
        for (int i = 0; i != kWingBones; ++i)
        {
            if (i == 0)
            {
                TryCreateHandle("spread_" + WingName(i, side), m_wings[side, i], locks[i], out shoulder);
                continue;
            }

            using (new ParentScope(m_parents, shoulder))
                TryCreateHandle("spread_" + WingName(i, side), m_wings[side, i], locks[i], out unused);
        }
    }

    private bool TryCreateHandle(string name, Bone bone, Channels locks, out Handle handle)
    {
        handle = default;
        if (m_rig == null || name.Length == 0)
            return false;

        handle = m_rig.Control(name).PlacedAt(bone);
        if (m_parents.Count > 0)
            handle.Under(m_parents.Peek());
        if (locks != Channels.None)
            handle.Lock(locks);
        m_rig.Drive(bone).ByChannels(handle);
        return true;
    }

    private static void Mirror(ref Vector3 v) => v.X = -v.X;

    private static string WingName(int index, int side) => "wing_" + index + (side == kLeft ? "_left" : "_right");

    private readonly struct ParentScope : IDisposable
    {
        private readonly Stack<Handle> m_stack;

        public ParentScope(Stack<Handle> stack, Handle parent)
        {
            m_stack = stack;
            m_stack.Push(parent);
        }

        public void Dispose() => m_stack.Pop();
    }
}
