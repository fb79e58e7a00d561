using Condyle.Model;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>What a log says, by what it is said of.</summary>
internal sealed class Sayings
{
    private readonly List<(int Id, Saying Saying)> all = [];
    private readonly ILookup<(int?, string), (int Id, Saying Saying)> byVerb;

    public Sayings(EventLog log)
    {
        Log = log;
        for (var id = 0; id < log.Count; id++)
        {
            if (log[id].SaidIn(log) is { } saying)
                all.Add((id, saying));
        }

        byVerb = all.ToLookup(said => (said.Saying.Of, said.Saying.Verb));
    }

    public EventLog Log { get; }

    /// <summary>The events of a verb that is said of an element, in order.</summary>
    public IReadOnlyList<int> Events(int? of, string verb) => [.. byVerb[(of, verb)].Select(said => said.Id)];

    /// <summary>The event that says a verb of an element last.</summary>
    public int? Event(int? of, string verb) => Events(of, verb) is { Count: > 0 } events ? events[events.Count - 1] : null;

    /// <summary>The element that a verb is given, where it is said last.</summary>
    public int? Element(int? of, string verb) => Event(of, verb) is { } said ? ElementIn(said) : null;

    /// <summary>The sentences of the rig that begin with a verb about an element.</summary>
    public IReadOnlyList<int> About(string verb, int element) => [.. byVerb[(null, verb)].Where(said => ElementIn(said.Id) == element).Select(said => said.Id)];

    public object? Given(int said, int place) => Log[said].SaidIn(Log)?.Given.ElementAtOrDefault(place) is var given && given is Saying.Left left ? left.Value : given;

    private int? ElementIn(int said) => (Log[said].SaidIn(Log)?.Given.FirstOrDefault() as Saying.Element)?.Id;
}
