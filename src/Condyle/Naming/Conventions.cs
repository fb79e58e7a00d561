using System.Globalization;
using System.Reflection;
using Condyle.Model;

namespace Condyle.Naming;

/// <summary>How a team names things. The defaults hold where a team sets nothing.</summary>
internal sealed record Conventions
{
    public static Conventions Default { get; } = new();

    /// <summary>What the name of a group ends in.</summary>
    public string GroupSuffix { get; init; } = "_group";

    /// <summary>What marks a name of the left side: at its end, or before an underscore.</summary>
    public string LeftMark { get; init; } = "_left";

    /// <summary>What marks a name of the right side.</summary>
    public string RightMark { get; init; } = "_right";

    /// <summary>How many characters a name may have.</summary>
    public int LongestName { get; init; } = 63;

    /// <summary>The conventions of the team whose assembly it is; <see cref="RigConventionsAttribute"/> carries them.</summary>
    public static Conventions Of(Assembly assembly) => assembly.GetCustomAttribute<RigConventionsAttribute>() is { } set
        ? From(name => typeof(RigConventionsAttribute).GetTypeInfo().GetDeclaredProperty(name)?.GetValue(set) as string)
        : Default;

    /// <summary>Conventions from their settings by name. What is empty or missing keeps its default, and so does what can't be; the build warns of that (CDY9201).</summary>
    public static Conventions From(Func<string, string?> setting)
    {
        var set = new Conventions
        {
            GroupSuffix = Affix(setting(nameof(GroupSuffix))) ?? Default.GroupSuffix,
            LeftMark = Affix(setting(nameof(LeftMark))) ?? Default.LeftMark,
            RightMark = Affix(setting(nameof(RightMark))) ?? Default.RightMark,
            LongestName = int.TryParse(setting(nameof(LongestName)), NumberStyles.None, CultureInfo.InvariantCulture, out var most) && most is >= 1 and <= 9999 ? most : Default.LongestName,
        };
        return set.LeftMark == set.RightMark ? set with { LeftMark = Default.LeftMark, RightMark = Default.RightMark } : set;
    }

    public string MarkOf(Side side) => side == Side.Left ? LeftMark : RightMark;

    /// <summary>The name of a copied joint.</summary>
    public Text Tagged(Text tag, Text name) => tag + "_" + name;

    private static string? Affix(string? set) => set is { Length: > 0 } && set.All(IsPortable) ? set : null;

    /// <summary>Whether a character of a name means the same in every program and file.</summary>
    public static bool IsPortable(char letter) => letter is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9') or '_';
}
