namespace Condyle.Analyzers.Reading;

/// <summary>An exception of the framework's.</summary>
internal sealed class ExceptionValue(string type, IReadOnlyList<object?> arguments)
{
    /// <summary>The field of the user's own exceptions that holds what their base was made of.</summary>
    public const string BaseField = "<exception>";

    /// <summary>The type of one that stands for several.</summary>
    public const string Several = "System.AggregateException";

    public string Type { get; } = type;

    /// <summary>One that the framework made, of which only the type is known.</summary>
    public static ExceptionValue OfFramework(string type) => new(type, []) { Inner = OpenValue.Any, Parameter = OpenValue.Any };

    /// <summary>What it says; an unknown text where the framework chooses the words.</summary>
    public TextValue Message { get; } = arguments.Count == 0 || arguments[0] is not TextValue message || NamesParameterFirst(type) || (type == Several && arguments.Count > 1) ? TextValue.Open
        : ParameterOf(type, arguments) is TextValue parameter ? TextValue.Join([message, TextValue.Plain(" (Parameter '"), parameter, TextValue.Plain("')")], null)
        : message;

    /// <summary>The exception that it was made for; none where there is none.</summary>
    public object? Inner { get; init; } = InnerOf(type, arguments);

    /// <summary>Those that it stands for; none where they aren't known.</summary>
    public IReadOnlyList<object?>? All { get; } = type == Several ? AllOf(arguments) : null;

    /// <summary>The name of the parameter that it is about.</summary>
    public object? Parameter { get; init; } = ParameterOf(type, arguments);

    /// <summary>One that code makes: what it is given for several is enumerated.</summary>
    public static ExceptionValue Of(string type, object?[] arguments, Machine machine)
    {
        if (type == Several && arguments is [_, null])
            throw new ThrownByCode("System.ArgumentNullException", "Several exceptions are needed.");
        if (type != Several || arguments.Length == 0 || arguments[arguments.Length - 1] is not { } last || last is TextValue || IsException(last))
            return new ExceptionValue(type, arguments);
        if (Sequences.ListOf(last, machine) is not { } all)
            return new ExceptionValue(type, [.. arguments.Take(arguments.Length - 1), OpenValue.Any]);
        if (all.Contains(null))
            throw new ThrownByCode("System.ArgumentException", "One of several exceptions is null.");
        return new ExceptionValue(type, [.. arguments.Take(arguments.Length - 1), new ArrayValue([.. all])]);
    }

    /// <summary>One that the framework makes for several.</summary>
    public static ExceptionValue ForAll(IEnumerable<object?> all) => new(Several, [TextValue.Open, new ArrayValue([.. all])]);

    /// <summary>What is known of any exception: one of the framework's, or the base of one of the user's own.</summary>
    public static ExceptionValue? Of(object? value) => value switch
    {
        ExceptionValue known => known,
        ObjectValue own when own.Type.IndexOf(BaseField) is >= 0 and var field => own.Fields[field] as ExceptionValue,
        _ => null,
    };

    private static object? InnerOf(string type, IReadOnlyList<object?> arguments)
    {
        if (arguments.Any(argument => argument is OpenValue))
            return OpenValue.Any;
        if (arguments.FirstOrDefault(IsException) is { } one)
            return one;
        if (type != Several || arguments.All(argument => argument is null or TextValue))
            return null;
        return arguments.OfType<IStretch>().FirstOrDefault() is { } several ? several.Now().FirstOrDefault() : OpenValue.Any;
    }

    private static IReadOnlyList<object?>? AllOf(IReadOnlyList<object?> arguments) =>
        arguments.Any(argument => argument is OpenValue) ? null
        : arguments.OfType<IStretch>().FirstOrDefault() is { } several ? [.. several.Now()]
        : [.. arguments.Where(IsException)];

    private static bool IsException(object? value) => value is ExceptionValue || (value is ObjectValue own && own.Type.IndexOf(BaseField) >= 0);

    private static object? ParameterOf(string type, IReadOnlyList<object?> arguments) => type switch
    {
        "System.ArgumentException" => arguments.Count > 1 ? arguments[1] as TextValue : null,
        _ when NamesParameterFirst(type) => arguments.Count > 0 && arguments[0] is TextValue && (arguments.Count == 1 || arguments[1] is not ExceptionValue) ? arguments[0] : null,
        _ => null,
    };

    private static bool NamesParameterFirst(string type) => type is "System.ArgumentNullException" or "System.ArgumentOutOfRangeException" or "System.ObjectDisposedException";
}
