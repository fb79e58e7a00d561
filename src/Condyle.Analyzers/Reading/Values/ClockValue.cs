namespace Condyle.Analyzers.Reading;

/// <summary>A <c>TimeOnly</c>, which the oldest hosts don't have: the ticks since midnight.</summary>
internal readonly record struct ClockValue(long Ticks) : IComparable, IFrameworkValue
{
    public const string Type = "System.TimeOnly";

    public string TypeName => Type;

    public TimeSpan SinceMidnight => new(Ticks);

    public DateTime OnTheFirstDay => new(Ticks);

    public static ClockValue Of(TimeSpan sinceMidnight) => sinceMidnight.Ticks is >= 0 and < TimeSpan.TicksPerDay
        ? new(sinceMidnight.Ticks)
        : throw new ArgumentOutOfRangeException(nameof(sinceMidnight));

    /// <summary>The time after a while, round the clock.</summary>
    public ClockValue After(TimeSpan time) => new((((Ticks + (time.Ticks % TimeSpan.TicksPerDay)) % TimeSpan.TicksPerDay) + TimeSpan.TicksPerDay) % TimeSpan.TicksPerDay);

    public int CompareTo(object? other) => Ticks.CompareTo(((ClockValue)other!).Ticks);
}
