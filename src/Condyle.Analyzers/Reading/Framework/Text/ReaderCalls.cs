namespace Condyle.Analyzers.Reading;

/// <summary><c>StringReader</c>: reads a text line by line or character by character.</summary>
internal static class ReaderCalls
{
    public static void Register()
    {
        var reader = new TypeMembers<ReaderValue>("System.IO.StringReader");
        reader.Makes(call => new ReaderValue(call.Text(0)));
        reader.Changes("ReadLine", (own, call) => own.Position < own.Text.Length ? TextValue.Plain(Line(own, call)) : null);
        reader.Changes("ReadToEnd", (own, call) => TextValue.Plain(Take(own, own.Text.Length, call)));
        reader.Changes("Read", (own, call) => call.Count > 1 ? throw call.Unknown() : own.Position < own.Text.Length ? (int)own.Text[own.Position++] : -1);
        reader.Asks("Peek", (own, _) => own.Position < own.Text.Length ? (int)own.Text[own.Position] : -1);
        foreach (var name in new[] { "Dispose", "Close" })
            reader.Asks(name, (_, _) => null);
    }

    // A line ends before "\n", "\r" or both.
    private static string Line(ReaderValue own, Invocation call)
    {
        var end = own.Text.IndexOfAny(['\r', '\n'], own.Position);
        var line = Take(own, end < 0 ? own.Text.Length : end, call);
        if (end >= 0)
            own.Position = end + (own.Text[end] == '\r' && end + 1 < own.Text.Length && own.Text[end + 1] == '\n' ? 2 : 1);
        return line;
    }

    private static string Take(ReaderValue own, int end, Invocation call)
    {
        var taken = own.Text.Substring(own.Position, end - own.Position);
        call.Machine.Budget.Make(taken.Length);
        own.Position = end;
        return taken;
    }
}
