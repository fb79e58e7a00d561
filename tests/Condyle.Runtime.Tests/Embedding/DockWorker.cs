using System.Numerics;

namespace Condyle.Runtime.Tests.Embedding;

/// <summary>A character of a game. One compiled rig serves them all; threads can share it.</summary>
internal sealed class DockWorker(CompiledRig rig)
{
    private readonly RigInstance worker = rig.NewInstance();
    private readonly Matrix4x4[] joints = new Matrix4x4[rig.Joints.Count];
    private readonly float[] morphs = new float[rig.Morphs.Count];
    private readonly int hand = rig.ControlIndex("hand_left"), curl = rig.DialIndex("hand_left.curl"), fk = rig.SwitchIndex("hand_left.fk");
    private readonly int arm = rig.LimbIndex("elbow_left"), wrist = rig.JointIndex("wrist_left");

    /// <summary>Once a frame; allocates nothing.</summary>
    public void Update(Vector3 reach, Quaternion turn, float grip)
    {
        worker.SetMove(hand, reach);
        worker.SetTurn(hand, turn);
        worker.SetDial(curl, grip);
        worker.Evaluate();
        worker.CopyJointWorlds(joints);
        worker.CopyMorphWeights(morphs);
    }

    /// <summary>From here on the arm goes with the chest, without a jump.</summary>
    public void Carry()
    {
        worker.MatchTurns(arm);
        worker.SetSwitch(fk, 1);
    }

    public ReadOnlySpan<Matrix4x4> Joints => joints; // for the skin, in the order of rig.Joints
    public ReadOnlySpan<float> Morphs => morphs;
    public Vector3 Crate => worker.JointWorld(wrist).Translation;
}
