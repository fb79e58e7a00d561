using Condyle.Runtime;

namespace Condyle.Host.Catalogue;

/// <summary>A clip that can't be made or baked.</summary>
/// <param name="Clip">Its name; null where it isn't known which one of a class it is.</param>
/// <param name="Source">The class that makes it; null for the built-in range of motion.</param>
/// <param name="Reason">Why, in one line with the place.</param>
internal sealed record ClipFailure(string? Clip, string? Source, string Reason);

/// <summary>The clips that the project has for a rig, as far as its code makes them: one class that fails leaves those of the others.</summary>
internal sealed class ProjectClips
{
    private readonly List<Clip> all = [];
    private readonly List<ClipFailure> failures = [];
    private readonly Dictionary<Clip, string> sources = [];

    public IReadOnlyList<Clip> All => all;

    public IReadOnlyList<ClipFailure> Failures => failures;

    /// <summary>Lets each class make its clips.</summary>
    /// <param name="makers">The classes.</param>
    /// <param name="builtIn">What comes before them.</param>
    public static ProjectClips Of(IReadOnlyList<Type> makers, Clip? builtIn = null)
    {
        var clips = new ProjectClips();
        if (builtIn is not null)
            clips.all.Add(builtIn);
        foreach (var maker in makers)
            clips.TakeFrom(maker);
        return clips;
    }

    /// <summary>What is told of a clip that can't be baked.</summary>
    public ClipFailure Failed(Clip clip, BadInputException problem) => sources.GetValueOrDefault(clip) is { } source
        ? new(clip.Name, source, $"{problem.Message.TrimEnd('.')} (in {source})")
        : new(clip.Name, null, problem.Message.TrimEnd('.'));

    private void TakeFrom(Type maker)
    {
        try
        {
            foreach (var clip in ((IRigClips)Activator.CreateInstance(maker)!).Clips())
            {
                all.Add(clip ?? throw new InvalidOperationException("It gives a clip that is null."));
                sources[clip] = maker.Name;
            }
        }
        catch (Exception problem)
        {
            // What it has made by now is good; what would have come after it nobody can tell.
            failures.Add(new(null, maker.Name, $"'{maker.Name}' has clips that can't be made, this one and what comes after it: {ProjectFault.Of(problem, maker.Assembly).Line}"));
        }
    }
}
