namespace Condyle.Analyzers.Reading;

/// <summary>What puts strings together: they may be known in parts.</summary>
internal static class StringJoins
{
    private const string Type = "System.String";

    public static void Register()
    {
        FrameworkTable.Add(Type, "Concat", call => Join(call, null, 0));
        FrameworkTable.Add(Type, "Join", call => Join(call, call[0] switch
        {
            char character => TextValue.Plain(character.ToString()),
            TextValue text => text,
            null => TextValue.Plain(""),
            _ => TextValue.Open,
        }, 1));
        FrameworkTable.Add(Type, "Format", CompositeFormat.Call);
        FrameworkTable.Add(Type, "Create", call => call.Count == 2 && call.Given(1) is FormattableValue text
            ? text.Text(call.Machine, call[0] == OtherCalls.InvariantCulture)
            : call is { Count: 3 } && call[2] is FunctionValue write ? Written(call, write) : TextValue.Open);
        FrameworkTable.Add("System.FormattableString", "Invariant", call => call[0] is FormattableValue text ? text.Text(call.Machine, isInvariant: true) : TextValue.Open);
        FrameworkTable.Add("System.FormattableString", "CurrentCulture", call => call[0] is FormattableValue text ? text.Text(call.Machine, isInvariant: false) : TextValue.Open);
        FrameworkTable.Add("System.FormattableString", "ToString", call => call[0] is FormattableValue text
            ? text.Text(call.Machine, call.Count > 1 && call[1] == OtherCalls.InvariantCulture)
            : TextValue.Open);
    }

    // A function writes the characters where the text will be.
    private static TextValue Written(Invocation call, FunctionValue write)
    {
        var length = call.Whole(0);
        TextValue.CheckLength(length);
        if (length < 0)
            throw Making.OutOfRange();
        Budget.Current.Make(length);
        var characters = new SpanValue([.. Enumerable.Repeat((object?)'\0', length)], 0, length);
        write.Invoke(call.Machine, characters, call[1]);
        return characters.Items.All(item => item is char) ? TextValue.Plain(string.Concat(characters.Items)) : TextValue.Open;
    }

    private static TextValue Join(Invocation call, TextValue? separator, int first)
    {
        var parts = call.Arguments.Skip(first).ToList();
        if (separator is not null && call.Parameter(1)?.Shape == TypeShape.Array && parts is [ArrayValue some, int start, int count])
            return Of(call.Machine, separator, Stretch(some.Items, start, count));

        // One argument that isn't a text itself is the sequence of the parts, unless it is declared as one part of any kind.
        if (parts is [not (TextValue or null) and var only] && call.Parameter(first)?.Id != "object")
        {
            if (Sequences.ListOf(only, call.Machine) is not { } items)
                return TextValue.Open;
            parts = items;
        }
        else if (parts is [null] && call.Parameter(first) is { Shape: TypeShape.Array or TypeShape.Other } sequence && sequence.Id != "object")
        {
            throw new ThrownByCode("System.ArgumentNullException", "The parts that are joined are null.");
        }

        return Of(call.Machine, separator, parts);
    }

    private static TextValue Of(Machine machine, TextValue? separator, IEnumerable<object?> parts)
    {
        var texts = new List<TextValue>();
        foreach (var part in parts)
        {
            if (texts.Count > 0 && separator is not null)
                texts.Add(separator);
            texts.Add(TextOf.Of(part, machine));
            if (texts.Count > Limits.Items)
                throw new ReadingStopped($"a text has more than {Limits.Items} parts");
        }

        return TextValue.Join(texts, null);
    }

    private static IEnumerable<object?> Stretch(object?[] items, int start, int count) => start < 0 || count < 0 || start > items.Length - count
        ? throw new ThrownByCode("System.ArgumentOutOfRangeException", "There are no such parts to join.")
        : items.Skip(start).Take(count);
}
