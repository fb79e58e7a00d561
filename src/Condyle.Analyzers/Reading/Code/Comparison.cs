using System.Globalization;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>What it says of an unknown value that it compares so with a known one.</summary>
internal static class Comparison
{
    /// <summary>The truth of a comparison that isn't known; none where nothing follows from it.</summary>
    public static OpenValue? Of(BinaryOperatorKind kind, object? left, object? right, Derivation? made)
    {
        if (kind == BinaryOperatorKind.NotEquals)
            return Of(BinaryOperatorKind.Equals, left, right, made) is { } same ? Arithmetic.Not(same) : null;
        return (kind == BinaryOperatorKind.Equals ? OfEqual(left, right) ?? OfEqual(right, left) : null) is { } condition ? Truth(condition, made)
            : OfNumber(left, Numbers(kind, right)) is { } below ? Truth(below, made)
            : OfNumber(right, Numbers(Turned(kind), left)) is { } above ? Truth(above, made)
            : null;
    }

    /// <summary>That a text is the same as another, of which one is known.</summary>
    public static Condition? OfTexts(TextValue a, TextValue b) => b.TryKnown(out var text) ? Is(a, text) : a.TryKnown(out text) ? Is(b, text) : null;

    /// <summary>That something isn't there.</summary>
    public static Condition? IsMissing(object? value) => value switch
    {
        TextValue { MayBeNull: true, Identity: { } subject } => new InRange(subject, Extent.AtMost(-1)),
        OpenValue { Type.IsReference: true } open => new InRange(open, Extent.AtMost(-1)),
        _ => null,
    };

    public static OpenValue Truth(Condition condition, Derivation? made) => new(OpenValue.Truth) { Says = condition, Made = made };

    private static Condition? OfEqual(object? unknown, object? known) => (unknown, known) switch
    {
        (_, null) => IsMissing(unknown),
        (TextValue a, TextValue b) => OfTexts(a, b),
        _ => null,
    };

    private static Condition? Is(TextValue unknown, string text)
    {
        if (unknown.Identity is { } identity)
            return new IsText(identity, text);
        if (unknown.Around is not var (head, subject, tail))
            return null;
        var inner = text.Substring(head.Length, text.Length - head.Length - tail.Length);
        return inner.Length > 0 ? new IsText(subject, inner) : new InRange(subject, Extent.AtMost(0));
    }

    private static InRange? OfNumber(object? value, Extent? numbers) => (value, numbers) switch
    {
        (OpenValue { Type.Shape: not (TypeShape.Bool or TypeShape.Nullable) } number, { } extent) => number.LengthOf is not var (subject, more) || number.Extent.LiesIn(extent) is not null ? new InRange(number, extent)
            // Of a text that is joined with others a missing one is empty.
            : new InRange(subject, extent.From - more <= 0 ? Extent.AtMost(extent.To - more) : new(extent.From - more, extent.To - more)),
        _ => null,
    };

    private static Extent? Numbers(BinaryOperatorKind kind, object? known)
    {
        if (NumberOf(known) is not { From: var number } only)
            return null;
        return kind switch
        {
            BinaryOperatorKind.Equals => only,
            BinaryOperatorKind.LessThan => Extent.AtMost(number - 1),
            BinaryOperatorKind.LessThanOrEqual => Extent.AtMost(number),
            BinaryOperatorKind.GreaterThan => Extent.AtLeast(number + 1),
            BinaryOperatorKind.GreaterThanOrEqual => Extent.AtLeast(number),
            _ => null,
        };
    }

    /// <summary>A whole number as a range; none for anything else.</summary>
    public static Extent? NumberOf(object? value) => EnumValue.NumberOf(value) is int or long or uint or short or ushort or byte or sbyte
        ? Extent.Of(Convert.ToInt64(EnumValue.NumberOf(value), CultureInfo.InvariantCulture))
        : null;

    private static BinaryOperatorKind Turned(BinaryOperatorKind kind) => kind switch
    {
        BinaryOperatorKind.LessThan => BinaryOperatorKind.GreaterThan,
        BinaryOperatorKind.LessThanOrEqual => BinaryOperatorKind.GreaterThanOrEqual,
        BinaryOperatorKind.GreaterThan => BinaryOperatorKind.LessThan,
        BinaryOperatorKind.GreaterThanOrEqual => BinaryOperatorKind.LessThanOrEqual,
        _ => kind,
    };
}
