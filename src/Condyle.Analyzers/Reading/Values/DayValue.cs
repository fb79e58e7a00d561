namespace Condyle.Analyzers.Reading;

/// <summary>A <c>DateOnly</c>, which the oldest hosts don't have.</summary>
internal readonly record struct DayValue(int Number) : IComparable, IFrameworkValue
{
    public const string Type = "System.DateOnly";

    public string TypeName => Type;

    public DateTime Start => new(Number * TimeSpan.TicksPerDay);

    public static DayValue Of(DateTime moment) => new((int)(moment.Ticks / TimeSpan.TicksPerDay));

    public int CompareTo(object? other) => Number.CompareTo(((DayValue)other!).Number);
}
