using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Numbers in a row with a step between them, of any number type.</summary>
internal static class NumberRows
{
    public static SequenceValue Sequence(Invocation call)
    {
        var (start, end, step) = (Known(call, 0), Known(call, 1), Known(call, 2));
        var direction = Compare(step, Subtract(step, step)!);
        if (IsNaN(start) || IsNaN(end) || IsNaN(step) || (direction == 0 ? Compare(start, end) != 0 : Math.Sign(Compare(end, start)) == -direction))
            throw Making.OutOfRange();
        return new SequenceValue(Numbers);

        IEnumerable<object?> Numbers()
        {
            var number = start;
            while (true)
            {
                yield return number;
                if (direction == 0)
                    yield break;
                var next = Add(number, step);

                // Past the end of its type a number comes out on the other side.
                if (next is null || Compare(next, number) != direction || Compare(next, end) == direction)
                    yield break;
                number = next;
            }
        }
    }

    public static SequenceValue Endless(Invocation call)
    {
        var (start, step) = (Known(call, 0), Known(call, 1));
        return new SequenceValue(Numbers);

        IEnumerable<object?> Numbers()
        {
            for (object? number = start; number is not null; number = Add(number, step))
                yield return number;
        }
    }

    private static object Known(Invocation call, int index) => call[index] is IComparable and IConvertible and not bool and { } number ? number : throw call.Unknown();

    private static bool IsNaN(object number) => number is float.NaN or double.NaN;

    private static int Compare(object a, object b) => Math.Sign(((IComparable)a).CompareTo(b));

    // Small types are added as whole numbers and brought back.
    private static object? Add(object a, object b) => Of(BinaryOperatorKind.Add, a, b);

    private static object? Subtract(object a, object b) => Of(BinaryOperatorKind.Subtract, a, b);

    private static object? Of(BinaryOperatorKind kind, object a, object b) =>
        Arithmetic.Binary(kind, a, b, isChecked: false) is { } made ? made.GetType() == a.GetType() ? made : unchecked(Narrow(made, a)) : null;

    private static object? Narrow(object made, object like) => (made, like) switch
    {
        (int whole, byte) => unchecked((byte)whole),
        (int whole, sbyte) => unchecked((sbyte)whole),
        (int whole, short) => unchecked((short)whole),
        (int whole, ushort) => unchecked((ushort)whole),
        (int whole, char) => unchecked((char)whole),
        _ => null,
    };
}
