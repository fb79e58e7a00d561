namespace Condyle.Evaluation;

/// <summary>How far the tip of two bones goes towards its goal: at a distance that the bones reach, times the factor by which they lengthen.</summary>
/// <remarks>
/// With d the goal's distance, L the bones' length and h = L − s the hard range: r = d up to h, and r = L − s·e^−(d − h)/s beyond it,
/// which leaves the hard range with slope one and comes to L at infinity (common practice, no source). The hard range ends no nearer than where the tip rests.
/// Without softness, and at the inner end |a − b|, the tip stops at the nearest point that it can reach.
/// The factor is 1 + w·(min(d / r, most) − 1): both bones alike, so the limb keeps the shape that it has without.
/// Continuous in all of its arguments; smooth at h while s is above zero.
/// </remarks>
/// <param name="Distance">The distance r.</param>
/// <param name="Short">What it is short of the full length: by itself, since the height of a limb that is straight but for that goes with its root.</param>
/// <param name="Factor">How many times its length each bone has.</param>
internal readonly record struct TwoBoneReach(double Distance, double Short, double Factor)
{
    /// <param name="goal">How far the goal is from the root.</param>
    /// <param name="atRest">How far the tip is from the root, unsolved.</param>
    /// <param name="first">The length a of the first bone.</param>
    /// <param name="second">The length b of the second bone.</param>
    /// <param name="softness">The length s of the part that is approached smoothly.</param>
    /// <param name="stretch">The weight w, from 0 to 1.</param>
    /// <param name="most">The greatest factor, 1 or more.</param>
    public static TwoBoneReach Of(double goal, double atRest, double first, double second, double softness, double stretch, double most)
    {
        var inner = Math.Min(Math.Abs(first - second), atRest);
        var outer = Math.Max(first + second, atRest);
        var hard = Math.Max(outer - softness, atRest);
        var soft = outer - hard;
        var rest = goal <= hard ? outer - Math.Max(goal, inner)
            : soft > 0 ? soft * Math.Exp((hard - goal) / soft)
            : 0;
        var reach = goal <= hard ? Math.Max(goal, inner) : outer - rest;
        return new(reach, rest, goal > reach && reach > Vector3d.Tiny ? 1 + (stretch * (Math.Min(goal / reach, most) - 1)) : 1);
    }
}
