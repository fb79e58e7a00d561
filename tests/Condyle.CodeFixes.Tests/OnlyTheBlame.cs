using System.Text.RegularExpressions;
using Condyle.Analyzers.Reading;
using Condyle.Analyzers.Tests.Reading;
using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;
using Condyle.Tests.Shared;
using Microsoft.CodeAnalysis;

namespace Condyle.CodeFixes.Tests;

/// <summary>Reads the rigs of code before and after its repair: what the findings blamed is different as the rule wants it, and every other fact is the same.</summary>
internal static class OnlyTheBlame
{
    public static void Changed((string Path, string Source)[] before, (string Path, string Source)[] after)
    {
        var earlier = CompiledCode.Compile(before);
        var later = CompiledCode.Compile(after);
        Assert.DoesNotContain(later.GetDiagnostics(), problem => problem.Severity == DiagnosticSeverity.Error);
        var definitions = Definitions(earlier);
        Assert.NotEmpty(definitions);
        foreach (var definition in definitions)
        {
            var pairs = Oracle.Read(earlier, definition).Paths.Zip(Oracle.Read(later, definition).Paths).ToList();
            Assert.NotEmpty(pairs);
            foreach (var (read, again) in pairs)
                OneWay(read, Oracle.Lines(read, earlier), again, Oracle.Lines(again, later));
        }
    }

    private static void OneWay(ReadPath before, IReadOnlyList<string> lines, ReadPath after, IReadOnlyList<string> newLines)
    {
        var repaired = before.Findings.Where(finding => !after.Findings.Any(left => left.Rule == finding.Rule && left.Subject!.Id == finding.Subject!.Id)).ToList();
        var expected = lines;
        foreach (var finding in repaired)
            expected = [.. expected.Select(line => Repaired(finding, line))];
        var weighted = repaired.Where(finding => finding.Subject is RigBlend).Select(finding => finding.Subject!.Id).ToHashSet();
        Assert.Equal(expected.Where(IsKept), newLines.Where(IsKept));
        foreach (var blend in weighted)
            OneWeight(before.Model.Blends.Single(found => found.Id == blend), after.Model.Blends.Single(found => found.Id == blend));

        bool IsKept(string line) => !weighted.Any(blend => line.StartsWith($"blend #{blend} ", StringComparison.Ordinal));
    }

    private static string Repaired(Finding finding, string line) => finding.Subject switch
    {
        RigNode { Kind: NodeKind.Group } group => Regex.Replace(line, $"{Regex.Escape($"#{group.Id} {group.Name}")}(?=[ ,]|$)", match => match.Value + Conventions.Default.GroupSuffix),
        RigDrive drive when line.StartsWith($"drive #{drive.Id} ", StringComparison.Ordinal) => line.Replace(" by Matrix ", " by Channels ", StringComparison.Ordinal),
        _ => line,
    };

    private static void OneWeight(RigBlend before, RigBlend after)
    {
        Assert.Equal(before.Sources.Select(source => (source.Event, source.Title)), after.Sources.Select(source => (source.Event, source.Title)));
        var changed = before.Sources.Zip(after.Sources).Where(pair => pair.First.Weight.ToString() != pair.Second.Weight.ToString());
        Assert.Single(changed);
    }

    private static List<string> Definitions(Compilation compilation) =>
    [
        .. compilation.SyntaxTrees
            .SelectMany(tree => tree.GetRoot().DescendantNodes().OfType<Microsoft.CodeAnalysis.CSharp.Syntax.ClassDeclarationSyntax>())
            .Where(type => type.BaseList?.ToString().Contains(nameof(IRigDefinition), StringComparison.Ordinal) == true)
            .Select(type => type.Identifier.ValueText),
    ];
}
