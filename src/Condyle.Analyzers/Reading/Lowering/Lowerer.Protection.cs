using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary><c>try</c>, <c>catch</c>, <c>finally</c> and <c>using</c>: a final part is laid out once for each way that leads out.</summary>
internal sealed partial class Lowerer
{
    private readonly Stack<int> caught = new();
    private readonly List<Protection> protections = [];
    private readonly List<List<(JumpLabel Start, JumpLabel End)>> open = [];

    private void Try(ITryOperation attempt)
    {
        if (attempt.Finally is { } final)
            Protect(attempt.Syntax.Span, () => Catching(attempt), () => Final(final));
        else
            Catching(attempt);
    }

    // A final part is laid out once for each way out; its labels are those of one of them.
    private void Final(IBlockOperation final)
    {
        Statement(final);
        foreach (var label in labels.Keys.Where(label => label.DeclaringSyntaxReferences.Any(place => final.Syntax.Span.Contains(place.Span))).ToList())
            labels.Remove(label);
    }

    private void Catching(ITryOperation attempt)
    {
        var (start, end, exit) = (new JumpLabel(), new JumpLabel(), new JumpLabel());
        var added = new List<Handler>();
        var left = OpenStretch();
        Mark(start);
        Statement(attempt.Body);
        Mark(end);
        open.RemoveAt(open.Count - 1);
        Emit(new Jump(exit));
        if (attempt.Catches.Any(clause => clause.Filter is not null))
        {
            // Where a filter refuses, the next clause is asked: one handler that tries them in turn.
            var (target, thrown) = (new JumpLabel(), Temporary());
            Mark(target);
            added.Add(new Handler(start, end, target, null, left) { LetsGo = attempt.Catches.All(LetsGo) });
            Emit(new StoreSlot(thrown));
            foreach (var clause in attempt.Catches)
            {
                var next = new JumpLabel();
                if (!IsEverything(clause.ExceptionType))
                {
                    Emit(new LoadSlot(thrown));
                    Emit(new CatchTest(TypeKeys.Of(clause.ExceptionType)));
                    Emit(new Branch(next, false, Stops(next)));
                }

                Clause(clause, thrown, exit, next);
                Mark(next);
            }

            Emit(new LoadSlot(thrown));
            Emit(new Throw(null));
        }
        else
        {
            foreach (var clause in attempt.Catches)
            {
                var (target, thrown) = (new JumpLabel(), Temporary());
                Mark(target);
                added.Add(new Handler(start, end, target, IsEverything(clause.ExceptionType) ? null : TypeKeys.Of(clause.ExceptionType), left) { LetsGo = LetsGo(clause) });
                Emit(new StoreSlot(thrown));
                Clause(clause, thrown, exit, exit);
            }
        }

        handlers.AddRange(added);
        Mark(exit);
    }

    private void Clause(ICatchClauseOperation clause, int thrown, JumpLabel exit, JumpLabel refused)
    {
        caught.Push(thrown);
        if (clause.ExceptionDeclarationOrExpression is IVariableDeclaratorOperation { Symbol: var variable })
        {
            Emit(new LoadSlot(thrown));
            Emit(new CaughtObject());
            StoreVariable(variable, isReference: false);
        }

        var dropped = new JumpLabel();
        if (clause.Filter is { } filter)
        {
            // A filter that throws refuses.
            var (start, end) = (new JumpLabel(), new JumpLabel());
            Mark(start);
            Condition(filter, refused, jumpWhen: false, refused);
            Mark(end);
            handlers.Add(new Handler(start, end, dropped, null, []));
        }

        Statement(clause.Handler);
        caught.Pop();
        Emit(new Jump(exit));
        Mark(dropped);
        if (clause.Filter is not null)
        {
            Emit(new Pop());
            Emit(new Jump(refused));
        }
    }

    // Ends with a throw, and nothing leads out of it before.
    private static bool LetsGo(ICatchClauseOperation clause) =>
        clause.Handler.Operations.LastOrDefault() is IThrowOperation or IExpressionStatementOperation { Operation: IThrowOperation }
        && !clause.Handler.Descendants().Any(operation => operation is IReturnOperation or IBranchOperation or IAnonymousFunctionOperation or ILocalFunctionOperation);

    private static bool IsEverything(ITypeSymbol? type) => type is null or { SpecialType: SpecialType.System_Object } || TypeKeys.PlainNameOf(type) == "System.Exception";

