using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary>Strings and string builders. Ordinal operations are known; those that depend on a culture are not in the table.</summary>
internal static class StringCalls
{
    private const string Type = "System.String.";
    private const string Builder = "System.Text.StringBuilder.";
    private const int CharactersComparedInAStep = 256;

    public static void Register()
    {
        Observing("get_Length", (text, _) => text.Length);
        Observing("get_Chars", (text, arguments) => Arithmetic.AsIndex(arguments[1], text.Length) is { } at && at >= 0 && at < text.Length
            ? text[at]
            : throw new ThrownByCode("System.IndexOutOfRangeException", "There is no such character in the text."));
        Observing("Contains", (text, arguments) => arguments.Length == 2 ? text.Contains(Known(arguments[1])) : null);
        Observing("StartsWith", (text, arguments) => Ordinally(arguments, known => text.StartsWith(known, StringComparison.Ordinal)));
        Observing("EndsWith", (text, arguments) => Ordinally(arguments, known => text.EndsWith(known, StringComparison.Ordinal)));
        Observing("IndexOf", (text, arguments) => arguments[1] is char character && arguments.Length == 2 ? text.IndexOf(character) : null);
        Observing("LastIndexOf", (text, arguments) => arguments[1] is char character && arguments.Length == 2 ? text.LastIndexOf(character) : null);
        Observing("Equals", (text, arguments) => arguments.Length == 2 ? text == Known(arguments[1]) : null);
        Observing("op_Equality", (text, arguments) => text == Known(arguments[1]));
        Observing("op_Inequality", (text, arguments) => text != Known(arguments[1]));
        Changing("Replace", (text, arguments) => arguments.Length != 3 ? null : Replace(text, Known(arguments[1]), Known(arguments[2])));
        Changing("Substring", (text, arguments) => Cut(text, Whole(arguments[1]), arguments.Length > 2 ? Whole(arguments[2]) : text.Length - Whole(arguments[1])));
        Changing("Remove", (text, arguments) => arguments.Length > 2 ? text.Remove(Whole(arguments[1]), Whole(arguments[2])) : text.Remove(Whole(arguments[1])));
        Changing("Insert", (text, arguments) => text.Insert(Whole(arguments[1]), Known(arguments[2])));
        Changing("Trim", (text, arguments) => arguments.Length == 1 ? text.Trim() : arguments[1] is char character ? text.Trim(character) : null);
        Changing("TrimStart", (text, arguments) => arguments.Length == 1 ? text.TrimStart() : arguments[1] is char character ? text.TrimStart(character) : null);
        Changing("TrimEnd", (text, arguments) => arguments.Length == 1 ? text.TrimEnd() : arguments[1] is char character ? text.TrimEnd(character) : null);
        Changing("ToLowerInvariant", (text, _) => text.ToLowerInvariant());
        Changing("ToUpperInvariant", (text, _) => text.ToUpperInvariant());
        Changing("PadLeft", (text, arguments) => text.PadLeft(Padding(arguments[1]), arguments.Length > 2 ? (char)arguments[2]! : ' '));
        Changing("PadRight", (text, arguments) => text.PadRight(Padding(arguments[1]), arguments.Length > 2 ? (char)arguments[2]! : ' '));
        FrameworkTable.Pure(Type + "Split", arguments => Split(Known(arguments[0]), arguments));
        FrameworkTable.Pure(Type + "ToCharArray", arguments => Characters(Known(arguments[0])));
        FrameworkTable.Open(Type + "ToString", (_, arguments) => arguments[0]);
        FrameworkTable.Pure(Type + "IsNullOrEmpty", arguments => arguments[0] is null || Known(arguments[0]).Length == 0);
        FrameworkTable.Pure(Type + "IsNullOrWhiteSpace", arguments => arguments[0] is null || string.IsNullOrWhiteSpace(Known(arguments[0])));
        FrameworkTable.Open(Type + "Concat", (machine, arguments) => Join(machine, "", arguments));
        FrameworkTable.Open(Type + "Join", (machine, arguments) => arguments[0] is TextValue separator && separator.TryKnown(out var known)
            ? Join(machine, known, [.. arguments.Skip(1)])
            : arguments[0] is char character ? Join(machine, character.ToString(), [.. arguments.Skip(1)]) : TextValue.Open);
        FrameworkTable.Overloaded(Type + "Format", (machine, arguments, method) => Format(machine, arguments, method));
        FrameworkTable.Open(Type + "get_Empty", (_, _) => TextValue.Plain(""));

        FrameworkTable.Open(Builder + ".ctor", (_, arguments) => new BuilderValue { Text = arguments.OfType<TextValue>().FirstOrDefault() ?? TextValue.Plain("") });
        FrameworkTable.Overloaded(Builder + "Append", (machine, arguments, method) => arguments.Length == 2
            ? Append(machine, arguments[0], TextOf.Of(arguments[1], machine))
            : Append(machine, arguments[0], TextValue.Open));
        FrameworkTable.Open(Builder + "AppendLine", (machine, arguments) => Append(machine, arguments[0], TextValue.Open));
        FrameworkTable.Open(Builder + "Clear", (machine, arguments) => Set(machine, arguments[0], TextValue.Plain("")));
        FrameworkTable.Open(Builder + "ToString", (_, arguments) => arguments.Length == 1 && arguments[0] is BuilderValue builder ? builder.Text : TextValue.Open);
        FrameworkTable.Open(Builder + "get_Length", (_, arguments) => arguments[0] is BuilderValue { Text: var text } && text.TryKnown(out var known) ? known.Length : null);
    }

