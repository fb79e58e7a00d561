using Condyle.Analyzers.Reading;
using Condyle.Rules;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reporting;

/// <summary>Works out the edits of a repair, at the text that is to blame. None where an edit would change anything else of a rig.</summary>
internal sealed partial class RepairEdits(ReadPath path, Func<string, FileReadings?> readingsOf)
{
    /// <summary>Whether the text to blame may lie in a file other than the call's.</summary>
    public bool MayLieIn(string file, IReadOnlyList<Repair> repairs) =>
        repairs.OfType<AppendText>().Any(append => TextOf(append) is { } text && text.Seams.Any(seam => seam.Expression.Path == file))
        || repairs.OfType<ReplaceText>().Any(replace => TextBehind(replace) is { } part && part.Literal.Path == file)
        || repairs.OfType<InvertWeight>().Any(invert => WeightGiven(invert).Any(given => given.File.Tree.FilePath == file));

    /// <summary>Whether a repair is wanted every time that its call is made.</summary>
    public bool EachCallWants(Repair repair) =>
        path.Calls.Find(repair.Event) is { } call && FileOf(call, (repair.GetType(), repair.Title), other => other.GetType() == repair.GetType() && other.Title == repair.Title) is not null;

    public PlannedRepair? Of(Repair repair, Rule rule) => path.Calls.Find(repair.Event) is not { } call ? ReplaceInRecipe(repair, rule) : repair switch
    {
        AppendText append => AtItsSource(append) ?? WhereItIsUsed(append, call),
        InvertWeight invert => Invert(invert, call),
        InverseOf inverse => UseInverseOf(inverse, call),
        CallInstead instead => CallOther(instead, call),
        ReplaceText replace => Replace(replace, call),
        ReplaceNumber replace => Replace(replace, call),
        CopyOfTarget other => AskOther(other, call),
        SwapArguments swap => Swap(swap, call),
        GoOn further => Continue(further, call),
        LeaveOut omitted => Omit(omitted, call),
        PlaceAt placed => Place(placed, call),
        TakeInstead taken => Take(taken, call),
        DriveInstead driven => DriveAlone(driven, call),
        _ => null,
    };

    private TextValue? TextOf(AppendText append) => path.Calls.Find(append.Event)?.Arguments[append.Argument] as TextValue;

    private PlannedRepair? AtItsSource(AppendText append)
    {
        foreach (var seam in TextOf(append)?.Seams ?? [])
        {
            if (readingsOf(seam.Expression.Path) is not { } file || !file.Uses.EachUseWants(seam, append))
                continue;
            var instead = TextSpan.FromBounds(Math.Max(seam.Literal.Span.Start, seam.Position - append.Instead.Length), seam.Position);
            if (file.Tree.GetText().ToString(instead) == append.Instead)
                return Plan(append, file, seam.Expression.Span, new TextEdit(seam.Expression.Path, instead, append.Suffix));
        }

        return null;
    }

    // The text is shared with something that is right, or isn't written anywhere: append where it is used.
    private PlannedRepair? WhereItIsUsed(AppendText append, CallRecord call)
    {
        if (FileOf(call, (nameof(AppendText), append.Suffix, append.Argument), other => other is AppendText same && same.Suffix == append.Suffix && same.Argument == append.Argument) is not { } file
            || append.Instead.Length > 0 || file.Uses.AsksForName(call)
            || ArgumentOf(call, append.Argument, file) is not { } argument)
            return null;
        return Plan(append, file, argument.Span, AppendCode(call.Path, argument, $" + \"{append.Suffix}\"", IsOperand(argument)));
    }

    private PlannedRepair? CallOther(CallInstead instead, CallRecord call) =>
        FileOf(call, (nameof(CallInstead), instead.Method), other => other is CallInstead same && same.Method == instead.Method) is { } file && GoesOnAs(instead.Method, call, file)
            ? Plan(instead, file, call.Call.Span, new TextEdit(call.Path, call.Call.NameSpan, instead.Method))
            : null;

    // The sentence may go on with words that the other verb doesn't know, and somebody may keep what it gives.
    private static bool GoesOnAs(string method, CallRecord call, FileReadings file)
    {
        if (InvocationOf(call, file) is not { Expression: MemberAccessExpressionSyntax verb } invocation)
            return file.Tree.GetRoot().FindNode(call.Call.NameSpan, getInnermostNodeForTie: true) is var name && file.Model.GetSymbolInfo(name).Symbol is IMethodSymbol group
                && group.ContainingType.GetMembers(method).OfType<IMethodSymbol>().Any(other => SymbolEqualityComparer.Default.Equals(other.ReturnType, group.ReturnType));
        ExpressionSyntax sentence = invocation;
        while (sentence.Parent is MemberAccessExpressionSyntax { Parent: InvocationExpressionSyntax next })
            sentence = next;
        var other = sentence.ReplaceNode(verb.Name, SyntaxFactory.IdentifierName(method));
        return Speculation.SymbolOf(other, sentence.SpanStart, file.Model) is IMethodSymbol said
            && (sentence.Parent is ExpressionStatementSyntax || SymbolEqualityComparer.Default.Equals(said.ReturnType, file.Model.GetTypeInfo(sentence).Type));
    }

