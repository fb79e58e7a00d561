using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary>What dates and times of day have in common: their parts, how they are compared, and which texts are the same in every culture.</summary>
internal static class Moments
{
    private static readonly string[] Written = ["yyyy-MM-dd", "yyyy-MM-ddTHH:mm", "yyyy-MM-ddTHH:mm:ss", "yyyy-MM-dd HH:mm", "yyyy-MM-dd HH:mm:ss"];

    /// <summary>Their order, by all the names under which it is asked for.</summary>
    public static void Compare<T>(string type)
        where T : struct, IComparable
    {
        type += ".";
        foreach (var name in new[] { "op_Equality", "Equals" })
            Pure.Add(type + name, (T a, T b) => a.Equals(b));
        foreach (var name in new[] { "Compare", "CompareTo" })
            Pure.Add(type + name, (T a, T b) => a.CompareTo(b));
        Pure.Add(type + "op_Inequality", (T a, T b) => !a.Equals(b));
        Pure.Add(type + "op_LessThan", (T a, T b) => a.CompareTo(b) < 0);
        Pure.Add(type + "op_LessThanOrEqual", (T a, T b) => a.CompareTo(b) <= 0);
        Pure.Add(type + "op_GreaterThan", (T a, T b) => a.CompareTo(b) > 0);
        Pure.Add(type + "op_GreaterThanOrEqual", (T a, T b) => a.CompareTo(b) >= 0);
    }

    /// <summary>The parts that tell the day.</summary>
    public static void DayParts<T>(string type, Func<T, DateTime> at)
    {
        Part<T>(type, "Year", moment => at(moment).Year);
        Part<T>(type, "Month", moment => at(moment).Month);
        Part<T>(type, "Day", moment => at(moment).Day);
        Part<T>(type, "DayOfYear", moment => at(moment).DayOfYear);
        Part<T>(type, "DayOfWeek", moment => (int)at(moment).DayOfWeek);
    }

    /// <summary>The parts that tell the time of day.</summary>
    public static void ClockParts<T>(string type, Func<T, DateTime> at)
    {
        Part<T>(type, "Hour", moment => at(moment).Hour);
        Part<T>(type, "Minute", moment => at(moment).Minute);
        Part<T>(type, "Second", moment => at(moment).Second);
        Part<T>(type, "Millisecond", moment => at(moment).Millisecond);
    }

    /// <summary>What lies so many ticks later, by all the names and units in which it is asked for, and how long one comes after another.</summary>
    public static void Steps<T>(string type, Func<T, long, T> after, Func<T, T, TimeSpan> since)
    {
        type += ".";
        foreach (var (name, unit) in new[] { ("Days", TimeSpan.TicksPerDay), ("Hours", TimeSpan.TicksPerHour), ("Minutes", TimeSpan.TicksPerMinute), ("Seconds", TimeSpan.TicksPerSecond), ("Milliseconds", TimeSpan.TicksPerMillisecond) })
            Pure.Add(type + "Add" + name, (T moment, double count) => after(moment, Ticks(count, unit)));
        Pure.Add(type + "AddTicks", (T moment, long ticks) => after(moment, ticks));
        foreach (var name in new[] { "op_Addition", "Add" })
            Pure.Add(type + name, (T moment, TimeSpan time) => after(moment, time.Ticks));
        foreach (var name in new[] { "op_Subtraction", "Subtract" })
        {
            Pure.Add(type + name, (T moment, TimeSpan time) => after(moment, -time.Ticks));
            Pure.Add(type + name, since);
        }
    }

    /// <summary>A part that is an enum or a whole number.</summary>
    public static void Part<T>(string type, string name, Func<T, int> part)
    {
        FrameworkTable.Add(type, "get_" + name, new FrameworkMethod(Of) { NeedsAll = true });

        object Of(Invocation call) => call[0] is not T moment ? throw call.Unknown()
            : call.Method.Returns is { Shape: TypeShape.Enum } days ? new EnumValue(days, part(moment)) : part(moment);
    }

    /// <summary>Its text: known for a format that is the same in every culture, and for what the code writes in the invariant one.</summary>
    public static void Write<T>(string type, string sameEverywhere, Func<T, string, string?> write) => FrameworkTable.Add(type, "ToString", call => Text(call, sameEverywhere, write) is { } text ? TextValue.Plain(text) : OpenValue.Any);

    /// <summary>Reads what a text says that is written year first, where the code asks for the invariant culture: others may count the years otherwise.</summary>
    public static DateTime Read(Invocation call)
    {
        var isExact = call.Method.Name == "ParseExact";
        var isPlain = call[isExact ? 2 : 1] == OtherCalls.InvariantCulture && call[isExact ? 3 : 2] is null or EnumValue { Number: 0 };
        return isPlain && DateTime.TryParseExact(call.Text(0), isExact ? [call.Text(1)] : Written, CultureInfo.InvariantCulture, DateTimeStyles.None, out var moment) && Written.Contains(isExact ? call.Text(1) : Written[0])
            ? moment
            : throw call.Unknown();
    }

    // So many of a unit in ticks: older hosts round them to thousandths of a second, the program doesn't.
    private static long Ticks(double count, long unit)
    {
        if (double.IsNaN(count))
            throw new AnswerIsOpen("what no number of hours comes to differs between versions of .NET");
        var whole = Math.Truncate(count);
        return Math.Abs(whole) * unit > long.MaxValue / 2.0
            ? throw new ArgumentOutOfRangeException(nameof(count))
            : ((long)whole * unit) + (long)((count - whole) * unit);
    }

    private static string? Text<T>(Invocation call, string sameEverywhere, Func<T, string, string?> write)
    {
        if (call[0] is not T moment)
            throw call.Unknown();
        foreach (var argument in call.Arguments)
            call.Machine.Calls.Observe(argument);
        var format = call[1] is TextValue text ? text.TryKnown(out var known) ? known : throw call.Unknown() : "";
        var isInvariant = call[1] == OtherCalls.InvariantCulture || call[2] == OtherCalls.InvariantCulture;
        return isInvariant || (format.Length == 1 && sameEverywhere.Contains(format)) ? write(moment, format) : null;
    }
}
