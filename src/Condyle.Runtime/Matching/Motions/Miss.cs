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

    public double Weighed(Comparison off) => Turns ? Weigh.Degrees(PeakOf(off).Value) : Weigh.Metres(PeakOf(off).Value);
}
