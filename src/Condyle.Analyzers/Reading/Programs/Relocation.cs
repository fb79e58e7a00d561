using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>Where the places of a file's lowered code are after an edit that left some of its members as they were.</summary>
/// <param name="path">The file.</param>
/// <param name="kept">The members that were left, in order: where each stood, and by how far it has moved.</param>
internal sealed class Relocation(string path, IReadOnlyList<(TextSpan Was, int By)> kept)
{
    private readonly Dictionary<CodeBody, CodeBody> moved = [];
    private bool isLost;

    /// <summary>Whether lowered code holds after the edit, and how: what it was made of was left, and so was every place in it.</summary>
    public bool TryMove(LoweredCode was, out LoweredCode now)
    {
        moved.Clear();
        isLost = was.From is null || was.Body is { NamesItsLine: true };
        now = new LoweredCode(was.Body is null ? null : Of(was.Body), [.. (was.From ?? []).Select(Of)]);
        return !isLost;
    }

    public CodeBody Of(CodeBody body) => isLost ? body : moved.TryGetValue(body, out var known) ? known : body.Moved(this, first: now => moved[body] = now);

    public TextSpan Of(TextSpan span)
    {
        if (span == default || isLost)
            return span;
        var (first, end) = (0, kept.Count);
        while (first < end)
        {
            var middle = (first + end) / 2;
            if (kept[middle].Was.End < span.End)
                first = middle + 1;
            else
                end = middle;
        }

        isLost = first == kept.Count || kept[first].Was.Start > span.Start;
        return isLost ? span : new TextSpan(span.Start + kept[first].By, span.Length);
    }

    public Origin Of(Origin origin) => origin.Path == path ? new Origin(path, Of(origin.Span)) : origin;

    public Seam Of(Seam seam) => new(Of(seam.Expression), Of(new TextSpan(seam.Position, 0)).Start, Of(seam.Literal));
}