    public static string Known(object? value) => value is TextValue text && text.TryKnown(out var known) ? known
        : value is char character ? character.ToString()
        : "";

    private static void Observing(string name, Func<string, object?[], object?> run) =>
        FrameworkTable.Overloaded(Type + name, (machine, arguments, method) =>
        {
            foreach (var argument in arguments)
                machine.Calls.Observe(argument);
            if (!arguments.All(KnownEquality.IsKnown))
                return null;
            var text = Known(arguments[0]);
            machine.Budget.Spend(text.Length / CharactersComparedInAStep);
            return run(text, arguments);
        });

    private static void Changing(string name, Func<string, object?[], string?> run) =>
        FrameworkTable.Open(Type + name, (machine, arguments) =>
        {
            machine.Calls.Observe(arguments[0]);
            if (!arguments.All(KnownEquality.IsKnown))
                return TextValue.Open;
            try
            {
                if (run(Known(arguments[0]), arguments) is not { } changed)
                    return TextValue.Open;
                TextValue.CheckLength(changed.Length);
                machine.Budget.Make(changed.Length);
                return new TextValue(changed, [], [.. arguments.OfType<TextValue>().SelectMany(text => text.Origins).Distinct()]);
            }
            catch (ArgumentException refused)
            {
                throw new ThrownByCode(refused.GetType().FullName!, refused.Message);
            }
        });

    private static object? Ordinally(object?[] arguments, Func<string, bool> run) => arguments switch
    {
        [_, char character] => run(character.ToString()),
        [_, TextValue text, EnumValue { Number: int comparison }] when comparison == (int)StringComparison.Ordinal => run(text.ToString()),
        _ => null, // depends on the culture
    };

    private static int Whole(object? value) => Arithmetic.AsIndex(value) ?? 0;

    private static int Padding(object? value)
    {
        TextValue.CheckLength(Whole(value));
        return Whole(value);
    }

    // Before it is made: a long text for each character of a long text would be an endless one.
    private static string Replace(string text, string old, string by)
    {
        if (old.Length > 0)
            TextValue.CheckLength(text.Length + ((long)text.Length / old.Length * Math.Max(0, by.Length - old.Length)));
        return text.Replace(old, by);
    }

    private static string Cut(string text, int start, int length) => text.Substring(start, length);

    private static ArrayValue Characters(string text)
    {
        Budget.Current.Make(text.Length);
        return new([.. text.Select(character => (object?)character)]);
    }

    private static object? Split(string text, object?[] arguments) => arguments switch
    {
        [_, char separator, ..] when arguments.Skip(2).All(argument => argument is EnumValue { Number: 0 }) => Parts(text.Split(separator)),
        [_, TextValue separator, ..] when arguments.Skip(2).All(argument => argument is EnumValue { Number: 0 } or null) => Parts(text.Split([separator.ToString()], StringSplitOptions.None)),
        [_, ArrayValue { Items: [char separator] }, ..] when arguments.Length == 2 => Parts(text.Split(separator)),
        _ => OpenValue.Any,
    };

    private static ArrayValue Parts(string[] parts)
    {
        Budget.Current.Make(parts.Sum(part => part.Length + 1));
        return new([.. parts.Select(part => (object?)TextValue.Plain(part))]);
    }

    private static object Join(Machine machine, string separator, object?[] parts)
    {
        IEnumerable<object?>? items = parts;
        if (parts is [not TextValue and { } only])
            items = Sequences.ListOf(only, machine);
        if (items is null)
            return TextValue.Open;
        var texts = new List<TextValue>();
        foreach (var item in items)
        {
            if (texts.Count > 0 && separator.Length > 0)
                texts.Add(TextValue.Plain(separator));
            texts.Add(TextOf.Of(item, machine));
            if (texts.Count > Limits.Items)
                throw new ReadingStopped($"a text has more than {Limits.Items} parts");
        }

        return TextValue.Join(texts, null);
    }

    private static object Format(Machine machine, object?[] arguments, MethodRef method)
    {
        if (arguments[0] is not TextValue pattern || !pattern.TryKnown(out var format))
            return TextValue.Open;
        var values = arguments.Length == 2 && arguments[1] is ArrayValue array ? array.Items : [.. arguments.Skip(1)];
        var parts = new List<TextValue>();
        var rest = format;
        while (rest.Length > 0)
        {
            var open = rest.IndexOfAny(['{', '}']);
            if (open < 0)
            {
                parts.Add(TextValue.Plain(rest));
                break;
            }

            parts.Add(TextValue.Plain(rest.Substring(0, open)));
            if (open + 1 < rest.Length && rest[open + 1] == rest[open])
            {
                parts.Add(TextValue.Plain(rest[open].ToString()));
                rest = rest.Substring(open + 2);
                continue;
            }

            var close = rest.IndexOf('}', open);
            if (close < 0 || !int.TryParse(rest.Substring(open + 1, close - open - 1), NumberStyles.None, CultureInfo.InvariantCulture, out var hole) || hole >= values.Length)
                return TextValue.Open;
            parts.Add(TextOf.Of(values[hole], machine));
            rest = rest.Substring(close + 1);
        }

        return TextValue.Join(parts, null);
    }

    private static object? Append(Machine machine, object? builder, TextValue more) =>
        builder is BuilderValue known ? Set(machine, builder, TextValue.Join([known.Text, more], null)) : builder;

    private static object? Set(Machine machine, object? builder, TextValue text)
    {
        if (builder is BuilderValue known)
        {
            machine.Journal.Changing(known);
            known.Text = text;
        }

        return builder;
    }
}
