using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary><c>DateTimeOffset</c>: a moment with how far its clock is from the universal one.</summary>
internal static class OffsetCalls
{
    private const string Name = "System.DateTimeOffset";
    private const string Type = Name + ".";

    public static void Register()
    {
        Pure.Add(Type + ".ctor", (DateTime moment, TimeSpan offset) => moment.Kind == DateTimeKind.Local ? (object)OpenValue.Any : new DateTimeOffset(moment, offset));
        FrameworkTable.Where(Name, ".ctor", call => call.Count == 7, call => call[6] is TimeSpan offset
            ? Make(() => new DateTimeOffset(call.Whole(0), call.Whole(1), call.Whole(2), call.Whole(3), call.Whole(4), call.Whole(5), offset))
            : throw call.Unknown());
        Pure.Add(Type + "FromUnixTimeSeconds", (long seconds) => DateTimeOffset.FromUnixTimeSeconds(seconds));
        Pure.Add(Type + "ToUnixTimeSeconds", (DateTimeOffset moment) => moment.ToUnixTimeSeconds());
        Pure.Add(Type + "FromUnixTimeMilliseconds", (long time) => DateTimeOffset.FromUnixTimeMilliseconds(time));
        Pure.Add(Type + "ToUnixTimeMilliseconds", (DateTimeOffset moment) => moment.ToUnixTimeMilliseconds());
        Moments.Part(Name, "Year", (DateTimeOffset moment) => moment.Year);
        Moments.Part(Name, "Month", (DateTimeOffset moment) => moment.Month);
        Moments.Part(Name, "Day", (DateTimeOffset moment) => moment.Day);
        Moments.Part(Name, "Hour", (DateTimeOffset moment) => moment.Hour);
        Moments.Part(Name, "Minute", (DateTimeOffset moment) => moment.Minute);
        Moments.Part(Name, "Second", (DateTimeOffset moment) => moment.Second);
        Moments.Part(Name, "DayOfYear", (DateTimeOffset moment) => moment.DayOfYear);
        Moments.Part(Name, "DayOfWeek", (DateTimeOffset moment) => (int)moment.DayOfWeek);
        Pure.Add(Type + "get_Offset", (DateTimeOffset moment) => moment.Offset);
        Pure.Add(Type + "get_DateTime", (DateTimeOffset moment) => moment.DateTime);
        Pure.Add(Type + "get_UtcDateTime", (DateTimeOffset moment) => moment.UtcDateTime);
        Pure.Add(Type + "get_Ticks", (DateTimeOffset moment) => moment.Ticks);
        foreach (var (name, ticks) in new[] { ("Days", TimeSpan.TicksPerDay), ("Hours", TimeSpan.TicksPerHour), ("Minutes", TimeSpan.TicksPerMinute), ("Seconds", TimeSpan.TicksPerSecond) })
            Pure.Add(Type + "Add" + name, (DateTimeOffset moment, double count) => moment.AddTicks(DateCalls.Ticks(count, ticks)));
        foreach (var name in new[] { "op_Addition", "Add" })
            Pure.Add(Type + name, (DateTimeOffset moment, TimeSpan time) => moment + time);
        foreach (var name in new[] { "op_Subtraction", "Subtract" })
        {
            Pure.Add(Type + name, (DateTimeOffset moment, TimeSpan time) => moment - time);
            Pure.Add(Type + name, (DateTimeOffset moment, DateTimeOffset since) => moment - since);
        }

        Moments.Compare<DateTimeOffset>(Name);
        Moments.Write<DateTimeOffset>(Name, "osuOSR", (moment, format) => moment.ToString(format, CultureInfo.InvariantCulture));
    }

    private static DateTimeOffset Make(Func<DateTimeOffset> make)
    {
        try
        {
            return make();
        }
        catch (ArgumentException refused)
        {
            throw new ThrownByCode(refused.GetType().FullName!, refused.Message);
        }
    }
}
