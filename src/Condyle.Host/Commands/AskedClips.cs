using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>The clips that <c>--clip</c> names; all of them when it names none.</summary>
internal static class AskedClips
{
    /// <exception cref="BadInputException">One of them is no clip of the project.</exception>
    public static void Check(IReadOnlyList<string> asked, IEnumerable<Clip> known)
    {
        List<string> names = [.. known.Select(clip => clip.Name).Distinct()];
        foreach (var name in asked.Except(names))
            throw new BadInputException("--clip", "is no clip of this project", Nearest.To(name, names), name);
    }

    public static List<Clip> Among(IReadOnlyList<string> asked, IEnumerable<Clip> clips) => [.. clips.Where(clip => asked.Count == 0 || asked.Contains(clip.Name))];
}
