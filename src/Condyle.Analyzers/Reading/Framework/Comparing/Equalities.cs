using System.Runtime.CompilerServices;

namespace Condyle.Analyzers.Reading;

/// <summary>The equalities that comparers stand for.</summary>
internal static class Equalities
{
    /// <summary>The equality of a comparer, or the default one.</summary>
    public static IEqualityComparer<object?> Of(object? comparer, Machine machine) => comparer switch
    {
        null => machine.Equality,
        ComparerValue own => own.Equality(machine),
        ObjectValue own when OwnMembers.Find(own, OwnMembers.AreEqual, machine) is { } equals && OwnMembers.Find(own, OwnMembers.HashOf, machine) is { } hash =>
            new GivenEquality((a, b) => machine.Call(equals, own, [a, b]), value => machine.Call(hash, own, [value]), machine),
        _ => throw new AnswerIsOpen("when two values are the same isn't known"),
    };

    /// <summary>Equality of texts in a given way of comparing them.</summary>
    internal sealed class OfTexts(StringComparison how, Machine machine) : IEqualityComparer<object?>
    {
        public new bool Equals(object? a, object? b) => TextComparison.AreEqual(Known(a), Known(b), how) ?? throw new AnswerIsOpen("whether two texts are the same depends on the culture");

        public int GetHashCode(object? value) => how switch
        {
            StringComparison.Ordinal => Known(value)?.GetHashCode() ?? 0,
            StringComparison.OrdinalIgnoreCase => Known(value)?.ToUpperInvariant().GetHashCode() ?? 0,
            _ => 0, // What a culture takes for the same must have the same hash.
        };

        private string? Known(object? value)
        {
            machine.Calls.Observe(value);
            return value switch
            {
                null => null,
                TextValue text when text.TryKnown(out var known) => known,
                _ => throw new AnswerIsOpen("whether two texts are the same isn't known"),
            };
        }
    }

    /// <summary>Equality by the user's own functions.</summary>
    internal sealed class GivenEquality(Func<object?, object?, object?> equals, Func<object?, object?> hash, Machine machine) : IEqualityComparer<object?>
    {
        public new bool Equals(object? a, object? b) => machine.Decide(equals(a, b)) is bool same ? same : throw new AnswerIsOpen("whether two values are the same isn't known");

        // A hash that isn't known tells nothing apart.
        public int GetHashCode(object? value) => machine.Decide(hash(value)) is int known ? known : 0;
    }

    /// <summary>Equality of what stands in the same place of an order.</summary>
    internal sealed class OfOrder(IComparer<object?> order) : IEqualityComparer<object?>
    {
        public new bool Equals(object? a, object? b) => order.Compare(a, b) == 0;

        public int GetHashCode(object? value) => 0;
    }

    /// <summary>Whether two are one and the same object.</summary>
    internal sealed class OfIdentity : IEqualityComparer<object?>
    {
        public new bool Equals(object? a, object? b) => ReferenceEquals(a, b);

        public int GetHashCode(object? value) => value is null ? 0 : RuntimeHelpers.GetHashCode(value);
    }
}
