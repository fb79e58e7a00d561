using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary>An <c>Int128</c> or <c>UInt128</c>, which the oldest hosts don't have.</summary>
internal readonly record struct WideValue(BigInteger Number, bool IsSigned) : IComparable, IFrameworkValue
{
    public static readonly BigInteger Size = BigInteger.One << 128;

    public string TypeName => IsSigned ? "System.Int128" : "System.UInt128";

    public static BigInteger Least(bool isSigned) => isSigned ? -(Size / 2) : 0;

    public static BigInteger Most(bool isSigned) => (isSigned ? Size / 2 : Size) - 1;

    /// <summary>The number without the bits for which there is no room.</summary>
    public static WideValue Of(BigInteger number, bool isSigned, bool isChecked = false)
    {
        if (number >= Least(isSigned) && number <= Most(isSigned))
            return new(number, isSigned);
        if (isChecked)
            throw new OverflowException();
        var bits = BigInteger.Remainder(number, Size);
        bits = bits.Sign < 0 ? bits + Size : bits;
        return new(isSigned && bits >= Size / 2 ? bits - Size : bits, isSigned);
    }

    public int CompareTo(object? other) => Number.CompareTo(((WideValue)other!).Number);
}
