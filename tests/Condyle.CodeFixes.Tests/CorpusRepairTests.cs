using System.Text.RegularExpressions;
using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Tests.Corpus;
using Condyle.Analyzers.Tests.Reading;
using Condyle.Analyzers.Tests.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.CodeFixes.Tests;

/// <summary>Every fix that is offered in the corpus: the code compiles without a new warning, no comment is lost, the finding is gone, no other has come, and the rig is the same but for one kind of element, the blamed one.</summary>
public partial class CorpusRepairTests
{
    public static TheoryData<string> Slips => CorpusCase.In("Slips");

    [Theory]
    [MemberData(nameof(Slips))]
    public async Task A_fix_removes_its_finding_and_changes_nothing_else(string name)
    {
        var given = new CorpusCase("Slips", name);
        foreach (var finding in await FrontEnds.Read(given.Files))
        {
            foreach (var offered in OfferedRepair.Of(finding))
                await Repairs(given, finding, offered.Repair);
        }
    }

    [Theory]
    [InlineData("CDY8001_a_control_placed_at_the_joint_above", "Keep the offset that 'elbow_left' has at rest")]
    [InlineData("CDY8001_a_control_that_is_not_placed")]
    [InlineData("CDY3009_scale_in_a_helper", "Drive 'pelvis' without scale")]
    [InlineData("CDY1008_another_suffix_and_other_marks")]
    public async Task A_fix_is_offered_where_the_right_code_is_known(string name, params string[] titles) => Assert.Equal(
        titles,
        (await FrontEnds.Read(new CorpusCase("Slips", name).Files)).SelectMany(OfferedRepair.Of).Select(offered => offered.Repair.Title));

    private static async Task Repairs(CorpusCase given, Diagnostic finding, PlannedRepair repair)
    {
        (string Path, string Source)[] after = [.. given.Files.Select(file => (file.Path, Edited(file.Path, file.Source, repair)))];
        Assert.NotEqual(given.Files, after);
        Assert.Subset(Problems(given.Files), Problems(after));
        Assert.Equal(Comments(given.Files), Comments(after));
        var left = (await FrontEnds.Read(after)).Select(other => other.Id).ToList();
        Assert.True(!left.Contains(finding.Id) || left.Count(id => id == finding.Id) < given.Marked.Count(mark => mark.Rule == finding.Id), $"{repair.Title}: {finding.Id} is still found.");
        Assert.Subset(given.Marked.Select(mark => mark.Rule).ToHashSet(), left.ToHashSet());
        var (lines, changed) = (Lines(given.Files), Lines(after));
        var kinds = lines.Except(changed).Concat(changed.Except(lines)).Select(line => line.Split(' ')[0]).Distinct().ToList();
        Assert.True(
            kinds.Count <= 1 || (repair.Kind == "GoOn" && kinds.TrueForAll(kind => kind is "chain" or "copy" or "CopyJoint")) // copies go with their chain
                || repair.Kind is "AppendText" or "ReplaceText", // a new name shows wherever its node does
            $"{repair.Title} changes more than it says:{Environment.NewLine}{string.Join(Environment.NewLine, lines.Except(changed).Concat(changed.Except(lines)))}");
    }

    private static HashSet<string> Problems((string Path, string Source)[] files) => [.. CompiledCode.Compile(files).GetDiagnostics().Where(problem => problem.Severity >= DiagnosticSeverity.Warning).Select(problem => problem.Id)];

    private static IEnumerable<string> Comments((string Path, string Source)[] files) =>
        files.SelectMany(file => CSharpSyntaxTree.ParseText(file.Source).GetRoot().DescendantTrivia()).Where(trivia => !string.IsNullOrWhiteSpace(trivia.ToString())).Select(trivia => trivia.ToString());

    private static string Edited(string path, string source, PlannedRepair repair) =>
        SourceText.From(source).WithChanges(repair.Edits.Where(edit => edit.Path == path).OrderBy(edit => edit.Span.Start).Select(edit => new TextChange(edit.Span, edit.Text))).ToString();

    private static List<string> Lines((string Path, string Source)[] files)
    {
        var compilation = CompiledCode.Compile(files);
        var definition = compilation.GetSymbolsWithName(_ => true, SymbolFilter.Type).OfType<INamedTypeSymbol>().Single(type => !type.IsAbstract && type.AllInterfaces.Any(face => face.Name == nameof(IRigDefinition)));
        return [.. Oracle.Read(compilation, definition.ToDisplayString()).Paths.SelectMany(path => Oracle.Lines(path, compilation)).Select(line => Number().Replace(line, "#"))];
    }

    // What comes after something that is left out has another number.
    [GeneratedRegex(@"#\d+")]
    private static partial Regex Number();
}
