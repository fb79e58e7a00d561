using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Edits that take the inverse of a weight: where it is given, or in the row of a table that a loop gives it from.</summary>
internal sealed partial class RepairEdits
{
    private const string Inverse = ".Inverse";

    private PlannedRepair? Invert(InvertWeight invert, CallRecord call)
    {
        if (readingsOf(call.Path) is not { } file || ArgumentOf(call, invert.Argument, file) is not { } argument)
            return null;
        var turn = TurnOf(path, invert.Event, call);
        if (turn.Of > 1)
            return InvertCell(invert, call, turn, argument, file);
        return file.Uses.EachCallWants(call, (nameof(InvertWeight), invert.Argument), (_, other) => other is InvertWeight same && same.Argument == invert.Argument)
            && file.Model.GetTypeInfo(argument).Type is not null // such as a conditional whose arms only become a weight together
            ? Plan(invert, file, argument.Span, Inverted(call.Path, argument))
            : null;
    }

    // The call gives a blend several sources, so that what it is given stands elsewhere for each of them.
    private static PlannedRepair? InvertCell(InvertWeight invert, CallRecord call, Turn turn, ExpressionSyntax argument, FileReadings file) =>
        LoopTable.Of(argument, file.Model) is { } table && table.Cells.Count == turn.Of && table.Cells[turn.Number] is var cell && Takes(table, cell, file.Model)
        && file.Uses.EachCallWants(
            call,
            (nameof(InvertWeight), invert.Argument, turn),
            (at, other) => other is InvertWeight same && same.Argument == invert.Argument && TurnOf(at, same.Event, call) == turn,
            (at, said) => TurnOf(at, said, call) is var other && (other.Number == turn.Number || other.Of != turn.Of))
            ? Plan(invert, file, cell.Span, Inverted(call.Path, cell))
            : null;

    /// <summary>Whether a cell may hold a weight as well as a switch, and the other way round.</summary>
    private static bool Takes(LoopTable table, ExpressionSyntax cell, SemanticModel model)
    {
        var type = model.GetTypeInfo(cell);
        if (type.Type is null)
            return false;
        if (!table.IsInferred || table.Rows is not ImplicitArrayCreationExpressionSyntax)
            return type.ConvertedType?.Name == nameof(Weight);
        var inverted = table.Rows.ReplaceNode(cell, SyntaxFactory.ParseExpression(InverseTaken(cell)?.ToString() ?? $"({cell}){Inverse}"));
        return model.GetSpeculativeTypeInfo(table.Rows.SpanStart, inverted, SpeculativeBindingOption.BindAsExpression).Type is IArrayTypeSymbol { ElementType.TypeKind: not TypeKind.Error };
    }

    private static IReadOnlyList<TextEdit> Inverted(string path, ExpressionSyntax weight) => InverseTaken(weight) is { } taken
        ? [new TextEdit(path, TextSpan.FromBounds(taken.Span.End, weight.Span.End), "")]
        : AppendCode(path, weight, Inverse, IsPrimary(weight));

    private PlannedRepair? UseInverseOf(InverseOf inverse, CallRecord call)
    {
        if (FileOf(call, (nameof(InverseOf), inverse.Argument), repair => repair is InverseOf same && same.Argument == inverse.Argument) is not { } file
            || TurnOf(path, inverse.Event, call).Of > 1
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

    /// <summary>Which one of the sources that a call gave a blend is that of an event.</summary>
    private static Turn TurnOf(ReadPath path, int said, CallRecord call)
    {
        var given = path.BlendGiven(said)?.Sources
            .Where(source => path.Calls.Find(source.Event) is { } other && other.Path == call.Path && other.Call.Span == call.Call.Span).Select(source => source.Event).ToList();
        return given is null ? default : new(given.IndexOf(said), given.Count);
    }

    private static ExpressionSyntax? InverseTaken(ExpressionSyntax expression) =>
        expression is MemberAccessExpressionSyntax { Name.Identifier.ValueText: "Inverse" } inverse ? inverse.Expression : null;

    /// <summary>A turn of those in which one call gives a blend its sources.</summary>
    private readonly record struct Turn(int Number, int Of);
}
