using System.Reflection;
using Condyle.Model;

namespace Condyle.Naming;

/// <summary>How a team names things. The defaults hold where a team sets nothing.</summary>
internal sealed record Conventions
{
    public static Conventions Default { get; } = new();

    /// <summary>What the name of a group ends in.</summary>
    public string GroupSuffix { get; init; } = "_group";

    /// <summary>The conventions of the team whose assembly it is; <see cref="RigConventionsAttribute"/> carries them.</summary>
    public static Conventions Of(Assembly assembly) => assembly.GetCustomAttribute<RigConventionsAttribute>() is { } set
        ? From(set.GroupSuffix)
        : Default;

    /// <summary>Conventions from their settings; what is empty or missing keeps its default.</summary>
    public static Conventions From(string? groupSuffix) => groupSuffix is { Length: > 0 } ? new Conventions { GroupSuffix = groupSuffix } : Default;

    /// <summary>The name of a copied joint.</summary>
    public Text Tagged(Text tag, Text name) => tag + "_" + name;
}
