using System.Globalization;

namespace Condyle.Analyzers.Reading;

/// <summary>
/// <c>Parse</c> and <c>TryParse</c>. In the invariant culture all is known; else what no culture reads differently: plain digits, and for
/// whole numbers what holds a letter, which no culture takes for a number.
/// </summary>
internal static class Parsing
{
    // As many digits as every host reads exactly.
    private const int ExactDigits = 15;

    private delegate object? Reader(string text, NumberStyles? style);

    public static void Register()
    {
        Whole("SByte", (text, style) => sbyte.Parse(text, style ?? NumberStyles.Integer, CultureInfo.InvariantCulture));
        Whole("Byte", (text, style) => byte.Parse(text, style ?? NumberStyles.Integer, CultureInfo.InvariantCulture));
        Whole("Int16", (text, style) => short.Parse(text, style ?? NumberStyles.Integer, CultureInfo.InvariantCulture));
        Whole("UInt16", (text, style) => ushort.Parse(text, style ?? NumberStyles.Integer, CultureInfo.InvariantCulture));
        Whole("Int32", (text, style) => int.Parse(text, style ?? NumberStyles.Integer, CultureInfo.InvariantCulture));
        Whole("UInt32", (text, style) => uint.Parse(text, style ?? NumberStyles.Integer, CultureInfo.InvariantCulture));
        Whole("Int64", (text, style) => long.Parse(text, style ?? NumberStyles.Integer, CultureInfo.InvariantCulture));
        Whole("UInt64", (text, style) => ulong.Parse(text, style ?? NumberStyles.Integer, CultureInfo.InvariantCulture));
        Real("Single", (text, style) => float.Parse(text, style ?? (NumberStyles.Float | NumberStyles.AllowThousands), CultureInfo.InvariantCulture));
        Real("Double", (text, style) => double.Parse(text, style ?? (NumberStyles.Float | NumberStyles.AllowThousands), CultureInfo.InvariantCulture));
        Real("Decimal", (text, style) => decimal.Parse(text, style ?? NumberStyles.Number, CultureInfo.InvariantCulture));
        Add("Boolean", (text, _) => bool.Parse(text), (_, _, _) => true);
    }

    /// <summary>The value that a text stands for; none where cultures may read it differently.</summary>
    public static object? Parse(string type, Invocation call, string text) =>
        FrameworkTable.Find("System." + type, "Parse")!.Call(new Invocation(call.Machine, call.Method, [TextValue.Plain(text), .. call.Arguments.Skip(1)]));

    private static void Whole(string type, Reader read) => Add(type, read, (text, style, isInvariant) =>
        isInvariant || IsDigits(text) || IsHex(style) || (style is null or NumberStyles.Integer or NumberStyles.None && (text.Trim().Length == 0 || text.Any(IsLetter))));

    private static void Real(string type, Reader read) => Add(type, read, (text, style, isInvariant) => isInvariant
        ? TextOf.HostWritesShortestNumbers || (text.Length <= ExactDigits && !text.Any(character => character is 'e' or 'E'))
        : (IsDigits(text) && text.Length <= ExactDigits) || text.Trim().Length == 0);

    private static void Add(string type, Reader read, Func<string, NumberStyles?, bool, bool> isKnown)
    {
        FrameworkTable.Add("System." + type, "Parse", call => Read(call));
        FrameworkTable.Add("System." + type, "TryParse", call =>
        {
            var last = call.Count - 1;
            try
            {
                call.Out(last, call[0] is null ? throw new ThrownByCode("System.ArgumentNullException", "") : Read(call));
                return true;
            }
            catch (ThrownByCode)
            {
                call.Out(last, Defaults.Of(call.Parameter(last), call.Machine));
                return false;
            }
        });

        object? Read(Invocation call)
        {
            var text = call.Text(0);
            var style = call.Arguments.FirstOrDefault(argument => argument is EnumValue) is EnumValue { Number: int number } ? (NumberStyles)number : (NumberStyles?)null;
            var isInvariant = call.Arguments.Contains(OtherCalls.InvariantCulture);
            if (text.Any(character => character >= 128) || !isKnown(text, style, isInvariant))
                throw call.Unknown();
            try
            {
                return read(text, style);
            }
            catch (Exception refused) when (refused is FormatException or OverflowException or ArgumentException)
            {
                throw new ThrownByCode(refused.GetType().FullName!, refused.Message);
            }
        }
    }

    private static bool IsHex(NumberStyles? style) => style is { } given && (given & NumberStyles.AllowHexSpecifier) != 0;

    private static bool IsDigits(string text) => text.Trim() is { Length: > 0 } digits && digits.All(character => character is >= '0' and <= '9');

    private static bool IsLetter(char character) => character is (>= 'a' and <= 'z') or (>= 'A' and <= 'Z');
}
