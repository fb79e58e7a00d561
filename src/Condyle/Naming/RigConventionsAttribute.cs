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

    /// <summary>Whether the tag of a copy stands <c>before</c> the part or <c>after</c> it; <c>before</c> when empty.</summary>
    public string TagPlace { get; set; } = "";

    /// <summary>A pattern of the names of controls and groups; any name when empty.</summary>
    public string NamePattern { get; set; } = "";

    /// <summary>How many characters a name may have, as a whole number; 63 when empty.</summary>
    public string LongestName { get; set; } = "";

    /// <summary>A pattern that tells twist joints of a skeleton file by a part of their names; <c>_twist</c> when empty.</summary>
    public string TwistPattern { get; set; } = "";

    /// <summary>A pattern that tells helpers of a skeleton file by a part of their names, though a skin lists them; none when empty.</summary>
    public string HelperPattern { get; set; } = "";

    /// <summary>How many joints of a skeleton the engine takes, as a whole number; any number when empty.</summary>
    public string MostJoints { get; set; } = "";

    /// <summary>Whether scale of joints is <c>allowed</c> or <c>forbidden</c> by the engine; <c>allowed</c> when empty.</summary>
    public string JointScale { get; set; } = "";
}
