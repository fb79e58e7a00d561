using System.Text.Json.Serialization;

namespace Condyle.Runtime;

/// <summary>
/// How baked motion compares with live motion. The baked samples are played back in double precision, as glTF 2.0 defines it, down the joints' hierarchy,
/// and each joint's place and turn in the world is compared with the rig's. Times are those of the clip.
/// </summary>
/// <param name="Clip">The clip's name.</param>
/// <param name="FramesPerSecond">The frame rate of the bake.</param>
/// <param name="Frames">The number of samples.</param>
/// <param name="Seconds">The length of what was baked.</param>
/// <param name="OnFrames">The largest deviation at the samples' times: rounding, and keys that were left out.</param>
/// <param name="BetweenFrames">The largest deviation midway between samples: what the frame rate costs.</param>
/// <param name="AllowedMetres">How far a joint may be off on a sample: the tolerance for keys left out, or else 0.02 mm, and more for a rig that reaches further than 2 m from the origin, in proportion.</param>
/// <param name="AllowedDegrees">How much a joint may be turned off on a sample.</param>
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
    /// <summary>The largest deviation at a thousand times drawn at random, always the same ones for a clip of the same length.</summary>
    public Deviation AtRandom { get; init; } = Deviation.None;

    /// <summary>The largest deviation within one frame of the moments at which a switch begins or ends to change or a choice picks another option; null when none does.</summary>
    public Deviation? AroundChanges { get; init; }

    /// <summary>What the deviation between samples may be.</summary>
    public BetweenBound BetweenBound { get; init; } = new(0, 0, "", 0, IsAsked: false, Holds: true);

    /// <summary>The number of keys of all channels.</summary>
    public long Keys { get; init; }

    /// <summary>The number of keys that they would have with one for each sample.</summary>
    public long KeysOfEveryFrame { get; init; }

    /// <summary>The deviation over time, for a plot.</summary>
    [JsonIgnore]
    public IReadOnlyList<JointCurve> Curves { get; init; } = [];

    /// <summary>Whether the baked motion is the live motion on every sample, within what is allowed.</summary>
    public bool Holds => OnFrames.Metres.Value <= AllowedMetres && OnFrames.Degrees.Value <= AllowedDegrees;

    /// <summary>The largest deviation between samples, wherever it was looked for.</summary>
    [JsonIgnore]
    public Deviation Between => Deviation.Largest(AroundChanges is { } changes ? [BetweenFrames, AtRandom, changes] : [BetweenFrames, AtRandom]);
}

/// <summary>
/// What motion may be off between samples: what was asked for, or what the frame rate allows, which is twice what the joints' channels bend from sample to sample (their second
/// differences), carried down the chain. It is told where the motion comes nearest to it, or goes furthest beyond.
/// </summary>
/// <param name="Metres">How far the joint may be off there.</param>
/// <param name="Degrees">How much it may be turned off there.</param>
/// <param name="Joint">The joint's name.</param>
/// <param name="At">Seconds from the clip's start.</param>
/// <param name="IsAsked">Whether it was asked for.</param>
/// <param name="Holds">Whether the motion stays within it everywhere that was looked at. Where it doesn't, something happens between two samples that they can't see.</param>
public sealed record BetweenBound(double Metres, double Degrees, string Joint, float At, bool IsAsked, bool Holds);

/// <summary>The largest deviation of one joint.</summary>
/// <param name="Joint">The joint's name.</param>
/// <param name="OnFrames">At the samples' times.</param>
/// <param name="BetweenFrames">Midway between samples.</param>
public sealed record JointDeviation(string Joint, Deviation OnFrames, Deviation BetweenFrames)
{
    /// <summary>At times drawn at random.</summary>
    public Deviation AtRandom { get; init; } = Deviation.None;

    /// <summary>Around changes of switches and choices.</summary>
    public Deviation AroundChanges { get; init; } = Deviation.None;
}

/// <summary>A joint's deviation over time: the largest of each of a number of equal steps of the clip.</summary>
/// <param name="Joint">The joint's name.</param>
/// <param name="OnFrames">Metres, at the samples' times.</param>
/// <param name="Between">Metres, between them.</param>
/// <param name="Degrees">Degrees, on samples and between.</param>
public sealed record JointCurve(string Joint, IReadOnlyList<float> OnFrames, IReadOnlyList<float> Between, IReadOnlyList<float> Degrees);

/// <summary>The largest distance and the largest angle between where a joint is and where it should be, in the world.</summary>
/// <param name="Metres">The distance, in metres.</param>
/// <param name="Degrees">The angle, in degrees.</param>
public sealed record Deviation(Peak Metres, Peak Degrees)
{
    internal static Deviation None { get; } = new(Peak.None, Peak.None);

    internal static Deviation Largest(IEnumerable<Deviation> deviations) => deviations.Aggregate(
        None,
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
