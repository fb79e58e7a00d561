using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary><c>TimeOnly</c>.</summary>
internal static class ClockCalls
{
    private const string Name = ClockValue.Type;
    private const string Type = Name + ".";

    public static void Register()
    {
        Pure.Add(Type + ".ctor", (int hour, int minute) => At(hour, minute, 0, 0));
        Pure.Add(Type + ".ctor", (int hour, int minute, int second) => At(hour, minute, second, 0));
        Pure.Add(Type + ".ctor", (int hour, int minute, int second, int millisecond) => At(hour, minute, second, millisecond));
        Pure.Add(Type + ".ctor", (long ticks) => ClockValue.Of(new TimeSpan(ticks)));
        Pure.Constant(Type + "MinValue", new ClockValue(0));
        Pure.Constant(Type + "MaxValue", new ClockValue(TimeSpan.TicksPerDay - 1));
        Pure.Add(Type + "FromTimeSpan", (TimeSpan time) => ClockValue.Of(time));
        Pure.Add(Type + "FromDateTime", (DateTime moment) => ClockValue.Of(moment.TimeOfDay));
        Moments.ClockParts(Name, (ClockValue time) => time.OnTheFirstDay);
        Pure.Add(Type + "get_Ticks", (ClockValue time) => time.Ticks);
        Pure.Add(Type + "AddHours", (ClockValue time, double count) => After(time, count * TimeSpan.TicksPerHour));
        Pure.Add(Type + "AddMinutes", (ClockValue time, double count) => After(time, count * TimeSpan.TicksPerMinute));
        Pure.Add(Type + "Add", (ClockValue time, TimeSpan more) => time.After(more));
        Pure.Add(Type + "ToTimeSpan", (ClockValue time) => time.SinceMidnight);
        Pure.Add(Type + "op_Subtraction", (ClockValue time, ClockValue since) => time.After(since.SinceMidnight.Negate()).SinceMidnight);
        Pure.Add(Type + "IsBetween", (ClockValue time, ClockValue from, ClockValue to) => from.Ticks <= to.Ticks
            ? time.Ticks >= from.Ticks && time.Ticks < to.Ticks
            : time.Ticks >= from.Ticks || time.Ticks < to.Ticks);
        Moments.Compare<ClockValue>(Name);
        Moments.Write<ClockValue>(Name, "oOrR", (time, format) => format switch
        {
            "o" or "O" => time.OnTheFirstDay.ToString("HH:mm:ss.fffffff", CultureInfo.InvariantCulture),
            "r" or "R" => time.OnTheFirstDay.ToString("HH:mm:ss", CultureInfo.InvariantCulture),
            "" => time.OnTheFirstDay.ToString("t", CultureInfo.InvariantCulture),
            _ => format.Length > 1 && format.All(character => character is 'H' or 'h' or 'm' or 's' or ':' or '_' or '-' or ' ') ? time.OnTheFirstDay.ToString(format, CultureInfo.InvariantCulture) : null,
        });
    }

    private static ClockValue After(ClockValue time, double ticks) => Math.Abs(ticks) < long.MaxValue
        ? time.After(new TimeSpan((long)ticks))
        : throw new AnswerIsOpen("what is too many hours for a time of day differs between versions of .NET");

    private static ClockValue At(int hour, int minute, int second, int millisecond) => ClockValue.Of(new DateTime(1, 1, 1, hour, minute, second, millisecond).TimeOfDay);
}
