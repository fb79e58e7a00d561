using Condyle.Runtime.Baking;

namespace Condyle.Runtime.Matching.Motions;

/// <summary>Where a joint is furthest off by itself.</summary>
/// <param name="Joint">The joint's index.</param>
/// <param name="Peak">How far, and when.</param>
/// <param name="Turns">Whether it is turned off, and not away.</param>
internal sealed record Miss(int Joint, Peak Peak, bool Turns)
{
    public double Of(Off off) => Turns ? off.Degrees : off.Metres;

    /// <summary>How far that joint is off by another measure.</summary>
    public Peak PeakOf(Comparison off) => Turns ? off.Of(Joint).Degrees : off.Of(Joint).Metres;

    /// <summary>The same as a number by which a distance can be compared with a turn: 1 mm tells as much as 0.1°, as tolerances do.</summary>
    public double Weigh(Comparison off) => PeakOf(off).Value * (Turns ? 10 : 1000);
}
