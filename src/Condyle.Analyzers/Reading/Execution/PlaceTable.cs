using Condyle.Model;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>The places of a reading: each call that recorded something, by its span in its file.</summary>
internal sealed class PlaceTable
{
    // As a call takes them: made into an object once, since a call in a loop is made often.
    private readonly Dictionary<CondyleCall, object> ids = [];
    private readonly List<(Origin Call, TextSpan Line)> places = [];
    private readonly Dictionary<string, Origin> entries = new(StringComparer.Ordinal);

    /// <summary>The <see cref="PlaceId"/> of a call: what it spans, and where its own parenthesis opens, whose line the program knows.</summary>
    public object Of(CondyleCall call, string path)
    {
        if (!ids.TryGetValue(call, out var id))
        {
            places.Add((new Origin(path, call.Span), call.LineSpan));
            ids[call] = id = new PlaceId(places.Count);
        }

        return id;
    }

    /// <summary>The place of a stretch of source.</summary>
    public PlaceId At(Origin origin)
    {
        places.Add((origin, origin.Span));
        return new PlaceId(places.Count);
    }

    public Origin? Find(PlaceId place) => place.Value > 0 ? places[place.Value - 1].Call : null;

    /// <summary>Where the line is that the running program knows; none where it knows none.</summary>
    public Origin? LineOf(PlaceId place) => place.Value > 0 && places[place.Value - 1].Line != default ? new Origin(places[place.Value - 1].Call.Path, places[place.Value - 1].Line) : null;

    /// <summary>Notes where the code of a file was called from another one.</summary>
    public void Enter(string path, Origin from)
    {
        if (from.Path.Length > 0 && !entries.ContainsKey(path))
            entries.Add(path, from);
    }

    /// <summary>The first call by which the code of a file was reached from another one.</summary>
    public Origin? EntryTo(string path) => entries.TryGetValue(path, out var entry) ? entry : null;
}
