namespace Condyle.Analyzers.Reading;

/// <summary>An exception of the code that is read, on its way to whoever catches it.</summary>
internal sealed class ThrownByCode(string type, string message, object? value = null) : Exception(message)
{
    /// <summary>One of which only a type is known that it is of: it may be of one that derives from it.</summary>
    public static ThrownByCode OfUnknownKind(string type, string message) => new(type, message, OpenValue.Any) { IsOfUnknownKind = true };

    public bool IsOfUnknownKind { get; private init; }

    /// <summary>Where it was thrown.</summary>
    public CodePlace? Place { get; set; }

    /// <summary>The full name of the exception's type.</summary>
    public string Type { get; } = type;

    /// <summary>The exception object, where it is one of the code's own.</summary>
    public object? Value { get; } = value;
}

/// <summary>The reading can't go on: a limit is reached, or something was met that it doesn't understand.</summary>
/// <param name="reason">Why.</param>
/// <param name="at">Where, if not in the code that is being executed.</param>
internal sealed class ReadingStopped(string reason, Origin? at = null) : Exception(reason)
{
    public Origin? At { get; } = at;
}

/// <summary>What a framework method answers isn't known, as it depends on something unknown.</summary>
internal class AnswerIsOpen(string reason) : Exception(reason);

/// <summary>From here on the items of a sequence aren't known, nor which code of the user's runs: whether a query keeps an item depends on something unknown.</summary>
internal sealed class SequenceIsOpen(string reason) : AnswerIsOpen(reason)
{
    /// <summary>Whether the code that makes the items has run all the same.</summary>
    public bool HasRun { get; init; }
}
