namespace Condyle.Runtime;

/// <summary>
/// How baked motion compares with live motion. The baked samples are played back in double precision, as glTF 2.0 defines it, down the joints' hierarchy,
/// and each joint's place and turn in the world is compared with the rig's.
/// </summary>
/// <param name="Clip">The clip's name.</param>
/// <param name="FramesPerSecond">The frame rate of the bake.</param>
/// <param name="Frames">The number of frames.</param>
/// <param name="Seconds">The clip's length.</param>
/// <param name="OnFrames">The largest deviation at the frames' times: rounding alone.</param>
/// <param name="BetweenFrames">The largest deviation midway between frames: what the frame rate costs.</param>
/// <param name="AllowedMetres">How far a joint may be off on a frame: 0.02 mm, and more for a rig that reaches further than 2 m from the origin, in proportion.</param>
/// <param name="AllowedDegrees">How much a joint may be turned off on a frame.</param>
/// <param name="Joints">The same for each exported joint.</param>
public sealed record BakeReport(
    string Clip,
    float FramesPerSecond,
    int Frames,
    float Seconds,
    Deviation OnFrames,
    Deviation BetweenFrames,
    double AllowedMetres,
    double AllowedDegrees,
    IReadOnlyList<JointDeviation> Joints)
{
    /// <summary>Whether the baked motion is the live motion on every frame, within what is allowed.</summary>
    public bool Holds => OnFrames.Metres.Value <= AllowedMetres && OnFrames.Degrees.Value <= AllowedDegrees;
}

/// <summary>The largest deviation of one joint.</summary>
/// <param name="Joint">The joint's name.</param>
/// <param name="OnFrames">At the frames' times.</param>
/// <param name="BetweenFrames">Midway between frames.</param>
public sealed record JointDeviation(string Joint, Deviation OnFrames, Deviation BetweenFrames);

/// <summary>The largest distance and the largest angle between where a joint is and where it should be, in the world.</summary>
/// <param name="Metres">The distance, in metres.</param>
/// <param name="Degrees">The angle, in degrees.</param>
public sealed record Deviation(Peak Metres, Peak Degrees)
{
    internal static Deviation Largest(IEnumerable<Deviation> deviations) => deviations.Aggregate(
        new Deviation(Peak.None, Peak.None),
        (largest, next) => new Deviation(Peak.Larger(largest.Metres, next.Metres), Peak.Larger(largest.Degrees, next.Degrees)));
}

/// <summary>A largest value, and where it was seen.</summary>
/// <param name="Value">The value.</param>
/// <param name="Joint">The joint's name.</param>
/// <param name="At">Seconds from the clip's start.</param>
public sealed record Peak(double Value, string Joint, float At)
{
    internal static Peak None { get; } = new(0, "", 0);

    internal static Peak Larger(Peak a, Peak b) => b.Value > a.Value || a.Joint.Length == 0 ? b : a;
}
