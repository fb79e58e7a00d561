using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Edits that take the inverse of a weight: where it is given, or where that comes from: the row of a table, or the call of a helper.</summary>
internal sealed partial class RepairEdits
{
    private const string Inverse = ".Inverse";

    private PlannedRepair? Invert(InvertWeight invert, CallRecord call)
    {
        foreach (var given in WeightGiven(invert))
        {
            if (given.File.Uses.EachWeightWants(call, given.Way, (nameof(InvertWeight), invert.Argument), other => other is InvertWeight same && same.Argument == invert.Argument) && TakesInverse(given))
                return Plan(invert, given.File, given.Code.Span, Inverted(given.File, given.Code)) with { Blends = given.File.Uses.BlendsGiven(call, given.Way) };
        }

        return null;
    }

    /// <summary>Where the weight comes from that a call was given, the call itself first.</summary>
    private IEnumerable<GivenCode> WeightGiven(InvertWeight invert) =>
        path.Calls.Find(invert.Event) is { } call && readingsOf(call.Path) is { } file && ArgumentOf(call, invert.Argument, file) is { } argument && InvocationOf(call, file) is { } said
            ? new GivenCode(argument, file, said, call.From, CallWay.Any).Origins(new(path, invert.Event, call), readingsOf)
            : [];

    /// <summary>Whether the inverse of a weight can stand in its place: there a weight may stand as well as a switch, and what takes it stays the same.</summary>
    private static bool TakesInverse(GivenCode given)
    {
        var type = given.File.Model.GetTypeInfo(given.Code);
        if (!HasInverse(type.Type) || given.Way == CallWay.Any)
            return HasInverse(type.Type); // unlike what becomes a weight only there: a conditional by both of its arms, or something of the team's
        if (given.Table is { List: ImplicitArrayCreationExpressionSyntax })
            return true; // which was found to bear that of any row
        return IsWeight(type.ConvertedType) && (given.Table is not null || given.IsSaidWith(InverseTaken(given.Code, given.File.Model)?.ToString() ?? $"({given.Code}){Inverse}"));
    }

    private static IReadOnlyList<TextEdit> Inverted(FileReadings file, ExpressionSyntax weight) => InverseTaken(weight, file.Model) is { } taken
        ? [new TextEdit(file.Tree.FilePath, TextSpan.FromBounds(taken.Span.End, weight.Span.End), "")]
        : AppendCode(file.Tree.FilePath, weight, Inverse, IsPrimary(weight));

    private PlannedRepair? UseInverseOf(InverseOf inverse, CallRecord call)
    {
        if (readingsOf(call.Path) is not { } file || !file.Uses.EachWeightWants(call, CallWay.Any, (nameof(InverseOf), inverse.Argument), repair => repair is InverseOf same && same.Argument == inverse.Argument)
            || path.Calls.Find(inverse.OtherEvent) is not { } other || other.Path != call.Path
            || ArgumentOf(call, inverse.Argument, file) is not { } argument
            || ArgumentOf(other, inverse.OtherArgument, file) is not { } source
            || !IsPlainName(source)
            || !HasInverse(file.Model.GetTypeInfo(source).Type)
            || !Replaceable.MeanTheSame(source, argument, file.Model)
            || !Replaceable.IsGivenAt(source, argument, file.Model)
            || CodeEffects.AreIn(argument, file.Model))
            return null;
        var text = InverseTaken(source, file.Model) is { } taken ? taken.ToString() : source + Inverse;
        return Plan(inverse, file, argument.Span, new TextEdit(call.Path, argument.Span, text)) with { Blends = file.Uses.BlendsGiven(call, CallWay.Any) };
    }

    /// <summary>What the inverse is taken of.</summary>
    public static ExpressionSyntax? InverseTaken(ExpressionSyntax expression, SemanticModel model) =>
        expression is MemberAccessExpressionSyntax { Name.Identifier.ValueText: nameof(Weight.Inverse) } inverse && HasInverse(model.GetSymbolInfo(inverse).Symbol?.ContainingType) ? inverse.Expression : null;

    /// <summary>Whether a type is that of weights.</summary>
    public static bool IsWeight(ITypeSymbol? type) => TypeKeys.Is(type, typeof(Weight));

    /// <summary>Whether a type is that of weights or of switches, so that the inverse can be taken of its values.</summary>
    public static bool HasInverse(ITypeSymbol? type) => IsWeight(type) || TypeKeys.Is(type, typeof(Switch));
}
