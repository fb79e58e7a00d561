namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Dates, times of day, wide numbers and ids that the code writes down: known, but for what the culture or the clock decides.</summary>
public class WrittenValueTests
{
    [Theory]
    [InlineData("var d = new DateTime(2024, 2, 28); var e = d.AddDays(2); rig.Group($\"{e.Year}_{e.Month}_{e.Day}_{e.DayOfWeek}_{e.DayOfYear}\"); rig.Group(e > d ? \"later\" : \"sooner\"); rig.Group((e - d).Days.ToString()); rig.Group(e.ToString(\"yyyyMMdd\", System.Globalization.CultureInfo.InvariantCulture));")]
    [InlineData("var d = new DateOnly(2024, 2, 28); var e = d.AddDays(2); rig.Group($\"{e.Year}_{e.Month}_{e.Day}_{e.DayNumber}_{e.DayOfWeek}\"); rig.Group(e.ToString(\"o\")); rig.Group(e > d ? \"later\" : \"sooner\");")]
    [InlineData("var t = new TimeOnly(23, 30); var u = t.AddHours(2); rig.Group($\"{u.Hour}_{u.Minute}_{u.Second}\"); rig.Group(u.ToString(\"HH:mm\", System.Globalization.CultureInfo.InvariantCulture)); rig.Group(t.IsBetween(new TimeOnly(22, 0), new TimeOnly(1, 0)).ToString());")]
    [InlineData("var b = System.Numerics.BigInteger.Pow(2, 70); rig.Group(b.ToString()); rig.Group(((int)(b % 1000)).ToString()); rig.Group((b > 5 ? 1 : 2).ToString()); System.Numerics.BigInteger f = 1; for (var i = 2; i < 25; i++) f *= i; rig.Group($\"f{f}\"); rig.Group(System.Numerics.BigInteger.Parse(\"123456789012345678901234567890\").IsEven.ToString());")]
    [InlineData("Int128 n = 5; n <<= 70; n += 3; rig.Group(n.ToString()); rig.Group(((long)(n >> 70)).ToString()); UInt128 u = UInt128.MaxValue; rig.Group((u == UInt128.MaxValue).ToString()); rig.Group((n * 2 > 7).ToString());")]
    [InlineData("var g = Guid.Parse(\"01234567-89ab-cdef-0123-456789abcdef\"); rig.Group(\"id_\" + g.ToString(\"N\")); rig.Group(g.ToString()); rig.Group((g == Guid.Empty).ToString()); rig.Group($\"{g:N}\");")]
    [InlineData("var d = new DateTimeOffset(2024, 1, 2, 3, 4, 5, TimeSpan.Zero); rig.Group($\"{d.Year}_{d.Offset.Hours}_{d.AddHours(30).Day}\"); rig.Group(d.ToUnixTimeSeconds().ToString());")]
    [InlineData("var v = new Version(1, 2, 3); rig.Group($\"v{v.Major}_{v.Minor}\"); rig.Group(v.ToString()); rig.Group((v > new Version(1, 0)).ToString()); rig.Group(Version.Parse(\"3.4\").Minor.ToString());")]
    [InlineData("TimeSpan z = default; rig.Group(z.Ticks.ToString()); DateTime dt = default; rig.Group(dt.Year.ToString()); TimeSpan[] all = new TimeSpan[2]; rig.Group(all[1].Days.ToString());")]
    [InlineData("var day = DateTime.Parse(\"2024-03-05\", System.Globalization.CultureInfo.InvariantCulture); rig.Group(day.Day.ToString()); var p = DateOnly.ParseExact(\"2024-03-05\", \"yyyy-MM-dd\", System.Globalization.CultureInfo.InvariantCulture); rig.Group(p.Month.ToString()); rig.Group(DateTime.DaysInMonth(2024, 2) + \"_\" + DateTime.IsLeapYear(2024));")]
    [InlineData("var days = new[] { new DateOnly(2024, 5, 1), new DateOnly(2023, 1, 9) }; foreach (var d in days.OrderBy(x => x)) rig.Group($\"y{d.Year}\"); var map = new Dictionary<DateOnly, string> { [days[0]] = \"may\" }; rig.Group(map[new DateOnly(2024, 5, 1)]);")]
    [InlineData("checked { try { Int128 n = Int128.MaxValue; n++; rig.Group(\"went\"); } catch (OverflowException) { rig.Group(\"over\"); } } UInt128 u = 0; u--; rig.Group((u == UInt128.MaxValue).ToString()); Int128 k = long.MaxValue; rig.Group(((int)k).ToString()); try { rig.Group(checked((int)k).ToString()); } catch (OverflowException) { rig.Group(\"o2\"); }")]
    [InlineData("System.Numerics.BigInteger b = long.MaxValue; b *= b; try { rig.Group(((int)b).ToString()); } catch (OverflowException) { rig.Group(\"over\"); } rig.Group((b >> 100).ToString() + (b % 7) + System.Numerics.BigInteger.Max(b, 5)); System.Numerics.BigInteger a = -7; rig.Group($\"{a / 2}_{a % 2}_{a >> 1}_{-a}\"); rig.Group(((double)b > 1e10).ToString());")]
    [InlineData("var d = new DateTime(2024, 12, 31); rig.Group(d.AddMonths(2).ToString(\"s\")); rig.Group(string.Create(System.Globalization.CultureInfo.InvariantCulture, $\"{d:yyyyMMdd}\")); rig.Group($\"{d.DayOfWeek}\"); rig.Group(d.DayOfWeek == DayOfWeek.Tuesday ? \"tue\" : \"other\"); rig.Group(d.AddDays(0.5).Hour.ToString()); try { d.AddYears(9000); } catch (ArgumentOutOfRangeException) { rig.Group(\"far\"); } try { new DateTime(2024, 13, 1); } catch (ArgumentOutOfRangeException) { rig.Group(\"none\"); }")]
    [InlineData("try { var a = Int128.Parse(new string('9', 60), System.Globalization.CultureInfo.InvariantCulture); rig.Group(\"read\"); } catch (OverflowException) { rig.Group(\"over\"); } var i = -1; try { var u = checked((UInt128)i); rig.Group(\"made\"); } catch (OverflowException) { rig.Group(\"below\"); } rig.Group(((UInt128)i).ToString());")]
    [InlineData("var m = -1m; try { var u = (UInt128)m; rig.Group(\"made\"); } catch (OverflowException) { rig.Group(\"below\"); } var d = -1.0; try { var u = checked((UInt128)d); rig.Group(\"made\"); } catch (OverflowException) { rig.Group(\"also\"); } rig.Group($\"{(UInt128)12345.75}{(Int128)(-2.5f)}{(Int128)7.9m}\");")]
    [InlineData("var n = Int128.MinValue; try { n /= -1; rig.Group(\"divided\"); } catch (OverflowException) { rig.Group(\"over\"); } try { n = Int128.Abs(n); rig.Group(\"turned\"); } catch (OverflowException) { rig.Group(\"too\"); } n = -n; rig.Group((n == Int128.MinValue).ToString());")]
    [InlineData("string Try(Func<object> run) { try { return run() is { } made ? \"made\" : \"none\"; } catch (ArgumentOutOfRangeException) { return \"range\"; } } var day = new DateOnly(2020, 1, 1); foreach (var n in new[] { 22_000_000, 21_350_400, -21_350_399, int.MaxValue, 5 }) { rig.Group(Try(() => day.AddDays(n)) + n); rig.Group(Try(() => DateOnly.FromDayNumber(n)) + n + \"_of\"); }")]
    [InlineData("foreach (var hours in new[] { 5.3, -1.1, 30.7, 1e-9 }) rig.Group($\"t{new TimeOnly(1, 2).AddHours(hours).Ticks}_{new TimeOnly(1, 2).AddMinutes(hours).Ticks}_{new DateTime(2024, 1, 1).AddHours(hours).Ticks}_{new TimeOnly(5, 6) - new TimeOnly(7, 8)}\");")]
    [InlineData("var d = new DateTimeOffset(2024, 1, 31, 3, 4, 5, TimeSpan.FromHours(2)).AddMilliseconds(7); rig.Group($\"{d.AddMonths(1).Day}_{d.AddYears(1).Year}_{d.AddTicks(9).Ticks}_{d.Millisecond}_{(d - TimeSpan.FromDays(40)).Month}_{(d - DateTimeOffset.FromUnixTimeSeconds(0)).Days}_{d.DayOfWeek}\"); try { rig.Group($\"g{(d - TimeSpan.MinValue).Year}\"); } catch (ArgumentOutOfRangeException) { rig.Group(\"far\"); }")]
    [InlineData("var b = System.Numerics.BigInteger.Pow(2, 70) + 1; rig.Group($\"{b >> int.MaxValue}_{-b << int.MinValue}_{b >> -3}_{System.Numerics.BigInteger.ModPow(3, 1000, b)}\"); try { rig.Group($\"{System.Numerics.BigInteger.ModPow(3, -1, b)}\"); } catch (ArgumentOutOfRangeException) { rig.Group(\"below\"); }")]
    [InlineData("var n = Int128.MinValue; try { n %= -1; rig.Group($\"left{n}\"); } catch (OverflowException) { rig.Group(\"over\"); } Int128 m = -17; rig.Group($\"r{m % 5}_{m % -5}_{UInt128.MaxValue % 7}\"); try { rig.Group($\"z{m % 0}\"); } catch (DivideByZeroException) { rig.Group(\"zero\"); }")]
    [InlineData("var b = new System.Numerics.BigInteger(17); rig.Group($\"b{b % 5}_{-b % 5}_{new System.Numerics.BigInteger(-2.9)}_{new System.Numerics.BigInteger(7.9m)}_{new System.Numerics.BigInteger(ulong.MaxValue)}\"); try { rig.Group($\"n{new System.Numerics.BigInteger(double.NaN)}\"); } catch (OverflowException) { rig.Group(\"nan\"); }")]
    public void What_the_code_writes_down_is_known(string code) => Oracle.Agrees(code);