    private void Using(IUsingOperation usage)
    {
        if (usage.Resources is IVariableDeclarationGroupOperation group)
        {
            Statement(group);
            var variables = group.Declarations.SelectMany(declaration => declaration.Declarators).Select(declarator => declarator.Symbol).ToList();
            Protect(usage.Syntax.Span, () => Statement(usage.Body), () => variables.ForEach(variable => Dispose(() => LoadVariable(variable, isReference: false), variable.Type)));
            return;
        }

        var held = Temporary();
        Value(usage.Resources);
        Emit(new StoreSlot(held));
        Protect(usage.Syntax.Span, () => Statement(usage.Body), () => Dispose(() => Emit(new LoadSlot(held)), usage.Resources.Type));
    }

    private void Dispose(Action load, ITypeSymbol? type)
    {
        // What a value is at run time decides; only a ref struct may have the method without the interface.
        IEnumerable<ITypeSymbol> interfaces = type is null ? [] : [type, .. type.AllInterfaces];
        var dispose = interfaces.FirstOrDefault(candidate => candidate.Name is "IDisposable" or "IAsyncDisposable" && candidate.TypeKind == TypeKind.Interface)?.GetMembers().OfType<IMethodSymbol>().FirstOrDefault()
            ?? type?.GetMembers("Dispose").OfType<IMethodSymbol>().FirstOrDefault(method => method.Parameters.IsEmpty)
            ?? type?.GetMembers("DisposeAsync").OfType<IMethodSymbol>().FirstOrDefault(method => method.Parameters.IsEmpty);
        if (dispose is null)
            return;
        load();
        Emit(new DisposeCall(TypeKeys.MethodOf(dispose)));
    }

    /// <summary>Lays out code so that a final part runs however it is left.</summary>
    private void Protect(TextSpan region, Action lower, Action final)
    {
        var (start, end, exit) = (new JumpLabel(), new JumpLabel(), new JumpLabel());
        var left = OpenStretch();
        Mark(start);
        protections.Add(new Protection(targets.Count, open.Count - 1, region, final));
        lower();
        protections.RemoveAt(protections.Count - 1);
        Mark(end);
        open.RemoveAt(open.Count - 1);
        final();
        Emit(new Jump(exit));
        RunOnThrow(start, end, left, final);
        Mark(exit);
    }

    private void RunOnThrow(JumpLabel start, JumpLabel end, List<(JumpLabel, JumpLabel)> left, Action final)
    {
        var (target, thrown) = (new JumpLabel(), Temporary());
        Mark(target);
        Emit(new StoreSlot(thrown));
        final();
        Emit(new LoadSlot(thrown));
        Emit(new Throw(null));
        handlers.Add(new Handler(start, end, target, null, left) { LetsGo = true });
    }

    private List<(JumpLabel Start, JumpLabel End)> OpenStretch()
    {
        List<(JumpLabel, JumpLabel)> left = [];
        open.Add(left);
        return left;
    }

    /// <summary>Runs the final parts that a jump out to a target, counted from the outside, leaves behind.</summary>
    private void LeaveProtected(int target) => Leave(protection => protection.Target >= target);

    /// <summary>The same for a jump to a label, by where the label stands.</summary>
    private void LeaveProtected(ILabelSymbol label)
    {
        if (label.DeclaringSyntaxReferences.FirstOrDefault()?.Span is { } at)
            Leave(protection => !protection.Region.Contains(at));
    }

    private void Leave(Func<Protection, bool> isLeft)
    {
        var all = protections.ToList();
        for (var i = all.Count - 1; i >= 0 && isLeft(all[i]); i--)
        {
            protections.RemoveAt(i);
            var (start, end) = (new JumpLabel(), new JumpLabel());
            // What a final part throws is past the stretches that it ends.
            foreach (var stretch in open.Skip(all[i].Open))
                stretch.Add((start, end));
            Mark(start);
            all[i].Final();
            Mark(end);
        }

        protections.Clear();
        protections.AddRange(all);
    }

    /// <summary>A stretch of code with a final part.</summary>
    /// <param name="Target">How many jump targets lie around it.</param>
    /// <param name="Open">Which of the open stretches it is.</param>
    /// <param name="Region">Where it stands in the source.</param>
    /// <param name="Final">Lays out the final part.</param>
    private sealed record Protection(int Target, int Open, TextSpan Region, Action Final);
}
