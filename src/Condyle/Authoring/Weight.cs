using Condyle.Model;

namespace Condyle;

/// <summary>How much a source counts: a number, a switch, its inverse, or sums and products of them.</summary>
public readonly record struct Weight
{
    private readonly RigDraft? draft;
    private readonly Fact<WeightPolynomial> value;

    internal Weight(RigDraft? draft, Fact<WeightPolynomial> value)
    {
        this.draft = draft;
        this.value = value;
    }

    /// <summary>One minus the weight.</summary>
    [TakesOpen]
    public Weight Inverse => 1f - this;

    /// <summary>The sum of two weights.</summary>
    [TakesOpen]
    public static Weight operator +(Weight left, Weight right) => Combine(left, right, static (a, b) => a + b);

    /// <summary>The difference of two weights: one minus a weight is its inverse.</summary>
    [TakesOpen]
    public static Weight operator -(Weight left, Weight right) => Combine(left, right, static (a, b) => a + b.Times(-1));

    /// <summary>The product of two weights.</summary>
    [TakesOpen]
    public static Weight operator *(Weight left, Weight right) => Combine(left, right, static (a, b) => a * b);

    /// <summary>A constant weight.</summary>
    public static implicit operator Weight(float constant) => new(null, WeightPolynomial.Constant(constant));

    /// <summary>The weight that a switch gives.</summary>
    [TakesOpen]
    public static implicit operator Weight(Switch given) => new(given.Draft, WeightPolynomial.Variable(given.Id));

    internal static Weight Open(RigDraft draft) => new(draft, Fact<WeightPolynomial>.Open);

    /// <summary>What it is worth in a rig.</summary>
    internal Fact<WeightPolynomial> In(RigDraft rig) =>
        draft is null || ReferenceEquals(draft, rig) ? value : throw HandleGuard.OfAnotherRig("A switch or choice of this weight");

    /// <summary>Whether both are always worth the same.</summary>
    /// <param name="other">The other weight.</param>
    /// <returns>Whether they are.</returns>
    public bool Equals(Weight other) => value.Equals(other.value);

    /// <summary>A number that equal weights share.</summary>
    /// <returns>The number.</returns>
    public override int GetHashCode() => value.GetHashCode();

    /// <summary>The weight as a sum of products; switches and options stand by their numbers.</summary>
    /// <returns>The sum.</returns>
    public override string ToString() => value.ToString();

    private static Weight Combine(Weight left, Weight right, Func<WeightPolynomial, WeightPolynomial, WeightPolynomial> how)
    {
        var owner = left.draft ?? right.draft;
        if (owner is not null)
            _ = right.In(owner);
        return new(
            owner,
            left.value.TryKnown(out var a) && right.value.TryKnown(out var b) && how(a, b) is { IsTooLarge: false } result ? result : Fact<WeightPolynomial>.Open);
    }
}
