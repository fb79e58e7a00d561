namespace Condyle.Analyzers.Reading;

/// <summary>
/// Puts functions of plain values into the table: the delegate's parameters say which overload it is. Texts are known whole, a number's
/// type is exact, as the compiler has converted it. What such a function throws, the code that is read throws.
/// </summary>
internal static class Pure
{
    public static void Add<TResult>(string name, Func<TResult> run) => Overload(name, [], _ => run());

    public static void Add<T1, TResult>(string name, Func<T1, TResult> run) => Overload(name, [typeof(T1)], a => run((T1)a[0]!));

    public static void Add<T1, T2, TResult>(string name, Func<T1, T2, TResult> run) => Overload(name, [typeof(T1), typeof(T2)], a => run((T1)a[0]!, (T2)a[1]!));

    public static void Add<T1, T2, T3, TResult>(string name, Func<T1, T2, T3, TResult> run) =>
        Overload(name, [typeof(T1), typeof(T2), typeof(T3)], a => run((T1)a[0]!, (T2)a[1]!, (T3)a[2]!));

    public static void Add<T1, T2, T3, T4, TResult>(string name, Func<T1, T2, T3, T4, TResult> run) =>
        Overload(name, [typeof(T1), typeof(T2), typeof(T3), typeof(T4)], a => run((T1)a[0]!, (T2)a[1]!, (T3)a[2]!, (T4)a[3]!));

    private static void Overload(string name, Type[] parameters, Func<object?[], object?> run)
    {
        var overloads = FrameworkTable.OverloadsOf(name);
        overloads.Add(new PureOverload(parameters, run));
    }
}

/// <summary>One overload of a pure function.</summary>
internal sealed record PureOverload(Type[] Parameters, Func<object?[], object?> Run);

/// <summary>The overloads of a pure function; which one runs is decided by the arguments.</summary>
internal sealed class PureOverloads
{
    private readonly List<PureOverload> overloads = [];

    public void Add(PureOverload overload) => overloads.Add(overload);

    /// <summary>The result; <see cref="OpenValue.Any"/> where no overload fits.</summary>
    public object? Call(Machine machine, object?[] arguments)
    {
        foreach (var argument in arguments)
            machine.Calls.Observe(argument);
        foreach (var overload in overloads)
        {
            if (Hosted(overload.Parameters, arguments) is not { } hosted)
                continue;
            try
            {
                return Read(overload.Run(hosted), arguments);
            }
            catch (Exception refused) when (refused is ArgumentException or FormatException or ArithmeticException or IndexOutOfRangeException or InvalidOperationException)
            {
                throw new ThrownByCode(refused.GetType().FullName!, refused.Message);
            }
        }

        return OpenValue.Any;
    }

    private static object?[]? Hosted(Type[] parameters, object?[] arguments)
    {
        if (parameters.Length != arguments.Length)
            return null;
        var hosted = new object?[parameters.Length];
        for (var i = 0; i < parameters.Length; i++)
        {
            if (!TryHost(parameters[i], arguments[i], out hosted[i]))
                return null;
        }

        return hosted;
    }

    private static bool TryHost(Type wanted, object? value, out object? hosted)
    {
        hosted = value;
        switch (value)
        {
            case null: return !wanted.IsValueType;
            case TextValue text when wanted == typeof(string):
                hosted = text.TryKnown(out var known) ? known : null;
                return hosted is not null;
            case EnumValue own when wanted.IsEnum && own.Type.Name == wanted.Name:
                hosted = Enum.ToObject(wanted, own.Number);
                return true;
            case ArrayValue array when wanted == typeof(char[]) && array.Items.All(item => item is char):
                hosted = array.Items.Cast<char>().ToArray();
                return true;
            case ArrayValue array when wanted == typeof(string[]) && array.Items.All(item => item is TextValue { Text.IsOpen: false }):
                hosted = array.Items.Select(item => item!.ToString()).ToArray();
                return true;
            default: return wanted.IsInstanceOfType(value);
        }
    }

    private static object? Read(object? result, object?[] arguments) => result switch
    {
        string text => new TextValue(Checked(text), [], [.. arguments.OfType<TextValue>().SelectMany(argument => argument.Origins).Distinct()]),
        string[] texts => new ArrayValue([.. texts.Select(TextValue.Plain)]),
        char[] characters => new ArrayValue([.. characters.Cast<object?>()]),
        _ => result,
    };

    private static string Checked(string text) => text.Length <= Limits.TextLength ? text : throw new ReadingStopped($"a text grows beyond {Limits.TextLength} characters");
}
