using System.Globalization;
using System.Net;
using System.Text;

namespace Condyle.Host.Sheets;

/// <summary>A rig as a picture: the tree on the left, and on the right an arc from each source to what it moves, coloured by how it does.</summary>
internal static class SheetPicture
{
    private const int Row = 17, Indent = 14, Left = 16, Top = 64, LetterWidth = 7, SmallLetterWidth = 5, LongestMover = 48;

    private static readonly (string Starts, string Colour, string Says)[] Ways =
    [
        ("by channels", "#2f7f86", "by channels"),
        ("by matrix", "#a2455f", "by matrix"),
        ("blend", "#b0671c", "blend, space"),
        ("space", "#b0671c", ""),
        ("response", "#7a7d1f", "response"),
        ("shown by", "#8a979e", "label"),
        ("", "#5560b5", "solver, aim, twist, falloff"),
    ];

    public static string Of(RigSheet sheet)
    {
        var depths = SheetText.Depths(sheet);
        var rows = sheet.Nodes.Index().ToDictionary(node => node.Item.Name, node => node.Index, StringComparer.Ordinal);
        var movers = sheet.Relations.ToLookup(relation => relation.Of, StringComparer.Ordinal);
        var arcsFrom = Left + sheet.Nodes.Select(node => (depths[node.Name] * Indent) + (Label(node).Length * LetterWidth) + movers[node.Name].Take(1).Sum(mover => Mover(mover).Length * SmallLetterWidth)).DefaultIfEmpty(0).Max() + 40;
        List<(int From, int To, SheetRelation Relation, SheetSource Source)> arcs = [.. sheet.Relations
            .Where(relation => rows.ContainsKey(relation.Of))
            .SelectMany(relation => relation.Sources.Where(source => RowOf(source, rows) is not null).Select(source => (RowOf(source, rows)!.Value, rows[relation.Of], relation, source)))];
        var (width, height) = (Math.Max(arcsFrom + 40 + Bulge(sheet.Nodes.Count), LegendWidth), Top + (Row * sheet.Nodes.Count) + 16);

        var svg = new StringBuilder(Say($"<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}\" height=\"{height}\" viewBox=\"0 0 {width} {height}\" font-family=\"system-ui, sans-serif\" font-size=\"12\">\n"));
        svg.Append(Say($"<rect width=\"{width}\" height=\"{height}\" fill=\"#fbfcfc\"/>\n<text x=\"{Left}\" y=\"24\" font-size=\"17\" font-weight=\"600\" fill=\"#1d2b33\">{Escaped(sheet.Rig)}</text>\n"));
        Legend(svg);
        foreach (var (index, node) in sheet.Nodes.Index())
        {
            if (movers[node.Name].FirstOrDefault() is { } mover)
                svg.Append(Say($"<text x=\"{arcsFrom - 10}\" y=\"{Middle(index) + 4}\" text-anchor=\"end\" font-size=\"10\" fill=\"#8a979e\">{Escaped(Mover(mover))}</text>"));
            Node(svg, node, index, depths[node.Name], node.Under is { } under && rows.TryGetValue(under, out var above) ? above : null);
        }

        foreach (var (from, to, relation, source) in arcs)
            Arc(svg, arcsFrom, from, to, relation, source);
        return svg.Append("</svg>\n").ToString();
    }

    private static IEnumerable<(string Starts, string Colour, string Says)> Explained => Ways.Where(way => way.Says.Length > 0);

    private static int LegendWidth => Left + Explained.Sum(way => WidthOf(way.Says));

    private static int WidthOf(string explained) => 44 + (explained.Length * LetterWidth);

    private static void Legend(StringBuilder svg)
    {
        var x = Left;
        foreach (var (_, colour, says) in Explained)
        {
            svg.Append(Say($"<line x1=\"{x}\" x2=\"{x + 20}\" y1=\"42\" y2=\"42\" stroke=\"{colour}\" stroke-width=\"2\"/><text x=\"{x + 26}\" y=\"46\" fill=\"#5f7480\">{says}</text>\n"));
            x += WidthOf(says);
        }
    }

    private static void Node(StringBuilder svg, SheetNode node, int row, int depth, int? above)
    {
        var (x, y) = (Left + (depth * Indent), Middle(row));
        if (above is { } parent)
            svg.Append(Say($"<path d=\"M{x - Indent + 3} {Middle(parent) + 6}V{y}H{x - 3}\" fill=\"none\" stroke=\"#c9d3d8\"/>"));
        var (weight, colour) = node.Kind switch { "joint" => (600, "#1d2b33"), "control" => (400, "#14607a"), _ => (400, "#7b8a92") };
        svg.Append(Say($"<text x=\"{x}\" y=\"{y + 4}\" font-weight=\"{weight}\" fill=\"{colour}\">{Escaped(Label(node))}</text>\n"));
    }

    private static void Arc(StringBuilder svg, int x, int from, int to, SheetRelation relation, SheetSource source)
    {
        var colour = Ways.First(way => relation.How.StartsWith(way.Starts, StringComparison.Ordinal)).Colour;
        var aside = x + Bulge(Math.Abs(from - to));
        svg.Append(Say($"<path d=\"M{x} {Middle(from)}C{aside} {Middle(from)} {aside} {Middle(to)} {x + 5} {Middle(to)}\" fill=\"none\" stroke=\"{colour}\" stroke-opacity=\"0.65\"><title>{Escaped($"{relation.Of} <- {relation.How}: {source}")}</title></path>"));
        svg.Append(Say($"<path d=\"M{x} {Middle(to)}l6 -3v6z\" fill=\"{colour}\"/>\n"));
    }

    private static string Mover(SheetRelation relation) =>
        string.Join(", ", relation.Sources.Select(source => source.Name)) is var names && names.Length > LongestMover ? names[..LongestMover] + "…" : names;

    private static string Label(SheetNode node) => node.Name + node.Kind switch { "joint" => "", "label" => $" · {string.Join(", ", SheetText.Has(node))}", _ => $" · {node.Kind}" } + (node.Limits.Count > 0 ? $" · {SheetText.Limits(node)}" : "");

    private static int? RowOf(SheetSource source, Dictionary<string, int> rows) =>
        rows.TryGetValue(source.Name, out var row) || (source.Name.LastIndexOf('.') is var dot && dot > 0 && rows.TryGetValue(source.Name[..dot], out row)) ? row : null;

    private static int Bulge(int rows) => 24 + (int)(26 * Math.Sqrt(rows));

    private static int Middle(int row) => Top + (row * Row) + (Row / 2);

    /// <summary>No document can hold the characters that aren't shown, escaped or not.</summary>
    private static string Escaped(string text) => WebUtility.HtmlEncode(string.Concat(text.Select(character => char.IsControl(character) ? '\uFFFD' : character)));

    private static string Say(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
