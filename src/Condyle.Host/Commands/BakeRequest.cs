using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>What to bake.</summary>
/// <param name="Rig">A rig's name; all rigs when null.</param>
/// <param name="Clips">Clips' names; all clips when empty.</param>
/// <param name="Settings">The frame rate and so on.</param>
/// <param name="Output">Where files are written: a folder, or the file where there is one only.</param>
/// <param name="Skeleton">The delivered file, instead of the one that the rig names.</param>
/// <param name="MayHaveNoFile">Whether a rig without a delivered file is passed over instead of being an error.</param>
/// <param name="Report">Whether reports are written beside the files.</param>
/// <param name="Json">Whether the result is printed as JSON.</param>
internal sealed record BakeRequest(string? Rig, IReadOnlyList<string> Clips, BakeSettings Settings, string Output, string? Skeleton, bool MayHaveNoFile, bool Report, bool Json)
{
    /// <exception cref="BadInputException">Nothing can be baked so.</exception>
    public void CheckSettings() => Settings.Check((problem, remedy) => new BadInputException("bake", problem, remedy));
}
