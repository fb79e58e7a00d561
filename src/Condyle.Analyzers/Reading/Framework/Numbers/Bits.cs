namespace Condyle.Analyzers.Reading;

/// <summary><c>BitOperations</c>, and the same functions of the number types.</summary>
internal static class Bits
{
    private const string Type = "System.Numerics.BitOperations.";

    public static void Register()
    {
        Pure.Add(Type + "PopCount", (uint value) => Count(value));
        Pure.Add(Type + "PopCount", (ulong value) => Count(value));
        Pure.Add(Type + "LeadingZeroCount", (uint value) => Leading(value, 32));
        Pure.Add(Type + "LeadingZeroCount", (ulong value) => Leading(value, 64));
        Pure.Add(Type + "TrailingZeroCount", (int value) => Trailing(unchecked((uint)value), 32));
        Pure.Add(Type + "TrailingZeroCount", (uint value) => Trailing(value, 32));
        Pure.Add(Type + "TrailingZeroCount", (long value) => Trailing(unchecked((ulong)value), 64));
        Pure.Add(Type + "TrailingZeroCount", (ulong value) => Trailing(value, 64));
        Pure.Add(Type + "Log2", (uint value) => Log2(value));
        Pure.Add(Type + "Log2", (ulong value) => Log2(value));
        Pure.Add(Type + "RotateLeft", (uint value, int by) => (value << (by & 31)) | (value >> ((32 - by) & 31)));
        Pure.Add(Type + "RotateLeft", (ulong value, int by) => (value << (by & 63)) | (value >> ((64 - by) & 63)));
        Pure.Add(Type + "RotateRight", (uint value, int by) => (value >> (by & 31)) | (value << ((32 - by) & 31)));
        Pure.Add(Type + "RotateRight", (ulong value, int by) => (value >> (by & 63)) | (value << ((64 - by) & 63)));
        Pure.Add(Type + "IsPow2", (int value) => value > 0 && Count((ulong)value) == 1);
        Pure.Add(Type + "IsPow2", (uint value) => Count(value) == 1);
        Pure.Add(Type + "IsPow2", (long value) => value > 0 && Count((ulong)value) == 1);
        Pure.Add(Type + "IsPow2", (ulong value) => Count(value) == 1);
        Pure.Add(Type + "RoundUpToPowerOf2", (uint value) => value <= 1 ? value : Log2(value - 1) == 31 ? 0 : 1U << (Log2(value - 1) + 1));
        Pure.Add(Type + "RoundUpToPowerOf2", (ulong value) => value <= 1 ? value : Log2(value - 1) == 63 ? 0 : 1UL << (Log2(value - 1) + 1));
        Converters();
        Own<sbyte>("SByte", 8, value => unchecked((byte)value), bits => unchecked((sbyte)bits));
        Own<byte>("Byte", 8, value => value, bits => unchecked((byte)bits));
        Own<short>("Int16", 16, value => unchecked((ushort)value), bits => unchecked((short)bits));
        Own<ushort>("UInt16", 16, value => value, bits => unchecked((ushort)bits));
        Own<int>("Int32", 32, value => unchecked((uint)value), bits => unchecked((int)bits));
        Own<uint>("UInt32", 32, value => value, bits => unchecked((uint)bits));
        Own<long>("Int64", 64, value => unchecked((ulong)value), bits => unchecked((long)bits));
        Own<ulong>("UInt64", 64, value => value, bits => bits);
    }

    // The bits of a number as those of another one.
    private static void Converters()
    {
        const string converter = "System.BitConverter.";
        Pure.Add(converter + "SingleToInt32Bits", (float value) => BitConverter.ToInt32(BitConverter.GetBytes(value), 0));
        Pure.Add(converter + "SingleToUInt32Bits", (float value) => BitConverter.ToUInt32(BitConverter.GetBytes(value), 0));
        Pure.Add(converter + "Int32BitsToSingle", (int bits) => BitConverter.ToSingle(BitConverter.GetBytes(bits), 0));
        Pure.Add(converter + "UInt32BitsToSingle", (uint bits) => BitConverter.ToSingle(BitConverter.GetBytes(bits), 0));
        Pure.Add(converter + "DoubleToInt64Bits", (double value) => BitConverter.DoubleToInt64Bits(value));
        Pure.Add(converter + "DoubleToUInt64Bits", (double value) => unchecked((ulong)BitConverter.DoubleToInt64Bits(value)));
        Pure.Add(converter + "Int64BitsToDouble", (long bits) => BitConverter.Int64BitsToDouble(bits));
        Pure.Add(converter + "UInt64BitsToDouble", (ulong bits) => BitConverter.Int64BitsToDouble(unchecked((long)bits)));
    }

    private static void Own<T>(string name, int width, Func<T, ulong> bits, Func<ulong, T> of)
    {
        var type = $"System.{name}.";
        Pure.Add(type + "PopCount", (T value) => of((ulong)Count(bits(value))));
        Pure.Add(type + "LeadingZeroCount", (T value) => of((ulong)Leading(bits(value), width)));
        Pure.Add(type + "TrailingZeroCount", (T value) => of((ulong)Trailing(bits(value), width)));
        Pure.Add(type + "RotateLeft", (T value, int by) => of(Rotate(bits(value), by, width)));
        Pure.Add(type + "RotateRight", (T value, int by) => of(Rotate(bits(value), -by, width)));
    }

    private static ulong Rotate(ulong value, int by, int width)
    {
        by &= width - 1;
        return by == 0 ? value : (value << by) | (value >> (width - by));
    }

    public static int Count(ulong value)
    {
        var count = 0;
        for (; value != 0; value &= value - 1)
            count++;
        return count;
    }

    /// <summary>The place of the highest bit; of nothing it is that of the lowest.</summary>
    public static int Log2(ulong value) => value == 0 ? 0 : 63 - Leading(value, 64);

    private static int Leading(ulong value, int width)
    {
        var count = 0;
        while (count < width && (value & (1UL << (width - 1 - count))) == 0)
            count++;
        return count;
    }

    private static int Trailing(ulong value, int width)
    {
        var count = 0;
        while (count < width && (value & (1UL << count)) == 0)
            count++;
        return count;
    }
}
