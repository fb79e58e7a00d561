using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Turns findings on models into findings on source: one for each slip, with the edits that repair it and nothing else.</summary>
internal static class RepairPlanner
{
    /// <summary>The findings of some readings that lie in a file.</summary>
    /// <param name="results">The readings that may run the file's code.</param>
    /// <param name="tree">The file.</param>
    /// <param name="sawAll">Whether those are all; else text that others may share is left alone.</param>
    public static IReadOnlyList<PlannedFinding> Plan(IReadOnlyList<ReadingResult> results, SyntaxTree tree, bool sawAll)
    {
        var paths = results.SelectMany(result => result.Paths).ToList();
        var uses = new SourceUses(paths);
        var planned = new List<PlannedFinding>();
        var seen = new HashSet<(string, Origin)>();
        foreach (var path in paths)
        {
            foreach (var finding in path.Findings)
            {
                var repairs = finding.Repairs
                    .Select(repair => RepairEdits.Of(repair, path, uses, tree, sawAll))
                    .OfType<PlannedRepair>()
                    .ToList();
                var call = path.Places.Find(finding.Place);
                var place = repairs.Count > 0 ? repairs[0].Blamed : call;
                if (place is not { } at || at.Path != tree.FilePath || !seen.Add((finding.Rule.Id, at)))
                    continue;
                var related = finding.Related.Select(path.Places.Find).Prepend(call).OfType<Origin>().Where(other => !Contains(other, at)).Distinct().ToList();
                planned.Add(new PlannedFinding(finding.Rule, finding.Message, at, related, repairs));
            }
        }

        return planned;
    }

    private static bool Contains(Origin outer, Origin inner) => outer.Path == inner.Path && outer.Span == inner.Span;
}

/// <summary>All calls of some readings by their place in the source, and what the rules want changed at each.</summary>
internal sealed class SourceUses
{
    private readonly Dictionary<(string Path, TextSpan Span), List<(ReadPath Path, int Event)>> byCall = [];
    private readonly Dictionary<(ReadPath, int), List<Repair>> repairs = [];
    private readonly Dictionary<Origin, List<(ReadPath Path, int Event, int Argument)>> byLiteral = [];
    private readonly HashSet<Origin> observed = [];

    public SourceUses(IReadOnlyList<ReadPath> paths)
    {
        foreach (var path in paths)
        {
            observed.UnionWith(path.Calls.Observed);
            foreach (var finding in path.Findings)
            {
                foreach (var repair in finding.Repairs)
                    Add(repairs, (path, repair.Event), repair);
            }

            foreach (var pair in path.Calls.All)
            {
                Add(byCall, (pair.Value.Path, pair.Value.Call.Span), (path, pair.Key));
                for (var i = 0; i < pair.Value.Arguments.Count; i++)
                {
                    if (pair.Value.Arguments[i] is not TextValue text)
                        continue;
                    foreach (var origin in text.Origins)
                        Add(byLiteral, origin, (path, pair.Key, i));
                }
            }
        }
    }

    /// <summary>Whether every time that a call was made wants the same kind of repair.</summary>
    public bool EachCallWants(CallRecord call, Func<Repair, bool> wanted) =>
        byCall[(call.Path, call.Call.Span)].TrueForAll(made =>
            repairs.TryGetValue((made.Path, made.Event), out var all) && all.Exists(repair => wanted(repair)));

    /// <summary>Whether a literal can be appended to: nobody looks at it, and every text that it is part of wants the same at its end.</summary>
    public bool EachUseWants(Seam seam, string suffix) =>
        !observed.Contains(seam.Literal)
        && byLiteral.TryGetValue(seam.Literal, out var uses)
        && uses.TrueForAll(use =>
            repairs.TryGetValue((use.Path, use.Event), out var all)
            && all.Exists(repair => repair is AppendText append && append.Argument == use.Argument && append.Suffix == suffix)
            && use.Path.Calls.Find(use.Event)!.Arguments[use.Argument] is TextValue text
            && text.Seams.Contains(seam));

    private static void Add<TKey, TValue>(Dictionary<TKey, List<TValue>> to, TKey key, TValue value)
        where TKey : notnull
    {
        if (!to.TryGetValue(key, out var list))
            to[key] = list = [];
        list.Add(value);
    }
}
