using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Patterns: each leaves on the stack whether it matches.</summary>
internal sealed partial class Lowerer
{
    private static readonly TypeKey Truth = new("bool", TypeShape.Bool);
    private readonly Stack<int> patternInputs = new();

    private void TypeCheck(IIsTypeOperation test)
    {
        Value(test.ValueOperand);
        Emit(new TypeTest(TypeKeys.Of(test.TypeOperand)));
        if (test.IsNegated)
            Emit(new UnaryOperator(UnaryOperatorKind.Not, false, Truth));
    }

    private void PatternCheck(IIsPatternOperation test)
    {
        var subject = Temporary();
        Hold(test.Value, subject);
        Pattern(test.Pattern, () => Emit(new LoadSlot(subject)), test.Value.Type);
    }

    private void SwitchExpression(ISwitchExpressionOperation choice)
    {
        var end = new JumpLabel();
        var subject = Temporary();
        Hold(choice.Value, subject);
        foreach (var arm in choice.Arms)
        {
            var miss = new JumpLabel();
            Pattern(arm.Pattern, () => Emit(new LoadSlot(subject)), choice.Value.Type);
            Emit(new Branch(miss, false, Stops(miss, end)));
            if (arm.Guard is { } guard)
            {
                Value(guard);
                Emit(new Branch(miss, false, Stops(miss, end)));
            }

            CopiedValue(arm.Value);
            Emit(new Jump(end));
            Mark(miss);
        }

        Emit(new PushConstant(new ExceptionValue("System.Runtime.CompilerServices.SwitchExpressionException", [])));
        Emit(new Throw(null));
        Mark(end);
    }

    private void Pattern(IPatternOperation pattern, Action load, ITypeSymbol? type)
    {
        Inside(pattern, (lowerer, here) => lowerer.PatternHere((IPatternOperation)here, load, type), leaves: 1);
    }

    private void PatternHere(IPatternOperation pattern, Action load, ITypeSymbol? type)
    {
        switch (pattern)
        {
            case IDiscardPatternOperation:
                Emit(new PushConstant(true));
                break;
            case IConstantPatternOperation constant:
                load();
                Value(constant.Value);
                Emit(new BinaryOperator(BinaryOperatorKind.Equals, false, Truth) { IsPattern = true });
                break;
            case IRelationalPatternOperation relation:
                load();
                Value(relation.Value);
                Emit(new BinaryOperator(relation.OperatorKind, false, Truth));
                break;
            case ITypePatternOperation typed:
                load();
                Emit(new TypeTest(TypeKeys.Of(typed.MatchedType)));
                break;
            case INegatedPatternOperation negated:
                Pattern(negated.Pattern, load, type);
                Emit(new UnaryOperator(UnaryOperatorKind.Not, false, Truth));
                break;
            case IBinaryPatternOperation both:
                ShortCircuit(both.OperatorKind == BinaryOperatorKind.Or, () => Pattern(both.LeftPattern, load, type), () => Pattern(both.RightPattern, load, type));
                break;
            case IDeclarationPatternOperation declaration:
                load();
                if (declaration.MatchesNull)
                    Emit(new Pop());
                else
                    Emit(new TypeTest(TypeKeys.Of(declaration.MatchedType)));
                if (declaration.MatchesNull)
                    Emit(new PushConstant(true));
                Bind(declaration.DeclaredSymbol, load);
                break;
            case IRecursivePatternOperation parts:
                Recursive(parts, load);
                break;
            case IListPatternOperation list:
                List(list, load);
                break;
            default:
                Emit(new Unread("this pattern", Truth));
                break;
        }
    }

    // What it is about isn't even asked for.
    private static bool MatchesAnything(IPatternOperation pattern) =>
        pattern is IDiscardPatternOperation or IDeclarationPatternOperation { MatchesNull: true, DeclaredSymbol: null or IDiscardSymbol };

    // A variable of a pattern that doesn't match is never read, so it may as well be set.
    private void Bind(ISymbol? variable, Action load)
    {
        if (variable is not ILocalSymbol local)
            return;
        load();
        Emit(new CopyValue());
        StoreVariable(local, isReference: false);
    }

