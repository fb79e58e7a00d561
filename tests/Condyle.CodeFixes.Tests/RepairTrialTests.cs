using System.Collections.Immutable;
using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Tests.Reporting;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CodeActions;
using Microsoft.CodeAnalysis.CodeFixes;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.CodeFixes.Tests;

/// <summary>A fix that takes joints away is offered, alone or for all, where the rigs bear it. Two derricks, of which each takes its twist joint along in its copies.</summary>
public class RepairTrialTests
{
    private const string Repaired = "rig.Chain(shoulder, hook).Without(JointRole.Twist)";

    [Fact]
    public async Task It_is_offered_where_code_does_not_care() => Assert.Equal(2, await Offered("""rig.Group("ropes_group");"""));

    [Fact]
    public async Task It_is_not_offered_where_it_makes_a_rule_speak() => Assert.Equal(0, await Offered("""rig.Group(arms.TrueForAll(arm => arm.Count == 4) ? "ropes_group" : "ropes");"""));

    [Fact]
    public async Task A_rule_that_speaks_already_may_say_the_same() => Assert.Equal(2, await Offered("""rig.Group("ropes");"""));

    [Fact]
    public async Task A_rule_that_speaks_already_may_not_speak_of_another_line() => Assert.Equal(0, await Offered("""
        rig.Group("ropes");
        rig.Group(arms.TrueForAll(arm => arm.Count == 4) ? "lamps_group" : "lamps");
        """));

    [Fact]
    public async Task A_rule_that_speaks_already_may_not_say_more_of_its_line() =>
        Assert.Equal(0, await Offered("""rig.Group("ropes").Under(rig.Group(arms.TrueForAll(arm => arm.Count == 4) ? "lamps_group" : "lamps"));"""));

    [Fact]
    public async Task It_is_not_offered_where_code_that_counts_fails() => Assert.Equal(0, await Offered("""rig.Group($"{new[] { "ropes" }[8 - arms[0].Count - arms[1].Count]}_group");"""));

    [Fact]
    public async Task It_is_not_offered_in_half_typed_code() => Assert.Equal(0, await Offered("rig.Group(\"ropes_group\")", isWhole: false));

    [Theory]
    [InlineData("""rig.Group(arms[1].Count == 4 ? "ropes_group" : "ropes");""")]
    [InlineData("""rig.Group(arms[0].Count + arms[1].Count > 6 ? "ropes_group" : "ropes");""")]
    public async Task All_are_repaired_that_code_bears_together(string code)
    {
        using var workspace = new AdhocWorkspace();
        var document = Refactorings.Offered.Open(workspace, Files(code));
        var asked = new FixAllContext(document, new RepairCodeFixProvider(), FixAllScope.Document, "CDY4003.GoOn", ["CDY4003"], new Findings(), CancellationToken.None);
        var action = await new RepairCodeFixProvider().GetFixAllProvider().GetFixAsync(asked);
        var text = await Refactorings.Offered.TextAfter(action!, "rig.cs");
        Assert.Equal(2, text.Split(Repaired).Length);
        Assert.True(text.IndexOf(Repaired, StringComparison.Ordinal) < text.IndexOf("\"right\"", StringComparison.Ordinal));
    }

    [Fact]
    public async Task The_analyzer_blames_the_chain_whether_or_not_it_is_offered() => Assert.All(
        (await FrontEnds.Read(Files("""rig.Group(arms[1].Count == 4 ? "ropes_group" : "ropes");"""))).Where(finding => finding.Id == "CDY4003"),
        finding =>
        {
            Assert.Equal("Chain(shoulder, hook)", finding.Location.SourceTree!.GetText().ToString(finding.Location.SourceSpan));
            Assert.True(Assert.Single(RepairProperties.Read(finding.Properties)).IsToBeTried);
        });

    private static async Task<int> Offered(string code, bool isWhole = true)
    {
        using var workspace = new AdhocWorkspace();
        var document = Refactorings.Offered.Open(workspace, Files(code), isWhole);
        var offered = new List<CodeAction>();
        foreach (var finding in await Findings.Of(document))
        {
            if (finding.Id == "CDY4003")
                await new RepairCodeFixProvider().RegisterCodeFixesAsync(new CodeFixContext(document, finding, (action, _) => offered.Add(action), CancellationToken.None));
        }

        return offered.Count;
    }

    private static (string Path, string Source)[] Files(string code) => [("rig.cs", $$"""
        using System.Collections.Generic;
        using System.Numerics;
        using Condyle;

        public sealed class Derricks : IRigDefinition
        {
            public void Define(RigDraft rig)
            {
                var foot = rig.Skeleton("derricks").Root("foot");
                var arms = new List<Chain>();
                {{Derrick("left")}}
                {{Derrick("right")}}
                {{code}}
            }
        }
        """)];

    private static string Derrick(string side) => $$"""
                {
                    var shoulder = foot.Child("shoulder_{{side}}", at: new Vector3(0, 3, 0));
                    var elbow = shoulder.Child("shoulder_twist_{{side}}", JointRole.Twist, at: new Vector3(0, 0.02f, 0.5f)).Child("elbow_{{side}}", at: new Vector3(0, 0.08f, 0.5f));
                    var hook = elbow.Child("hook_{{side}}", at: new Vector3(0, -0.1f, 1));
                    var arm = rig.Chain(shoulder, hook);
                    var ik = arm.Copy("ik");
                    rig.ManyBone(ik).Reach(rig.Control("{{side}}").PlacedAt(hook));
                    rig.Blend(arm).From(ik, 1);
                    arms.Add(arm);
                }
        """;

    private sealed class Findings : FixAllContext.DiagnosticProvider
    {
        public static async Task<ImmutableArray<Diagnostic>> Of(Document document) =>
            await (await document.Project.GetCompilationAsync())!.WithAnalyzers([new RigAnalyzer()], new AnalyzerOptions([])).GetAnalyzerDiagnosticsAsync();

        public override async Task<IEnumerable<Diagnostic>> GetAllDiagnosticsAsync(Project project, CancellationToken cancellationToken) => await Of(project.Documents.First());

        public override async Task<IEnumerable<Diagnostic>> GetDocumentDiagnosticsAsync(Document document, CancellationToken cancellationToken) => await Of(document);

        public override Task<IEnumerable<Diagnostic>> GetProjectDiagnosticsAsync(Project project, CancellationToken cancellationToken) => Task.FromResult<IEnumerable<Diagnostic>>([]);
    }
}
