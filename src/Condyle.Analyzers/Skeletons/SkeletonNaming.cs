namespace Condyle.Analyzers.Skeletons;

/// <summary>How a team's joint names say which side a joint is on and that it is a twist joint.</summary>
internal sealed record SkeletonNaming(string LeftMark, string RightMark, string TwistPattern)
{
    public static SkeletonNaming Default { get; } = new("_left", "_right", "_twist");

    /// <summary>What is empty keeps its default.</summary>
    public static SkeletonNaming From(string leftMark, string rightMark, string twistPattern) => new(
        leftMark.Length > 0 ? leftMark : Default.LeftMark,
        rightMark.Length > 0 ? rightMark : Default.RightMark,
        twistPattern.Length > 0 ? twistPattern : Default.TwistPattern);

    public bool IsTwist(string jointName) => jointName.IndexOf(TwistPattern, StringComparison.Ordinal) >= 0;

    /// <summary>The name without its side's mark, and the side: -1 left, +1 right, 0 none.</summary>
    public (string Base, int Side) Split(string jointName)
    {
        if (LeftMark == RightMark)
            return (jointName, 0);
        if (Ends(jointName, LeftMark))
            return (jointName.Substring(0, jointName.Length - LeftMark.Length), -1);
        if (Ends(jointName, RightMark))
            return (jointName.Substring(0, jointName.Length - RightMark.Length), 1);
        return (jointName, 0);
    }

    private static bool Ends(string name, string mark) => name.Length > mark.Length && name.EndsWith(mark, StringComparison.Ordinal);
}
