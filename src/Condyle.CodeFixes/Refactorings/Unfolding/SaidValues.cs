using System.Numerics;
using Condyle.Model;
using Condyle.Naming;
using Microsoft.CodeAnalysis.CSharp;

namespace Condyle.CodeFixes.Refactorings;

/// <summary>Writes what a sentence is given as code.</summary>
internal sealed class SaidValues(Conventions conventions, Side? side, string? sideExpression, SaidNumbers numbers)
{
    /// <summary>A plain value; none where it isn't known or code has no way to say it.</summary>
    public string? Of(object? value) => value switch
    {
        Text text => text.TryKnown(out var known) ? Of(known) : null,
        float number => numbers.Take(number),
        Fact<float> fact => fact.TryKnown(out var known) ? numbers.Take(known) : null,
        Fact<float?> fact => fact.TryKnown(out var known) && known is { } given ? numbers.Take(given) : null,
        Fact<int> fact => fact.TryKnown(out var known) ? numbers.Take(known) : null,
        Fact<Vector3> fact => fact.TryKnown(out var known) ? $"new({numbers.Take(known.X)}, {numbers.Take(known.Y)}, {numbers.Take(known.Z)})" : null,
        Fact<Axis> fact => OfEnum(fact),
        Fact<Axis?> fact => fact.TryKnown(out var known) && known is { } given ? OfEnum<Axis>(given) : null,
        Fact<Channels> fact => OfEnum(fact),
        Fact<DialUnit> fact => OfEnum(fact),
        Fact<JointRole> fact => OfEnum(fact),
        Fact<ControlShape> fact => OfEnum(fact),
        Fact<Tint> fact => OfEnum(fact),
        _ => null,
    };

    /// <summary>Whether a value is the one that may be left out.</summary>
    public static bool IsDefault(object? value, object? without) => value switch
    {
        Fact<float> fact => fact.TryKnown(out var known) && Equals(known, without),
        Fact<float?> fact => fact.TryKnown(out var known) && Equals(known, without),
        Fact<Axis> fact => fact.TryKnown(out var known) && Equals(known, without),
        Fact<Axis?> fact => fact.TryKnown(out var known) && Equals(known, without),
        Fact<DialUnit> fact => fact.TryKnown(out var known) && Equals(known, without),
        _ => false,
    };

    private string Of(string name)
    {
        if (sideExpression is null || SidedName.Of(name, conventions) is not { } sided || sided.Side != side
            || conventions.MarkOf(sided.Side).IndexOf(sided.Side.ToString(), StringComparison.Ordinal) is not (>= 0 and var at))
            return SymbolDisplay.FormatLiteral(name, quote: true);
        var word = sided.MarkAt + at;
        return $"$\"{Escaped(name.Substring(0, word))}{{{sideExpression}}}{Escaped(name.Substring(word + sided.Side.ToString().Length))}\"";
    }

    private static string Escaped(string text) => SymbolDisplay.FormatLiteral(text, quote: true) is var quoted ? quoted.Substring(1, quoted.Length - 2).Replace("{", "{{").Replace("}", "}}") : text;

    // Flags stand side by side.
    private static string? OfEnum<T>(Fact<T> fact)
        where T : struct, Enum =>
        fact.TryKnown(out var known) ? string.Join(" | ", known.ToString().Split(',').Select(name => $"{typeof(T).Name}.{name.Trim()}")) : null;
}
