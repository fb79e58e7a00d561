using Condyle.Model;

namespace Condyle.Analyzers.Reading;

/// <summary>What is asked of strings: what they contain, where, and how they compare.</summary>
internal static class StringQuestions
{
    private const string Type = "System.String.";
    private const StringComparison Culture = StringComparison.CurrentCulture;

    public static void Register()
    {
        Pure.Add(Type + "get_Length", (string text) => text.Length);
        foreach (var name in new[] { "get_Chars", "get_Item" })
            Pure.Add(Type + name, (string text, int at) => text[at]);
        Parts();
        Places();
        Order();
        FromParts();
    }

    private static void Parts()
    {
        Pure.Add(Type + "Contains", (string text, string part) => text.IndexOf(part, StringComparison.Ordinal) >= 0);
        Pure.Add(Type + "Contains", (string text, char part) => text.IndexOf(part) >= 0);
        Pure.Add(Type + "Contains", (string text, string part, StringComparison how) => TextComparison.IndexOf(text, part, how) is { } at ? at >= 0 : (bool?)null);
        Pure.Add(Type + "Contains", (string text, char part, StringComparison how) => TextComparison.IndexOf(text, part.ToString(), how) is { } at ? at >= 0 : (bool?)null);
        Pure.Add(Type + "IndexOfAny", (string text, char[] any) => text.IndexOfAny(any));
        Pure.Add(Type + "IndexOfAny", (string text, char[] any, int start) => text.IndexOfAny(any, start));
        Pure.Add(Type + "IndexOfAny", (string text, char[] any, int start, int count) => text.IndexOfAny(any, start, count));
        Pure.Add(Type + "LastIndexOfAny", (string text, char[] any) => text.LastIndexOfAny(any));
        Pure.Add(Type + "LastIndexOfAny", (string text, char[] any, int start) => text.LastIndexOfAny(any, start));
        Pure.Add(Type + "LastIndexOfAny", (string text, char[] any, int start, int count) => text.LastIndexOfAny(any, start, count));
        Pure.Add(Type + "IsNullOrWhiteSpace", (string? text) => string.IsNullOrWhiteSpace(text));
        Pure.Add(Type + "IsNormalized", (string text) => text.All(character => character < 128) ? true : (bool?)null);
    }

    private static void Places()
    {
        Pure.Add(Type + "IndexOf", (string text, char part) => text.IndexOf(part));
        Pure.Add(Type + "IndexOf", (string text, char part, int start) => text.IndexOf(part, start));
        Pure.Add(Type + "IndexOf", (string text, char part, int start, int count) => text.IndexOf(part, start, count));
        Pure.Add(Type + "IndexOf", (string text, char part, StringComparison how) => TextComparison.IndexOf(text, part.ToString(), how));
        Pure.Add(Type + "IndexOf", (string text, string part) => TextComparison.IndexOf(text, part, Culture));
        Pure.Add(Type + "IndexOf", (string text, string part, int start) => TextComparison.IndexOf(text, part, Culture, start));
        Pure.Add(Type + "IndexOf", (string text, string part, int start, int count) => TextComparison.IndexOf(text, part, Culture, start, count));
        Pure.Add(Type + "IndexOf", (string text, string part, StringComparison how) => TextComparison.IndexOf(text, part, how));
        Pure.Add(Type + "IndexOf", (string text, string part, int start, StringComparison how) => TextComparison.IndexOf(text, part, how, start));
        Pure.Add(Type + "IndexOf", (string text, string part, int start, int count, StringComparison how) => TextComparison.IndexOf(text, part, how, start, count));
        Pure.Add(Type + "LastIndexOf", (string text, char part) => text.LastIndexOf(part));
        Pure.Add(Type + "LastIndexOf", (string text, char part, int start) => text.LastIndexOf(part, start));
        Pure.Add(Type + "LastIndexOf", (string text, char part, int start, int count) => text.LastIndexOf(part, start, count));
        Pure.Add(Type + "LastIndexOf", (string text, string part) => TextComparison.LastIndexOf(text, part, Culture, text.Length - 1, text.Length));
        Pure.Add(Type + "LastIndexOf", (string text, string part, int start) => TextComparison.LastIndexOf(text, part, Culture, start, start + 1));
        Pure.Add(Type + "LastIndexOf", (string text, string part, int start, int count) => TextComparison.LastIndexOf(text, part, Culture, start, count));
        Pure.Add(Type + "LastIndexOf", (string text, string part, StringComparison how) => TextComparison.LastIndexOf(text, part, how, text.Length - 1, text.Length));
        Pure.Add(Type + "LastIndexOf", (string text, string part, int start, StringComparison how) => TextComparison.LastIndexOf(text, part, how, start, start + 1));
    }

