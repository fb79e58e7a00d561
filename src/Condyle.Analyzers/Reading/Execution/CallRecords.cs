namespace Condyle.Analyzers.Reading;

/// <summary>Which call said which event, with which arguments: what fixes are worked out from.</summary>
internal sealed class CallRecords
{
    private readonly Dictionary<int, CallRecord> byEvent = [];

    /// <summary>Literals whose text the code looked at: changing them might change which way it goes.</summary>
    public HashSet<Origin> Observed { get; } = [];

    public IEnumerable<KeyValuePair<int, CallRecord>> All => byEvent;

    public CallRecord? Find(int said) => byEvent.TryGetValue(said, out var call) ? call : null;

    public void Add(int firstEvent, int lastEvent, CallRecord call)
    {
        for (var said = firstEvent; said < lastEvent; said++)
            byEvent[said] = call;
    }

    /// <summary>Forgets the calls that said what is cut off the log: the events from one on up to its end.</summary>
    public void Cut(int first, int end)
    {
        for (var said = first; said < end; said++)
            byEvent.Remove(said);
    }

    public void Observe(object? value)
    {
        if (value is TextValue text)
            Observed.UnionWith(text.Origins);
    }
}

/// <summary>A call into Condyle as it was made.</summary>
internal sealed record CallRecord(CondyleCall Call, string Path, IReadOnlyList<object?> Arguments);