    private PlannedRepair? Replace(ReplaceText replace, CallRecord call) =>
        FileOf(call, (nameof(ReplaceText), replace.Argument, replace.To), other => other is ReplaceText same && same.Argument == replace.Argument && same.To == replace.To) is { } file
            && !file.Uses.AsksForName(call) && ArgumentOf(call, replace.Argument, file) is LiteralExpressionSyntax { RawKind: (int)SyntaxKind.StringLiteralExpression } literal
            ? Plan(replace, file, literal.Span, new TextEdit(call.Path, literal.Span, SymbolDisplay.FormatLiteral(replace.To, quote: true)))
            : null;

    private PlannedRepair? Replace(ReplaceNumber replace, CallRecord call) =>
        FileOf(call, (nameof(ReplaceNumber), replace.Argument, replace.To), other => other is ReplaceNumber same && same.Argument == replace.Argument && same.To == replace.To) is { } file
            ? ArgumentOf(call, replace.Argument, file) is { } argument
                ? IsWrittenNumber(argument) ? Plan(replace, file, argument.Span, new TextEdit(call.Path, argument.Span, NumberCode.Of(replace.To))) : null
                : InvocationOf(call, file) is { ArgumentList.Arguments: [.., var last] } invocation && file.Model.GetSymbolInfo(invocation).Symbol is IMethodSymbol called && replace.Argument < called.Parameters.Length
                    ? Plan(replace, file, call.Call.Span, new TextEdit(call.Path, new TextSpan(last.Span.End, 0), $", {called.Parameters[replace.Argument].Name}: {NumberCode.Of(replace.To)}"))
                    : null
            : null;

