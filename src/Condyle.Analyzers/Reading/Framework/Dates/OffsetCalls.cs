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
        Pure.Add(Type + "get_Offset", (DateTimeOffset moment) => moment.Offset);
        Pure.Add(Type + "get_DateTime", (DateTimeOffset moment) => moment.DateTime);
        Pure.Add(Type + "get_UtcDateTime", (DateTimeOffset moment) => moment.UtcDateTime);
        Pure.Add(Type + "get_Ticks", (DateTimeOffset moment) => moment.Ticks);
        Pure.Add(Type + "AddMonths", (DateTimeOffset moment, int count) => moment.AddMonths(count));
        Pure.Add(Type + "AddYears", (DateTimeOffset moment, int count) => moment.AddYears(count));
        Moments.DayParts(Name, (DateTimeOffset moment) => moment.DateTime);
        Moments.ClockParts(Name, (DateTimeOffset moment) => moment.DateTime);
        Moments.Steps(Name, (DateTimeOffset moment, long ticks) => moment.AddTicks(ticks), (moment, since) => moment - since);
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
