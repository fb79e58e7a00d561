namespace Condyle.Analyzers.Tests.Reading.Framework;

/// <summary>Mathematics, the number types, parsing and converting.</summary>
public class NumberTests
{
    [Fact]
    public void Mathematics_is_exact_by_type() => FrameworkOracle.Agrees(
        """
        rig.Control(Text($"{Math.Abs(-4)}{Math.Abs(-2.5)}{Math.Abs(-1.5f)}{Math.Abs(-3L)}{Math.Abs(-2m)}{Math.Sign(-3)}{Math.Sign(2.5)}{Math.Max(3, 5)}{Math.Max(3u, 5u)}{Math.Max((byte)3, (byte)5)}{Math.Min(3.5, 2.5)}{Math.Min(double.NaN, 1)}{Math.Max(1f, float.NaN)}{Math.Max(3m, 5m)}{Math.Clamp(7, 1, 5)}{Math.Clamp(0.5, 1, 5)}{Math.Clamp(3f, 1f, 5f)}{Math.MaxMagnitude(-3.0, 2.0)}{Math.MinMagnitude(-3.0, 2.0)}"));
        rig.Control(Text($"{Math.Floor(-1.5)}{Math.Ceiling(1.2)}{Math.Truncate(-1.7)}{Math.Round(2.5)}{Math.Round(3.5)}{Math.Round(2.345, 2)}{Math.Round(2.5, MidpointRounding.AwayFromZero)}{Math.Round(-2.5, MidpointRounding.ToZero)}{Math.Round(-2.5, MidpointRounding.ToNegativeInfinity)}{Math.Round(2.21, 1, MidpointRounding.ToPositiveInfinity)}{Math.Round(2.5m)}{Math.Round(1.256m, 2)}{Math.Round(1.256m, 2, MidpointRounding.ToZero)}{Math.Floor(2.7m)}{MathF.Round(2.5f)}{MathF.Round(2.345f, 1)}{MathF.Round(-2.5f, MidpointRounding.AwayFromZero)}{Math.Round(1.25, 1, MidpointRounding.AwayFromZero)}"));
        rig.Control(Text($"{Math.Pow(2, 10)}{Math.Sqrt(16)}{Math.Cbrt(27)}{Math.Cbrt(-8)}{Math.Log2(8)}{Math.Log10(1000)}{Math.Log(8, 2) > 2.99}{Math.Exp(0)}{Math.Sin(0)}{Math.Cos(0)}{Math.Atan2(0, 1)}{Math.IEEERemainder(5, 3)}{Math.CopySign(3, -1)}{Math.ScaleB(3, 2)}{Math.ILogB(9)}{Math.BitIncrement(1.0) > 1}{Math.BitDecrement(1.0) < 1}{Math.FusedMultiplyAdd(2, 3, 4)}{Math.BigMul(100000, 100000)}{MathF.Sqrt(9)}{MathF.Cbrt(8)}{MathF.Pow(2, 3)}{MathF.Floor(1.5f)}{MathF.Max(1, 2)}{MathF.Abs(-2)}{MathF.Log2(16)}"));
        var (q, r) = Math.DivRem(17, 5); var d = Math.DivRem(17, 5, out var rem); var (s, c) = Math.SinCos(0); rig.Control(Text($"{q}{r}{d}{rem}{s}{c}{Math.DivRem(-17, 5).Remainder}"));
        rig.Control(Try(() => Math.Abs(int.MinValue)) + Try(() => Math.Clamp(1, 5, 2)) + Try(() => Math.Sign(double.NaN)) + Try(() => Math.Round(1.0, 99)) + Try(() => Math.DivRem(1, q - 3).Quotient));
        """);

    [Fact]
    public void Real_functions_are_within_rounding() => FrameworkOracle.Agrees(
        """
        var root = rig.Skeleton("s").Root("r"); var n = 0; void At(double x, double y = 0, double z = 0) => root.Child($"j{n++}", at: new Vector3((float)x, (float)y, (float)z));
        foreach (var x in new[] { 0.1, 0.5, 1.3, 2.7 }) { var f = (float)x; At(Math.Sinh(x), Math.Cosh(x), Math.Tanh(x)); At(Math.Asinh(x), Math.Acosh(x + 1), Math.Atanh(x / 3)); At(Math.Sin(x), Math.Cos(x), Math.Tan(x)); At(Math.Asin(x / 3), Math.Acos(x / 3), Math.Atan(x)); At(Math.Exp(x), Math.Log(x), Math.Log10(x)); At(Math.Log2(x), Math.Pow(x, 1.7), Math.Cbrt(x)); At(MathF.Sin(f), MathF.Cos(f), MathF.Tan(f)); At(MathF.Asin(f / 3), MathF.Acos(f / 3), MathF.Atan2(f, 2)); At(MathF.Exp(f), MathF.Log(f), MathF.Pow(f, 0.3f)); At(double.Hypot(x, 2), float.Lerp(1, 3, f), MathF.IEEERemainder(f, 0.7f)); At(MathF.FusedMultiplyAdd(f, f, f), MathF.Sqrt(f), MathF.ScaleB(f, 3)); At(MathF.SinCos(f).Sin, MathF.SinCos(f).Cos, MathF.Log(f, 3)); }
        """);

