using System.Runtime.CompilerServices;
using System.Text;

namespace Condyle.Model;

/// <summary>Asks for what must be known before a rig can be evaluated. What it is called is only put together where it isn't known.</summary>
internal static class Facts
{
    public static T Known<T>(Fact<T> fact, string what) => fact.TryKnown(out var value) ? value : throw Unknown(what);

    public static T Known<T>(Fact<T> fact, [InterpolatedStringHandlerArgument(nameof(fact))] NameOfOpen<T> what) => fact.TryKnown(out var value) ? value : throw Unknown(what.ToString());

    public static string Known(Text text, string what) => text.TryKnown(out var value) ? value : throw Unknown(what);

    public static string Known(Text text, [InterpolatedStringHandlerArgument(nameof(text))] NameOfOpen<string> what) => text.TryKnown(out var value) ? value : throw Unknown(what.ToString());

    private static RigGeometryException Unknown(string what) => new($"{what} isn't known.");
}

/// <summary>An interpolated text that says what a fact is, if that is open: elements make their titles anew each time that they are asked.</summary>
[InterpolatedStringHandler]
internal readonly ref struct NameOfOpen<T>
{
    private readonly StringBuilder? text;

    public NameOfOpen(int literalLength, int formattedCount, Fact<T> fact, out bool isOpen)
    {
        _ = formattedCount;
        isOpen = fact.IsOpen;
        text = isOpen ? new StringBuilder(literalLength) : null;
    }

    public NameOfOpen(int literalLength, int formattedCount, Text fact, out bool isOpen)
    {
        _ = formattedCount;
        isOpen = fact.IsOpen;
        text = isOpen ? new StringBuilder(literalLength) : null;
    }

    public void AppendLiteral(string literal) => text!.Append(literal);

    public void AppendFormatted(string part) => text!.Append(part);

    public override string ToString() => text?.ToString() ?? "";
}
