namespace Condyle.Model;

/// <summary>The places of a running program: the file and line that the compiler hands to each call.</summary>
internal sealed class ProgramPlaces
{
    private readonly List<CodeLine> lines = [];
    private readonly Dictionary<CodeLine, int> ids = [];

    public PlaceId Intern(string file, int line)
    {
        var place = new CodeLine(file, line);
        if (!ids.TryGetValue(place, out var id))
        {
            lines.Add(place);
            ids[place] = id = lines.Count;
        }

        return new PlaceId(id);
    }

    public CodeLine? Find(PlaceId place) => place.Value > 0 && place.Value <= lines.Count ? lines[place.Value - 1] : null;
}
