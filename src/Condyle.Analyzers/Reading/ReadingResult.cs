using Condyle.Model;
using Condyle.Naming;
using Condyle.Rules;

namespace Condyle.Analyzers.Reading;

/// <summary>What one path through a definition found: the model, and where its parts came from.</summary>
internal sealed record ReadPath(EventLog Log, RigModel Model, PlaceTable Places, CallRecords Calls)
{
    private readonly Lazy<ILookup<int, RigBlend>> blends = new(() => Model.Blends.SelectMany(blend => blend.Sources.Select(source => (source.Event, blend))).ToLookup(each => each.Event, each => each.blend));

    /// <summary>Whether it stopped before the code was at its end, or there are others that weren't gone: what isn't seen may use the same texts and handles.</summary>
    public bool EndsEarly { get; init; }

    /// <summary>What the rules say of the model, once they were asked.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>The blend that an event gave a source; none where it gave none.</summary>
    public RigBlend? BlendGiven(int said) => blends.Value[said].FirstOrDefault();

    /// <summary>Whether a sentence is said of one of some elements, or is given one.</summary>
    public bool Names(IReadOnlyCollection<int> elements) => elements.Count > 0 && Enumerable.Range(0, Log.Count).Select(said => Log[said].SaidIn(Log)).OfType<Saying>()
        .Any(saying => (saying.Of is { } of && elements.Contains(of)) || saying.Given.Any(given => IsOneOf(elements, given)));

    private static bool IsOneOf(IReadOnlyCollection<int> elements, object? given) => given switch
    {
        Saying.Element element => elements.Contains(element.Id),
        Saying.Set set => set.Joints.Any(elements.Contains),
        Saying.Left left => IsOneOf(elements, left.Value),
        _ => false,
    };
}

/// <summary>What a reading of a definition, or of a helper on its own, found.</summary>
/// <param name="Paths">One for each way through it that unknown values open.</param>
/// <param name="Files">The files whose code it ran.</param>
/// <param name="Methods">The ids of the methods that it ran.</param>
internal sealed record ReadingResult(IReadOnlyList<ReadPath> Paths, IReadOnlyCollection<string> Files, IReadOnlyCollection<string> Methods)
{
    /// <summary>The same, with what the rules say.</summary>
    public ReadingResult Checked(Conventions conventions, CancellationToken cancellation) =>
        this with { Paths = [.. Paths.Select(path => path with { Findings = RuleBook.Check(path.Model, conventions, cancellation) })] };
}
