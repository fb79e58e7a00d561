namespace Condyle;

/// <summary>A team's conventions, as the build writes them into the assembly from the properties of <c>analyzers.props</c>. The analyzer and the program both read them here.</summary>
[AttributeUsage(AttributeTargets.Assembly)]
public sealed class RigConventionsAttribute : Attribute
{
    /// <summary>What the name of a group ends in; <c>_group</c> when empty.</summary>
    public string GroupSuffix { get; set; } = "";
}
