using Condyle.Runtime;

namespace Newcomers;

/// <summary>How finely a newcomer's motion is baked.</summary>
internal static class FrameRate
{
    private const float Usual = 30, Least = 5;

    /// <summary>The most samples of a joint in one file: about 50 MB of rotations and translations.</summary>
    private const float MostSamples = 2e6f;

    /// <summary>The usual rate; fewer frames for a character with so many joints that showing them all would fill a disk.</summary>
    public static float For(Clip clip, CompiledRig rig) => Math.Clamp(MathF.Floor(MostSamples / (clip.Seconds * rig.Joints.Count)), Least, Usual);
}
