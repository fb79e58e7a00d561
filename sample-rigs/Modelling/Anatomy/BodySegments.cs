namespace Modelling.Anatomy;

/// <summary>
/// Lengths of body segments as fractions of stature: Drillis and Contini (1966), "Body Segment Parameters", as reproduced in
/// Winter, "Biomechanics and Motor Control of Human Movement", figure 4.1. Values from memory.
/// </summary>
internal static class BodySegments
{
    // Heights above the ground, standing straight.
    public const double AnkleHeight = 0.039;
    public const double WaistHeight = 0.630; // the height of the elbow, where the waist is
    public const double ShoulderHeight = 0.818;
    public const double ChinHeight = 0.870;

    // Lengths.
    public const double Thigh = 0.245;
    public const double Shank = 0.246;
    public const double UpperArm = 0.186;
    public const double Forearm = 0.146;
    public const double Hand = 0.108;
    public const double Foot = 0.152;

    // Breadths: from the middle to the outside of a shoulder, and across the hips.
    public const double HalfShoulders = 0.129;
    public const double Hips = 0.191;
}
