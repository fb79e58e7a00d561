using System.Globalization;
using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>All that some readings make of the source: their calls by place, their texts by literal, and what the rules want changed at each.</summary>
internal sealed class SourceUses
{
    private readonly Dictionary<(ReadPath, int), List<Repair>> repairs = [];
    private readonly Dictionary<Origin, List<(ReadPath Path, int Event, int Argument)>> byLiteral = [];
    private readonly HashSet<Origin> observed = [];
    private readonly RecipeTexts recipes;
    private readonly Dictionary<(Seam, string, string), bool> wantedByUses = [];
    private readonly Dictionary<(string, TextSpan, object), bool> wantedByCalls = [];
    private readonly Dictionary<(Origin, string?, string, Rule), bool> wantedByRecipes = [];
    private readonly Dictionary<(TextSpan, TextSpan), LoopTable?> tables = [];
    private readonly Dictionary<(string, TextSpan, CallWay), IReadOnlyList<string>> blendsGiven = [];

    public SourceUses(IEnumerable<ReadPath> paths)
    {
        paths = [.. paths];
        recipes = new RecipeTexts(paths);
        foreach (var path in paths)
        {
            observed.UnionWith(path.Calls.Observed);
            foreach (var finding in path.Findings)
            {
                foreach (var repair in finding.Repairs)
                    Add(repairs, (path, repair.Event), repair);
            }

            foreach (var (said, call) in path.Calls.All)
            {
                Times.Add(new(path, said, call));
                for (var i = 0; i < call.Arguments.Count; i++)
                {
                    if (call.Arguments[i] is not TextValue text)
                        continue;
                    foreach (var origin in text.Origins)
                        Add(byLiteral, origin, (path, said, i));
                }
            }
        }
    }

    /// <summary>The times that calls were made.</summary>
    public CallTimes Times { get; } = new();

    /// <summary>Whether every time that a call was made wants the same kind of repair.</summary>
    /// <param name="call">The call.</param>
    /// <param name="kind">What tells the repair from others: each is worked out once.</param>
    /// <param name="wanted">Whether a repair is of that kind.</param>
    public bool EachCallWants(CallRecord call, object kind, Func<ReadPath, Repair, bool> wanted) => Once(wantedByCalls, (call.Path, call.Call.Span, kind), () =>
        Times.Of(call) is { Count: > 0 } all && all.TrueForAll(time => Wants(time, wanted)));

    /// <summary>Whether every time that a call was given a weight by some way wants the same of it, and no two of them are of one blend: of its sources, one is repaired.</summary>
    public bool EachWeightWants(CallRecord call, CallWay way, object kind, Func<Repair, bool> wanted) => Once(wantedByCalls, (call.Path, call.Call.Span, (kind, way)), () =>
        Times.Of(call, way) is { Count: > 0 } all && all.All(time => Wants(time, (_, repair) => wanted(repair)))
        && all.Select(time => (time.Path, time.Path.BlendGiven(time.Event) ?? (object)time.Event)).Distinct().Count() == all.Count);

    /// <summary>The blends that a call gave a weight by some way: for whoever sees nothing but findings, the number of each and where its rig's own code says it.</summary>
    public IReadOnlyList<string> BlendsGiven(CallRecord call, CallWay way) => Once(blendsGiven, (call.Path, call.Call.Span, way), () => (IReadOnlyList<string>)[.. Times.Of(call, way)
        .Select(time => time.Path.BlendGiven(time.Event)?.Id is { } blend && time.Path.Calls.Find(blend) is { } made ? $"{blend.ToString(CultureInfo.InvariantCulture)} of {PlaceOf(made)}" : null).OfType<string>().Distinct()]);

    private static Origin PlaceOf(CallRecord call)
    {
        var place = new Origin(call.Path, call.Call.Span);
        for (var site = call.From; site is not null; site = site.From)
            place = site.At;
        return place;
    }

    /// <summary>The table that code takes a value from for a call: looked for once, however many rows are wrong.</summary>
    public LoopTable? TableOf(TextSpan code, TextSpan said, Func<LoopTable?> find) => Once(tables, (code, said), find);

    private bool Wants(CallTime time, Func<ReadPath, Repair, bool> wanted) => repairs.TryGetValue((time.Path, time.Event), out var its) && its.Exists(repair => wanted(time.Path, repair));

    /// <summary>What a call made last before an event of a path; none where it made nothing yet.</summary>
    public int? LastMade(CallRecord call, ReadPath path, int before)
    {
        var all = Times.Of(call);
        // A copy comes before its joints: what a call made is what it said first.
        return all.FindLast(made => made.Path == path && made.Event < before) is { Call: { } last } ? all.Find(made => made.Path == path && ReferenceEquals(made.Call, last)).Event : null;
    }

    /// <summary>Whether a literal can be appended to: nobody looks at it, and every text that it is part of wants the same at its end.</summary>
    public bool EachUseWants(Seam seam, AppendText wanted) => Once(wantedByUses, (seam, wanted.Suffix, wanted.Instead), () =>
        !observed.Contains(seam.Literal)
        && !recipes.Have(seam.Literal)
        && byLiteral.TryGetValue(seam.Literal, out var uses)
        && uses.TrueForAll(use =>
            repairs.TryGetValue((use.Path, use.Event), out var all)
            && all.Exists(repair => repair is AppendText append && append.Argument == use.Argument && append.Suffix == wanted.Suffix && append.Instead == wanted.Instead)
            && use.Path.Calls.Find(use.Event)!.Arguments[use.Argument] is TextValue text
            && text.Seams.Contains(seam)));

    /// <summary>Whether code asks for a name that a call gives: it may look at it, or name something else after it.</summary>
    public bool AsksForName(CallRecord call) => observed.Contains(call.Verb) || byLiteral.ContainsKey(call.Verb) || recipes.Have(call.Verb);

    /// <summary>Whether a literal is there for recipes alone, and right names of all that they build come of another text in its place.</summary>
    public bool EachRecipeWants(Origin literal, string? from, string to, Rule rule) => Once(wantedByRecipes, (literal, from, to, rule), () =>
        !observed.Contains(literal) && !byLiteral.ContainsKey(literal) && recipes.EachWants(literal, from, to, rule));

    // Files are looked at side by side.
    private static TAnswer Once<TKey, TAnswer>(Dictionary<TKey, TAnswer> known, TKey key, Func<TAnswer> answer)
        where TKey : notnull
    {
        lock (known)
        {
            if (!known.TryGetValue(key, out var value))
                known[key] = value = answer();
            return value;
        }
    }

    private static void Add<TKey, TValue>(Dictionary<TKey, List<TValue>> to, TKey key, TValue value)
        where TKey : notnull
    {
        if (!to.TryGetValue(key, out var list))
            to[key] = list = [];
        list.Add(value);
    }
}
