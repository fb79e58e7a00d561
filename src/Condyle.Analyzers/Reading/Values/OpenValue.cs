namespace Condyle.Analyzers.Reading;

/// <summary>A value that the reading doesn't know. It has an identity: the same unknown is decided the same way wherever it turns up.</summary>
internal sealed class OpenValue(TypeKey? type, bool canFork = false)
{
    public TypeKey? Type { get; } = type;

    /// <summary>Whether it is a boolean, an enum or a side that came from outside, which is read both ways.</summary>
    public bool CanFork { get; } = canFork && type is { IsForkable: true };

    /// <summary>Where a whole number lies; of what may be missing, whether it is.</summary>
    public Extent Extent { get; init; } = type is { IsReference: true } ? Extent.MayBeMissing : Extent.All;

    /// <summary>The text whose length a number is, with how many characters more.</summary>
    public (object Subject, int More)? LengthOf { get; init; }

    /// <summary>What a truth says of others.</summary>
    public Condition? Says { get; init; }

    /// <summary>What it was made of.</summary>
    public Derivation? Made { get; init; }

    /// <summary>Whether it stands for the values that all turns of a loop have.</summary>
    public bool IsOfTurn { get; init; }

    /// <summary>The unknown of which this is the negation.</summary>
    public OpenValue? NegationOf { get; init; }

    /// <summary>A value of which not even the type is known; whoever uses it knows what type it wants.</summary>
    public static OpenValue Any { get; } = new(null);

    /// <summary>The type of a truth.</summary>
    public static TypeKey Truth { get; } = new("bool", TypeShape.Bool);
}
