using System.Text.RegularExpressions;
using Condyle.Model;

namespace Condyle.Analyzers.Tests.Unseen;

/// <summary>How much of what a program's rig has the reader found: fact by fact, where silence counts as a miss.</summary>
/// <param name="Known">The facts that were found.</param>
/// <param name="All">The facts that there are.</param>
/// <param name="Wrong">What was found otherwise than it is: none may be.</param>
internal sealed record KnownShare(int Known, int All, IReadOnlyList<string> Wrong)
{
    private static readonly Regex Numbers = new(@"#\d+ ?", RegexOptions.CultureInvariant);

    public static KnownShare Of(IEnumerable<ModelElement> ran, IEnumerable<ModelElement> read)
    {
        var expected = ran.Where(element => element.Kind != "gap").ToList();
        var found = read.Where(element => element.Kind is not "gap").ToList();
        var doubtful = new HashSet<string>(found.Where(IsDoubtful).Select(element => $"#{element.Id}"));
        var wrong = new List<string>();
        var known = 0;
        foreach (var element in expected)
        {
            // An element is found again by its name; where that is open by what fits it, the first one in its turn.
            var match = found.Find(candidate => candidate.Kind == element.Kind && Same(candidate.Facts[0], element.Facts[0]))
                ?? found.Find(candidate => IsOpen(candidate.Facts[0]) && Fits(candidate, element));
            if (match is null)
                continue;
            found.Remove(match);
            for (var i = 0; i < element.Facts.Count; i++)
            {
                var fact = i < match.Facts.Count ? match.Facts[i] : Text.Hole;
                if (Same(fact, element.Facts[i]))
                    known++;
                else if (!IsOpen(fact) && !IsDoubtful(match) && (match.Facts.Count == element.Facts.Count || !match.Facts.Any(IsOpen)))
                    wrong.Add($"{element.Kind} {element.Facts[0]}: '{fact}' for '{element.Facts[i]}'");
            }
        }

        wrong.AddRange(found.Where(extra => !IsDoubtful(extra) && !IsAbout(extra, doubtful) && !expected.Exists(element => Fits(extra, element))).Select(extra => $"{extra.Kind} {string.Join(" | ", extra.Facts)} isn't there"));
        return new KnownShare(known, expected.Sum(element => element.Facts.Count), wrong);
    }

    public static KnownShare operator +(KnownShare a, KnownShare b) => new(a.Known + b.Known, a.All + b.All, [.. a.Wrong, .. b.Wrong]);

    // What was said on a way that may not be gone, or of something unknown, is no claim.
    private static bool IsDoubtful(ModelElement element) => element.Facts.Any(fact => fact == "unknown" || (fact.StartsWith("scope ", StringComparison.Ordinal) && fact != "scope 0"));

    private static bool IsAbout(ModelElement element, HashSet<string> doubtful) => Numbers.Matches(element.Facts[0]).Any(number => doubtful.Contains(number.Value.Trim()));

    private static bool IsOpen(string fact) => fact.Contains(Text.Hole, StringComparison.Ordinal);

    private static bool Same(string a, string b) => ModelText.AreEqual(Numbers.Replace(a, ""), Numbers.Replace(b, ""));

    private static bool Fits(ModelElement read, ModelElement run) => read.Kind == run.Kind
        && read.Facts.Zip(run.Facts, (fact, known) => Same(fact, known) || (IsOpen(fact) && Fits(fact, known))).All(fits => fits);

    private static bool Fits(string open, string known) =>
        Regex.IsMatch(Numbers.Replace(known, ""), "^" + string.Join(".*", Numbers.Replace(open, "").Split(Text.Hole).Select(Regex.Escape)) + "$", RegexOptions.CultureInvariant | RegexOptions.Singleline);
}
