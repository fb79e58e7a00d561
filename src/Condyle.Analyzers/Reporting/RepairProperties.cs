using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Repairs as they travel in a diagnostic's properties, from the analyzer to the code fix.</summary>
internal static class RepairProperties
{
    private const char Separator = '\u001F';

    public static ImmutableDictionary<string, string?> Write(IReadOnlyList<PlannedRepair> repairs)
    {
        var properties = ImmutableDictionary.CreateBuilder<string, string?>();
        for (var i = 0; i < repairs.Count; i++)
        {
            properties[Key("kind", i)] = repairs[i].Kind;
            properties[Key("title", i)] = repairs[i].Title;
            var edits = new StringBuilder();
            foreach (var edit in repairs[i].Edits)
            {
                edits.Append(edit.Path).Append(Separator)
                    .Append(edit.Span.Start.ToString(CultureInfo.InvariantCulture)).Append(Separator)
                    .Append(edit.Span.Length.ToString(CultureInfo.InvariantCulture)).Append(Separator)
                    .Append(edit.Text).Append(Separator);
            }

            properties[Key("edits", i)] = edits.ToString();
            if (repairs[i].Blends.Count > 0)
                properties[Key("blends", i)] = string.Join(Separator.ToString(), repairs[i].Blends);
            if (repairs[i].IsToBeTried)
                properties[Key("try", i)] = "";
        }

        return properties.ToImmutable();
    }

    public static IReadOnlyList<PlannedRepair> Read(ImmutableDictionary<string, string?> properties)
    {
        var repairs = new List<PlannedRepair>();
        while (properties.TryGetValue(Key("kind", repairs.Count), out var kind) && kind is not null
            && properties.TryGetValue(Key("title", repairs.Count), out var title) && title is not null
            && properties.TryGetValue(Key("edits", repairs.Count), out var written) && written is not null)
        {
            var fields = written.Split(Separator);
            var edits = new List<TextEdit>();
            for (var i = 0; i + 3 < fields.Length; i += 4)
            {
                var span = new TextSpan(int.Parse(fields[i + 1], CultureInfo.InvariantCulture), int.Parse(fields[i + 2], CultureInfo.InvariantCulture));
                edits.Add(new TextEdit(fields[i], span, fields[i + 3]));
            }

            repairs.Add(new PlannedRepair(kind, title, edits)
            {
                Blends = properties.TryGetValue(Key("blends", repairs.Count), out var blends) && blends is not null ? blends.Split(Separator) : [],
                IsToBeTried = properties.ContainsKey(Key("try", repairs.Count)),
            });
        }

        return repairs;
    }

    private static string Key(string what, int index) => what + index.ToString(CultureInfo.InvariantCulture);
}
