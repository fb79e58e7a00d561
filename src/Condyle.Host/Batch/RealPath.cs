namespace Condyle.Host.Batch;

/// <summary>Where a path leads once the links on the way are followed, so that two names of one place are one.</summary>
internal static class RealPath
{
    /// <summary>As many links as systems follow on one way; links may lead round.</summary>
    private const int MostLinks = 40;

    /// <summary>The place, whether or not something is there; a link that can't be followed stays as it is.</summary>
    public static string Of(string path) => Of(Path.GetFullPath(path), MostLinks);

    private static string Of(string path, int links)
    {
        if (Path.GetDirectoryName(path) is not { } above)
            return path;
        var here = Path.Combine(Of(above, links), Path.GetFileName(path));
        return links > 0 && FindTarget(here) is { } target ? Of(target, links - 1) : here;
    }

    private static string? FindTarget(string path)
    {
        try
        {
            return File.ResolveLinkTarget(path, returnFinalTarget: false)?.FullName;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }
}