    [Fact]
    public void Number_types_have_their_own_members() => FrameworkOracle.Agrees(
        """
        rig.Control(Text($"{int.Max(3, 5)}{int.Min(3, 5)}{int.Clamp(9, 1, 4)}{int.Abs(-3)}{int.Sign(-9)}{int.IsEvenInteger(4)}{int.IsOddInteger(4)}{int.IsNegative(-1)}{int.IsPositive(0)}{int.IsPow2(8)}{int.Log2(9)}{int.PopCount(7)}{int.LeadingZeroCount(1)}{int.TrailingZeroCount(8)}{int.RotateLeft(1, 3)}{int.DivRem(7, 2)}{int.CopySign(3, -1)}{int.MaxMagnitude(-5, 3)}{long.Max(1, 2)}{byte.Min(3, 2)}{uint.PopCount(3)}"));
        rig.Control(Text($"{int.CreateChecked(3.7)}{int.CreateSaturating(1e20)}{byte.CreateTruncating(300)}{byte.CreateSaturating(-5)}{float.Lerp(1, 3, 0.5f)}{float.IsNaN(float.NaN)}{double.IsInfinity(1 / 0.0)}{float.IsFinite(1)}{double.IsInteger(2)}{float.IsNegative(-0f)}{double.Max(1, 2)}{float.Abs(-1)}{float.Clamp(5, 0, 1)}{double.Sqrt(4)}{float.Floor(1.5f)}{double.Hypot(3, 4)}{float.Sign(-2)}{decimal.Max(1, 2)}{decimal.Round(1.55m, 1)}{decimal.IsInteger(2.0m)}{double.DegreesToRadians(180) > 3.14}{double.IsEvenInteger(4)}{double.IsPow2(8)}{float.Round(2.5f)}{float.Pi > 3}"));
        rig.Control(Text($"{BitOperations.PopCount(255u)}{BitOperations.Log2(1000u)}{BitOperations.LeadingZeroCount(1u)}{BitOperations.TrailingZeroCount(8)}{BitOperations.RotateLeft(0x80000001u, 1)}{BitOperations.RotateRight(1u, 1)}{BitOperations.IsPow2(16)}{BitOperations.RoundUpToPowerOf2(17u)}{BitOperations.RoundUpToPowerOf2(0u)}{BitOperations.RoundUpToPowerOf2(64UL)}{BitOperations.PopCount(ulong.MaxValue)}"));
        rig.Control(Try(() => int.Clamp(1, 3, 2)));
        """);

    [Fact]
    public void Texts_are_parsed() => FrameworkOracle.Agrees(
        """
        rig.Control($"{int.Parse("12")}{int.Parse(" 7 ")}{long.Parse("99")}{byte.Parse("255")}{int.TryParse("x1", out var bad)}{bad}{int.TryParse("42", out var good)}{good}{int.TryParse((string?)null, out _)}{int.TryParse("", out _)}{bool.Parse("True")}{bool.TryParse("no", out _)}{bool.TryParse("false", out var f)}{f}{int.Parse("ff", System.Globalization.NumberStyles.HexNumber)}{double.Parse("15") == 15}{int.TryParse("99999999999", out var big)}{big}{uint.Parse("3000000000")}");
        var inv = System.Globalization.CultureInfo.InvariantCulture; rig.Control(Text($"{int.Parse("-12", inv)}{double.Parse("1.5", inv)}{float.Parse("0.25", inv)}{decimal.Parse("1,234.5", inv)}{double.TryParse("1e3", System.Globalization.NumberStyles.Float, inv, out var e)}{e}{int.TryParse("1,000", System.Globalization.NumberStyles.AllowThousands, inv, out var th)}{th}{float.TryParse("abc", inv, out _)}{int.TryParse("5", inv, out var five)}{five}{short.Parse("-3", System.Globalization.NumberStyles.AllowLeadingSign, inv)}"));
        rig.Control(Try(() => int.Parse("x")) + Try(() => int.Parse(null!)) + Try(() => byte.Parse("256")) + Try(() => int.Parse("")) + Try(() => bool.Parse("x")) + Try(() => float.Parse("1.2.3", inv)));
        """);

