using System.Globalization;
using Condyle.Model;
using Microsoft.CodeAnalysis;
using Xunit.Abstractions;

namespace Condyle.Analyzers.Tests.Broken;

/// <summary>
/// Clean rigs are broken mechanically, one slip at a time. Where the broken rig is what a rule's page describes and the whole one wasn't, that rule speaks;
/// and where a rule speaks, the rig is what its page describes. CONDYLE_BREAKAGES=20000 breaks more of them.
/// </summary>
public class BrokenRigTests(ITestOutputHelper output)
{
    private static readonly int Breakages = int.TryParse(Environment.GetEnvironmentVariable("CONDYLE_BREAKAGES"), CultureInfo.InvariantCulture, out var many) ? many : 40;

    private static readonly int Seed = int.TryParse(Environment.GetEnvironmentVariable("CONDYLE_SEED"), CultureInfo.InvariantCulture, out var seed) ? seed : 7;

    /// <summary>So much of what is broken is told, at least.</summary>
    private const double LeastRecall = 0.95;

    [Fact]
    public void What_breaks_is_told_and_nothing_else()
    {
        var random = new Random(Seed);
        var tallies = Description.All.ToDictionary(description => description.Rule, _ => new Tally());
        var others = new Dictionary<string, int>();
        var doubles = new SortedDictionary<string, List<string>>(StringComparer.Ordinal);
        var (broken, harmless, failing) = (0, 0, 0);
        while (broken + harmless + failing < Breakages)
        {
            if (CleanRig.All[random.Next(CleanRig.All.Count)].Value is not { } rig || Broken(rig, random) is not var (after, what))
                continue;
            var findings = after.Findings();
            if (after.Model is not { } model)
            {
                failing++; // it fails when it runs, or can't be read whole any more
                continue;
            }

            if (findings.Select(finding => finding.Id).Distinct().Order(StringComparer.Ordinal).ToList() is { Count: > 1 } together)
                Noted(doubles, string.Join(" and ", together)).Add(what + string.Concat(findings.Select(finding => $"{Environment.NewLine}        {finding.Id} {finding.GetMessage(CultureInfo.InvariantCulture)}")));

            var fault = Description.Fault(model); // then much can't be said in numbers
            var spoke = false;
            foreach (var description in Description.All)
            {
                var (before, now) = (description.In(rig.Model!).ToList(), description.In(model).ToList());
                var told = findings.Where(finding => finding.Id == description.Rule && IsAbout(finding, model)).ToList();
                var news = now.Count > before.Count ? now.FindAll(name => !before.Contains(name)) : [];
                spoke |= news.Count > 0 || told.Count > 0;
                var tally = tallies[description.Rule];
                if (told.Count > 0 && now.Count == 0 && fault is null)
                    tally.False.Add($"{what}: {told[0].GetMessage(CultureInfo.InvariantCulture)}");
                if (news.Count > 0 && told.Count > 0)
                    tally.Told++;
                else if (news.Count > 0 && findings.Count > 0)
                    tally.ToldOtherwise.Add($"{what}: {string.Join(", ", news)} [{string.Join(", ", findings.Select(finding => finding.Id).Distinct())}]");
                else if (news.Count > 0)
                    tally.Missed.Add($"{what}: {string.Join(", ", news)}");
            }

            foreach (var other in findings.Where(finding => !tallies.ContainsKey(finding.Id)).Select(finding => finding.Id).Distinct())
                others[other] = others.GetValueOrDefault(other) + 1;
            if (spoke || findings.Count > 0)
                broken++;
            else
                harmless++;
        }

        output.WriteLine($"{Breakages} breakages: {broken} made a slip, {harmless} are none that a rule describes, {failing} fail or can't be read whole");
        foreach (var (rule, tally) in tallies)
            output.WriteLine($"{rule}: told {tally.Told}, told by another rule {tally.ToldOtherwise.Count}, missed {tally.Missed.Count}, false {tally.False.Count}{tally}");
        output.WriteLine("Rules that are described nowhere else spoke: " + string.Join(", ", others.OrderBy(pair => pair.Key).Select(pair => $"{pair.Key} {pair.Value}")));
        foreach (var (rules, whats) in doubles)
            output.WriteLine($"Of one breakage spoke {rules}, {whats.Count} times:{string.Concat(whats.Select(what => Environment.NewLine + "    " + what))}");
        Assert.All(tallies, tally => Assert.True(tally.Value.False.Count == 0, $"{tally.Key} cries wolf{tally.Value}"));
        var (all, missed) = (tallies.Values.Sum(tally => tally.All), tallies.Values.Sum(tally => tally.Missed.Count));
        Assert.True(missed <= (1 - LeastRecall) * all, $"{missed} of {all} slips are missed.");
    }

    private static List<string> Noted(SortedDictionary<string, List<string>> notes, string key) => notes.TryGetValue(key, out var noted) ? noted : notes[key] = [];

    private static (CleanRig After, string What)? Broken(CleanRig rig, Random random)
    {
        var breakage = Breakage.All[random.Next(Breakage.All.Count)];
        var trees = rig.Compilation.SyntaxTrees.Where(tree => tree.FilePath != "Harbour.cs" && !tree.FilePath.EndsWith(".g.cs", StringComparison.Ordinal)).ToList();
        var tree = trees[random.Next(trees.Count)];
        var (root, model) = (tree.GetRoot(), rig.Compilation.GetSemanticModel(tree));
        var places = root.DescendantNodes().Select(node => (Node: node, Instead: breakage.Of(node, model, random))).Where(place => place.Instead is not null).ToList();
        if (places.Count == 0)
            return null;
        var (node, instead) = places[random.Next(places.Count)];
        return rig.With(tree, root.ReplaceNode(node, instead!)) is { } after
            ? (after, $"{rig.Name}({node.GetLocation().GetLineSpan().StartLinePosition.Line + 1}) {breakage.Name}, '{node}' for '{instead}'")
            : null;
    }

    // A helper that nobody calls is read on its own.
    private static bool IsAbout(Diagnostic finding, RigModel model) => finding.GetMessage(CultureInfo.InvariantCulture) is var message
        && model.Nodes.Select(node => node.Name).Concat(model.Switches.Select(sw => sw.Name)).Any(name => message.Contains($"'{name}'", StringComparison.Ordinal));

    private sealed class Tally
    {
        public int Told { get; set; }

        public List<string> ToldOtherwise { get; } = [];

        public List<string> Missed { get; } = [];

        public List<string> False { get; } = [];

        public int All => Told + ToldOtherwise.Count + Missed.Count;

        public override string ToString() => string.Concat(
            ToldOtherwise.Select(what => Environment.NewLine + "    otherwise: " + what).Concat(Missed.Select(what => Environment.NewLine + "    missed: " + what)).Concat(False.Select(what => Environment.NewLine + "    false: " + what)));
    }
}
