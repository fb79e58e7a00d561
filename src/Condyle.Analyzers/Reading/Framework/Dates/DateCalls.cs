using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary><c>DateTime</c>: what the code says, never what the clock does.</summary>
internal static class DateCalls
{
    private const string Name = "System.DateTime";
    private const string Type = Name + ".";

    public static void Register()
    {
        Pure.Add(Type + ".ctor", (int year, int month, int day) => new DateTime(year, month, day));
        Pure.Add(Type + ".ctor", (int year, int month, int day, int hour, int minute, int second) => new DateTime(year, month, day, hour, minute, second));
        Pure.Add(Type + ".ctor", (long ticks) => new DateTime(ticks));
        Pure.Add(Type + ".ctor", (DayValue day, ClockValue time) => day.Start + time.SinceMidnight);
        Pure.Constant(Type + "MinValue", DateTime.MinValue);
        Pure.Constant(Type + "MaxValue", DateTime.MaxValue);
        Pure.Constant(Type + "UnixEpoch", new DateTime(1970, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        Pure.Add(Type + "DaysInMonth", (int year, int month) => DateTime.DaysInMonth(year, month));
        Pure.Add(Type + "IsLeapYear", (int year) => DateTime.IsLeapYear(year));
        Parts();
        Steps();
        Moments.Compare<DateTime>(Name);
        Moments.Write<DateTime>(Name, "osuOSR", (moment, format) => moment.ToString(format, CultureInfo.InvariantCulture));
        foreach (var name in new[] { "Parse", "ParseExact" })
            FrameworkTable.Add(Name, name, call => Moments.Read(call));
    }

    private static void Parts()
    {
        Moments.Part(Name, "Year", (DateTime moment) => moment.Year);
        Moments.Part(Name, "Month", (DateTime moment) => moment.Month);
        Moments.Part(Name, "Day", (DateTime moment) => moment.Day);
        Moments.Part(Name, "Hour", (DateTime moment) => moment.Hour);
        Moments.Part(Name, "Minute", (DateTime moment) => moment.Minute);
        Moments.Part(Name, "Second", (DateTime moment) => moment.Second);
        Moments.Part(Name, "Millisecond", (DateTime moment) => moment.Millisecond);
        Moments.Part(Name, "DayOfYear", (DateTime moment) => moment.DayOfYear);
        Moments.Part(Name, "DayOfWeek", (DateTime moment) => (int)moment.DayOfWeek);
        Moments.Part(Name, "Kind", (DateTime moment) => (int)moment.Kind);
        Pure.Add(Type + "get_Ticks", (DateTime moment) => moment.Ticks);
        Pure.Add(Type + "get_Date", (DateTime moment) => moment.Date);
        Pure.Add(Type + "get_TimeOfDay", (DateTime moment) => moment.TimeOfDay);
    }

    private static void Steps()
    {
        foreach (var (name, ticks) in new[] { ("Days", TimeSpan.TicksPerDay), ("Hours", TimeSpan.TicksPerHour), ("Minutes", TimeSpan.TicksPerMinute), ("Seconds", TimeSpan.TicksPerSecond), ("Milliseconds", TimeSpan.TicksPerMillisecond) })
            Pure.Add(Type + "Add" + name, (DateTime moment, double count) => moment.AddTicks(Ticks(count, ticks)));
        Pure.Add(Type + "AddTicks", (DateTime moment, long ticks) => moment.AddTicks(ticks));
        Pure.Add(Type + "AddMonths", (DateTime moment, int count) => moment.AddMonths(count));
        Pure.Add(Type + "AddYears", (DateTime moment, int count) => moment.AddYears(count));
        foreach (var name in new[] { "op_Addition", "Add" })
            Pure.Add(Type + name, (DateTime moment, TimeSpan time) => moment + time);
        foreach (var name in new[] { "op_Subtraction", "Subtract" })
        {
            Pure.Add(Type + name, (DateTime moment, TimeSpan time) => moment - time);
            Pure.Add(Type + name, (DateTime moment, DateTime since) => moment - since);
        }
    }

    /// <summary>So many of a unit in ticks: older hosts round them to thousandths of a second, the program doesn't.</summary>
    public static long Ticks(double count, long unit)
    {
        var whole = Math.Truncate(count);
        return Math.Abs(whole) * unit > long.MaxValue / 2.0 || double.IsNaN(count)
            ? throw new ArgumentOutOfRangeException(nameof(count))
            : ((long)whole * unit) + (long)((count - whole) * unit);
    }
}
