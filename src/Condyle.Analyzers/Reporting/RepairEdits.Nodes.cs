using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Edits that put another node into a sentence, named as the code names it.</summary>
internal sealed partial class RepairEdits
{
    private PlannedRepair? Place(PlaceAt placed, CallRecord call)
    {
        if (path.Calls.Find(placed.OtherEvent) is not { } other || other.Path != call.Path
            || FileOf(call, (nameof(PlaceAt), placed.Member, placed.IsPlaced, other.Call.Span), (at, repair) => repair is PlaceAt same && same.Member == placed.Member && same.IsPlaced == placed.IsPlaced && at.Calls.Find(same.OtherEvent)?.Call.Span == other.Call.Span) is not { } file
            || InvocationOf(call, file) is not { } invocation || ArgumentOf(other, placed.OtherArgument, file) is not { } where || !IsPlace(where) || !Replaceable.MeanTheSame(where, invocation, file.Model) || !Replaceable.IsGivenAt(where, invocation, file.Model))
            return null;
        var spot = where + placed.Member;
        if (!placed.IsPlaced)
            return Binds(invocation, $"{invocation}.{nameof(Control.PlacedAt)}({spot})", file) ? Plan(placed, file, call.Call.Span, new TextEdit(call.Path, new TextSpan(invocation.Span.End, 0), $".{nameof(Control.PlacedAt)}({spot})")) : null;
        return ArgumentOf(call, 0, file) is { } argument && (!CodeEffects.AreIn(argument, file.Model) || IsOnlyASpot(argument, file)) ? Plan(placed, file, call.Call.Span, new TextEdit(call.Path, argument.Span, spot)) : null;
    }

    // A spot that is said where it is given: nobody else has it, and with its place gone it is nothing.
    private static bool IsOnlyASpot(ExpressionSyntax argument, FileReadings file) =>
        argument is InvocationExpressionSyntax said && file.Model.GetSymbolInfo(said).Symbol is IMethodSymbol { ReturnType: { Name: nameof(Spot), ContainingAssembly.Name: nameof(Condyle) }, ContainingAssembly.Name: nameof(Condyle) }
        && said.DescendantNodes().All(part => !CodeEffects.IsOne(part, file.Model));

    private PlannedRepair? Take(TakeInstead taken, CallRecord call)
    {
        if (readingsOf(call.Path) is not { } file || ArgumentOf(call, taken.Argument, file) is not { } argument)
            return null;
        if (Opposite(argument, file.Model) is { } side && SideTable.FilledBy(argument, taken.Meant, path, file) is { } filling
            && FileOf(call, (nameof(TakeInstead), filling), (at, other) => other is TakeInstead same && same.Argument == taken.Argument && SideTable.FilledBy(argument, same.Meant, at, file) == filling) is not null)
            return Plan(taken, file, argument.Span, new TextEdit(call.Path, TextSpan.FromBounds(side.Expression.Span.End, side.Span.End), ""));
        // A local has what its declaration made last.
        return LocalOf(taken.Meant, argument, file) is (var local, { } making) && !CodeEffects.AreIn(argument, file.Model)
            && FileOf(call, (nameof(TakeInstead), local), (at, other) => other is TakeInstead same && same.Argument == taken.Argument && file.Uses.LastMade(making, at, same.Event) == same.Meant) is not null
            ? Plan(taken, file, argument.Span, new TextEdit(call.Path, argument.Span, local))
            : null;
    }

    // A blend that is begun and given its source in one statement, so that nobody else has it.
    private PlannedRepair? DriveAlone(DriveInstead driven, CallRecord call)
    {
        if (FileOf(call, nameof(DriveInstead), other => other is DriveInstead) is not { } file || path.Calls.Find(driven.Begun) is not { } begun || begun.Path != call.Path
            || InvocationOf(call, file) is not { Expression: MemberAccessExpressionSyntax { Expression: InvocationExpressionSyntax begin } } from || !IsDropped(from, file)
            || begin != InvocationOf(begun, file) || begin.Expression is not MemberAccessExpressionSyntax { Expression: var rig } || ArgumentOf(call, 0, file) is not { } source
            || from.ArgumentList.Arguments is not [{ NameColon: null } first, ..] || first.Expression != source || from.ArgumentList.Arguments.Skip(1).Any(weight => CodeEffects.AreIn(weight, file.Model))
            || !Binds(from, $"{rig}.{nameof(RigDraft.Drive)}{begin.ArgumentList}.{nameof(Drive.ByChannels)}({source})", file))
            return null;
        return Plan(
            driven,
            file,
            call.Call.Span,
            new TextEdit(call.Path, begun.Call.NameSpan, nameof(RigDraft.Drive)),
            new TextEdit(call.Path, call.Call.NameSpan, nameof(Drive.ByChannels)),
            new TextEdit(call.Path, TextSpan.FromBounds(source.Span.End, from.ArgumentList.CloseParenToken.SpanStart), ""));
    }

    // A drive isn't a blend to whoever takes it.
    private static bool IsDropped(InvocationExpressionSyntax sentence, FileReadings file) => sentence.Parent is ExpressionStatementSyntax
        || (sentence.Parent is ArrowExpressionClauseSyntax { Parent: { } member } && file.Model.GetDeclaredSymbol(member) is IMethodSymbol { ReturnsVoid: true });

    /// <summary>The index of a table that is asked for the other side.</summary>
    private static MemberAccessExpressionSyntax? Opposite(ExpressionSyntax argument, SemanticModel model) =>
        argument is ElementAccessExpressionSyntax { ArgumentList.Arguments: [{ Expression: MemberAccessExpressionSyntax { Name.Identifier.ValueText: nameof(Side.Opposite), Expression: var side } index }] } && TypeKeys.Is(model.GetTypeInfo(side).Type, typeof(Side)) ? index : null;

    /// <summary>The local that holds what an event made, and nothing else, where it means that at a place of the code; and the call that makes it.</summary>
    private (string Name, CallRecord Making)? LocalOf(int made, ExpressionSyntax there, FileReadings file)
    {
        if (path.Calls.Find(made) is not { } making || making.Path != file.Tree.FilePath || InvocationOf(making, file) is not { } call
            || call.FirstAncestorOrSelf<VariableDeclaratorSyntax>() is not { Initializer.Value: { } value } local || !Begins(value, call) || !SymbolEqualityComparer.Default.Equals(file.Model.GetTypeInfo(value).Type, file.Model.GetTypeInfo(call).Type))
            return null;
        return Replaceable.MeansTheSame(local, there, file.Model) ? (local.Identifier.ValueText, making) : null;
    }

    /// <summary>Whether a sentence begins with a call: each link of it gives back what it was said of.</summary>
    public static bool Begins(ExpressionSyntax sentence, InvocationExpressionSyntax call) =>
        sentence == call || (sentence is InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Expression: var before } } && Begins(before, call));

    private static bool Binds(SyntaxNode there, string code, FileReadings file) =>
        Speculation.SymbolOf(SyntaxFactory.ParseExpression(code), there.SpanStart, file.Model) is not null;
}
