namespace Condyle.Analyzers.Reading;

/// <summary><c>StringBuilder</c>: a text that grows, known whole or in parts.</summary>
internal static class BuilderCalls
{
    private const string Type = "System.Text.StringBuilder";

    public static void Register()
    {
        var builder = new TypeMembers<BuilderValue>(Type);
        builder.Makes(call => new BuilderValue { Text = New(call) });
        builder.Changes("Append", (own, call) => Set(own, TextValue.Join([own.Text, Appended(call)], null)));

        // How a line ends depends on the platform.
        builder.Changes("AppendLine", (own, call) => Set(own, TextValue.Join([own.Text, call.Count > 1 ? Appended(call) : TextValue.Plain(""), TextValue.Open], null)));
        builder.Changes("AppendFormat", (own, call) => Set(own, TextValue.Join([own.Text, CompositeFormat.Text(call, 1) ?? TextValue.Open], null)));
        builder.Changes("AppendJoin", (own, call) => Set(own, TextValue.Join([own.Text, Joined(call)], null)));
        builder.Changes("Insert", Insert);
        builder.Changes("Remove", (own, call) => Change(own, call, text => text.Remove(call.Whole(1), call.Whole(2))));
        builder.Changes("Replace", Replace);
        builder.Changes("set_Length", (own, call) => Change(own, call, text => Resize(text, call.Whole(1))));
        builder.Changes("set_Chars", (own, call) => Change(own, call, text => Put(text, call.Whole(1), call[2] as char? ?? throw call.Unknown())));
        builder.Resets("Clear", (own, _) => Set(own, TextValue.Plain("")));
        builder.Asks("ToString", (own, call) => call.Count == 1 ? own.Text : TextValue.Plain(Cut(Known(own, call), call.Whole(1), call.Whole(2))));
        builder.Asks("get_Length", (own, call) => Known(own, call).Length);
        builder.Asks("get_Chars", (own, call) => Known(own, call) is var text && call.Whole(1) is var at && at >= 0 && at < text.Length ? text[at] : throw NoCharacter());
        builder.Asks("Equals", (own, call) => call[1] is BuilderValue other ? Known(own, call) == Known(other, call) : throw call.Unknown());
        builder.Asks("EnsureCapacity", (_, _) => OpenValue.Any);
    }

    private static TextValue New(Invocation call)
    {
        var text = call.Arguments.FirstOrDefault(argument => argument is TextValue) as TextValue ?? TextValue.Plain("");
        return call.Arguments is [TextValue, int start, int length, ..] && text.TryKnown(out var known) ? TextValue.Plain(known.Substring(start, length)) : text;
    }

    private static BuilderValue Set(BuilderValue builder, TextValue text)
    {
        builder.Text = text;
        return builder;
    }

    // An interpolated text takes a culture along, a character a count, a text or array the stretch of it that is meant.
    private static TextValue Appended(Invocation call, int at = 1)
    {
        var value = call.Machine.Decide(call.Given(at));
        if (call.Parameter(0)?.PlainName == "IFormatProvider")
            return call.Given(2) is FormattableValue invariant ? invariant.Text(call.Machine, call[1] == OtherCalls.InvariantCulture) : TextValue.Open;
        switch (value)
        {
            case char character when call.Count > at + 1:
                TextValue.CheckLength(call.Whole(at + 1));
                return TextValue.Plain(new string(character, Sized(call.Whole(at + 1))));
            case IStretch several:
                var text = several.Now().All(item => item is char) ? string.Concat(several.Now()) : throw call.Unknown();
                return TextValue.Plain(call.Count > at + 1 ? Cut(text, call.Whole(at + 1), call.Whole(at + 2)) : text);
            case TextValue or BuilderValue when call.Count > at + 1:
                return TextOf.Of(value, call.Machine).TryKnown(out var known) ? TextValue.Plain(Cut(known, call.Whole(at + 1), call.Whole(at + 2))) : TextValue.Open;
            default:
                return TextOf.Of(value, call.Machine);
        }
    }

    private static TextValue Joined(Invocation call) =>
        FrameworkTable.Find("System.String", "Join")!.Call(new Invocation(call.Machine, call.Method, [.. call.Arguments.Skip(1)])) as TextValue ?? TextValue.Open;

    private static object Insert(BuilderValue own, Invocation call)
    {
        var at = call.Whole(1);
        var more = call.Count > 3 && call[2] is TextValue repeated
            ? TextValue.Join([.. Enumerable.Repeat(repeated, Sized(call.Whole(3)))], null)
            : Appended(call, 2);
        if (at == 0)
            return Set(own, TextValue.Join([more, own.Text], null));
        var text = Known(own, call);
        return at >= 0 && at <= text.Length
            ? Set(own, TextValue.Join([TextValue.Plain(text.Substring(0, at)), more, TextValue.Plain(text.Substring(at))], null))
            : throw OutOfRange();
    }

    private static object Replace(BuilderValue own, Invocation call)
    {
        var (old, by) = call[1] is char a && call[2] is char b ? (a.ToString(), b.ToString()) : (call.Text(1), call[2] is null ? "" : call.Text(2));
        return Change(own, call, text =>
        {
            var (start, count) = call.Count > 3 ? (call.Whole(3), call.Whole(4)) : (0, text.Length);
            return text.Substring(0, start) + StringChanges.Replace(Cut(text, start, count), old, by, StringComparison.Ordinal) + text.Substring(start + count);
        });
    }

    private static BuilderValue Change(BuilderValue own, Invocation call, Func<string, string> change)
    {
        try
        {
            var made = change(Known(own, call));
            TextValue.CheckLength(made.Length);
            call.Machine.Budget.Make(made.Length);
            return Set(own, new TextValue(made, [], own.Text.Origins));
        }
        catch (ArgumentException refused)
        {
            throw new ThrownByCode(refused.GetType().FullName!, refused.Message);
        }
    }

    private static string Resize(string text, int length)
    {
        TextValue.CheckLength(length);
        return length < 0 ? throw OutOfRange() : length <= text.Length ? text.Substring(0, length) : text.PadRight(length, '\0');
    }

    private static string Put(string text, int at, char character) =>
        at >= 0 && at < text.Length ? text.Substring(0, at) + character + text.Substring(at + 1) : throw OutOfRange();

    private static string Cut(string text, int start, int count) =>
        start >= 0 && count >= 0 && start <= text.Length - count ? text.Substring(start, count) : throw OutOfRange();

    private static int Sized(int count)
    {
        TextValue.CheckLength(count);
        return count >= 0 ? count : throw OutOfRange();
    }

    private static string Known(BuilderValue builder, Invocation call)
    {
        call.Machine.Calls.Observe(builder.Text);
        return builder.Text.TryKnown(out var known) ? known : throw call.Unknown();
    }

    private static ThrownByCode OutOfRange() => new("System.ArgumentOutOfRangeException", "The text has no such stretch.");

    private static ThrownByCode NoCharacter() => new("System.IndexOutOfRangeException", "The text has no such character.");
}
