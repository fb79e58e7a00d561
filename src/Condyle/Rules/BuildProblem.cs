namespace Condyle.Rules;

/// <summary>What a build says besides the rules: of files and settings, not of rigs. It has a page as a rule has.</summary>
internal sealed record BuildProblem(string Id, string Title, Severity Severity)
{
    public static readonly BuildProblem
        SkeletonFile = new("CDY9101", "Skeleton file can't be read", Severity.Error),
        Setting = new("CDY9201", "Setting that can't be", Severity.Warning);

    public static IReadOnlyList<BuildProblem> All { get; } = [SkeletonFile, Setting];

    public string Page => RulePage.Of(Id);

    public static BuildProblem? Find(string id) => All.FirstOrDefault(problem => problem.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
