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

    public static void Add<T1, T2, T3, T4, T5, TResult>(string name, Func<T1, T2, T3, T4, T5, TResult> run) => Overload(
        name,
        [typeof(T1), typeof(T2), typeof(T3), typeof(T4), typeof(T5)],
        a => run((T1)a[0]!, (T2)a[1]!, (T3)a[2]!, (T4)a[3]!, (T5)a[4]!));

    public static void Add<T1, T2, T3, T4, T5, T6, TResult>(string name, Func<T1, T2, T3, T4, T5, T6, TResult> run) => Overload(
        name,
        [typeof(T1), typeof(T2), typeof(T3), typeof(T4), typeof(T5), typeof(T6)],
        a => run((T1)a[0]!, (T2)a[1]!, (T3)a[2]!, (T4)a[3]!, (T5)a[4]!, (T6)a[5]!));

    /// <summary>A constant that the framework has as a property or a field.</summary>
    public static void Constant<TResult>(string name, TResult value)
    {
        var dot = name.LastIndexOf('.');
        Add(name.Substring(0, dot + 1) + "get_" + name.Substring(dot + 1), () => value);
    }

    private static void Overload(string name, Type[] parameters, Func<object?[], object?> run) =>
        FrameworkTable.OverloadsOf(name).Add(new PureOverload(parameters, run));
}

/// <summary>One overload of a pure function.</summary>
internal sealed record PureOverload(Type[] Parameters, Func<object?[], object?> Run);

/// <summary>The overloads of a pure function; which one runs is decided by the arguments.</summary>
internal sealed class PureOverloads
{
    private const int CharactersComparedInAStep = 256;
    private readonly List<PureOverload> overloads = [];

    public void Add(PureOverload overload) => overloads.Add(overload);

    /// <summary>The result; that isn't known where no overload fits.</summary>
    public object? Call(Invocation call)
    {
        foreach (var argument in call.Arguments)
            call.Machine.Calls.Observe(argument);
        foreach (var overload in overloads)
        {
            if (Hosted(overload.Parameters, call.Arguments) is not { } hosted)
                continue;
            foreach (var argument in hosted)
                call.Machine.Budget.Spend(((argument as string)?.Length ?? 0) / CharactersComparedInAStep);
            try
            {
                return Read(overload.Run(hosted), call.Arguments);
            }
            catch (Exception refused) when (refused is ArgumentException or FormatException or ArithmeticException or IndexOutOfRangeException or InvalidOperationException or InvalidCastException)
            {
                throw new ThrownByCode(refused.GetType().FullName!, refused.Message);
            }
        }

        throw call.Unknown();
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
            case IStretch several when wanted == typeof(char[]) && several.Now().All(item => item is char):
                hosted = several.Now().Cast<char>().ToArray();
                return true;
            case IStretch several when wanted == typeof(string[]) && several.Now().All(item => item is null or TextValue { Text.IsOpen: false }):
                hosted = several.Now().Select(item => item?.ToString()).ToArray();
                return true;
            default: return wanted.IsInstanceOfType(value);
        }
    }

    private static object? Read(object? result, object?[] arguments)
    {
        switch (result)
        {
            case string text:
                TextValue.CheckLength(text.Length);
                Budget.Current.Make(text.Length);
                return new TextValue(text, [], [.. arguments.OfType<TextValue>().SelectMany(argument => argument.Origins).Distinct()]);
            case string[] texts:
                Budget.Current.Make(texts.Sum(text => text.Length + 1));
                return new ArrayValue([.. texts.Select(TextValue.Plain)]);
            case char[] characters:
                Budget.Current.Make(characters.Length);
                return new ArrayValue([.. characters.Cast<object?>()]);
            default:
                return result;
        }
    }
}
