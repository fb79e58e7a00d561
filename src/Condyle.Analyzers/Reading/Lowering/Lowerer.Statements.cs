using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>Statements.</summary>
internal sealed partial class Lowerer
{
    private readonly Dictionary<ILabelSymbol, JumpLabel> labels = new(SymbolEqualityComparer.Default);

    private void Statement(IOperation? operation)
    {
        if (operation is not null)
            Inside(operation, static (lowerer, here) => lowerer.StatementHere(here), leaves: 0);
    }

    private void StatementHere(IOperation operation)
    {
        switch (operation)
        {
            case IBlockOperation block:
                Block(block.Operations);
                break;
            case IExpressionStatementOperation { Operation: var expression }:
                Effect(expression);
                break;
            case IVariableDeclarationGroupOperation group:
                foreach (var declaration in group.Declarations)
                    Declaration(declaration);
                break;
            case IReturnOperation { Kind: OperationKind.Return } result:
                ReturnValue(result.ReturnedValue);
                break;
            case IReturnOperation { Kind: OperationKind.YieldReturn } item:
                CopiedValue(item.ReturnedValue!);
                Emit(new YieldItem());
                break;
            case IReturnOperation { Kind: OperationKind.YieldBreak }:
                ReturnValue(null);
                break;
            case IConditionalOperation condition:
                If(condition);
                break;
            case IWhileLoopOperation loop:
                While(loop);
                break;
            case IForLoopOperation loop:
                For(loop);
                break;
            case IForEachLoopOperation loop:
                ForEach(loop);
                break;
            case ISwitchOperation choice:
                Switch(choice);
                break;
            case IBranchOperation jump:
                JumpTo(jump);
                break;
            case ILabeledOperation labeled:
                Mark(LabelOf(labeled.Label));
                Statement(labeled.Operation);
                break;
            case IThrowOperation thrown:
                ThrowValue(thrown);
                break;
            case ITryOperation attempt:
                Try(attempt);
                break;
            case IUsingOperation usage:
                Using(usage);
                break;
            case ILockOperation guard:
                Effect(guard.LockedValue);
                Statement(guard.Body);
                break;
            case ILocalFunctionOperation function:
                DeclareLocalFunctions([function]);
                break;
            case IEmptyOperation:
                break;
            default:
                Effect(operation);
                break;
        }
    }

    private void Block(IEnumerable<IOperation> statements)
    {
        var list = statements.ToList();
        DeclareLocalFunctions([.. list.OfType<ILocalFunctionOperation>()]);
        for (var i = 0; i < list.Count; i++)
        {
            if (list[i] is ILocalFunctionOperation)
                continue;
            if (list[i] is IUsingDeclarationOperation usage)
            {
                Statement(usage.DeclarationGroup);
                var variables = usage.DeclarationGroup.Declarations.SelectMany(declaration => declaration.Declarators).Select(declarator => declarator.Symbol).ToList();
                var rest = list.GetRange(i + 1, list.Count - i - 1);
                Protect(TextSpan.FromBounds(usage.Syntax.SpanStart, rest.Count > 0 ? rest[rest.Count - 1].Syntax.Span.End : usage.Syntax.Span.End), () => Block(rest), () => variables.ForEach(variable => Dispose(() => LoadVariable(variable, isReference: false), variable.Type)));
                return;
            }

            Statement(list[i]);
        }
    }

    /// <summary>Evaluates an expression for what it does.</summary>
    private void Effect(IOperation operation)
    {
        Value(operation);
        Emit(new Pop());
    }

    private void Declaration(IVariableDeclarationOperation declaration)
    {
        foreach (var declarator in declaration.Declarators)
        {
            var slot = SlotOf(declarator.Symbol);
            if (shared.Contains(declarator.Symbol))
                Emit(new RenewShared(slot));
            if ((declarator.Initializer ?? declaration.Initializer)?.Value is not { } value)
                continue;
            if (declarator.Symbol.IsRef)
                KeptPlace(value);
            else
                CopiedValue(value);
            StoreVariable(declarator.Symbol, isReference: false);
        }
    }