    private static void Order()
    {
        Pure.Add(Type + "Equals", (string? a, string? b) => a == b);
        Pure.Add(Type + "Equals", (string _, object _) => false);
        Pure.Add(Type + "Equals", (string? a, string? b, StringComparison how) => TextComparison.AreEqual(a, b, how));
        Pure.Add(Type + "op_Equality", (string? a, string? b) => a == b);
        Pure.Add(Type + "op_Inequality", (string? a, string? b) => a != b);
        Pure.Add(Type + "Compare", (string? a, string? b) => TextComparison.Compare(a, b, Culture));
        Pure.Add(Type + "Compare", (string? a, string? b, bool _) => TextComparison.Compare(a, b, Culture));
        Pure.Add(Type + "Compare", (string? a, string? b, StringComparison how) => TextComparison.Compare(a, b, how));
        Pure.Add(Type + "Compare", (string? a, int atA, string? b, int atB, int length) => TextComparison.Compare(Stretch(a, atA, length), Stretch(b, atB, length), Culture));
        Pure.Add(Type + "Compare", (string? a, int atA, string? b, int atB, int length, StringComparison how) => how == StringComparison.Ordinal && a is not null && b is not null
            ? TextComparison.Distance(Stretch(a, atA, length)!, Stretch(b, atB, length)!)
            : TextComparison.Compare(Stretch(a, atA, length), Stretch(b, atB, length), how));
        Pure.Add(Type + "CompareOrdinal", (string? a, string? b) => TextComparison.Compare(a, b, StringComparison.Ordinal));
        Pure.Add(Type + "CompareOrdinal", (string? a, int atA, string? b, int atB, int length) =>
            a is null || b is null ? TextComparison.Compare(a, b, StringComparison.Ordinal) : TextComparison.Distance(Stretch(a, atA, length)!, Stretch(b, atB, length)!));
        Pure.Add(Type + "CompareTo", (string a, string? b) => TextComparison.Compare(a, b, Culture));
    }

    // Of a text that is known in parts its ends may be enough.
    private static void FromParts()
    {
        Ends("StartsWith", PartlyKnown.StartsWith, TextComparison.StartsWith);
        Ends("EndsWith", PartlyKnown.EndsWith, TextComparison.EndsWith);
        foreach (var name in new[] { "Equals", "op_Equality", "op_Inequality" })
            Partly(name, (text, call) => call[1] is TextValue other && IsOrdinal(call) && call.Machine.AreEqual(text, other) is { } same ? same == (name != "op_Inequality") : null);
        Partly("Contains", (text, call) => IsOrdinal(call) ? PartlyKnown.Contains(text.Text, PartOf(call)) : null);
        Partly("IndexOf", (text, call) => (call.Count == 2 && call[1] is char) || (IsOrdinal(call) && call.Count == 3) ? PartlyKnown.IndexOf(text.Text, PartOf(call)) : null);
        Partly("IsNullOrWhiteSpace", (text, _) => text.Text.Pieces.Any(piece => !string.IsNullOrWhiteSpace(piece)) ? false : null);
        FrameworkTable.Where("System.String", "get_Length", call => call[0] is TextValue { Text.IsOpen: true }, LengthOf);
        Partly("get_Chars", (text, call) => call[1] is int at && at >= 0 && text.Text.Pieces[0] is { } head && at < head.Length ? head[at] : null);
        FrameworkTable.Add("System.String", "IsNullOrEmpty", call =>
        {
            call.Machine.Calls.Observe(call[0]);
            return call[0] switch
            {
                null => true,
                TextValue text => text.TryKnown(out var known) ? known.Length == 0 : text.Text.KnownLength > 0 ? false : IsEmpty(text, call.Machine),
                _ => null,
            };
        });
        FrameworkTable.Where("System.String", "IsNullOrWhiteSpace", call => call[0] is TextValue { Text.IsOpen: true, Text.KnownLength: 0 }, call => IsEmpty((TextValue)call[0]!, call.Machine) switch
        {
            true => true,
            // What isn't empty may still be blank.
            OpenValue truth => call.Machine.Choose(truth, true, call.Machine.AnswerOf(call.Method, Blank, call.Arguments)),
            _ => call.Machine.AnswerOf(call.Method, Blank, call.Arguments),
        });
    }

