using Condyle.Model;

namespace Condyle.Rules;

/// <summary>Code that ran twice, so that all that it says is there twice. What must have a name of its own tells of it, and that is the slip.</summary>
internal sealed class RepeatedCode
{
    private readonly Dictionary<int, List<int>> firstRuns = [];
    private readonly Dictionary<(int Distance, PlaceId First, PlaceId Second), int> calls = [];

    /// <summary>A recipe says more than one control. A sentence with one in it that stands there twice is two slips, and a program sees lines alone.</summary>
    private const int FewestOfACall = 2;

    public RepeatedCode(IEnumerable<Namesakes> namesakes)
    {
        foreach (var pair in namesakes)
        {
            if (!pair.AreFoundByName)
                continue;
            var distance = pair.Node.Id - pair.Before.Id;
            if (pair.Node.Place != pair.Before.Place)
            {
                var call = (distance, pair.Before.Place, pair.Node.Place);
                calls[call] = calls.TryGetValue(call, out var count) ? count + 1 : 1;
                continue;
            }

            if (!firstRuns.TryGetValue(distance, out var runs))
                firstRuns[distance] = runs = [];
            runs.Add(pair.Before.Id);
        }
    }

    /// <summary>
    /// Whether two elements were made by two runs of code that made namesakes as well: by the same sentence, as far apart as those are and within the same runs; or each
    /// together with some of them, by a recipe that was said twice.
    /// </summary>
    public bool MadeBoth(RigElement first, RigElement second)
    {
        var distance = second.Id - first.Id;
        if (calls.TryGetValue((distance, first.Place, second.Place), out var made) && made >= FewestOfACall)
            return true;
        if (first.Place != second.Place || !firstRuns.TryGetValue(distance, out var runs))
            return false;
        // The nodes lie in the order of their numbers, and a run is shorter than the way from one to the next.
        var at = runs.BinarySearch(first.Id);
        var next = at < 0 ? ~at : at;
        return (next < runs.Count && runs[next] - first.Id < distance) || (next > 0 && first.Id - runs[next - 1] < distance);
    }
}
