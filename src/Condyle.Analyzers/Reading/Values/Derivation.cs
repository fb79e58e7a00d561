namespace Condyle.Analyzers.Reading;

/// <summary>How an unknown value was made of others: once they are decided, it can be made again.</summary>
internal sealed class Derivation
{
    // Made of more, or in more steps, a value isn't followed any further.
    private const int MostSubjects = 8;
    private const int MostSteps = 12;

    private readonly Func<Machine, object?> again;

    private Derivation(IReadOnlyList<object> subjects, int steps, Func<Machine, object?> again) =>
        (Subjects, Steps, this.again) = (subjects, steps, again);

    /// <summary>The unknowns at its beginning.</summary>
    public IReadOnlyList<object> Subjects { get; }

    private int Steps { get; }

    /// <summary>The value anew; <see cref="OpenValue.Any"/> while it isn't known.</summary>
    public object? Again(Machine machine) => again(machine);

    /// <summary>How something is made of some values; none where that can't be followed.</summary>
    public static Derivation? Of(IEnumerable<object?> values, Func<Machine, object?> again)
    {
        List<object>? subjects = null;
        var steps = 0;
        foreach (var value in values)
        {
            if (value is not (OpenValue { Type: not null } or TextValue { Text.IsOpen: true }))
                continue;
            var made = value is OpenValue open ? open.Made : ((TextValue)value).Made;
            steps = Math.Max(steps, made?.Steps ?? 0);
            foreach (var subject in SubjectsOf(value))
            {
                if (!(subjects ??= []).Contains(subject))
                    subjects.Add(subject);
            }
        }

        return subjects is null || subjects.Count > MostSubjects || steps >= MostSteps ? null : new Derivation(subjects, steps + 1, again);
    }

    /// <summary>The unknowns that a value depends on.</summary>
    public static IReadOnlyList<object> SubjectsOf(object? value) => value switch
    {
        TextValue { Made: { } made } => made.Subjects,
        TextValue { Identity: { } identity } => [identity],
        OpenValue { NegationOf: { } negated } => SubjectsOf(negated),
        OpenValue { Made: { } made } => made.Subjects,
        OpenValue { Type: not null } open => [open],
        _ => [],
    };
}
