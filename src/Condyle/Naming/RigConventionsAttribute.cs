namespace Condyle;

/// <summary>A team's conventions, as the build writes them into the assembly from the properties of <c>analyzers.props</c>. The analyzer and the program both read them here.</summary>
[AttributeUsage(AttributeTargets.Assembly)]
public sealed class RigConventionsAttribute : Attribute
{
    /// <summary>What the name of a group ends in; <c>_group</c> when empty.</summary>
    public string GroupSuffix { get; set; } = "";

    /// <summary>What marks a name of the left side; <c>_left</c> when empty.</summary>
    public string LeftMark { get; set; } = "";

    /// <summary>What marks a name of the right side; <c>_right</c> when empty.</summary>
    public string RightMark { get; set; } = "";

    /// <summary>How many characters a name may have, as a whole number; 63 when empty.</summary>
    public string LongestName { get; set; } = "";
}
