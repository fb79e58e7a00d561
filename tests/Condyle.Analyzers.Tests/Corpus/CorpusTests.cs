using Condyle.Analyzers.Tests.Reporting;

namespace Condyle.Analyzers.Tests.Corpus;

/// <summary>Rigs with slips, of which each is found and nothing else; and unusual rigs without any. A case is a file: adding one adds it here.</summary>
public class CorpusTests
{
    public static TheoryData<string> Slips => CorpusCase.In("Slips");

    public static TheoryData<string> Clean => CorpusCase.In("Clean");

    [Theory]
    [MemberData(nameof(Slips))]
    public Task Every_slip_is_found_where_it_is_marked_and_nothing_else(string name) => Holds(new CorpusCase("Slips", name));

    [Theory]
    [MemberData(nameof(Clean))]
    public Task A_clean_rig_is_left_in_peace(string name) => Holds(new CorpusCase("Clean", name));

    private static async Task Holds(CorpusCase given)
    {
        Assert.True(given.Folder == "Clean" ^ given.Marked.Any(), "A slip is marked, and a clean rig has none.");
        var found = await FrontEnds.Read(given.Files);
        Assert.Equal(
            given.Marked.Order().Select(mark => $"line {mark.Line}: {mark.Rule}"),
            found.Select(finding => (Line: finding.Location.GetLineSpan().StartLinePosition.Line + 1, finding.Id)).Order().Select(finding => $"line {finding.Line}: {finding.Id}"));
        Assert.All(found, finding => Assert.Equal(given.Name + ".cs", finding.Location.SourceTree!.FilePath));
        if (!given.IsReadOnly)
            await FrontEnds.Agree(given.Files);
    }
}
