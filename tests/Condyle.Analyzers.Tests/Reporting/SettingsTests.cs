using Condyle.Analyzers.Reporting;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Diagnostics;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>What a team has a say in: acceptance in the code, its conventions, pragmas and severities.</summary>
public class SettingsTests
{
    private const string Arm = "var (arm, ik, fk, hand, amount) = Stage.Arm(rig, Side.Left);\n";

    [Fact]
    public Task What_the_code_accepts_is_not_flagged() => RigSnippet.Finds(Arm + """
        rig.Group("crates").Accept("CDY1001", because: "The loader looks for this name.");
        rig.Blend(arm).From(ik, amount).From(fk, amount).Accept("CDY2001", because: "Both are held back on purpose.");
        rig.Drive(arm.Root).ByMatrix(hand).Accept("CDY3001", because: "Only a preview; nothing of it is exported.");
        """);

    [Fact]
    public Task What_a_driven_joint_or_a_blended_node_accepts_is_not_flagged() => RigSnippet.Finds(Arm + """
        arm.Tip.Accept("CDY3001", because: "Only a preview; nothing of it is exported.");
        rig.Drive(arm.Tip).ByMatrix(hand);
        var hook = rig.Control("hook").Accept("CDY2001", because: "It is let go between the crates.");
        rig.Blend(hook).From(hand, amount);
        """);

    [Fact]
    public Task Another_rule_or_another_element_is_flagged_all_the_same() => RigSnippet.Finds("""
        rig.Group({|CDY1001:"crates"|}).Accept("CDY2001", because: "This is about blends.");
        rig.Group("barrels").Accept("CDY1001", because: "The loader looks for this name.");
        rig.Group({|CDY1001:"ropes"|});
        """);

    [Fact]
    public Task A_turn_of_a_loop_that_is_not_accepted_is_flagged_without_a_repair_that_would_change_the_other() => RigSnippet.Finds("""
        foreach (var side in Side.Both)
        {
            var parts = rig.{|CDY1001:Group($"arm_{side}")|};
            if (side == Side.Left)
                parts.Accept("CDY1001", because: "The loader looks for this name.");
        }
        """);

    [Fact]
    public Task An_acceptance_whose_rule_is_not_known_may_be_meant() => RigSnippet.FindsByReading("""
        rig.Group("crates").Accept(Environment.GetEnvironmentVariable("RULE") ?? "CDY1001", because: "The loader looks for this name.");
        """);

    [Fact]
    public Task The_teams_suffix_is_the_one_that_counts() => RigSnippet.Finds(
        """
        rig.Group("arm_grp");
        rig.Group({|CDY1001:"arm_group"|});
        """,
        more: """[assembly: RigConventions(GroupSuffix = "_grp")]""");

    [Fact]
    public Task An_empty_suffix_means_the_usual_one() => RigSnippet.Finds(
        """
        rig.Group({|CDY1001:"arm_grp"|});
        rig.Group("arm_group");
        """,
        more: """[assembly: RigConventions(GroupSuffix = "")]""");

    [Fact]
    public async Task A_pragma_silences_the_lines_that_it_covers()
    {
        var finding = Assert.Single(await FrontEnds.Read(new RigSnippet("""
            #pragma warning disable CDY1001
            rig.Group("arm");
            #pragma warning restore CDY1001
            rig.Group("leg");
            """).PlainFiles));
        Assert.StartsWith("Group 'leg' ", finding.GetMessage(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("none", null)]
    [InlineData("suggestion", DiagnosticSeverity.Info)]
    [InlineData("error", DiagnosticSeverity.Error)]
    public async Task An_editorconfig_sets_the_severity(string severity, DiagnosticSeverity? expected)
    {
        var settings = $"root = true\n[*.cs]\ndotnet_diagnostic.CDY1001.severity = {severity}\n";
        var compilation = CompiledCode.Compile(new RigSnippet("rig.Group(\"arm\");").PlainFiles);
        var configured = compilation.WithOptions(compilation.Options.WithSyntaxTreeOptionsProvider(new Configured(settings)));
        var findings = await configured.WithAnalyzers([new RigAnalyzer()]).GetAnalyzerDiagnosticsAsync();
        Assert.Equal(expected, findings.SingleOrDefault()?.Severity);
    }

    /// <summary>An <c>.editorconfig</c> at the root, as compilers read it.</summary>
    private sealed class Configured(string settings) : SyntaxTreeOptionsProvider
    {
        private readonly AnalyzerConfigSet set = AnalyzerConfigSet.Create(new List<AnalyzerConfig> { AnalyzerConfig.Parse(settings, "/.editorconfig") });

        public override GeneratedKind IsGenerated(SyntaxTree tree, CancellationToken cancellationToken) => GeneratedKind.Unknown;

        public override bool TryGetDiagnosticValue(SyntaxTree tree, string diagnosticId, CancellationToken cancellationToken, out ReportDiagnostic severity) =>
            set.GetOptionsForSourcePath(tree.FilePath).TreeOptions.TryGetValue(diagnosticId, out severity);

        public override bool TryGetGlobalDiagnosticValue(string diagnosticId, CancellationToken cancellationToken, out ReportDiagnostic severity) =>
            set.GlobalConfigOptions.TreeOptions.TryGetValue(diagnosticId, out severity);
    }
}
