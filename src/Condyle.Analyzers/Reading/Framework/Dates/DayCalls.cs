using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary><c>DateOnly</c>.</summary>
internal static class DayCalls
{
    private const string Name = DayValue.Type;
    private const string Type = Name + ".";

    public static void Register()
    {
        Pure.Add(Type + ".ctor", (int year, int month, int day) => DayValue.Of(new DateTime(year, month, day)));
        Pure.Constant(Type + "MinValue", DayValue.Of(DateTime.MinValue));
        Pure.Constant(Type + "MaxValue", DayValue.Of(DateTime.MaxValue));
        Pure.Add(Type + "FromDateTime", (DateTime moment) => DayValue.Of(moment));
        Pure.Add(Type + "FromDayNumber", (int number) => DayValue.Of(DateTime.MinValue.AddDays(number)));
        Moments.DayParts(Name, (DayValue day) => day.Start);
        Moments.Part(Name, "DayNumber", (DayValue day) => day.Number);
        Pure.Add(Type + "AddDays", (DayValue day, int count) => DayValue.Of(day.Start.AddDays(count)));
        Pure.Add(Type + "AddMonths", (DayValue day, int count) => DayValue.Of(day.Start.AddMonths(count)));
        Pure.Add(Type + "AddYears", (DayValue day, int count) => DayValue.Of(day.Start.AddYears(count)));
        Pure.Add(Type + "ToDateTime", (DayValue day, ClockValue time) => day.Start + time.SinceMidnight);
        Moments.Compare<DayValue>(Name);
        Moments.Write<DayValue>(Name, "oOrR", (day, format) => format switch
        {
            "o" or "O" => day.Start.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            "r" or "R" => day.Start.ToString("ddd, dd MMM yyyy", CultureInfo.InvariantCulture),
            "" => day.Start.ToString("d", CultureInfo.InvariantCulture),
            _ => IsOfDays(format) ? day.Start.ToString(format, CultureInfo.InvariantCulture) : null,
        });
        foreach (var name in new[] { "Parse", "ParseExact" })
            FrameworkTable.Add(Name, name, call => Moments.Read(call) is var moment && moment.TimeOfDay == TimeSpan.Zero ? DayValue.Of(moment) : throw call.Unknown());
    }

    // Any other format has parts that a day lacks, which is refused, or stands for several.
    private static bool IsOfDays(string format) => format.Length > 1 && format.All(character => character is 'y' or 'M' or 'd' or '-' or '_' or '.' or ' ' or '/' or ',');
}
