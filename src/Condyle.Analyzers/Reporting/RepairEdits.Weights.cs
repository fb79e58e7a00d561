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
                return Plan(invert, given.File, given.Code.Span, Inverted(given.File.Tree.FilePath, given.Code));
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
        if (type.Type is null || given.Way == CallWay.Any)
            return type.Type is not null; // such as a conditional whose arms only become a weight together
        var inverse = SyntaxFactory.ParseExpression(InverseTaken(given.Code)?.ToString() ?? $"({given.Code}){Inverse}");
        if (given.Table is { IsInferred: true, List: ImplicitArrayCreationExpressionSyntax rows } && rows.Contains(given.Code))
            return given.File.Model.GetSpeculativeTypeInfo(rows.SpanStart, rows.ReplaceNode(given.Code, inverse), SpeculativeBindingOption.BindAsExpression).Type is IArrayTypeSymbol { ElementType.TypeKind: not TypeKind.Error };
        return type.ConvertedType?.Name == nameof(Weight)
            && (given.Table is not null || SymbolEqualityComparer.Default.Equals(Speculation.SymbolOf(given.Said.ReplaceNode(given.Code, inverse), given.Said.SpanStart, given.File.Model), given.File.Model.GetSymbolInfo(given.Said).Symbol));
    }

    private static IReadOnlyList<TextEdit> Inverted(string path, ExpressionSyntax weight) => InverseTaken(weight) is { } taken
        ? [new TextEdit(path, TextSpan.FromBounds(taken.Span.End, weight.Span.End), "")]
        : AppendCode(path, weight, Inverse, IsPrimary(weight));

    private PlannedRepair? UseInverseOf(InverseOf inverse, CallRecord call)
    {
        if (readingsOf(call.Path) is not { } file || !file.Uses.EachWeightWants(call, CallWay.Any, (nameof(InverseOf), inverse.Argument), repair => repair is InverseOf same && same.Argument == inverse.Argument)
            || path.Calls.Find(inverse.OtherEvent) is not { } other || other.Path != call.Path
            || ArgumentOf(call, inverse.Argument, file) is not { } argument
            || ArgumentOf(other, inverse.OtherArgument, file) is not { } source
            || !IsPlainName(source)
            || !Replaceable.MeanTheSame(source, argument, file.Model)
            || !Replaceable.IsGivenAt(source, argument, file.Model)
            || CodeEffects.AreIn(argument, file.Model))
            return null;
        var text = InverseTaken(source) is { } taken ? taken.ToString() : source + Inverse;
        return Plan(inverse, file, argument.Span, new TextEdit(call.Path, argument.Span, text));
    }

    /// <summary>What the inverse is taken of.</summary>
    public static ExpressionSyntax? InverseTaken(ExpressionSyntax expression) =>
        expression is MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Inverse" } inverse ? inverse.Expression : null;
}