    private void ReturnValue(IOperation? value)
    {
        if (value is null)
        {
            LeaveProtected(0);
            Emit(new Return(hasValue: false));
            return;
        }

        if (owner is IMethodSymbol { ReturnsByRef: true } or IMethodSymbol { ReturnsByRefReadonly: true })
            KeptPlace(value);
        else
            CopiedValue(value);
        LeaveProtected(0);
        Emit(new Return(hasValue: true));
    }

    private void If(IConditionalOperation condition)
    {
        var otherwise = new JumpLabel();
        var end = new JumpLabel();
        Condition(condition.Condition, otherwise, jumpWhen: false, end);
        Statement(condition.WhenTrue);
        if (condition.WhenFalse is not null)
        {
            Emit(new Jump(end));
            Mark(otherwise);
            Statement(condition.WhenFalse);
        }
        else
        {
            Mark(otherwise);
        }

        Mark(end);
    }

    /// <summary>Jumps if a condition is what is waited for. Its ways meet at <paramref name="join"/>.</summary>
    private void Condition(IOperation condition, JumpLabel target, bool jumpWhen, JumpLabel join)
    {
        Value(condition);
        Emit(new Branch(target, jumpWhen, Stops(join)));
    }

    private void While(IWhileLoopOperation loop)
    {
        var (head, next, exit) = (new JumpLabel(), new JumpLabel(), new JumpLabel());
        Mark(head);
        if (loop.ConditionIsTop)
            TestLoop(loop.Condition!, loop.ConditionIsUntil, next, exit);
        Enter(loop, exit, next, () => Statement(loop.Body));
        Mark(next);
        if (!loop.ConditionIsTop && loop.Condition is { } condition)
            TestLoop(condition, loop.ConditionIsUntil, next, exit);
        Emit(new Jump(head));
        Mark(exit);
    }

    private void TestLoop(IOperation condition, bool until, JumpLabel next, JumpLabel exit)
    {
        Value(condition);
        if (until)
            Emit(new UnaryOperator(UnaryOperatorKind.Not, false, TypeKeys.Of(condition.Type)));
        Emit(new LoopTest(Stops(next, exit)));
    }

    private void For(IForLoopOperation loop)
    {
        var (head, next, exit) = (new JumpLabel(), new JumpLabel(), new JumpLabel());
        foreach (var before in loop.Before)
            Statement(before);
        Mark(head);
        if (loop.Condition is { } condition)
            TestLoop(condition, until: false, next, exit);
        Enter(loop, exit, next, () => Statement(loop.Body));
        Mark(next);
        foreach (var step in loop.AtLoopBottom)
            Statement(step);
        Emit(new Jump(head));
        Mark(exit);
    }

    private void ForEach(IForEachLoopOperation loop)
    {
        var (head, next, exit) = (new JumpLabel(), new JumpLabel(), new JumpLabel());
        var enumerator = Temporary();
        Value(loop.Collection);
        if (loop.Syntax is CommonForEachStatementSyntax syntax && loop.SemanticModel?.GetForEachStatementInfo(syntax).GetEnumeratorMethod is { } enumerates && (enumerates.IsExtensionMethod || enumerates.ContainingType.IsExtension))
            EmitCall(enumerates, enumerates.ContainingType.IsExtension ? 0 : 1, null, loop.Collection.Syntax, []);
        BeginSpan(loop.Collection.Syntax);
        Emit(new StartEnumeration(enumerator, ofPlaces: loop.LoopControlVariable is IVariableDeclaratorOperation { Symbol.IsRef: true }));
        var left = OpenStretch();
        Mark(head);
        var itemType = loop.LoopControlVariable is IVariableDeclaratorOperation typed ? typed.Symbol.Type : loop.LoopControlVariable.Type;
        Emit(new NextItem(enumerator, TypeKeys.Of(itemType), Stops(next, exit)));
        spans.Pop();
        if (loop.LoopControlVariable is IVariableDeclaratorOperation { Symbol: var variable })
        {
            if (shared.Contains(variable))
                Emit(new RenewShared(SlotOf(variable)));
            if (!variable.IsRef)
            {
                ConvertItem(loop, variable.Type);
                Emit(new CopyValue());
            }

            StoreVariable(variable, isReference: false);
        }
        else
        {
            Take(Prepared(loop.LoopControlVariable));
        }

        var turns = new JumpLabel();
        var end = () => Emit(new EndEnumeration(enumerator));
        protections.Add(new Protection(targets.Count, open.Count - 1, loop.Syntax.Span, end));
        Enter(loop, exit, next, () => Statement(loop.Body));
        protections.RemoveAt(protections.Count - 1);
        Mark(next);
        Emit(new Jump(head));
        Mark(turns);
        open.RemoveAt(open.Count - 1);
        RunOnThrow(head, turns, left, end);
        Mark(exit);
        end();
    }

