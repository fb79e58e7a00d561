namespace Condyle.Analyzers.Reading;

/// <summary>An exception of the framework's.</summary>
internal sealed class ExceptionValue(string type, TextValue message)
{
    /// <summary>The field of the user's own exceptions that holds what their base says.</summary>
    public const string MessageField = "<message>";

    public string Type { get; } = type;

    public TextValue Message { get; } = message;

    /// <summary>The message of an exception of the framework's that was made of some arguments.</summary>
    public static TextValue MessageOf(string type, IReadOnlyList<object?> arguments)
    {
        if (arguments.Count == 0 || arguments[0] is not TextValue message || type is "System.ArgumentNullException" or "System.ArgumentOutOfRangeException" or "System.ObjectDisposedException")
            return TextValue.Open;
        return arguments.Count > 1 && arguments[1] is TextValue parameter
            ? TextValue.Join([message, TextValue.Plain(" (Parameter '"), parameter, TextValue.Plain("')")], null)
            : message;
    }
}
