using System.Text.RegularExpressions;
using Condyle.EndToEnd.Tests.Clients;

namespace Condyle.EndToEnd.Tests.Outside;

/// <summary>Does what the front page says of a project of one's own, to the letter.</summary>
public sealed partial class FirstProjectTests
{
    private const string Gull = """
        {
          "asset": { "version": "2.0" },
          "scene": 0,
          "scenes": [{ "nodes": [0] }],
          "nodes": [
            { "name": "root", "children": [1] },
            { "name": "body", "translation": [0, 0.5, 0], "children": [2, 5] },
            { "name": "wing_left", "translation": [0.1, 0.05, 0], "children": [3] },
            { "name": "wing_mid_left", "translation": [0.3, 0.02, -0.08], "children": [4] },
            { "name": "wing_tip_left", "translation": [0.35, -0.02, 0.06] },
            { "name": "wing_right", "translation": [-0.1, 0.05, 0], "children": [6] },
            { "name": "wing_mid_right", "translation": [-0.3, 0.02, -0.08], "children": [7] },
            { "name": "wing_tip_right", "translation": [-0.35, -0.02, 0.06] }
          ],
          "skins": [{ "joints": [0, 1, 2, 3, 4, 5, 6, 7] }]
        }
        """;

    [Fact]
    public void The_front_pages_first_project_builds_checks_and_bakes()
    {
        var page = File.ReadAllText(Repository.PathTo("README.md")).ReplaceLineEndings("\n");
        var section = page[page.IndexOf("\n## Your own project\n", StringComparison.Ordinal)..];
        var shown = Shown().Matches(section).Take(3).Select(block => block.Groups["text"].Value).ToList();
        using var folder = new RigFolder();
        folder.Write("harbour/Harbour.csproj", shown[0].Replace("path/to/condyle/analyzers.props", "../analyzers.props", StringComparison.Ordinal));
        folder.Write("harbour/Program.cs", ProgramLine().Match(section).Groups["line"].Value + "\n");
        folder.Write("harbour/Gull.cs", shown[1]);
        folder.Write("harbour/GullClips.cs", shown[2]);
        folder.Write("harbour/gull.gltf", Gull);

        var harbour = folder.PathTo("harbour");
        Assert.Empty(BuildFinding.In(DotNet.Run(harbour, "build")));
        var output = DotNet.Run(harbour, Path.Combine("bin", Repository.Configuration, "net10.0", "Harbour.dll"));
        Assert.StartsWith("Gull: no findings", output, StringComparison.Ordinal);
        Assert.Contains("dive: 31 frames at 30/s, 1 s", output, StringComparison.Ordinal);
        Assert.True(File.Exists(folder.PathTo("harbour", "out", "gull.glb")));
    }

    [GeneratedRegex("```(xml|csharp)\n(?<text>.*?)```", RegexOptions.Singleline)]
    private static partial Regex Shown();

    [GeneratedRegex(@"`Program\.cs` is `(?<line>[^`]+)`")]
    private static partial Regex ProgramLine();
}