    private void Enter(ILoopOperation loop, JumpLabel exit, JumpLabel next, Action lower)
    {
        targets.Add(new JumpTarget(loop.ExitLabel, loop.ContinueLabel, exit, next, null));
        lower();
        targets.RemoveAt(targets.Count - 1);
    }

    private void Switch(ISwitchOperation choice)
    {
        var exit = new JumpLabel();
        var subject = Temporary();
        Value(choice.Value);
        Emit(new StoreSlot(subject));
        targets.Add(new JumpTarget(choice.ExitLabel, null, exit, null, null));
        var bodies = choice.Cases.Select(_ => new JumpLabel()).ToList();
        JumpLabel? fallback = null;
        for (var i = 0; i < choice.Cases.Length; i++)
        {
            foreach (var clause in choice.Cases[i].Clauses)
            {
                if (clause.Label is not null)
                    labels[clause.Label] = bodies[i];
                if (clause is IDefaultCaseClauseOperation)
                {
                    fallback = bodies[i];
                    continue;
                }

                TestClause(clause, subject, choice.Value.Type, bodies[i], exit);
            }
        }

        Emit(new Jump(fallback ?? exit));
        for (var i = 0; i < choice.Cases.Length; i++)
        {
            Mark(bodies[i]);
            foreach (var statement in choice.Cases[i].Body)
                Statement(statement);
        }

        targets.RemoveAt(targets.Count - 1);
        Mark(exit);
    }

    private void TestClause(ICaseClauseOperation clause, int subject, ITypeSymbol? type, JumpLabel target, JumpLabel join)
    {
        var bool_ = new TypeKey("bool", TypeShape.Bool);
        switch (clause)
        {
            case ISingleValueCaseClauseOperation single:
                Emit(new LoadSlot(subject));
                Value(single.Value);
                Emit(new BinaryOperator(BinaryOperatorKind.Equals, false, bool_) { IsPattern = true });
                Emit(new Branch(target, true, Stops(join)));
                break;
            case IPatternCaseClauseOperation pattern:
                var miss = new JumpLabel();
                Pattern(pattern.Pattern, () => Emit(new LoadSlot(subject)), type);
                Emit(new Branch(miss, false, Stops(join)));
                if (pattern.Guard is { } guard)
                {
                    Value(guard);
                    Emit(new Branch(miss, false, Stops(join)));
                }

                Emit(new Jump(target));
                Mark(miss);
                break;
            default:
                Emit(new Unread("this kind of case", null));
                Emit(new Pop());
                break;
        }
    }

    private void JumpTo(IBranchOperation jump)
    {
        for (var i = targets.Count - 1; i >= 0; i--)
        {
            var target = targets[i];
            var label = SymbolEqualityComparer.Default.Equals(target.Symbol, jump.Target) ? target.Break
                : SymbolEqualityComparer.Default.Equals(target.ContinueSymbol, jump.Target) ? target.Continue
                : null;
            if (label is null)
                continue;
            LeaveProtected(i + 1);
            Emit(new Jump(label));
            return;
        }

        LeaveProtected(jump.Target);
        Emit(new Jump(LabelOf(jump.Target)));
    }

    private JumpLabel LabelOf(ILabelSymbol symbol)
    {
        if (!labels.TryGetValue(symbol, out var label))
            labels[symbol] = label = new JumpLabel();
        return label;
    }

    private void ThrowValue(IThrowOperation thrown)
    {
        if (thrown.Exception is { } exception)
            Value(exception is IConversionOperation { Operand: var plain } ? plain : exception);
        else
            Receiver(caught);
        Emit(new Throw(thrown.Exception is IConversionOperation { Operand.Type: { } type } ? TypeKeys.Of(type) : thrown.Exception is null ? null : KeyOf(thrown.Exception)));
    }
}