    private PlannedRepair? AskOther(CopyOfTarget repair, CallRecord call) =>
        FileOf(call, (nameof(CopyOfTarget), repair.Argument), other => other is CopyOfTarget same && same.Argument == repair.Argument) is { } file
            && path.Calls.Find(repair.OtherEvent) is { } target && target.Path == call.Path
            && ArgumentOf(call, repair.Argument, file) is InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax { Name.Identifier.ValueText: nameof(Copy.Of) }, ArgumentList.Arguments: [{ Expression: var asked }] }
            && ArgumentOf(target, repair.OtherArgument, file) is { } wanted && IsPlace(wanted) && Replaceable.MeanTheSame(wanted, asked, file.Model) && Replaceable.IsGivenAt(wanted, asked, file.Model) && !CodeEffects.AreIn(asked, file.Model)
            && file.Model.GetTypeInfo(wanted).Type?.Name == nameof(Joint)
            ? Plan(repair, file, asked.Span, new TextEdit(call.Path, asked.Span, wanted.ToString()))
            : null;

    // They are written in one order: where one is named, or what the other does shows in it, they stay.
    private PlannedRepair? Swap(SwapArguments swap, CallRecord call) =>
        FileOf(call, (nameof(SwapArguments), swap.Argument, swap.OtherArgument), other => other is SwapArguments same && same.Argument == swap.Argument && same.OtherArgument == swap.OtherArgument) is { } file
            && ArgumentOf(call, swap.Argument, file) is { } one && ArgumentOf(call, swap.OtherArgument, file) is { } other && IsPlain(one) && IsPlain(other)
            ? Plan(swap, file, call.Call.Span, new TextEdit(call.Path, one.Span, other.ToString()), new TextEdit(call.Path, other.Span, one.ToString()))
            : null;

    private PlannedRepair? Continue(GoOn further, CallRecord call) =>
        FileOf(call, (nameof(GoOn), further.Call), (at, other) => other is GoOn same && same.Call == further.Call && !at.Names(same.Gone)) is { } file && InvocationOf(call, file) is { } invocation
            && Speculation.SymbolOf(SyntaxFactory.ParseExpression(invocation + further.Call), invocation.SpanStart, file.Model) is not null // what it names may be called otherwise there
            ? Plan(further, file, call.Call.Span, new TextEdit(call.Path, new TextSpan(invocation.Span.End, 0), further.Call)) with { IsToBeTried = further.Gone.Count > 0 }
            : null;

    // Only a call that gives its sentence back as it was, where what is left of it still stands.
    private PlannedRepair? Omit(LeaveOut omitted, CallRecord call) =>
        FileOf(call, nameof(LeaveOut), other => other is LeaveOut) is { } file
            && InvocationOf(call, file) is { Expression: MemberAccessExpressionSyntax { Expression: var sentence } } invocation
            && SymbolEqualityComparer.Default.Equals(file.Model.GetTypeInfo(sentence).Type, file.Model.GetTypeInfo(invocation).Type)
            && (sentence is InvocationExpressionSyntax or ObjectCreationExpressionSyntax || !StandsAlone(invocation, sentence, file))
            && !CodeEffects.AreIn(invocation.ArgumentList, file.Model)
            ? Plan(omitted, file, call.Call.Span, new TextEdit(call.Path, TextSpan.FromBounds(sentence.Span.End, invocation.Span.End), ""))
            : null;

    /// <summary>Whether nothing but a call can stand there, or what is left would be set to itself.</summary>
    private static bool StandsAlone(ExpressionSyntax invocation, ExpressionSyntax sentence, FileReadings file) => invocation.Parent switch
    {
        ExpressionStatementSyntax => true,
        AssignmentExpressionSyntax assignment => SyntaxFactory.AreEquivalent(assignment.Left, sentence),
        ArrowExpressionClauseSyntax { Parent: { } member } => file.Model.GetDeclaredSymbol(member) is not IMethodSymbol { ReturnsVoid: false } and not IPropertySymbol,
        AnonymousFunctionExpressionSyntax function => file.Model.GetSymbolInfo(function).Symbol is not IMethodSymbol { ReturnsVoid: false },
        _ => false,
    };

    public static InvocationExpressionSyntax? InvocationOf(CallRecord call, FileReadings file) =>
        file.Tree.GetRoot().FindNode(call.Call.NameSpan, getInnermostNodeForTie: true) is SimpleNameSyntax name
            ? (name.Parent is MemberAccessExpressionSyntax access && access.Name == name ? access.Parent : name.Parent) as InvocationExpressionSyntax
            : null;

    // Where others may share the text who weren't read, somebody wrote a comment into it, or code is told how it is written, it is blamed but left as it is.
    private static PlannedRepair Plan(Repair repair, FileReadings file, TextSpan blamed, params IReadOnlyList<TextEdit> edits) =>
        new(repair.GetType().Name, repair.Title, file.SawAll && !edits.Any(edit => Replaceable.HoldsMore(edit.Span, file.Tree) || Replaceable.IsQuoted(edit.Span, file.Model)) ? edits : []) { Blamed = new Origin(file.Tree.FilePath, blamed) };

    /// <summary>The file of a call, if all who make the call want the same change.</summary>
    private FileReadings? FileOf(CallRecord call, object kind, Func<Repair, bool> wanted) => FileOf(call, kind, (_, repair) => wanted(repair));

    private FileReadings? FileOf(CallRecord call, object kind, Func<ReadPath, Repair, bool> wanted) =>
        readingsOf(call.Path) is { } file && file.Uses.EachCallWants(call, kind, wanted) ? file : null;

    private static IReadOnlyList<TextEdit> AppendCode(string path, ExpressionSyntax expression, string code, bool stands) => stands
        ? [new TextEdit(path, new TextSpan(expression.Span.End, 0), code)]
        : [new TextEdit(path, new TextSpan(expression.SpanStart, 0), "("), new TextEdit(path, new TextSpan(expression.Span.End, 0), ")" + code)];

    private static ExpressionSyntax? ArgumentOf(CallRecord call, int argument, FileReadings file) =>
        argument < call.Call.ArgumentSpans.Count && call.Call.ArgumentSpans[argument] is { } span
            ? file.Tree.GetRoot().FindNode(span, getInnermostNodeForTie: true) as ExpressionSyntax
            : null;

    private static bool IsPrimary(ExpressionSyntax expression) => expression is IdentifierNameSyntax or MemberAccessExpressionSyntax or InvocationExpressionSyntax
        or ElementAccessExpressionSyntax or ParenthesizedExpressionSyntax or LiteralExpressionSyntax or InterpolatedStringExpressionSyntax or ThisExpressionSyntax;

    private static bool IsOperand(ExpressionSyntax expression) => IsPrimary(expression) || expression is BinaryExpressionSyntax { OperatorToken.ValueText: "+" };

    private static bool IsPlain(ExpressionSyntax expression) =>
        expression is LiteralExpressionSyntax || IsPlainName(expression) || (expression is PrefixUnaryExpressionSyntax { OperatorToken.ValueText: "-" or "+" } signed && IsPlain(signed.Operand));

    private static bool IsPlainName(ExpressionSyntax expression) => expression switch
    {
        IdentifierNameSyntax => true,
        MemberAccessExpressionSyntax member => IsPlainName(member.Expression),
        ThisExpressionSyntax => true,
        _ => false,
    };

    // A name, or a place in a table that names give.
    private static bool IsPlace(ExpressionSyntax expression) => IsPlainName(expression)
        || (expression is ElementAccessExpressionSyntax element && IsPlainName(element.Expression) && element.ArgumentList.Arguments.All(each => IsPlace(each.Expression) || each.Expression is LiteralExpressionSyntax));

    private static bool IsWrittenNumber(ExpressionSyntax expression) => expression is LiteralExpressionSyntax
        || (expression is PrefixUnaryExpressionSyntax { RawKind: (int)SyntaxKind.UnaryMinusExpression } negative && negative.Operand is LiteralExpressionSyntax);
}
