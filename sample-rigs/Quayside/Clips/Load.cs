using Condyle;
using Condyle.Runtime;

namespace Quayside.Clips;

/// <summary>
/// The crane swings its jib from the water over the quay, lowers it, lets the hook down to the ground, and lifts again. The hook lags behind the jib
/// and swings out when that stops, slower the longer the rope is.
/// </summary>
internal static class Load
{
    private const float Start = 0.4f, Slewed = 4.6f, Lower = 3.2f, Ground = 8, Hooked = 9.2f, Up = 13, Back = 15.4f, End = 16;

    public static Clip Clip() => new Clip("load", seconds: End)
        .Mark(Start, "slew and luff").Mark(Lower, "lower").Mark(Ground, "hook on").Mark(Hooked, "lift").Mark(Up, "slew back")
        .TurnAbout("slew", Axis.Y, (0, 0), (Start, 0), (2.5f, 58), (Slewed, 115), (Ground, 116), (10.5f, 116), (Up, 84), (Back, 60), (End, 60)).Splined("slew").TurnSlope("slew", Start).TurnSlope("slew", 10.5f).TurnSlope("slew", Back)
        .TurnAbout("luff", Axis.X, (0, 0), (1, 0), (4.4f, -12), (Hooked, -12), (12, 4), (Back, 6), (End, 6)).Splined("luff").TurnSlope("luff", 1).TurnSlope("luff", 4.4f).TurnSlope("luff", Hooked).TurnSlope("luff", Back)
        .Dial("swing.rope", (0, 7), (Lower, 7), (5, 8.6f), (7, 10.9f), (Ground, 11.35f), (Hooked, 11.35f), (9.8f, 11), (12, 6.6f), (Up, 6), (End, 6)).Splined("swing.rope").DialSlope("swing.rope", Lower, 0).DialSlope("swing.rope", Ground, 0).DialSlope("swing.rope", Hooked, 0).DialSlope("swing.rope", Up, 0)
        .Turn("swing", 0).Turn("swing", Start).Turn("swing", 1.6f, z: -4.5f).Turn("swing", 3, z: -2).Turn("swing", 4.8f, x: 1, z: 4).Turn("swing", 6.8f, z: -1.6f)
        .Turn("swing", Ground, z: -0.4f).Turn("swing", Hooked).Turn("swing", 10.6f, x: -1.2f, z: 0.6f).Turn("swing", 12.2f, x: 1, z: 3).Turn("swing", 14, z: -1).Turn("swing", Back, z: -2.2f).Turn("swing", End, z: -1.4f).Splined("swing").TurnSlope("swing", Start)
        .TurnAbout("swivel", Axis.Y, (0, 0), (Lower, 0), (Ground, 70), (Hooked, 70), (End, 40)).Splined("swivel").TurnSlope("swivel", Lower).TurnSlope("swivel", Hooked);
}
