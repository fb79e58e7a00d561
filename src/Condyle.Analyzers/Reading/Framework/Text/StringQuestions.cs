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
        PartlyKnown();
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
    private static void PartlyKnown()
    {
        Ends("StartsWith", StartsWith, TextComparison.StartsWith);
        Ends("EndsWith", (text, end) => text.EndsWith(end), TextComparison.EndsWith);
        FrameworkTable.Add("System.String", "IsNullOrEmpty", call =>
        {
            call.Machine.Calls.Observe(call[0]);
            return call[0] switch
            {
                null => true,
                TextValue text => text.TryKnown(out var known) ? known.Length == 0 : text.Text.Pieces.Any(piece => !string.IsNullOrEmpty(piece)) ? false : null,
                _ => null,
            };
        });
    }

    private static void Ends(string name, Func<Text, string, Answer> partly, Func<string, string, StringComparison, bool?> whole) =>
        FrameworkTable.Add("System.String", name, call =>
        {
            if (call[0] is not TextValue text)
                throw call.Unknown();
            call.Machine.Calls.Observe(text);
            var part = call[1] is char character ? character.ToString() : call.Text(1);
            var how = call[1] is char || call.Count == 2 ? call[1] is char ? StringComparison.Ordinal : Culture
                : call[2] is EnumValue { Number: int number } ? (StringComparison)number : throw call.Unknown();
            if (text.TryKnown(out var known))
                return whole(known, part, how);
            return how != StringComparison.Ordinal ? null : partly(text.Text, part) switch
            {
                Answer.Yes => true,
                Answer.No => false,
                _ => null,
            };
        });

    private static Answer StartsWith(Text text, string start)
    {
        var head = text.Pieces[0] ?? "";
        return head.StartsWith(start, StringComparison.Ordinal) ? Answer.Yes : start.StartsWith(head, StringComparison.Ordinal) ? Answer.Open : Answer.No;
    }

    private static string? Stretch(string? text, int at, int length) => text is null ? null
        : at < 0 || at > text.Length || length < 0 ? throw new ArgumentOutOfRangeException(nameof(at))
        : text.Substring(at, Math.Min(length, text.Length - at));
}
