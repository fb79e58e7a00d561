using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary><c>try</c>, <c>catch</c>, <c>finally</c> and <c>using</c>: a final part is laid out once for each way that leads out.</summary>
internal sealed partial class Lowerer
{
    private readonly Stack<int> caught = new();
    private readonly List<(int Target, Action Finally)> protections = [];

    private void Try(ITryOperation attempt)
    {
        if (attempt.Finally is { } final)
            Protect(() => Catching(attempt), () => Statement(final));
        else
            Catching(attempt);
    }

    private void Catching(ITryOperation attempt)
    {
        var (start, end, exit) = (new JumpLabel(), new JumpLabel(), new JumpLabel());
        var added = new List<Handler>();
        Mark(start);
        Statement(attempt.Body);
        Mark(end);
        Emit(new Jump(exit));
        foreach (var clause in attempt.Catches)
        {
            var target = new JumpLabel();
            var thrown = Temporary();
            Mark(target);
            added.Add(new Handler(start, end, target, IsEverything(clause.ExceptionType) ? null : TypeKeys.Of(clause.ExceptionType)));
            Emit(new StoreSlot(thrown));
            caught.Push(thrown);
            if (clause.ExceptionDeclarationOrExpression is IVariableDeclaratorOperation { Symbol: var variable })
            {
                Emit(new LoadSlot(thrown));
                Emit(new CaughtObject());
                StoreVariable(variable, isReference: false);
            }

            if (clause.Filter is { } filter)
            {
                var matches = new JumpLabel();
                Condition(filter, matches, jumpWhen: true, matches);
                Emit(new LoadSlot(thrown));
                Emit(new Throw(null));
                Mark(matches);
            }

            Statement(clause.Handler);
            caught.Pop();
            Emit(new Jump(exit));
        }

        handlers.AddRange(added);
        Mark(exit);
    }

    private static bool IsEverything(ITypeSymbol? type) => type is null or { SpecialType: SpecialType.System_Object } || TypeKeys.PlainNameOf(type) == "System.Exception";

    private void Using(IUsingOperation usage)
    {
        if (usage.Resources is IVariableDeclarationGroupOperation group)
        {
            Statement(group);
            var variables = group.Declarations.SelectMany(declaration => declaration.Declarators).Select(declarator => declarator.Symbol).ToList();
            Protect(() => Statement(usage.Body), () => variables.ForEach(variable => Dispose(() => LoadVariable(variable, isReference: false), variable.Type)));
            return;
        }

        var held = Temporary();
        Value(usage.Resources);
        Emit(new StoreSlot(held));
        Protect(() => Statement(usage.Body), () => Dispose(() => Emit(new LoadSlot(held)), usage.Resources.Type));
    }

    private void Dispose(Action load, ITypeSymbol? type)
    {
        var dispose = type?.GetMembers("Dispose").OfType<IMethodSymbol>().FirstOrDefault(method => method.Parameters.IsEmpty)
            ?? type?.AllInterfaces.FirstOrDefault(candidate => candidate.SpecialType == SpecialType.System_IDisposable)?.GetMembers("Dispose").OfType<IMethodSymbol>().FirstOrDefault();
        if (dispose is null || !IsRead(dispose.ContainingType))
            return;
        load();
        Emit(new UserCall(TypeKeys.MethodOf(dispose), 0, null, pushesResult: true));
        Emit(new Pop());
    }

    /// <summary>Lays out code so that a final part runs however it is left.</summary>
    private void Protect(Action lower, Action final)
    {
        var (start, end, target, exit) = (new JumpLabel(), new JumpLabel(), new JumpLabel(), new JumpLabel());
        Mark(start);
        protections.Add((targets.Count, final));
        lower();
        protections.RemoveAt(protections.Count - 1);
        Mark(end);
        final();
        Emit(new Jump(exit));
        Mark(target);
        var thrown = Temporary();
        Emit(new StoreSlot(thrown));
        final();
        Emit(new LoadSlot(thrown));
        Emit(new Throw(null));
        handlers.Add(new Handler(start, end, target, null));
        Mark(exit);
    }

    /// <summary>Runs the final parts that a jump out to a target, counted from the outside, leaves behind.</summary>
    private void LeaveProtected(int target)
    {
        for (var i = protections.Count - 1; i >= 0 && protections[i].Target >= target; i--)
        {
            var (own, final) = protections[i];
            protections.RemoveAt(i);
            final();
            protections.Insert(i, (own, final));
        }
    }
}
