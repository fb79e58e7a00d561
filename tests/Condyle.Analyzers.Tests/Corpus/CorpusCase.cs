using System.Text.RegularExpressions;
using Condyle.Analyzers.Tests.Skeletons;

namespace Condyle.Analyzers.Tests.Corpus;

/// <summary>
/// A rig in a file of its own, on the joints of <c>Harbour.cs</c>. A line on which something is to be found ends in <c>// finds CDY1002</c>.
/// Where only a run can know what is found, the file begins with <c>// Read only</c> and why.
/// </summary>
internal sealed partial record CorpusCase(string Folder, string Name)
{
    public static TheoryData<string> In(string folder) =>
        [.. Directory.GetFiles(PathOf(folder), "*.cs").Select(file => Path.GetFileNameWithoutExtension(file)!).Order(StringComparer.Ordinal)];

    public string Source { get; } = File.ReadAllText(Path.Combine(PathOf(Folder), Name + ".cs"));

    public (string Path, string Source)[] Files => [(Name + ".cs", Source), ("Harbour.cs", File.ReadAllText(Path.Combine(PathOf(""), "Harbour.cs")))];

    public bool IsReadOnly => Source.StartsWith("// Read only", StringComparison.Ordinal);

    /// <summary>What is marked, by line from one.</summary>
    public IEnumerable<(int Line, string Rule)> Marked =>
        from line in Source.Split('\n').Select((text, index) => (Text: text, Number: index + 1))
        from Match mark in Mark().Matches(line.Text)
        from Capture rule in mark.Groups["rule"].Captures
        select (line.Number, rule.Value);

    private static string PathOf(string folder) => Repository.PathTo("tests", "Condyle.Analyzers.Tests", "Corpus", folder);

    [GeneratedRegex("""// finds (?:(?<rule>CDY\d{4})(?:, )?)+\s*$""")]
    private static partial Regex Mark();
}
