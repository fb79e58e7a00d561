namespace Condyle.Model;

/// <summary>The append-only record of what rig code said. Cutting its end off is the only way back.</summary>
internal sealed class EventLog
{
    private readonly List<RigEvent> events = [];

    public int Count => events.Count;

    /// <summary>The scope that new events are said in.</summary>
    public int Scope { get; set; }

    public RigEvent this[int id] => events[id];

    public int Add(RigEvent said)
    {
        said.Scope = Scope;
        events.Add(said);
        return events.Count - 1;
    }

    public void CutTo(int count) => events.RemoveRange(count, events.Count - count);
}
