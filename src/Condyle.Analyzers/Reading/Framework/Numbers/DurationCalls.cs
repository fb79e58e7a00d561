namespace Condyle.Analyzers.Reading;

/// <summary><c>TimeSpan</c>: whole ticks, worked out as the program's framework does, which hosts of the compiler don't all.</summary>
internal static class DurationCalls
{
    private const string Type = "System.TimeSpan.";

    public static void Register()
    {
        Pure.Add(Type + ".ctor", (long ticks) => new TimeSpan(ticks));
        Pure.Add(Type + ".ctor", (int hours, int minutes, int seconds) => new TimeSpan(hours, minutes, seconds));
        Pure.Add(Type + ".ctor", (int days, int hours, int minutes, int seconds) => new TimeSpan(days, hours, minutes, seconds));
        Pure.Add(Type + ".ctor", (int days, int hours, int minutes, int seconds, int milliseconds) => new TimeSpan(days, hours, minutes, seconds, milliseconds));
        Pure.Add(Type + "FromTicks", (long ticks) => new TimeSpan(ticks));
        foreach (var (name, ticks) in new[] { ("Days", TimeSpan.TicksPerDay), ("Hours", TimeSpan.TicksPerHour), ("Minutes", TimeSpan.TicksPerMinute), ("Seconds", TimeSpan.TicksPerSecond), ("Milliseconds", TimeSpan.TicksPerMillisecond) })
        {
            Pure.Add(Type + "From" + name, (double count) => Of(count * ticks));
            Pure.Add(Type + "get_Total" + name, (TimeSpan time) => (double)time.Ticks / ticks);
            FrameworkTable.Where("System.TimeSpan", "From" + name, call => call[0] is int or long, call => Whole(call, ticks));
        }

        Parts();
        Arithmetic();
    }

    private static void Parts()
    {
        Pure.Constant(Type + "Zero", TimeSpan.Zero);
        Pure.Constant(Type + "MaxValue", TimeSpan.MaxValue);
        Pure.Constant(Type + "MinValue", TimeSpan.MinValue);
        Pure.Add(Type + "get_Ticks", (TimeSpan time) => time.Ticks);
        Pure.Add(Type + "get_Days", (TimeSpan time) => time.Days);
        Pure.Add(Type + "get_Hours", (TimeSpan time) => time.Hours);
        Pure.Add(Type + "get_Minutes", (TimeSpan time) => time.Minutes);
        Pure.Add(Type + "get_Seconds", (TimeSpan time) => time.Seconds);
        Pure.Add(Type + "get_Milliseconds", (TimeSpan time) => time.Milliseconds);
        Pure.Add(Type + "ToString", (TimeSpan time) => time.ToString("c", System.Globalization.CultureInfo.InvariantCulture));
    }

    private static void Arithmetic()
    {
        foreach (var name in new[] { "op_Addition", "Add" })
            Pure.Add(Type + name, (TimeSpan a, TimeSpan b) => a + b);
        foreach (var name in new[] { "op_Subtraction", "Subtract" })
            Pure.Add(Type + name, (TimeSpan a, TimeSpan b) => a - b);
        foreach (var name in new[] { "op_UnaryNegation", "Negate" })
            Pure.Add(Type + name, (TimeSpan time) => -time);
        foreach (var name in new[] { "op_Multiply", "Multiply" })
            Pure.Add(Type + name, (TimeSpan time, double by) => Of(Math.Round(time.Ticks * by)));
        Pure.Add(Type + "op_Multiply", (double by, TimeSpan time) => Of(Math.Round(time.Ticks * by)));
        foreach (var name in new[] { "op_Division", "Divide" })
        {
            Pure.Add(Type + name, (TimeSpan time, double by) => Of(Math.Round(time.Ticks / by)));
            Pure.Add(Type + name, (TimeSpan time, TimeSpan by) => time.Ticks / (double)by.Ticks);
        }

        Pure.Add(Type + "Duration", (TimeSpan time) => time.Duration());
        Moments.Compare<TimeSpan>("System.TimeSpan");
    }

    // The count of a unit, and of those below it.
    private static object Whole(Invocation call, long ticks)
    {
        var sum = 0m;
        long[] units = [TimeSpan.TicksPerDay, TimeSpan.TicksPerHour, TimeSpan.TicksPerMinute, TimeSpan.TicksPerSecond, TimeSpan.TicksPerMillisecond, TimeSpan.TicksPerMillisecond / 1000];
        var first = Array.IndexOf(units, ticks);
        for (var i = 0; i < call.Count; i++)
            sum += first + i < units.Length && call[i] is int or long ? Convert.ToDecimal(call[i], System.Globalization.CultureInfo.InvariantCulture) * units[first + i] : throw call.Unknown();
        return sum is >= long.MinValue and <= long.MaxValue ? new TimeSpan((long)sum) : throw new ThrownByCode("System.ArgumentOutOfRangeException", "A time is too long.");
    }

    private static TimeSpan Of(double ticks) => double.IsNaN(ticks) ? throw new ArgumentException("A time isn't a number.")
        : ticks is > long.MaxValue or < long.MinValue ? throw new OverflowException("A time is too long.")
        : ticks == long.MaxValue ? TimeSpan.MaxValue
        : new TimeSpan((long)ticks);
}