    [Fact]
    public void Values_are_converted() => FrameworkOracle.Agrees(
        """
        var inv = System.Globalization.CultureInfo.InvariantCulture; rig.Control(Text($"{Convert.ToInt32("12")}{Convert.ToInt32(2.5)}{Convert.ToInt32(3.5f)}{Convert.ToInt32(true)}{Convert.ToInt32('a')}{Convert.ToInt32(null)}{Convert.ToInt32("ff", 16)}{Convert.ToInt32("101", 2)}{Convert.ToString(10, 2)}{Convert.ToString(255, 16)}{Convert.ToDouble("2.5", inv)}{Convert.ToSingle(1)}{Convert.ToBoolean(1)}{Convert.ToBoolean("true")}{Convert.ToByte(200)}{Convert.ToChar("x")}{Convert.ToChar(66)}{Convert.ToString(5)}{Convert.ToString(1.5, inv)}{Convert.ToDecimal(1.5)}{Convert.ToInt64(7u)}{Convert.ToString(true)}{Convert.ToString((object?)null)}{Convert.ToInt16(DayOfWeek.Friday)}"));
        rig.Control(Try(() => Convert.ToByte(300)) + Try(() => Convert.ToInt32("x")) + Try(() => Convert.ToChar("ab")) + Try(() => Convert.ToInt32(1e20)) + Try(() => Convert.ToDouble('a')));
        """);

    [Fact]
    public void Values_are_compared_and_written() => FrameworkOracle.Agrees(
        """
        rig.Control($"{5.CompareTo(3)}{3.CompareTo(3)}{((byte)5).CompareTo((byte)2)}{'c'.CompareTo('a')}{true.CompareTo(false)}{1.5.CompareTo(double.NaN)}{5.Equals(5)}{5.Equals(5L)}{((object)5).Equals(5)}{double.NaN.Equals(double.NaN)}{5.CompareTo(null)}{DayOfWeek.Friday.CompareTo(DayOfWeek.Monday)}{DayOfWeek.Friday.Equals(DayOfWeek.Friday)}{object.Equals(1, 1)}{object.Equals(null, 1)}{object.Equals(null, null)}{Equals("a", "a")}{ReferenceEquals(rig, rig)}");
        rig.Control($"{255.ToString("X")}{7.ToString("D3")}{(-5).ToString("D2")}{1234567.ToString("N0", System.Globalization.CultureInfo.InvariantCulture)}{0.5.ToString(System.Globalization.CultureInfo.InvariantCulture)}{2.5f.ToString("F1", System.Globalization.CultureInfo.InvariantCulture)}{true.ToString()}{'c'.ToString()}{5.ToString("00")}{12.0.ToString("0")}{(5 as object).ToString()}{((int?)3).ToString()}{((int?)null).ToString()}{3m.ToString(System.Globalization.CultureInfo.InvariantCulture)}{((IFormattable)7).ToString("X2", null)}");
        int? n = null; rig.Control($"{n.HasValue}{n.GetValueOrDefault()}{n.GetValueOrDefault(4)}{Try(() => n!.Value)}{((int?)5).Value}{((int?)5).Equals(5)}{n.Equals(null)}{n ?? 9}");
        rig.Control(Try(() => 5.CompareTo("x")) + Try(() => { ArgumentNullException.ThrowIfNull((object?)null); return 1; }) + Try(() => { ArgumentException.ThrowIfNullOrEmpty(""); return 1; }) + Try(() => { ArgumentException.ThrowIfNullOrWhiteSpace(" x"); return 1; }) + Try(() => { ArgumentOutOfRangeException.ThrowIfNegative(-1); return 1; }) + Try(() => { ArgumentOutOfRangeException.ThrowIfGreaterThan(2, 3); return 1; }) + Try(() => { ArgumentOutOfRangeException.ThrowIfZero(0); return 1; }) + Try(() => { ArgumentOutOfRangeException.ThrowIfLessThan(2, 3); return 1; }) + Try(() => { ArgumentOutOfRangeException.ThrowIfEqual(2, 2); return 1; }));
        """);

    [Fact]
    public void Enums_know_their_names() => FrameworkOracle.Agrees(
        """
        rig.Control(All(Enum.GetValues<Part>()) + All(Enum.GetNames<Part>()) + Enum.IsDefined(Part.Hand) + Enum.IsDefined((Part)99) + Enum.GetName(Part.Foot) + (Enum.GetName((Part)99) ?? "none") + Enum.Parse<Part>("Hand") + Enum.Parse<Part>("foot", true) + Enum.Parse<Part>("5") + Enum.TryParse<Part>("nope", out var p) + p + Enum.TryParse("Foot", out Part q) + q + Enum.TryParse<Part>("HAND", true, out var h) + h);
        rig.Control($"{Flags.A | Flags.B}{(Flags.A | Flags.C).HasFlag(Flags.C)}{Flags.A.HasFlag(Flags.B)}{Enum.Parse<Flags>("A, C")}{Flags.None}{(Flags)8}{Flags.All}{(int)Part.Foot}{Part.Hand.ToString()}{Part.Hand.ToString("D")}{Part.Hand:G}");
        rig.Control(Try(() => Enum.Parse<Part>("x")) + Try(() => Enum.Parse<Part>("")) + Try(() => Enum.Parse<Part>(null!)));
        """,
        """
        private enum Part { Arm, Hand = 5, Foot = 2 }
        [Flags] private enum Flags { None = 0, A = 1, B = 2, C = 4, All = 7 }
        """);
}
