using Condyle.Analyzers.Reporting;
using Condyle.Analyzers.Skeletons;
using Condyle.Analyzers.Tests.Skeletons;
using Microsoft.CodeAnalysis;

namespace Condyle.Analyzers.Tests.Reporting;

/// <summary>The release files list what the analyzers report: users see there what an upgrade brings.</summary>
public class ReleaseTrackingTests
{
    [Fact]
    public void The_release_files_list_every_rule_with_its_category_severity_and_title() => Assert.Equal(
        RuleDescriptors.All.Append(SkeletonProblem.Rule).Append(SettingsAnalyzer.Rule).OrderBy(rule => rule.Id, StringComparer.Ordinal).Select(Line),
        Listed("AnalyzerReleases.Shipped.md").Concat(Listed("AnalyzerReleases.Unshipped.md")).Order(StringComparer.Ordinal));

    private static string Line(DiagnosticDescriptor rule) => $"{rule.Id} | {rule.Category} | {rule.DefaultSeverity} | {rule.Title}";

    private static IEnumerable<string> Listed(string file) =>
        File.ReadLines(Repository.PathTo("src", "Condyle.Analyzers", file)).Where(line => line.StartsWith("CDY", StringComparison.Ordinal));
}
