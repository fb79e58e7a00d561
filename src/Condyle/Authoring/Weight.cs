using Condyle.Model;

namespace Condyle;

/// <summary>How much a source counts: a number, a switch, its inverse, or sums and products of them.</summary>
public readonly record struct Weight
{
    private readonly Fact<WeightPolynomial> value;

    internal Weight(Fact<WeightPolynomial> value) => this.value = value;

    internal Fact<WeightPolynomial> Value => value;

    /// <summary>One minus the weight.</summary>
    [TakesOpen]
    public Weight Inverse => Combine(WeightPolynomial.One, value, static (one, mine) => one + mine.Times(-1));

    /// <summary>The sum of two weights.</summary>
    [TakesOpen]
    public static Weight operator +(Weight left, Weight right) => Combine(left.value, right.value, static (a, b) => a + b);

    /// <summary>The product of two weights.</summary>
    [TakesOpen]
    public static Weight operator *(Weight left, Weight right) => Combine(left.value, right.value, static (a, b) => a * b);

    /// <summary>A constant weight.</summary>
    public static implicit operator Weight(float constant) => new(WeightPolynomial.Constant(constant));

    /// <summary>The weight that a switch gives.</summary>
    [TakesOpen]
    public static implicit operator Weight(Switch given) => new(WeightPolynomial.Variable(given.Id));

    internal static Weight Open(RigDraft _) => new(Fact<WeightPolynomial>.Open);

    /// <summary>The weight as a sum of products; switches and options stand by their numbers.</summary>
    /// <returns>The sum.</returns>
    public override string ToString() => value.ToString();

    private static Weight Combine(Fact<WeightPolynomial> left, Fact<WeightPolynomial> right, Func<WeightPolynomial, WeightPolynomial, WeightPolynomial> how) =>
        left.TryKnown(out var a) && right.TryKnown(out var b) && how(a, b) is { IsTooLarge: false } result
            ? new(result)
            : new(Fact<WeightPolynomial>.Open);
}
