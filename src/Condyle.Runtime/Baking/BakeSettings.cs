using static System.FormattableString;

namespace Condyle.Runtime;

/// <summary>How motion is baked.</summary>
public sealed record BakeSettings
{
    /// <summary>The least frame rate.</summary>
    public const float LeastFramesPerSecond = 1;

    /// <summary>The greatest frame rate.</summary>
    public const float GreatestFramesPerSecond = 1000;

    /// <summary>The most samples of one frame.</summary>
    public const int MostSubFrames = 64;

    /// <summary>The most samples that one clip may have.</summary>
    public const int MostFrames = 1_000_000;

    /// <summary>Frames per second, from 1 to 1000.</summary>
    public float FramesPerSecond { get; init; } = 30;

    /// <summary>How many samples are taken of each frame, from 1 to 64: two add one halfway between frames.</summary>
    public int SubFrames { get; init; } = 1;

    /// <summary>Where in the clip the bake begins, in seconds; its first sample then stands at zero.</summary>
    public float From { get; init; }

    /// <summary>Where in the clip the bake ends, in seconds; the clip's end when null.</summary>
    public float? To { get; init; }

    /// <summary>Whether the motion loops: its last sample is made its first. That is refused for motion that doesn't end where it begins.</summary>
    public bool Loop { get; init; }

    /// <summary>What becomes of the way that the character goes.</summary>
    public RootMotion RootMotion { get; init; } = RootMotion.AsPosed;

    /// <summary>How far a joint may be off in the world, on any frame, for keys that are left out; every frame has its key when null.</summary>
    public BakeTolerance? Keys { get; init; }

    /// <summary>How far a joint may be off in the world between samples before more of them are taken there; none are added when null.</summary>
    public BakeTolerance? Between { get; init; }

    /// <summary>Whether a baked clip takes the place of an animation of the same name in the delivered file; without it that is an error, so that none is lost by accident.</summary>
    public bool ReplaceClips { get; init; }

    /// <summary>Refuses what can't be for any clip.</summary>
    /// <param name="wrong">The error of who gave them, from the problem and the remedy.</param>
    internal void Check(Func<string, string, BadInputException> wrong)
    {
        if (!(FramesPerSecond is >= LeastFramesPerSecond and <= GreatestFramesPerSecond))
            throw wrong(Invariant($"can't be baked at {FramesPerSecond} frames per second"), Invariant($"Give a frame rate from {LeastFramesPerSecond} to {GreatestFramesPerSecond}"));
        if (SubFrames is < 1 or > MostSubFrames)
            throw wrong($"can't be baked with {SubFrames} samples of a frame", $"Give a number from 1 to {MostSubFrames}");
        if (!(From >= 0 && (To ?? float.PositiveInfinity) > From))
            throw wrong(Invariant($"can't be baked from {From:0.####}{(To is { } to ? Invariant($" to {to:0.####} s") : " s on")}"), "Give a range that begins at 0 or later and ends after that");
        Check(Keys, "keys", wrong);
        Check(Between, "motion between samples", wrong);
    }

    private static void Check(BakeTolerance? tolerance, string what, Func<string, string, BadInputException> wrong)
    {
        if (tolerance is { CanBe: false })
            throw wrong(Invariant($"can't be baked with {what} within {tolerance.Metres * 1000} mm and {tolerance.Degrees}°"), $"Give {BakeTolerance.Least}");
    }
}
