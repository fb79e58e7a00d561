using System.Numerics;
using Condyle.Runtime;

namespace Condyle.Benchmarks.Runtime;

/// <summary>Values for the yardstick's controls and switches, the same for both ways of evaluating it: small moves and turns, each frame others.</summary>
internal static class YardstickMotion
{
    public static void Set(HandWritten rig, int frame)
    {
        for (var i = 0; i < Yardstick.Controls; i++)
            (rig.Moves[i], rig.Turns[i]) = (Move(i, frame), Turn(i, frame));
        for (var i = 0; i < Yardstick.Blends; i++)
            rig.Amounts[i] = Amount(i, frame);
    }

    public static void Set(RigInstance rig, int frame)
    {
        for (var i = 0; i < Yardstick.Controls; i++)
        {
            rig.SetMove(i, Move(i, frame));
            rig.SetTurn(i, Turn(i, frame));
        }

        for (var i = 0; i < Yardstick.Blends; i++)
            rig.SetSwitch(i, Amount(i, frame));
    }

    /// <summary>How far the two ways are apart, in metres: they must mean the same rig.</summary>
    public static float Apart(HandWritten written, RigInstance compiled) =>
        Enumerable.Range(0, compiled.Rig.Joints.Count).Max(joint => Vector3.Distance(written.JointAt(joint), compiled.JointWorld(joint).Translation));

    private static Vector3 Move(int control, int frame) => new(Wave(control, frame) * 0.02f, Wave(control + 3, frame) * 0.02f, Wave(control + 7, frame) * 0.02f);

    private static Quaternion Turn(int control, int frame) =>
        Quaternion.CreateFromYawPitchRoll(Wave(control, frame) * 0.15f, Wave(control + 5, frame) * 0.15f, Wave(control + 11, frame) * 0.15f);

    private static float Amount(int blend, int frame) => 0.5f + (0.5f * Wave(blend, frame));

    private static float Wave(int phase, int frame) => MathF.Sin((phase * 1.7f) + (frame * 0.05f));
}
