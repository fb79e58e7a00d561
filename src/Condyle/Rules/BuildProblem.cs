namespace Condyle.Rules;

/// <summary>What a build says besides the rules: of files and settings, not of rigs. It has a page as a rule has.</summary>
internal sealed record BuildProblem(string Id, string Family, string Title, Severity Severity)
{
    public static BuildProblem SkeletonFile { get; } = new("CDY9101", "Skeletons", "Skeleton file can't be read", Severity.Error);

    public static BuildProblem Setting { get; } = new("CDY9201", "Settings", "Setting that can't be", Severity.Warning);

    public static IReadOnlyList<BuildProblem> All { get; } = [SkeletonFile, Setting];

    public string Page => RulePage.Of(Id);

    public static BuildProblem? Find(string id) => All.FirstOrDefault(problem => problem.Id.Equals(id, StringComparison.OrdinalIgnoreCase));
}
