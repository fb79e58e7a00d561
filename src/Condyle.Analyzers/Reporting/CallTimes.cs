using Condyle.Analyzers.Reading;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>All times that the calls of some readings were made, by the ways that led to them.</summary>
internal sealed class CallTimes
{
    private readonly Dictionary<(string Path, TextSpan Span), List<CallTime>> byCall = [];
    private readonly Dictionary<(string Path, TextSpan Span, CallWay Kind), Told> byKind = [];

    public void Add(CallTime time)
    {
        var call = (time.Call.Path, time.Call.Call.Span);
        if (!byCall.TryGetValue(call, out var times))
            byCall[call] = times = [];
        times.Add(time);
    }

    /// <summary>All times that a call was made, in the order of each path.</summary>
    public List<CallTime> Of(CallRecord call) => byCall.TryGetValue((call.Path, call.Call.Span), out var times) ? times : [];

    /// <summary>The times that a call was made by a way.</summary>
    public IReadOnlyCollection<CallTime> Of(CallRecord call, CallWay way) => way == CallWay.Any ? Of(call) : [.. Tell(call, way.Kind).Times[way]];

    /// <summary>By which way of a kind a call was made; none where that isn't known.</summary>
    public CallWay? WayOf(CallTime time, CallWay kind) => Tell(time.Call, kind).Ways.TryGetValue(time, out var way) ? way : null;

    // Files are looked at side by side.
    private Told Tell(CallRecord call, CallWay kind)
    {
        lock (byKind)
        {
            var key = (call.Path, call.Call.Span, kind);
            if (!byKind.TryGetValue(key, out var told))
                byKind[key] = told = Tell(Of(call), kind);
            return told;
        }
    }

    // The turns of a loop are counted for each time that its function runs: each turn makes the call, so that the rows come round again and again.
    private static Told Tell(List<CallTime> times, CallWay kind)
    {
        var counts = new Dictionary<(ReadPath, Route?, CallSite?), int>();
        var ways = new Dictionary<CallTime, CallWay>();
        foreach (var time in times)
        {
            if (kind.Of(time.Call, (route, site) => Count((time.Path, route, site))) is { } way)
                ways.Add(time, way);
        }

        if (kind.Turns > 0 && counts.Values.Any(count => count % kind.Turns != 0))
            ways.Clear();
        return new(ways, ways.ToLookup(each => each.Value, each => each.Key));

        int Count((ReadPath, Route?, CallSite?) run)
        {
            counts.TryGetValue(run, out var count);
            counts[run] = count + 1;
            return count;
        }
    }

    private sealed record Told(Dictionary<CallTime, CallWay> Ways, ILookup<CallWay, CallTime> Times);
}

/// <summary>A time that a call was made, and the event that it said.</summary>
internal readonly record struct CallTime(ReadPath Path, int Event, CallRecord Call);
