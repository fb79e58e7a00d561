namespace Condyle.Analyzers.Reading;

/// <summary>A range of whole numbers, its ends included.</summary>
internal readonly record struct Extent(long From, long To)
{
    /// <summary>No number that is compared lies beyond, so that one more or less never overflows.</summary>
    private const long Far = long.MaxValue / 4;

    public static Extent All { get; } = new(-Far, Far);

    /// <summary>The size of what may be missing: −1 where it is.</summary>
    public static Extent MayBeMissing { get; } = AtLeast(-1);

    public static Extent Missing { get; } = new(-1, -1);

    public static Extent There { get; } = AtLeast(0);

    public bool IsNone => From > To;

    public static Extent AtLeast(long from) => new(from, Far);

    public static Extent AtMost(long to) => new(-Far, to);

    /// <summary>A number that can be followed; none for what lies too far out.</summary>
    public static Extent? Of(long number) => number is > -Far and < Far ? new(number, number) : null;

    public Extent And(Extent other) => new(Math.Max(From, other.From), Math.Min(To, other.To));

    /// <summary>What is left without another range; all of this where that would be two pieces.</summary>
    public Extent Without(Extent other) => other.From <= From ? new(Math.Max(From, other.To + 1), To)
        : other.To >= To ? new(From, Math.Min(To, other.From - 1))
        : this;

    /// <summary>Whether each number of this range lies in another; none where only some do.</summary>
    public bool? LiesIn(Extent other) => From >= other.From && To <= other.To ? true : And(other).IsNone ? false : null;

    public Extent Over(Extent other) => new(Math.Min(From, other.From), Math.Max(To, other.To));
}
