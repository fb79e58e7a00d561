using Condyle.Host.Catalogue;
using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>The clips that <c>--clip</c> names; all of them when it names none.</summary>
internal static class AskedClips
{
    /// <exception cref="BadInputException">One of them is no clip of the project.</exception>
    public static void Check(IReadOnlyList<string> asked, IReadOnlyCollection<ProjectClips> known)
    {
        List<string> names = [.. known.SelectMany(clips => clips.All).Select(clip => clip.Name).Distinct()];
        foreach (var name in asked.Except(names))
        {
            throw known.SelectMany(clips => clips.Failures).FirstOrDefault() is { } failure
                ? new BadInputException("--clip", "is none of the clips that could be made", failure.Reason.TrimEnd('.'), name)
                : new BadInputException("--clip", "is no clip of this project", Nearest.To(name, names), name);
        }
    }

    public static List<Clip> Among(IReadOnlyList<string> asked, ProjectClips clips) => [.. clips.All.Where(clip => asked.Count == 0 || asked.Contains(clip.Name))];

    /// <summary>What couldn't be made matters to who wants all clips; those that are asked for by name are there.</summary>
    public static List<ClipFailure> FailuresAmong(IReadOnlyList<string> asked, ProjectClips clips) => asked.Count == 0 ? [.. clips.Failures] : [];
}
