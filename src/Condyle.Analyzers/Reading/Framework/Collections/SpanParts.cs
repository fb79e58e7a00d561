namespace Condyle.Analyzers.Reading;

/// <summary>What cuts the characters of a span into parts: lines, and what lies between separators.</summary>
internal static class SpanParts
{
    private const string Extensions = "System.MemoryExtensions";
    private const string EndsOfLine = "\n\r\f\u0085\u2028\u2029";

    public static void Register()
    {
        FrameworkTable.Add(Extensions, "EnumerateLines", call => Arrays.Of(Parts(call, EndOfLineAt).Select(part => PartOf.Take(call[0], part))));
        foreach (var (name, isAny) in new[] { ("Split", false), ("SplitAny", true) })
        {
            FrameworkTable.Add(Extensions, name, call => call.Parameter(1) is { PlainName: "Span" }
                ? Fill(call, isAny)
                : Arrays.Of(Parts(call, SeparatorsOf(call, 1, isAny))));
        }
    }

    private static int EndOfLineAt(string text, int at) =>
        text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : EndsOfLine.IndexOf(text[at]) >= 0 ? 1 : 0;

    // As many parts as there are places for; the last one is all that is left.
    private static int Fill(Invocation call, bool isAny)
    {
        var target = call[1] as IStretch ?? throw call.Unknown();
        var options = call.Count > 3 ? call[3] is EnumValue { Number: int chosen } ? chosen : throw call.Unknown() : 0;
        var parts = Parts(call, SeparatorsOf(call, 2, isAny), target.Length, options);
        for (var i = 0; i < parts.Count; i++)
            call.Machine.Write(target.Items, target.Start + i, parts[i]);
        return parts.Count;
    }

    private static Func<string, int, int> SeparatorsOf(Invocation call, int index, bool isAny)
    {
        var given = call[index];
        if (isAny && given is TextValue text)
            given = Arrays.Of(text.TryKnown(out var characters) ? characters.Select(character => (object?)character) : throw call.Unknown());
        return StringSplits.SeparatorsOf(given, noneIsSpace: isAny && call.Parameter(1) is { PlainName: "Span" }) ?? throw call.Unknown();
    }

    private static List<object?> Parts(Invocation call, Func<string, int, int> separatorAt, int most = int.MaxValue, int options = 0) =>
        [.. StringSplits.Parts(call.Text(0), separatorAt, most, options).Select(part => new RangeValue(new IndexValue(part.Start, FromEnd: false), new IndexValue(part.End, FromEnd: false)))];
}
