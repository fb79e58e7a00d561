using Condyle;
using Condyle.Runtime;

namespace Quayside.Clips;

/// <summary>
/// The gull stands with its wings folded, crouches while it lifts them, jumps, and climbs away with strong beats. On the way up the wings fold a little
/// and their tips hang; on the way down they are spread and their tips bend up. Its head stays level all the while.
/// </summary>
internal static class TakeOff
{
    private const float Look = 0.5f, Crouch = 0.95f, Jump = 1.15f, Away = 1.3f, End = 3.6f;

    /// <summary>How long a beat takes: a little more than half of it goes down.</summary>
    private const float Beat = 0.33f;

    public static Clip Clip()
    {
        var clip = new Clip("take_off", seconds: End)
            .Mark(0, "stand").Mark(Look, "crouch").Mark(Crouch, "jump").Mark(Away, "off the ground");
        Body(clip);
        Head(clip);
        foreach (var side in Side.Both)
        {
            Wing(clip, side);
            Foot(clip, side);
        }

        return clip;
    }

    private static void Body(Clip clip)
    {
        clip.Move("world", 0).Move("world", Jump).Move("world", Away, y: 0.05f, z: 0.1f).Move("world", 2, y: 0.4f, z: 1.05f).Move("world", 2.8f, y: 0.85f, z: 2.6f).Move("world", End, y: 1.35f, z: 4.5f)
            .Splined("world").MoveSlope("world", Jump).MoveSlope("world", End, y: 0.6f, z: 2.5f)
            .Move("body", 0).Move("body", Look).Move("body", Crouch, y: -0.035f, z: -0.01f).Move("body", Jump, y: 0.004f, z: 0.01f)
            .TurnAbout("body", Axis.X, (0, 0), (Look, 0), (Crouch, 14), (Jump, -8), (1.6f, -4), (End, 14))
            .TurnAbout("turn_tail", Axis.X, (0, 0), (Look, 0), (Crouch, 12), (Jump, -22), (2, -10), (End, 0)).Splined("turn_tail")
            .Dial("turn_tail.fan", (0, 0), (Crouch, 0), (Jump, 0.9f), (2.4f, 0.7f), (End, 0.3f)).Splined("turn_tail.fan");

        // Each beat lifts the body, a little after the wings have begun to go down.
        for (var down = Jump + (Beat * 0.3f); down + (Beat * 0.5f) < End; down += Beat)
            clip.Move("body", down, y: 0.018f, z: 0.04f).Move("body", down + (Beat * 0.5f), y: 0.04f, z: 0.045f);
        clip.Splined("body").MoveSlope("body", Look).TurnSlope("body", Look);
    }

    /// <summary>Against what the body does: birds keep their heads still.</summary>
    private static void Head(Clip clip) => clip
        .TurnAbout("turn_head", Axis.Z, (0, 0), (0.15f, 25), (0.35f, 25), (Look, 0)).Splined("turn_head")
        .Turn("neck", 0).Turn("neck", Look).Turn("neck", Crouch, x: -14).Turn("neck", Jump, x: 8).Turn("neck", 1.6f, x: 4).Turn("neck", End, x: -14)
        .Move("neck", 0).Move("neck", Look).Move("neck", Crouch, y: -0.015f, z: 0.03f).Move("neck", Jump, y: 0.01f, z: 0.03f).Move("neck", 2, y: -0.05f, z: 0.075f).Move("neck", End, y: -0.055f, z: 0.08f)
        .Splined("neck").MoveSlope("neck", Look).TurnSlope("neck", Look);

    private static void Wing(Clip clip, Side side)
    {
        var (shoulder, wrist, quills, fold) = ($"turn_shoulder_{side}", $"turn_wrist_{side}", $"quills_{side}", $"turn_shoulder_{side}.fold");
        clip.Dial(fold, (0, 1), (Look, 1), (0.75f, 0.8f), (Crouch, 0.12f));
        Shoulder(0, 0, 0, 0);
        Shoulder(Look, 0, 0, 0);
        Shoulder(0.75f, 0, -4, -24);
        Tip(0, 0);
        Tip(Look, 0);

        for (var top = Crouch; top + Beat <= End; top += Beat)
        {
            // Turns about the shoulder: back is positive about X, the front edge down about Y, the wing down about Z. The first beat has the ground below it.
            Shoulder(top + (Beat * 0.05f), 8, 2, -58);
            Shoulder(top + (Beat * 0.3f), -12, 14, -8);
            Shoulder(top + (Beat * 0.55f), -8, 4, top < Jump ? 9 : 36);
            Shoulder(top + (Beat * 0.8f), 14, -16, -6);
            clip.Dial(fold, (top + (Beat * 0.3f), 0), (top + (Beat * 0.55f), 0.04f), (top + (Beat * 0.82f), 0.36f));
            Tip(top + (Beat * 0.15f), -2);
            Tip(top + (Beat * 0.4f), -14);
            Tip(top + (Beat * 0.65f), 4);
            Tip(top + (Beat * 0.9f), 20);
        }

        clip.Splined(shoulder).Splined(wrist).Splined(quills).Splined(fold).DialSlope(fold, Look, 0).TurnSlope(shoulder, Look);

        void Shoulder(float at, float x, float y, float z) => clip.Turn(shoulder, at, x, side.Sign * y, side.Sign * z);

        void Tip(float at, float down) => clip.Turn(wrist, at, z: side.Sign * down).Turn(quills, at, z: side.Sign * down);
    }

    /// <summary>It stays on the ground until the leg is straight, and is drawn up under the tail.</summary>
    private static void Foot(Clip clip, Side side)
    {
        var (foot, curl) = ($"foot_{side}", $"foot_{side}.curl");
        clip.Move(foot, 0).Move(foot, Jump).Move(foot, Away, y: -0.02f, z: 0.015f).Move(foot, 1.9f, y: -0.12f, z: -0.06f).Move(foot, End, y: -0.13f, z: -0.07f)
            .TurnAbout(foot, Axis.X, (0, 0), (Jump, 0), (Away, 40), (1.9f, 120), (End, 125)).Splined(foot).MoveSlope(foot, Jump).TurnSlope(foot, Jump)
            .Dial(curl, (0, 0), (Jump, 0), (1.6f, 0.6f), (End, 0.5f)).Splined(curl).DialSlope(curl, Jump, 0);
    }
}
