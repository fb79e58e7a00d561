using System.Globalization;
using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary>Whole numbers of any size, and those of 128 bits.</summary>
internal static class BigNumberCalls
{
    private const string Big = "System.Numerics.BigInteger";
    private const int MostBits = 65_536;
    private const int WordsMultipliedInAStep = 8;

    public static void Register()
    {
        Register(Big, (number, _) => Sized(number));
        Register("System.Int128", (number, isChecked) => WideValue.Of(number, isSigned: true, isChecked));
        Register("System.UInt128", (number, isChecked) => WideValue.Of(number, isSigned: false, isChecked));
        FrameworkTable.Add("System.Int128", "get_MaxValue", _ => new WideValue(WideValue.Most(true), true));
        FrameworkTable.Add("System.Int128", "get_MinValue", _ => new WideValue(WideValue.Least(true), true));
        FrameworkTable.Add("System.UInt128", "get_MaxValue", _ => new WideValue(WideValue.Most(false), false));
        FrameworkTable.Add("System.UInt128", "get_MinValue", _ => new WideValue(0, false));
        FrameworkTable.Add(Big, "Pow", call => Number(call, 0) is var value && call.Whole(1) is var power && power >= 0
            ? Bits(value) * (long)power <= MostBits ? BigInteger.Pow(value, power) : throw call.Unknown()
            : throw new ThrownByCode("System.ArgumentOutOfRangeException", "A power is negative."));
        FrameworkTable.Add(Big, "GreatestCommonDivisor", call => BigInteger.GreatestCommonDivisor(Number(call, 0), Number(call, 1)));
        FrameworkTable.Add(Big, "ModPow", PowerOfRemainder);
        FrameworkTable.Add(Big, ".ctor", call => Divided(() => call[0] switch
        {
            decimal exact => Sized(new BigInteger(exact)),
            float or double => Sized(new BigInteger(Convert.ToDouble(call[0], CultureInfo.InvariantCulture))),
            _ => Sized(Number(call, 0)),
        }));
        FrameworkTable.Add(Big, "get_MinusOne", _ => BigInteger.MinusOne);
        FrameworkTable.Add(Big, "get_IsZero", call => Number(call, 0).IsZero);
        FrameworkTable.Add(Big, "get_IsOne", call => Number(call, 0).IsOne);
        FrameworkTable.Add(Big, "get_IsEven", call => Number(call, 0).IsEven);
        FrameworkTable.Add(Big, "get_Sign", call => Number(call, 0).Sign);
    }

    private static void Register(string type, Func<BigInteger, bool, object> make)
    {
        Add("get_Zero", _ => make(0, false));
        Add("get_One", _ => make(1, false));
        Two("Addition", "Add", (a, b) => a + b);
        Two("Subtraction", "Subtract", (a, b) => a - b);
        Two("Multiply", "Multiply", (a, b) => a * b);
        Two("Division", "Divide", (a, b) => BigInteger.Divide(a, b), alwaysChecked: true);
        Two("Modulus", "Remainder", (a, b) => a - (b * Quotient(a, b)));
        Two("BitwiseAnd", "", (a, b) => a & b);
        Two("BitwiseOr", "", (a, b) => a | b);
        Two("ExclusiveOr", "", (a, b) => a ^ b);
        Two("", "Min", BigInteger.Min);
        Two("", "Max", BigInteger.Max);
        One("UnaryNegation", "Negate", a => -a);
        One("UnaryPlus", "", a => a);
        One("Increment", "", a => a + 1);
        One("Decrement", "", a => a - 1);
        One("", "Abs", BigInteger.Abs, alwaysChecked: true);
        Add("op_OnesComplement", call => make(-Number(call, 0) - 1, false));
        Add("op_LeftShift", call => make(Shifted(call, left: true), false));
        Add("op_RightShift", call => make(Shifted(call, left: false), false));
        Ask(a => a == 0, "op_Equality", "Equals");
        Ask(a => a != 0, "op_Inequality");
        Ask(a => a < 0, "op_LessThan");
        Ask(a => a <= 0, "op_LessThanOrEqual");
        Ask(a => a > 0, "op_GreaterThan");
        Ask(a => a >= 0, "op_GreaterThanOrEqual");
        foreach (var name in new[] { "Compare", "CompareTo" })
            Add(name, call => Number(call, 0).CompareTo(Number(call, 1)));
        foreach (var name in new[] { "op_Implicit", "op_Explicit", "op_CheckedExplicit" })
            Add(name, call => Converted(call, type, make, isChecked: type == Big || name == "op_CheckedExplicit"));
        Add("Parse", call => BigInteger.TryParse(call.Text(0), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number) && call.Text(0).All(character => character is '-' or (>= '0' and <= '9'))
            ? Divided(() => make(number, true))
            : throw call.Unknown());
        Add("ToString", call => call.Count == 1 || call[1] == OtherCalls.InvariantCulture ? TextValue.Plain(Number(call, 0).ToString(CultureInfo.InvariantCulture)) : OpenValue.Any);

        // Where the quotient has no room, there is no remainder either.
        BigInteger Quotient(BigInteger a, BigInteger b) => Whole(make(BigInteger.Divide(a, b), true))!.Value;

        void Add(string name, Func<Invocation, object?> run) => FrameworkTable.Add(type, name, run);

        void Two(string op, string name, Func<BigInteger, BigInteger, BigInteger> run, bool alwaysChecked = false)
        {
            object Run(Invocation call, bool isChecked) => Divided(() => make(run(Number(call, 0), Number(call, 1)), isChecked || alwaysChecked));
            Named(op, name, Run);
        }

        void One(string op, string name, Func<BigInteger, BigInteger> run, bool alwaysChecked = false) =>
            Named(op, name, (call, isChecked) => Divided(() => make(run(Number(call, 0)), isChecked || alwaysChecked)));

        void Named(string op, string name, Func<Invocation, bool, object> run)
        {
            if (name.Length > 0)
                Add(name, call => run(call, false));
            if (op.Length == 0)
                return;
            Add("op_" + op, call => run(call, false));
            Add("op_Checked" + op, call => run(call, true));
        }

        void Ask(Func<int, bool> holds, params string[] names)
        {
            foreach (var name in names)
                Add(name, call => call[1] is not null && (call[1] is OpenValue || Whole(call[1]) is not null) ? holds(Number(call, 0).CompareTo(Number(call, 1))) : throw call.Unknown());
        }
    }

