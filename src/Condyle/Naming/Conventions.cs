using System.Globalization;
using System.Reflection;
using Condyle.Model;

namespace Condyle.Naming;

/// <summary>How a team names things, and what its engine takes. The defaults hold where a team sets nothing; <see cref="TeamSetting"/> says what each means.</summary>
internal sealed record Conventions
{
    private Conventions()
    {
    }

    public static Conventions Default { get; } = From(static _ => null);

    public string GroupSuffix { get; init; } = "";

    /// <summary>What marks a name of the left side: at its end, or before an underscore.</summary>
    public string LeftMark { get; init; } = "";

    public string RightMark { get; init; } = "";

    public bool IsTagAfterPart { get; init; }

    /// <summary>Whether the team has said where tags stand.</summary>
    public bool IsTagPlaceSet { get; init; }

    /// <summary>What names of controls and groups must be like; none: anything.</summary>
    public NamePattern? NamePattern { get; init; }

    public int LongestName { get; init; }

    public NamePattern? TwistPattern { get; init; }

    public NamePattern? HelperPattern { get; init; }

    /// <summary>How many joints of a skeleton the engine takes; none: any number.</summary>
    public int? MostJoints { get; init; }

    public bool IsScaleForbidden { get; init; }

    /// <summary>The conventions of the team whose assembly it is; <see cref="RigConventionsAttribute"/> carries them.</summary>
    public static Conventions Of(Assembly assembly) => assembly.GetCustomAttribute<RigConventionsAttribute>() is { } set
        ? From(name => typeof(RigConventionsAttribute).GetTypeInfo().GetDeclaredProperty(name)?.GetValue(set) as string)
        : Default;

    /// <summary>Conventions from their settings by name. What is empty or missing keeps its default, and so does what can't be; the build warns of that (CDY9201).</summary>
    public static Conventions From(Func<string, string?> setting)
    {
        var (left, right) = (TeamSetting.LeftMark.Of(setting), TeamSetting.RightMark.Of(setting));
        var areAlike = left == right;
        return new()
        {
            GroupSuffix = TeamSetting.GroupSuffix.Of(setting),
            LeftMark = areAlike ? TeamSetting.LeftMark.Default : left,
            RightMark = areAlike ? TeamSetting.RightMark.Default : right,
            IsTagAfterPart = TeamSetting.TagPlace.Of(setting) == "after",
            IsTagPlaceSet = setting(TeamSetting.TagPlace.Name) is { Length: > 0 } place && TeamSetting.TagPlace.Fault(place) is null,
            NamePattern = Pattern(TeamSetting.NamePattern.Of(setting)),
            LongestName = Number(TeamSetting.LongestName.Of(setting))!.Value,
            TwistPattern = Pattern(TeamSetting.TwistPattern.Of(setting)),
            HelperPattern = Pattern(TeamSetting.HelperPattern.Of(setting)),
            MostJoints = Number(TeamSetting.MostJoints.Of(setting)),
            IsScaleForbidden = TeamSetting.JointScale.Of(setting) == "forbidden",
        };
    }

    public string MarkOf(Side side) => side == Side.Left ? LeftMark : RightMark;

    /// <summary>The name of a copied joint: its tag before the part, or after it and before the side.</summary>
    public Text Tagged(Text tag, Text name)
    {
        if (!IsTagAfterPart)
            return tag + "_" + name;
        if (!name.TryKnown(out var known))
            return Text.Open; // where its side begins isn't known
        var end = EndOfPart(known);
        return (Text)known.Substring(0, end) + "_" + tag + known.Substring(end);
    }

    /// <summary>Where in a name its side or its suffix begins.</summary>
    public int EndOfPart(string name) =>
        SidedName.Of(name, this) is { } sided ? sided.MarkAt
        : name.EndsWith(GroupSuffix, StringComparison.Ordinal) ? name.Length - GroupSuffix.Length
        : name.Length;

    /// <summary>Whether a character of a name means the same in every program and file.</summary>
    public static bool IsPortable(char letter) => letter is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9') or '_';

    private static NamePattern? Pattern(string text) => text.Length == 0 ? null : NamePattern.Parse(text);

    private static int? Number(string text) => text.Length == 0 ? null : int.Parse(text, NumberStyles.None, CultureInfo.InvariantCulture);
}
