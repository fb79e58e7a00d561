namespace Condyle.Analyzers.Reading;

/// <summary>What the number types have as static members of their own, and <c>Math</c> for each of them.</summary>
internal static class NumberTypeCalls
{
    public static void Register()
    {
        Whole<sbyte>("SByte", Convert.ToSByte, sbyte.MinValue, sbyte.MaxValue);
        Whole<byte>("Byte", Convert.ToByte, byte.MinValue, byte.MaxValue);
        Whole<short>("Int16", Convert.ToInt16, short.MinValue, short.MaxValue);
        Whole<ushort>("UInt16", Convert.ToUInt16, ushort.MinValue, ushort.MaxValue);
        Whole<int>("Int32", Convert.ToInt32, int.MinValue, int.MaxValue);
        Whole<uint>("UInt32", Convert.ToUInt32, uint.MinValue, uint.MaxValue);
        Whole<long>("Int64", Convert.ToInt64, long.MinValue, long.MaxValue);
        Whole<ulong>("UInt64", Convert.ToUInt64, ulong.MinValue, ulong.MaxValue);
        FrameworkTable.Where("System.Math", "DivRem", call => call.Count == 3, call =>
        {
            var parts = (TupleValue)FrameworkTable.Find("System.Math", "DivRem")!.Call(new Invocation(call.Machine, call.Method, [call[0], call[1]]))!;
            call.Out(2, parts.Items[1]);
            return parts.Items[0];
        });
        Ordered<decimal>("System.Decimal.", value => value);
        Ordered<decimal>("System.Math.", value => value);
        Pure.Add("System.Decimal.IsInteger", (decimal value) => value == decimal.Truncate(value));
        Real();
        foreach (var name in new[] { "Single", "Double", "Decimal" })
        {
            foreach (var create in new[] { "CreateChecked", "CreateTruncating", "CreateSaturating" })
                FrameworkTable.Add("System." + name, create, call => Create(call, create == "CreateChecked"));
        }
    }

    // A decimal holds all of them exactly.
    private static void Whole<T>(string name, Func<decimal, T> from, T least, T most)
        where T : struct, IComparable<T>, IConvertible
    {
        var type = $"System.{name}.";
        foreach (var owner in new[] { type, "System.Math." })
        {
            Ordered<T>(owner, from);
            Pure.Add(owner + "DivRem", (T a, T b) => Number(b) == 0
                ? throw new DivideByZeroException()
                : (object)new TupleValue([from(decimal.Truncate(Number(a) / Number(b))), from(Number(a) % Number(b))]));
        }

        Pure.Add(type + "IsEvenInteger", (T value) => Number(value) % 2 == 0);
        Pure.Add(type + "IsOddInteger", (T value) => Number(value) % 2 != 0);
        Pure.Add(type + "IsNegative", (T value) => Number(value) < 0);
        Pure.Add(type + "IsPositive", (T value) => Number(value) >= 0);
        Pure.Add(type + "IsPow2", (T value) => Number(value) > 0 && Bits.Count((ulong)Number(value)) == 1);
        Pure.Add(type + "Log2", (T value) => Number(value) < 0 ? throw new ArgumentOutOfRangeException(nameof(value)) : from(Bits.Log2((ulong)Number(value))));
        Saturating(type, "CreateSaturating", from, least, most);
        foreach (var create in new[] { "CreateChecked", "CreateTruncating" })
            FrameworkTable.Add("System." + name, create, call => Create(call, create == "CreateChecked"));
    }

    private static void Ordered<T>(string type, Func<decimal, T> from)
        where T : struct, IComparable<T>, IConvertible
    {
        Pure.Add(type + "Max", (T a, T b) => a.CompareTo(b) >= 0 ? a : b);
        Pure.Add(type + "Min", (T a, T b) => a.CompareTo(b) <= 0 ? a : b);
        Pure.Add(type + "MaxMagnitude", (T a, T b) => Magnitude(a) > Magnitude(b) || (Magnitude(a) == Magnitude(b) && Number(a) >= 0) ? a : b);
        Pure.Add(type + "MinMagnitude", (T a, T b) => Magnitude(a) < Magnitude(b) || (Magnitude(a) == Magnitude(b) && Number(a) < 0) ? a : b);
        Pure.Add(type + "Abs", (T value) => Number(value) < 0 ? from(-Number(value)) : value);
        Pure.Add(type + "Sign", (T value) => Math.Sign(Number(value)));
        Pure.Add(type + "CopySign", (T value, T sign) => from(Number(sign) < 0 ? -Magnitude(value) : Magnitude(value)));
        Pure.Add(type + "Clamp", (T value, T least, T most) => least.CompareTo(most) > 0
            ? throw new ArgumentException("The least value is greater than the greatest one.")
            : value.CompareTo(least) < 0 ? least : value.CompareTo(most) > 0 ? most : value);
    }

    private static void Saturating<T>(string type, string name, Func<decimal, T> from, T least, T most)
        where T : struct, IComparable<T>, IConvertible =>
        FrameworkTable.Add(type.TrimEnd('.'), name, new FrameworkMethod(call => call[0] switch
        {
            double.NaN or float.NaN => from(0),
            double or float => Convert.ToDouble(call[0], null) is var real && real <= (double)Number(least) ? least : real >= (double)Number(most) ? most : from((decimal)Math.Truncate(real)),
            IConvertible number and not (bool or char) => Number(number) < Number(least) ? least : Number(number) > Number(most) ? most : from(decimal.Truncate(Number(number))),
            _ => throw call.Unknown(),
        })
        {
            NeedsAll = true,
        });

    private static object? Create(Invocation call, bool isChecked) => call[0] is IConvertible number and not bool && call.Method.Returns is { } to
        ? NumberConversions.Convert(number, to.Shape, isChecked)
        : throw call.Unknown();

    private static void Real()
    {
        Ask("IsNaN", double.IsNaN);
        Ask("IsInfinity", double.IsInfinity);
        Ask("IsPositiveInfinity", double.IsPositiveInfinity);
        Ask("IsNegativeInfinity", double.IsNegativeInfinity);
        Ask("IsFinite", RealMath.IsFinite);
        Ask("IsNegative", RealMath.IsNegative);
        Ask("IsPositive", value => !RealMath.IsNegative(value));
        Ask("IsInteger", RealMath.IsInteger);
        Ask("IsEvenInteger", value => RealMath.IsInteger(value) && value % 2 == 0);
        Ask("IsOddInteger", value => RealMath.IsInteger(value) && Math.Abs(value % 2) == 1);
        Ask("IsRealNumber", value => !double.IsNaN(value));
        Ask("IsPow2", value => value > 0 && RealMath.IsFinite(value) && Math.Pow(2, RealMath.Log2(value)) == value && RealMath.Log2(value) == Math.Round(RealMath.Log2(value)));
    }

    private static void Ask(string name, Func<double, bool> run)
    {
        Pure.Add("System.Double." + name, run);
        Pure.Add("System.Single." + name, (float value) => run(value));
    }

    private static decimal Number(IConvertible value) => value.ToDecimal(null);

    private static decimal Magnitude(IConvertible value) => Math.Abs(Number(value));
}
