namespace Condyle.Model;

/// <summary>How an event is said in rig code: a verb of an element, or of the rig, and what it is given.</summary>
/// <param name="Of">The element that it is said of; none for the rig itself.</param>
/// <param name="Verb">The method's name.</param>
/// <param name="Given">What it is given, in order: texts, facts, elements, and <see cref="Left"/> around what may be left out.</param>
/// <param name="Makes">Whether it makes an element, of which the sentence then goes on.</param>
internal sealed record Saying(int? Of, string Verb, IReadOnlyList<object?> Given, bool Makes)
{
    /// <summary>Said of the rig itself.</summary>
    public static Saying OfRig(string verb, params object?[] given) => new(null, verb, given, Makes: true);

    /// <summary>Said of an element, of which the sentence goes on.</summary>
    public static Saying OfElement(int element, string verb, params object?[] given) => new(element, verb, given, Makes: false);

    /// <summary>Said of an element, to make another one.</summary>
    public static Saying MadeBy(int element, string verb, params object?[] given) => new(element, verb, given, Makes: true);

    /// <summary>An element that is given, by its number in the log.</summary>
    internal sealed record Element(int Id);

    /// <summary>Joints that are given as one set.</summary>
    internal sealed record Set(IReadOnlyList<int> Joints);

    /// <summary>What may be left out where it is the default; its parameter's name tells it where others were.</summary>
    internal sealed record Left(string Parameter, object? Value, object? Default);
}
