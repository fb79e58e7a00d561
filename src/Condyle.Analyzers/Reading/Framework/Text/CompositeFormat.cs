using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary>The patterns of <c>string.Format</c> and <c>AppendFormat</c>: <c>{index,width:format}</c>, doubled braces for themselves.</summary>
internal static class CompositeFormat
{
    public static object Call(Invocation call) => Text(call, 0) ?? TextValue.Open;

    /// <summary>The text that a pattern gives, with the arguments from one on: a culture perhaps, the pattern, what fills it; none where it isn't known.</summary>
    public static TextValue? Text(Invocation call, int first)
    {
        // What formats in a way of its own may write anything.
        var hasProvider = call.Parameter(first - (call.Method.IsStatic ? 0 : 1))?.PlainName == "IFormatProvider";
        if (hasProvider && call[first] is ObjectValue)
            return null;
        var isInvariant = hasProvider && call[first] == OtherCalls.InvariantCulture;
        var at = hasProvider ? first + 1 : first;
        var values = call.Count == at + 2 && call[at + 1] is IStretch several ? several.Now() : [.. call.Arguments.Skip(at + 1)];
        return call[at] switch
        {
            null => throw new ThrownByCode("System.ArgumentNullException", "The pattern of a text is null."),
            TextValue pattern when pattern.TryKnown(out var known) => Fill(call.Machine, pattern, known, values, isInvariant),
            _ => null,
        };
    }

    private static TextValue Fill(Machine machine, TextValue origin, string pattern, IReadOnlyList<object?> values, bool isInvariant)
    {
        var parts = new List<TextValue>();
        var at = 0;
        while (at < pattern.Length)
        {
            machine.Budget.Spend();
            var brace = pattern.IndexOfAny(['{', '}'], at);
            if (brace < 0)
            {
                Literal(pattern.Substring(at));
                break;
            }

            Literal(pattern.Substring(at, brace - at));
            if (brace + 1 < pattern.Length && pattern[brace + 1] == pattern[brace])
            {
                Literal(pattern[brace].ToString());
                at = brace + 2;
                continue;
            }

            var close = pattern[brace] == '{' ? pattern.IndexOf('}', brace) : -1;
            if (close < 0)
                throw Refused();
            var (index, hole) = Parse(pattern.Substring(brace + 1, close - brace - 1));
            if (index >= values.Count)
                throw Refused();
            parts.Add(hole.Fill(values[index], machine, isInvariant));
            at = close + 1;
        }

        return TextValue.Join(parts, null);

        void Literal(string text) => parts.Add(new TextValue(text, [], origin.Origins));
    }

    private static (int Index, Hole Hole) Parse(string hole)
    {
        var colon = hole.IndexOf(':');
        var format = colon < 0 ? null : hole.Substring(colon + 1);
        if (format?.Contains('{') == true)
            throw Refused();
        var place = (colon < 0 ? hole : hole.Substring(0, colon)).Split(',');
        if (place.Length > 2 || !Number(place[0].TrimEnd(' '), NumberStyles.None, out var index))
            throw Refused();
        var width = 0;
        if (place.Length == 2 && !Number(place[1].Trim(' '), NumberStyles.AllowLeadingSign, out width))
            throw Refused();
        return (index, new Hole(string.IsNullOrEmpty(format) ? null : format, width));
    }

    private static bool Number(string text, NumberStyles style, out int number) => int.TryParse(text, style, CultureInfo.InvariantCulture, out number) && (text.Length == 0 || text[0] != '+');

    private static ThrownByCode Refused() => new("System.FormatException", "The pattern of a text isn't well formed.");
}
