using System.Globalization;

namespace Condyle.Naming;

/// <summary>One thing that a team has a say in: an MSBuild property, which the build hands on in <see cref="RigConventionsAttribute"/>.</summary>
/// <param name="Name">The property's name without <c>Condyle</c>.</param>
/// <param name="Default">What holds where nothing is set; empty where nothing holds.</param>
/// <param name="Sets">What it sets, for people.</param>
/// <param name="Right">Which values are right, for people: goes on after "give".</param>
/// <param name="Fault">What is wrong with a value, for people; empty where it is wrong and there is no more to say, none where it is right.</param>
internal sealed record TeamSetting(string Name, string Default, string Sets, string Right, Func<string, string?> Fault)
{
    public static readonly TeamSetting
        GroupSuffix = Affix("_group", nameof(GroupSuffix), "what the name of a group ends in"),
        LeftMark = Affix("_left", nameof(LeftMark), "what marks a name of the left side, in rig code and in skeleton files"),
        RightMark = Affix("_right", nameof(RightMark), "what marks a name of the right side"),
        TagPlace = Word(["before", "after"], nameof(TagPlace), "whether a tag stands before the part, `ik_elbow_left`, or after it, `elbow_ik_left`: the names of copies are made so, and once it is set CDY1008 looks at the names of controls and groups"),
        NamePattern = Pattern("", nameof(NamePattern), "what the names of controls and groups must be like as a whole (CDY1007)"),
        LongestName = Number("63", nameof(LongestName), "how many characters the name of a control, a group or a setting may have (CDY1004)"),
        TwistPattern = Pattern("_twist", nameof(TwistPattern), "what makes a joint of a skeleton file a twist joint, anywhere in its name"),
        HelperPattern = Pattern("", nameof(HelperPattern), "what makes a joint of a skeleton file a helper, anywhere in its name, though a skin lists it"),
        MostJoints = Number("", nameof(MostJoints), "how many joints of a skeleton the engine takes (CDY4006)"),
        JointScale = Word(["allowed", "forbidden"], nameof(JointScale), "whether the engine takes scale on joints (CDY3009)");

    public static IReadOnlyList<TeamSetting> All { get; } = [GroupSuffix, LeftMark, RightMark, TagPlace, NamePattern, LongestName, TwistPattern, HelperPattern, MostJoints, JointScale];

    /// <summary>What right values are made of, where that takes more words.</summary>
    public string MadeOf { get; init; } = "";

    /// <summary>The MSBuild property.</summary>
    public string Property => "Condyle" + Name;

    /// <summary>The value that holds: what is set, unless it is empty or can't be.</summary>
    public string Of(Func<string, string?> setting) => setting(Name) is { Length: > 0 } set && Fault(set) is null ? set : Default;

    /// <summary>What is wrong with a team's settings, for people, in the order of the list.</summary>
    public static IEnumerable<string> Faults(Func<string, string?> setting)
    {
        foreach (var one in All)
        {
            if (setting(one.Name) is { Length: > 0 } set && one.Fault(set) is { } fault)
                yield return $"{one.Property} is '{set}'{fault}, and {(one.Default.Length > 0 ? $"'{one.Default}' is used instead" : "it is as if it weren't set")}: give {one.Right}{one.MadeOf}.";
        }

        if (LeftMark.Of(setting) == RightMark.Of(setting))
            yield return $"{LeftMark.Property} and {RightMark.Property} are both '{LeftMark.Of(setting)}', and '{LeftMark.Default}' and '{RightMark.Default}' are used instead: give each side a mark of its own.";
    }

    private static TeamSetting Affix(string standard, string name, string sets) =>
        new(name, standard, sets, "letters, digits, '_', '-' and '.'", static set => Faulty(!set.All(character => Conventions.IsPortable(character) || character is '-' or '.')));

    private static TeamSetting Word(string[] words, string name, string sets) =>
        new(name, words[0], sets, string.Join(" or ", words.Select(word => $"'{word}'")), set => Faulty(!words.Contains(set)));

    private static TeamSetting Number(string standard, string name, string sets) => new(
        name, standard, sets, "a whole number from 1 to 9999",
        static set => Faulty(!int.TryParse(set, NumberStyles.None, CultureInfo.InvariantCulture, out var number) || number is < 1 or > 9999));

    private static TeamSetting Pattern(string standard, string name, string sets) =>
        new(name, standard, sets, "a pattern", static set => Condyle.Naming.NamePattern.FaultOf(set) is { } fault ? $", which is no pattern as {fault}" : null)
        {
            MadeOf = $", made of {Condyle.Naming.NamePattern.Signs}",
        };

    private static string? Faulty(bool isWrong) => isWrong ? "" : null;
}