    private static BigInteger Number(Invocation call, int index) => Whole(call[index]) ?? throw call.Unknown();

    private static BigInteger? Whole(object? value) => value switch
    {
        BigInteger number => number,
        WideValue wide => wide.Number,
        sbyte or short or int or long => new BigInteger(Convert.ToInt64(value, CultureInfo.InvariantCulture)),
        byte or ushort or uint or ulong or char => new BigInteger(Convert.ToUInt64(value, CultureInfo.InvariantCulture)),
        _ => null,
    };

    private static BigInteger Shifted(Invocation call, bool left)
    {
        var (number, by) = (Number(call, 0), call.Whole(1));
        by = call[0] is WideValue ? by & 127 : by;
        left ^= by < 0;
        var places = Math.Abs((long)by);
        return !left ? number >> (int)Math.Min(places, MostBits + 1)
            : Bits(number) + places <= MostBits ? number << (int)places
            : throw call.Unknown();
    }

    // Each bit of the power squares a remainder, which takes the square of its length.
    private static object PowerOfRemainder(Invocation call)
    {
        var (number, power, of) = (Number(call, 0), Number(call, 1), Number(call, 2));
        if (power.Sign < 0)
            throw new ThrownByCode("System.ArgumentOutOfRangeException", "A power is negative.");
        var words = 1 + (Bits(of) / 32L);
        call.Machine.Budget.Spend((int)Math.Min(Bits(power) * words * words / WordsMultipliedInAStep, Limits.Steps));
        return Divided(() => BigInteger.ModPow(number, power, of));
    }

    private static object Converted(Invocation call, string type, Func<BigInteger, bool, object> make, bool isChecked)
    {
        if (call.Method.Returns is { } returns && returns.Id != type)
            return call[0] is not (BigInteger or WideValue) ? throw call.Unknown() : To(returns, Number(call, 0), isChecked) ?? throw call.Unknown();
        return Divided(() => call[0] switch
        {
            decimal exact => make(new BigInteger(exact), true),
            float or double => OfReal(Convert.ToDouble(call[0], CultureInfo.InvariantCulture), call, make, isChecked),
            _ => make(Number(call, 0), isChecked),
        });
    }

    // What a real number out of range becomes isn't the same in every version of .NET.
    private static object OfReal(double real, Invocation call, Func<BigInteger, bool, object> make, bool isChecked)
    {
        try
        {
            return make(new BigInteger(real), true);
        }
        catch (OverflowException) when (!isChecked)
        {
            throw call.Unknown();
        }
    }

    // A number that is too large for what it is made into is refused, or loses its upper bits.
    private static object? To(TypeKey type, BigInteger number, bool isChecked)
    {
        if (type.Id is Big)
            return number;
        if (type.Id is "System.Int128" or "System.UInt128")
            return Divided(() => (object)WideValue.Of(number, type.Id == "System.Int128", isChecked));
        if (type.Shape is TypeShape.Double)
            return (double)number;
        if (type.Shape is not (TypeShape.Byte or TypeShape.SByte or TypeShape.Int16 or TypeShape.UInt16 or TypeShape.Int32 or TypeShape.UInt32 or TypeShape.Int64 or TypeShape.UInt64))
            return null;
        if (number >= long.MinValue && number <= long.MaxValue)
            return NumberConversions.Convert((long)number, type.Shape, isChecked);
        if (number > 0 && number <= ulong.MaxValue)
            return NumberConversions.Convert((ulong)number, type.Shape, isChecked);
        return isChecked ? throw new ThrownByCode("System.OverflowException", "A number is too large for its type.") : NumberConversions.Convert((ulong)(number & ulong.MaxValue), type.Shape, isChecked: false);
    }

    private static T Divided<T>(Func<T> run)
    {
        try
        {
            return run();
        }
        catch (ArithmeticException refused)
        {
            throw new ThrownByCode(refused.GetType().FullName!, refused.Message);
        }
    }

    private static int Bits(BigInteger number) => number.ToByteArray().Length * 8;

    private static object Sized(BigInteger number)
    {
        var bits = Bits(number);
        Budget.Current.Make(bits / 64);
        return bits <= MostBits ? number : throw new AnswerIsOpen("a number grows too large");
    }
}
