namespace Condyle.Runtime;

/// <summary>How motion is baked.</summary>
public sealed record BakeSettings
{
    /// <summary>The least frame rate.</summary>
    public const float LeastFramesPerSecond = 1;

    /// <summary>The greatest frame rate.</summary>
    public const float GreatestFramesPerSecond = 1000;

    /// <summary>The most frames that one clip may have.</summary>
    public const int MostFrames = 1_000_000;

    /// <summary>Frames per second, from 1 to 1000.</summary>
    public float FramesPerSecond { get; init; } = 30;

    /// <summary>Whether a baked clip takes the place of an animation of the same name in the delivered file; without it that is an error, so that none is lost by accident.</summary>
    public bool ReplaceClips { get; init; }
}
