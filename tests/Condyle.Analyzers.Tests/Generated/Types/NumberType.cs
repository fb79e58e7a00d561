namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A primitive type that can be calculated with; a character counts as one.</summary>
internal sealed class NumberType : CodeType
{
    private NumberType(string name, int bits, bool isSigned, bool isReal)
        : base(name) => (Bits, IsSigned, IsReal) = (bits, isSigned, isReal);

    public static NumberType SByte { get; } = new("sbyte", 8, true, false);

    public static NumberType Byte { get; } = new("byte", 8, false, false);

    public static NumberType Short { get; } = new("short", 16, true, false);

    public static NumberType UShort { get; } = new("ushort", 16, false, false);

    public static NumberType Int { get; } = new("int", 32, true, false);

    public static NumberType UInt { get; } = new("uint", 32, false, false);

    public static NumberType Long { get; } = new("long", 64, true, false);

    public static NumberType ULong { get; } = new("ulong", 64, false, false);

    public static NumberType Float { get; } = new("float", 32, true, true);

    public static NumberType Double { get; } = new("double", 64, true, true);

    public static NumberType Decimal { get; } = new("decimal", 128, true, true);

    public static NumberType Char { get; } = new("char", 16, false, false);

    public static IReadOnlyList<NumberType> Whole { get; } = [SByte, Byte, Short, UShort, Int, UInt, Long, ULong, Char];

    public static IReadOnlyList<NumberType> All { get; } = [.. Whole, Float, Double, Decimal];

    public int Bits { get; }

    public bool IsSigned { get; }

    /// <summary>Whether it has a fraction.</summary>
    public bool IsReal { get; }

    public override bool IsValue => true;

    /// <summary>The type in which C# calculates with two others; none where they don't go together.</summary>
    public static NumberType? Together(NumberType a, NumberType b)
    {
        bool Either(NumberType type) => a == type || b == type;
        if (Either(Decimal))
            return Either(Float) || Either(Double) ? null : Decimal;
        if (Either(Double))
            return Double;
        if (Either(Float))
            return Float;
        if (Either(ULong))
            return a.IsSigned || b.IsSigned ? null : ULong;
        if (Either(Long))
            return Long;
        if (Either(UInt))
            return a.IsSigned || b.IsSigned ? Long : UInt;
        return Int;
    }
}
