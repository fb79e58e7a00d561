namespace Condyle.Rules;

/// <summary>What a build says besides the rules: of files and settings, not of rigs. It has a page as a rule has.</summary>
internal sealed record BuildProblem(string Id, string Title, Severity Severity)
{
    /// <summary>A skeleton file can't be read.</summary>
    public const string SkeletonFile = "CDY9101";

    /// <summary>A team's setting can't be.</summary>
    public const string Setting = "CDY9201";

    public static IReadOnlyList<BuildProblem> All { get; } =
    [
        new(SkeletonFile, "Skeleton file can't be read", Severity.Error),
        new(Setting, "Setting that can't be", Severity.Warning),
    ];

    public string Page => RulePage.Of(Id);

    public static BuildProblem? Find(string id) => All.FirstOrDefault(problem => problem.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
