namespace Condyle.Analyzers.Reading;

/// <summary>An interpolated text whose culture isn't chosen yet: a <c>FormattableString</c>, or what <c>string.Create</c> is handed.</summary>
internal sealed class FormattableValue(IReadOnlyList<object?> parts, IReadOnlyList<Hole?> holes)
{
    public TextValue Text(Machine machine, bool isInvariant) =>
        TextValue.Join([.. parts.Select((part, index) => holes[index] is { } hole ? hole.Fill(part, machine, isInvariant) : (TextValue)part!)], null);
}

/// <summary>A hole of an interpolated text: how what fills it is written, and how wide.</summary>
internal sealed record Hole(string? Format = null, int Width = 0)
{
    public TextValue Fill(object? value, Machine machine, bool isInvariant = false) =>
        TextOf.Aligned(TextOf.Of(machine.Decide(value), machine, Format, isInvariant), Width);
}