    private void Recursive(IRecursivePatternOperation parts, Action load)
    {
        var (miss, end) = (new JumpLabel(), new JumpLabel());
        var subject = Temporary();
        load();
        Emit(new StoreSlot(subject));
        Emit(new LoadSlot(subject));
        if (SymbolEqualityComparer.Default.Equals(parts.MatchedType, parts.InputType))
        {
            Emit(new NullTest());
            Emit(new Branch(miss, true, Stops(miss, end)));
        }
        else
        {
            Emit(new TypeTest(TypeKeys.Of(parts.MatchedType)));
            Emit(new Branch(miss, false, Stops(miss, end)));
        }

        if (parts.DeconstructionSubpatterns.Length > 0)
        {
            if (parts.DeconstructSymbol is not IMethodSymbol && parts.MatchedType is { IsTupleType: false })
            {
                // Of what may be anything only a tuple comes apart.
                Emit(new LoadSlot(subject));
                Emit(new TupleTest(parts.DeconstructionSubpatterns.Length));
                Emit(new Branch(miss, false, Stops(miss, end)));
            }

            var items = parts.DeconstructionSubpatterns.Select(_ => Temporary()).ToList();
            Emit(new LoadSlot(subject));
            Emit(new PartsOf(TypeKeys.Of(parts.MatchedType)));
            Emit(new SplitTuple(items.Count));
            for (var i = items.Count - 1; i >= 0; i--)
                Emit(new StoreSlot(items[i]));
            for (var i = 0; i < items.Count; i++)
            {
                var item = items[i];
                Pattern(parts.DeconstructionSubpatterns[i], () => Emit(new LoadSlot(item)), parts.DeconstructionSubpatterns[i].InputType);
                Emit(new Branch(miss, false, Stops(miss, end)));
            }
        }

        foreach (var property in parts.PropertySubpatterns.Where(property => !MatchesAnything(property.Pattern)))
        {
            var member = Temporary();
            patternInputs.Push(subject);
            Hold(property.Member, member);
            patternInputs.Pop();
            Pattern(property.Pattern, () => Emit(new LoadSlot(member)), property.Member.Type);
            Emit(new Branch(miss, false, Stops(miss, end)));
        }

        Bind(parts.DeclaredSymbol, () => Emit(new LoadSlot(subject)));
        Emit(new PushConstant(true));
        Emit(new Jump(end));
        Mark(miss);
        Emit(new PushConstant(false));
        Mark(end);
    }

    private void List(IListPatternOperation list, Action load)
    {
        var (miss, end) = (new JumpLabel(), new JumpLabel());
        var (subject, count) = (Temporary(), Temporary());
        var slice = list.Patterns.Select((pattern, index) => (pattern, index)).FirstOrDefault(pair => pair.pattern is ISlicePatternOperation);
        var fixedItems = list.Patterns.Length - (slice.pattern is null ? 0 : 1);
        load();
        Emit(new StoreSlot(subject));
        Emit(new LoadSlot(subject));
        Emit(new NullTest());
        Emit(new Branch(miss, true, Stops(miss, end)));
        Count(list.LengthSymbol, subject, count, list.Syntax);
        Emit(new LoadSlot(count));
        Emit(new PushConstant(fixedItems));
        Emit(new BinaryOperator(slice.pattern is null ? BinaryOperatorKind.Equals : BinaryOperatorKind.GreaterThanOrEqual, false, Truth));
        Emit(new Branch(miss, false, Stops(miss, end)));
        for (var i = 0; i < list.Patterns.Length; i++)
        {
            var pattern = list.Patterns[i];
            var fromEnd = slice.pattern is not null && i > slice.index;
            object part = pattern is ISlicePatternOperation
                ? new RangeValue(new IndexValue(i, false), new IndexValue(list.Patterns.Length - 1 - i, true))
                : new IndexValue(fromEnd ? list.Patterns.Length - i : i, fromEnd);
            var inner = pattern is ISlicePatternOperation sliced ? sliced.Pattern : pattern;
            if (inner is null || MatchesAnything(inner))
                continue;
            var item = Temporary();
            Part(pattern is ISlicePatternOperation { SliceSymbol: var taken } ? taken : list.IndexerSymbol, subject, () => Emit(new PushConstant(part)), count, TypeKeys.Of(inner.InputType), list.Syntax);
            Emit(new StoreSlot(item));
            Pattern(inner, () => Emit(new LoadSlot(item)), inner.InputType);
            Emit(new Branch(miss, false, Stops(miss, end)));
        }

        Bind(list.DeclaredSymbol, () => Emit(new LoadSlot(subject)));
        Emit(new PushConstant(true));
        Emit(new Jump(end));
        Mark(miss);
        Emit(new PushConstant(false));
        Mark(end);
    }
}
