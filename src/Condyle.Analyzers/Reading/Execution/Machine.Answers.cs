namespace Condyle.Analyzers.Reading;

/// <summary>What framework functions answer about unknown values that can't change: asked the same again, they answer the same.</summary>
internal sealed partial class Machine
{
    private readonly Dictionary<string, object?> answers = [];
    private readonly Dictionary<object, int> numbered = [];

    /// <summary>The answer of a function that depends on nothing but its arguments, of which some aren't known.</summary>
    /// <param name="method">Which one.</param>
    /// <param name="function">What it does.</param>
    /// <param name="arguments">What it is given.</param>
    /// <param name="partly">What is known of a text that it answers.</param>
    public object? AnswerOf(MethodRef method, FrameworkMethod function, object?[] arguments, TextValue? partly = null)
    {
        object?[] given = [.. arguments];
        var made = Derivation.Of(given, later => later.AnswerNow(method, function, given));
        if (made is null || KeyOf(method, given) is not { } key)
            return Unknown();
        return answers.TryGetValue(key, out var before) ? before : answers[key] = Unknown();

        object? Unknown() => partly is null ? Opens.Of(method.Returns, this, made: made) : partly.MadeBy(made);
    }

    private object? AnswerNow(MethodRef method, FrameworkMethod function, object?[] given)
    {
        object?[] now = [.. given.Select(Decide)];
        if (!now.All(KnownEquality.IsKnown))
            return OpenValue.Any;
        try
        {
            return function.Run(new Invocation(this, method, now)) ?? OpenValue.Any;
        }
        catch (Exception unanswered) when (unanswered is ThrownByCode or AnswerIsOpen)
        {
            return OpenValue.Any;
        }
    }

    private string? KeyOf(MethodRef method, object?[] given)
    {
        var key = new System.Text.StringBuilder(method.Id);
        foreach (var value in given)
        {
            switch (value)
            {
                case null:
                    key.Append("|-");
                    break;
                case TextValue text when text.TryKnown(out var known):
                    key.Append('|').Append(known.Length).Append(':').Append(known);
                    break;
                case TextValue { Identity: { } identity }:
                    key.Append("|?").Append(NumberOf(identity));
                    break;
                case OpenValue { Type: { } type } when NeverChanges(type):
                    key.Append("|?").Append(NumberOf(value));
                    break;
                case EnumValue own:
                    key.Append('|').Append(own.Type.Id).Append(own.Number);
                    break;
                case bool or char or int:
                    key.Append('|').Append(value.GetType().Name).Append(value);
                    break;
                default:
                    return null;
            }
        }

        return key.ToString();
    }

    // What anything else holds may be another thing the next time.
    private static bool NeverChanges(TypeKey type) => type.Shape switch
    {
        TypeShape.Other => Defaults.IsPlain(type) || type.Id == "System.Version",
        TypeShape.Nullable => type.Element is { } element && NeverChanges(element),
        TypeShape.User or TypeShape.Parameter or TypeShape.Tuple => false,
        _ => !type.IsReference,
    };

    private int NumberOf(object unknown) => numbered.TryGetValue(unknown, out var number) ? number : numbered[unknown] = numbered.Count;
}
