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
        Pure.Add(Type + "get_Ticks", (DateTime moment) => moment.Ticks);
        Pure.Add(Type + "get_Date", (DateTime moment) => moment.Date);
        Pure.Add(Type + "get_TimeOfDay", (DateTime moment) => moment.TimeOfDay);
        Pure.Add(Type + "AddMonths", (DateTime moment, int count) => moment.AddMonths(count));
        Pure.Add(Type + "AddYears", (DateTime moment, int count) => moment.AddYears(count));
        Moments.Part(Name, "Kind", (DateTime moment) => (int)moment.Kind);
        Moments.DayParts(Name, (DateTime moment) => moment);
        Moments.ClockParts(Name, (DateTime moment) => moment);
        Moments.Steps(Name, (DateTime moment, long ticks) => moment.AddTicks(ticks), (moment, since) => moment - since);
        Moments.Compare<DateTime>(Name);
        Moments.Write<DateTime>(Name, "osuOSR", (moment, format) => moment.ToString(format, CultureInfo.InvariantCulture));
        foreach (var name in new[] { "Parse", "ParseExact" })
            FrameworkTable.Add(Name, name, call => Moments.Read(call));
    }
}
