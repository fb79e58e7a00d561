using Condyle;
using Condyle.Runtime;

namespace Quayside.Clips;

/// <summary>
/// The dock worker squats, takes a crate of 0.40 × 0.30 × 0.32 m between his hands and lifts it. His hands go to the crate by their ends; once it
/// has left the ground the arms flip to their joints, so that from there on the crate goes with his chest.
/// </summary>
internal static class LiftCrate
{
    private const float Bend = 0.3f, Reach = 1, Hold = 1.3f, Lift = 1.5f, Rise = 2, Carry = 2.4f, Up = 2.9f, Stand = 3.4f, End = 4;

    public static Clip Clip()
    {
        var clip = new Clip("lift_crate", seconds: End)
            .Mark(0, "squat").Mark(Reach, "reach").Mark(Hold, "hold").Mark(Lift, "lift").Mark(Rise, "flip to FK").Mark(Carry, "stand up").Mark(Stand, "stand");
        Torso(clip);
        foreach (var side in Side.Both)
        {
            HandToCrate(clip, side);
            Fingers(clip, side);
            ArmByJoints(clip, side);
            clip.Switch($"hand_{side}.fk", (Rise, 0), (Carry, 1));
        }

        return clip;
    }

    private static void Torso(Clip clip) => clip
        .Move("body", 0).Move("body", Bend, y: -0.06f, z: -0.04f).Move("body", Reach, y: -0.463f, z: -0.189f).Move("body", Hold, y: -0.503f, z: -0.19f).Move("body", Lift, y: -0.503f, z: -0.19f)
        .Move("body", Rise, y: -0.353f, z: -0.184f).Move("body", Carry, y: -0.225f, z: -0.139f).Move("body", Up, y: -0.078f, z: -0.063f).Move("body", Stand, y: -0.014f, z: -0.021f)
        .TurnAbout("body", Axis.X, (0, 0), (Bend, 5), (Reach, 30), (Hold, 32), (Rise, 32), (Carry, 26), (Up, 10), (Stand, -3))
        .TurnAbout("turn_waist", Axis.X, (0, 0), (Reach, 14), (Hold, 17), (Lift, 17), (Rise, 15), (Carry, 11), (Up, 2), (Stand, -4))
        .TurnAbout("turn_chest", Axis.X, (0, 0), (Reach, 10), (Hold, 14), (Lift, 14), (Rise, 10), (Carry, 6), (Up, -2), (Stand, -3))
        .TurnAbout("turn_neck", Axis.X, (0, 0), (Reach, -10), (Lift, -12), (Rise, -14), (Carry, -12), (Up, -6), (Stand, 2))
        .TurnAbout("turn_head", Axis.X, (0, 0), (Reach, -12), (Lift, -15), (Rise, -18), (Carry, -14), (Up, -4), (Stand, 2))
        .Move("eyes", 0).Move("eyes", Bend, y: -0.1f).Move("eyes", Hold, y: -0.12f).Move("eyes", Rise, y: -0.1f).Move("eyes", Stand, y: -0.05f);

    private static void HandToCrate(Clip clip, Side side)
    {
        Key(0, 0, 0, 0, 0, 0, 0);
        Key(Bend, 0.085f, 0.023f, 0.049f, 2.4f, -17.4f, -4.8f);
        Key(Reach, 0.698f, 0.427f, 0.202f, 23.7f, -30.9f, -25.4f);
        Key(Hold, 0.813f, 0.456f, 0.213f, 26.7f, -32.4f, -28.4f);
        Key(Lift, 0.813f, 0.456f, 0.213f, 26.7f, -32.4f, -28.4f);
        Key(Rise, 0.676f, 0.311f, 0.261f, 27.6f, -32.7f, -27.9f);
        Key(Carry, 0.542f, 0.16f, 0.278f, 28.9f, -33.3f, -27.2f);

        // The sides' frames mirror each other: moves along X and turns about Y and Z go opposite ways.
        void Key(float at, float x, float y, float z, float turnX, float turnY, float turnZ) => clip
            .Move($"hand_{side}", at, side.Sign * x, y, z)
            .Turn($"hand_{side}", at, turnX, side.Sign * turnY, side.Sign * turnZ);
    }

    /// <summary>Flat against the crate.</summary>
    private static void Fingers(Clip clip, Side side)
    {
        foreach (var finger in new[] { "index", "middle", "ring", "little" })
        {
            clip.TurnAbout($"turn_{finger}_1_{side}", Axis.X, (Reach, 0), (Hold, -12))
                .TurnAbout($"turn_{finger}_2_{side}", Axis.X, (Reach, 0), (Hold, -14))
                .TurnAbout($"turn_{finger}_3_{side}", Axis.X, (Reach, 0), (Hold, -14));
        }
    }

    /// <summary>The joints begin where the hand has brought the arm, so that the flip doesn't show.</summary>
    private static void ArmByJoints(Clip clip, Side side)
    {
        clip.TurnAbout($"turn_collar_{side}", Axis.X, (0, 0), (Reach, 12), (Hold, 15), (Lift, 15), (Rise, 14), (Carry, 12), (Up, 9), (Stand, 6))
            .TurnAbout($"turn_elbow_{side}", Axis.X, (Rise, 21.5f), (Carry, 25.3f), (Up, 31.9f), (Stand, 37.8f));
        Turn("shoulder", Rise, 57.4f, -13.1f, 3.5f);
        Turn("shoulder", Carry, 43.3f, -12.6f, -9.4f);
        Turn("shoulder", Up, 21.4f, 2.2f, -24.1f);
        Turn("shoulder", Stand, 15.5f, 13.5f, -26.5f);
        Turn("wrist", Rise, 11.7f, -29, 15.2f);
        Turn("wrist", Carry, 10.6f, -24.8f, 13.4f);
        Turn("wrist", Up, 2.9f, -25.6f, 11.4f);
        Turn("wrist", Stand, -5.8f, -29.3f, 10);

        void Turn(string joint, float at, float x, float y, float z) => clip.Turn($"turn_{joint}_{side}", at, x, side.Sign * y, side.Sign * z);
    }
}