    private static readonly FrameworkMethod Blank = new(call => call[0] is TextValue text && text.TryKnown(out var known) ? string.IsNullOrWhiteSpace(known) : null);

    private static object? IsEmpty(TextValue text, Machine machine) => (text.Identity ?? text.Around?.Subject) is { } subject
        ? machine.Decide(Comparison.Truth(new InRange(subject, Extent.AtMost(0)), Derivation.Of([text], later => later.Decide(text) is TextValue { Text.IsOpen: false } known ? known.Text.KnownLength == 0 : OpenValue.Any)))
        : null;

    private static OpenValue LengthOf(Invocation call)
    {
        var text = (TextValue)call[0]!;
        call.Machine.Calls.Observe(text);
        if (text.MayBeNull)
            call.Machine.MayThrow("a text may be null");
        return new(call.Method.Returns)
        {
            Extent = Extent.AtLeast(text.Text.KnownLength),
            LengthOf = text.Identity is { } identity ? (identity, 0) : text.Around is var (head, subject, tail) ? (subject, head.Length + tail.Length) : null,
            Made = Derivation.Of([text], machine => machine.Decide(text) is TextValue { Text.IsOpen: false } known ? known.Text.KnownLength : OpenValue.Any),
        };
    }

    private static bool IsOrdinal(Invocation call) => call.Count == 2 || call[2] is EnumValue { Number: (int)StringComparison.Ordinal };

    private static string PartOf(Invocation call) => call[1] is char character ? character.ToString() : call.Text(1);

    // The parts of a text that are known may give an answer; otherwise it is as for any text.
    private static void Partly(string name, Func<TextValue, Invocation, object?> answer)
    {
        var others = FrameworkTable.Find("System.String", name)!;
        FrameworkTable.Add("System.String", name, new FrameworkMethod(call =>
        {
            if (call[0] is not TextValue { MayBeNull: false } text || (text.TryKnown(out _) && call[1] is not TextValue { Text.IsOpen: true }))
                return others.Call(call);
            foreach (var argument in call.Arguments)
                call.Machine.Calls.Observe(argument);
            return answer(text, call) ?? others.Call(call);
        }));
    }

    private static void Ends(string name, Func<Text, string, StringComparison, bool?> partly, Func<string, string, StringComparison, bool?> whole) =>
        FrameworkTable.Add("System.String", name, call =>
        {
            if (call[0] is not TextValue text)
                throw call.Unknown();
            call.Machine.Calls.Observe(text);
            var part = call[1] is char character ? character.ToString() : call.Text(1);
            var how = call[1] is char || call.Count == 2 ? call[1] is char ? StringComparison.Ordinal : Culture
                : call[2] is EnumValue { Number: int number } ? (StringComparison)number : throw call.Unknown();
            return text.TryKnown(out var known) ? whole(known, part, how) : partly(text.Text, part, how);
        });

    private static string? Stretch(string? text, int at, int length) => text is null ? null
        : at < 0 || at > text.Length || length < 0 ? throw new ArgumentOutOfRangeException(nameof(at))
        : text.Substring(at, Math.Min(length, text.Length - at));
}
