using System.Runtime.CompilerServices;
using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>Which call said which event, with which arguments: what fixes are worked out from.</summary>
internal sealed class CallRecords
{
    private readonly List<CallRecord?> byEvent = [];
    private readonly List<RecipeRecord> recipes = [];

    // Options are told apart by themselves: others may say the same.
    private readonly ConditionalWeakTable<object, Dictionary<string, object?>> givenTo = new();

    // Each object is gone into once: a long chain of records is looked at link by link.
    private readonly ConditionalWeakTable<object, object> lookedInto = new();

    /// <summary>The calls of recipes, in the order in which they were made.</summary>
    public IReadOnlyList<RecipeRecord> Recipes => recipes;

    /// <summary>Literals whose text the code looked at: changing them might change which way it goes.</summary>
    public HashSet<Origin> Observed { get; } = [];

    /// <summary>The events that calls said, with those calls.</summary>
    public IEnumerable<(int Event, CallRecord Call)> All
    {
        get
        {
            for (var said = 0; said < byEvent.Count; said++)
            {
                if (byEvent[said] is { } call)
                    yield return (said, call);
            }
        }
    }

    public CallRecord? Find(int said) => said >= 0 && said < byEvent.Count ? byEvent[said] : null;

    public void Add(int firstEvent, int lastEvent, CallRecord call)
    {
        // Events that no call said lie between.
        while (byEvent.Count < lastEvent)
            byEvent.Add(byEvent.Count < firstEvent ? null : call);
        for (var said = firstEvent; said < lastEvent; said++)
            byEvent[said] = call;
    }

    public void Add(RecipeRecord recipe) => recipes.Add(recipe);

    /// <summary>Notes what a setter gives options of a recipe.</summary>
    public void Give(object options, string setter, object? value) => givenTo.GetOrCreateValue(options)[setter] = value;

    /// <summary>Notes that options begin as a copy of others.</summary>
    public void GiveAll(object options, object others)
    {
        if (givenTo.TryGetValue(others, out var given))
            givenTo.GetValue(options, _ => new(given));
    }

    /// <summary>The texts that a recipe is given, itself or in its options.</summary>
    public IEnumerable<TextValue> TextsGivenTo(IEnumerable<object?> arguments) => arguments.SelectMany(argument => argument switch
    {
        TextValue text => [text],
        not (null or IHandle) when givenTo.TryGetValue(argument, out var given) => TextsGivenTo(given.Values),
        _ => [],
    });

    /// <summary>The name of an element as code asks for it: with what it was made of, and the call that gave it.</summary>
    public TextValue NameOf(int named, Text name) => new(name, [], Find(named) is { } giving ? OriginsOf(giving, [giving.Verb]) : RecipeThatSaid(named) is { } recipe ? OriginsOf(recipe.Call, []) : []);

    private IReadOnlyList<Origin> OriginsOf(CallRecord giving, IReadOnlyList<Origin> origins)
    {
        foreach (var text in TextsGivenTo(giving.Arguments))
            origins = TextValue.Union(origins, text.Origins);
        return origins;
    }

    // They follow each other in the log.
    private RecipeRecord? RecipeThatSaid(int said)
    {
        var (low, high) = (0, recipes.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = recipes[middle].Last <= said ? (middle + 1, high) : (low, middle);
        }

        return low < recipes.Count && recipes[low].First <= said ? recipes[low] : null;
    }

    /// <summary>Forgets the calls that said what is cut off the log: the events from one on up to its end.</summary>
    public void Cut(int first, int end)
    {
        for (var said = first; said < Math.Min(end, byEvent.Count); said++)
            byEvent[said] = null;
        recipes.RemoveAll(recipe => recipe.First >= first);
    }

    /// <summary>Notes that the code looks at a value, and so at the texts in it.</summary>
    public void Observe(object? value)
    {
        if (value is TextValue text)
            Observed.UnionWith(text.Origins);
        else if (PartsOf(value) is { Count: > 0 })
            ObserveParts(value!);
    }

    private void ObserveParts(object whole)
    {
        var pending = new Stack<object?>([whole]);
        while (pending.Count > 0)
        {
            var next = pending.Pop();
            if (next is TextValue text)
            {
                Observed.UnionWith(text.Origins);
            }
            else if (PartsOf(next) is { Count: > 0 } parts && IsToBeGoneInto(next!))
            {
                Budget.Current.Spend(parts.Count);
                foreach (var part in parts)
                    pending.Push(part);
            }
        }
    }

    // What is changed where it lies may hold another text the next time.
    private bool IsToBeGoneInto(object whole)
    {
        if (whole is TupleValue { IsObject: false } or ObjectValue { Type.IsStruct: true })
            return true;
        if (lookedInto.TryGetValue(whole, out _))
            return false;
        lookedInto.Add(whole, this);
        return true;
    }

    /// <summary>What is compared where a value is.</summary>
    private IReadOnlyCollection<object?> PartsOf(object? value) => value switch
    {
        null or ValueType or IHandle => [],
        TupleValue tuple => tuple.Items,
        ObjectValue { Type.ComparesByParts: true } parts => parts.Fields,
        _ => givenTo.TryGetValue(value, out var given) ? given.Values : [],
    };
}

/// <summary>A call into Condyle as it was made.</summary>
internal sealed record CallRecord(CondyleCall Call, string Path, IReadOnlyList<object?> Arguments)
{
    /// <summary>The verb that it is made by. A name that it gives goes by it wherever code asks for that.</summary>
    public Origin Verb => new(Path, Call.NameSpan);

    /// <summary>Where the function that made it was called.</summary>
    public CallSite? From { get; init; }
}

/// <summary>A call of a recipe: the events that it said, from the first one up to but without the last one, and what it gave back.</summary>
internal sealed record RecipeRecord(int First, int Last, CallRecord Call, object? Result);
