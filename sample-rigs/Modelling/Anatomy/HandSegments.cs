namespace Modelling.Anatomy;

/// <summary>
/// Mean bone lengths in millimetres: Buryanov and Kotiuk (2010), "Proportions of hand segments", International Journal of Morphology 28(3).
/// Values from memory. <see cref="Spread"/> (degrees away from the middle finger, towards the thumb) and <see cref="Offset"/>
/// (millimetres towards the thumb) are set by eye.
/// </summary>
internal sealed record HandSegments(string Finger, double Metacarpal, double Proximal, double Middle, double Distal, double Offset, double Spread)
{
    public static readonly HandSegments Index = new("index", 68.12, 39.78, 22.38, 15.82, 23, 5);
    public static readonly HandSegments MiddleFinger = new("middle", 64.60, 44.63, 26.33, 17.40, 3, 0);
    public static readonly HandSegments Ring = new("ring", 58.00, 41.37, 25.65, 17.30, -16, -5);
    public static readonly HandSegments Little = new("little", 53.69, 32.74, 18.11, 15.96, -33, -11);

    public static readonly IReadOnlyList<HandSegments> Fingers = [Index, MiddleFinger, Ring, Little];

    /// <summary>The thumb turns about the foot of its metacarpal, so its three bones are metacarpal, proximal and distal.</summary>
    public static readonly IReadOnlyList<double> Thumb = [46.22, 31.57, 21.67];

    /// <summary>Wrist bones (by eye) between the wrist and the metacarpals, and the flesh beyond the last bone.</summary>
    public const double Carpus = 25;
    public const double Fingertip = 4;

    /// <summary>The length of a hand with these bones, from the wrist to the tip of the middle finger.</summary>
    public static double Length =>
        Carpus + MiddleFinger.Metacarpal + MiddleFinger.Proximal + MiddleFinger.Middle + MiddleFinger.Distal + Fingertip;
}
