using System.Text.Json;
using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Snags;

public sealed class AnalyzerFolderTests
{
    [Fact]
    public void The_import_hands_the_compiler_the_analyzers_and_what_they_need_from_one_folder()
    {
        using var copy = new SnagsCopy();
        using var answer = JsonDocument.Parse(DotNet.Run(copy.Folder, ["msbuild", "-restore", "-nologo", "-target:ResolveProjectReferences", "-getItem:Analyzer"]));
        var ours = answer.RootElement.GetProperty("Items").GetProperty("Analyzer").EnumerateArray()
            .Select(item => item.GetProperty("FullPath").GetString()!)
            .Where(path => Path.GetFileName(path).StartsWith("Condyle", StringComparison.Ordinal)).ToList();

        Assert.Equal(["Condyle.Analyzers.dll", "Condyle.CodeFixes.dll", "Condyle.dll"], ours.Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Single(ours.Select(Path.GetDirectoryName).Distinct());
        Assert.All(ours, path => Assert.True(File.Exists(path), path));
    }
}