    [Theory]
    [InlineData("DateTime.Now.Year < 1900")]
    [InlineData("DateTime.UtcNow > new DateTime(2020, 1, 1)")]
    [InlineData("new DateTime(2024, 3, 5).ToString() == \"a\"")]
    [InlineData("$\"{new DateTime(2024, 3, 5):yyyy-MM-dd}\".Length == 10")]
    [InlineData("DateTime.Parse(\"2024-03-05\").Year == 2024")]
    [InlineData("new DateOnly(2024, 3, 5).ToString(\"yyyy\") == \"2024\"")]
    [InlineData("Guid.NewGuid() == Guid.Empty")]
    [InlineData("DateOnly.FromDateTime(DateTime.Today).Day == 1")]
    [InlineData("new TimeOnly(1, 2).AddHours(1e13).Hour == 2")] // as the version of .NET decides
    [InlineData("new DateTime(2024, 1, 1).AddHours(double.NaN).Hour == 2")]
    [InlineData("(Int128)1e60 > 0")] // as the version of .NET decides
    public async Task What_the_culture_or_the_clock_decides_is_not(string code) => Assert.Equal(
        ["CDY1001 \"either\"", "CDY1001 \"or\""],
        await Findings.In($"if ({code}) rig.Group(\"either\"); else rig.Group(\"or\");"));

    [Theory]
    [InlineData("rig.Group($\"take{new DateOnly(2024, 3, 5).Year}\");", "CDY1001 $\"take{new DateOnly(2024, 3, 5).Year}\"")]
    [InlineData("if (System.Numerics.BigInteger.Pow(2, 80) > 5) rig.Group(\"large\"); else rig.Group(\"small\");", "CDY1001 \"large\"")]
    [InlineData("if (System.Numerics.BigInteger.Pow(Environment.TickCount, 2) == 16) rig.Group(\"either\");", "CDY1001 \"either\"")]
    [InlineData("var many = System.Numerics.BigInteger.Pow(2, 2_000_000_000); if (many < 0) rig.Group(\"either\");", "CDY1001 \"either\"")]
    public async Task What_follows_is_found(string code, string expected) => Assert.Equal([expected], await Findings.In(code));
}
