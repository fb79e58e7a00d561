using System.Globalization;

namespace Condyle.Runtime;

/// <summary>
/// What a team's engine takes: a name for settings that every character of the project shares. A profile's files hold the skeleton and its motion alone, in the
/// profile's unit and with its up axis; the delivered file stays as it is.
/// </summary>
/// <param name="Name">The profile's name: letters, digits, hyphens and underscores. It becomes part of files' names.</param>
public sealed record EngineProfile(string Name)
{
    /// <summary>How many of the engine's units are a metre: 100 for centimetres.</summary>
    public float UnitsPerMetre { get; init; } = 1;

    /// <summary>The engine's up axis: Y, as in glTF, or Z, towards which the scene is then turned about X.</summary>
    public Axis Up { get; init; } = Axis.Y;

    /// <summary>Frame rate, root motion, keys and so on.</summary>
    public BakeSettings Bake { get; init; } = new();

    /// <summary>The pose that motion is the difference from; null for motion that stands by itself.</summary>
    public AdditiveReference? Additive { get; init; }

    /// <summary>The sets of joints that files are written for, a file each; all joints in one file when there is none.</summary>
    public IReadOnlyList<DetailLevel> Levels { get; init; } = [];

    /// <summary>Whether the clips' markers go into the animations' extras, as the engine's events.</summary>
    public bool Events { get; init; } = true;

    internal void Check()
    {
        if (string.IsNullOrEmpty(Name) || !Name.All(IsPortable))
            throw Wrong("its name isn't made of letters, digits, hyphens and underscores", "Name it so: it becomes part of files' names");
        if (!(UnitsPerMetre is > 0 and < float.PositiveInfinity))
            throw Wrong(string.Create(CultureInfo.InvariantCulture, $"{UnitsPerMetre} of its units are a metre"), "Give a finite number above zero");
        if (Up is not (Axis.Y or Axis.Z))
            throw Wrong($"its up axis is {Up}", "Say Y or Z");
        Bake.Check(Wrong);
        foreach (var level in Levels)
        {
            if (string.IsNullOrEmpty(level.Name) || !level.Name.All(IsPortable) || Levels.Count(other => string.Equals(other.Name, level.Name, StringComparison.OrdinalIgnoreCase)) > 1)
                throw Wrong($"the level of detail '{level.Name}' has no name of its own that files can have", "Name each level differently, with letters, digits, hyphens and underscores");
        }
    }

    internal BadInputException Wrong(string problem, string remedy) => new($"profile '{Name}'", problem, remedy);

    private static bool IsPortable(char letter) => char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_';
}

/// <summary>The pose that additive motion is the difference from: applied after it, joint by joint, the difference gives the motion back.</summary>
public sealed record AdditiveReference
{
    private AdditiveReference()
    {
    }

    /// <summary>The joints' rest.</summary>
    public static AdditiveReference Rest { get; } = new();

    /// <summary>The time of the clip whose pose it is, in seconds; null for the rest.</summary>
    public float? At { get; private init; }

    /// <summary>A pose of the clip itself.</summary>
    /// <param name="seconds">Its time in what is baked.</param>
    /// <returns>The reference.</returns>
    public static AdditiveReference Time(float seconds) => new() { At = seconds };
}

/// <summary>A set of joints for a distance from the camera.</summary>
/// <param name="Name">Its name, which becomes part of its files' names.</param>
public sealed record DetailLevel(string Name)
{
    /// <summary>The joints that are left out, by name or by a pattern with <c>*</c>, such as <c>thumb_*</c>. They keep their rest, so nothing that is kept may hang under them and move. Since a profile serves several rigs, a name may be one that a rig hasn't; the manifest tells.</summary>
    public IReadOnlyList<string> LeavesOut { get; init; } = [];

    internal bool Holds(string joint) => !LeavesOut.Any(pattern => IsMeant(pattern, joint));

    /// <summary>What it leaves out that none of these joints is.</summary>
    internal IReadOnlyList<string> UnknownAmong(IReadOnlyCollection<string> joints) => [.. LeavesOut.Where(pattern => !joints.Any(joint => IsMeant(pattern, joint)))];

    private static bool IsMeant(string pattern, string joint) => System.IO.Enumeration.FileSystemName.MatchesSimpleExpression(pattern, joint, ignoreCase: false);
}
