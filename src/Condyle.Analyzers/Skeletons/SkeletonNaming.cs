using Condyle.Naming;

namespace Condyle.Analyzers.Skeletons;

/// <summary>How a team's joint names say which side a joint is on and what it is for.</summary>
internal sealed record SkeletonNaming(Conventions Conventions)
{
    public static SkeletonNaming Default { get; } = new(Conventions.Default);

    public string LeftMark => Conventions.LeftMark;

    public string RightMark => Conventions.RightMark;

    /// <summary>What a joint that a skin lists is for, by its name.</summary>
    public JointRole RoleOf(string jointName) =>
        Conventions.HelperPattern?.IsIn(jointName) == true ? JointRole.Helper
        : Conventions.TwistPattern?.IsIn(jointName) == true ? JointRole.Twist
        : JointRole.Deform;

    /// <summary>The name without its side's mark, and the side: -1 left, +1 right, 0 none.</summary>
    public (string Base, int Side) Split(string jointName)
    {
        if (Ends(jointName, LeftMark))
            return (jointName.Substring(0, jointName.Length - LeftMark.Length), -1);
        if (Ends(jointName, RightMark))
            return (jointName.Substring(0, jointName.Length - RightMark.Length), 1);
        return (jointName, 0);
    }

    private static bool Ends(string name, string mark) => name.Length > mark.Length && name.EndsWith(mark, StringComparison.Ordinal);
}
