using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;

namespace Condyle.Analyzers.Reading;

/// <summary>Expressions: each leaves one value on the stack.</summary>
internal sealed partial class Lowerer
{
    private readonly Stack<int> implicitReceivers = new();
    private readonly Stack<int> conditionalReceivers = new();
    private readonly Stack<int> textHandlers = new();

    /// <summary>Pushes a value; what isn't there, such as a receiver in code that doesn't compile yet, is unknown.</summary>
    private void Value(IOperation? operation)
    {
        if (operation is null)
            Emit(new PushConstant(OpenValue.Any));
        else
            Inside(operation, static (lowerer, here) => lowerer.ValueHere(here), leaves: 1);
    }

    private void ValueHere(IOperation operation)
    {
        if (operation.ConstantValue is { HasValue: true, Value: var constant } && operation is not IConversionOperation { OperatorMethod: not null } && !IsJoinedText(operation))
            Constant(operation, constant);
        else
            Compute(operation);
        if (!operation.IsImplicit && IsUsedAsIfThere(operation.Syntax))
            Emit(new NullCheck());
    }

    // What the code vouches for itself: anything else that may be null the compiler warns of where it is used.
    private static bool IsUsedAsIfThere(SyntaxNode value)
    {
        var vouched = value.Parent is PostfixUnaryExpressionSyntax ? value.Parent : value;
        return vouched.IsKind(SyntaxKind.SuppressNullableWarningExpression) && vouched.Parent switch
        {
            MemberAccessExpressionSyntax access => access.Expression == vouched,
            ElementAccessExpressionSyntax access => access.Expression == vouched,
            InvocationExpressionSyntax call => call.Expression == vouched,
            CommonForEachStatementSyntax loop => loop.Expression == vouched,
            _ => false,
        };
    }

    /// <summary>A value that is about to be stored: a struct's copy.</summary>
    private void CopiedValue(IOperation operation)
    {
        Value(operation);
        var plain = operation is IConversionOperation { Operand: var operand } ? operand : operation;
        if (plain is ILocalReferenceOperation or IParameterReferenceOperation or IFieldReferenceOperation or IArrayElementReferenceOperation or IPropertyReferenceOperation or IInstanceReferenceOperation
            && plain.Type is { IsValueType: true, SpecialType: SpecialType.None, TypeKind: not TypeKind.Enum })
            Emit(new CopyValue());
    }

    private void Compute(IOperation operation)
    {
        switch (operation)
        {
            case ILocalReferenceOperation { Local: var local }: LoadVariable(local, local.IsRef); break;
            case IParameterReferenceOperation or IFieldReferenceOperation or IPropertyReferenceOperation or IArrayElementReferenceOperation or IInlineArrayAccessOperation or IEventReferenceOperation:
                Read(TargetOf(operation));
                break;
            case IInstanceReferenceOperation self: Instance(self); break;
            case IParenthesizedOperation { Operand: var inner }: Value(inner); break;
            case IConversionOperation conversion: Convert(conversion); break;
            case IInvocationOperation call:
                var written = afterCall.Count;
                Invocation(call);
                WriteBack(written);
                if (IsPlace(call.TargetMethod))
                    Emit(new LoadPlace());
                break;
            case IObjectCreationOperation creation: Creation(creation); break;
            case ISimpleAssignmentOperation assignment: Assign(assignment); break;
            case ICompoundAssignmentOperation assignment: AssignCompound(assignment); break;
            case ICoalesceAssignmentOperation assignment: AssignIfNull(assignment); break;
            case IDeconstructionAssignmentOperation assignment: AssignParts(assignment); break;
            case IIncrementOrDecrementOperation step: Step(step); break;
            case IBinaryOperation text when IsJoinedText(text): Concatenate(text); break;
            case IBinaryOperation binary: Binary(binary); break;
            case IUnaryOperation unary: Unary(unary); break;
            case IInterpolatedStringOperation text: Emit(new JoinText(Interpolate(text), Seams.Of(text.Syntax, body.Path))); break;
            case IInterpolatedStringHandlerCreationOperation handler: Handler(handler); break;
            case ITupleOperation tuple: Tuple(tuple); break;
            case ITupleBinaryOperation equality:
                Value(equality.LeftOperand);
                Value(equality.RightOperand);
                Emit(new TupleEquality(equality.OperatorKind));
                break;
            case IConditionalOperation { IsRef: true }:
                Place(operation);
                Emit(new LoadPlace());
                break;
            case IConditionalOperation condition: Choose(condition); break;
            case ITypeParameterObjectCreationOperation creation:
                Emit(new NewOfParameter(KeyOf(creation)));
                if (creation.Initializer is { } made)
                    Initialise(made);
                break;
            case ICoalesceOperation coalesce: Coalesce(coalesce); break;
            case IConditionalAccessOperation access: Access(access); break;
            case IConditionalAccessInstanceOperation: Receiver(conditionalReceivers); break;
            case IDefaultValueOperation: Emit(new PushDefault(KeyOf(operation))); break;
            case IArrayCreationOperation array: Array(array); break;
            case ICollectionExpressionOperation collection: Collection(collection); break;
            case IAnonymousFunctionOperation lambda: Lambda(lambda); break;
            case IDelegateCreationOperation { Target: var function }: Value(function); break;
            case IMethodReferenceOperation method: MethodGroup(method); break;
            case IIsTypeOperation test: TypeCheck(test); break;
            case IIsPatternOperation test: PatternCheck(test); break;
            case ISwitchExpressionOperation choice: SwitchExpression(choice); break;
            case IThrowOperation thrown:
                ThrowValue(thrown);
                break;
            case IWithOperation changed: With(changed); break;
            case IAnonymousObjectCreationOperation creation: Anonymous(creation); break;
            case IObjectOrCollectionInitializerOperation initializer:
                // One that stands alone belongs to an object that can't be made yet.
                Emit(new PushConstant(OpenValue.Any));
                Initialise(initializer);
                break;
            case IMemberInitializerOperation member: InitialiseMember(member); break;
            case IDeclarationExpressionOperation { Expression: var declared }: Value(declared); break;
            case IDiscardOperation: Emit(new PushConstant(null)); break;
            case IAwaitOperation { Operation: var awaited }:
                Value(awaited);
                Emit(new Await(KeyOf(operation)));
                break;
            case ITranslatedQueryOperation { Operation: var query }: Value(query); break;
            case IUtf8StringOperation { Value: var text }:
                Emit(new PushConstant(new SpanValue([.. System.Text.Encoding.UTF8.GetBytes(text).Cast<object?>()], 0, System.Text.Encoding.UTF8.GetByteCount(text))));
                break;
            case { Kind: OperationKind.None, Syntax: StackAllocArrayCreationExpressionSyntax or ImplicitStackAllocArrayCreationExpressionSyntax }: OnStack(operation); break;
            case ITypeOfOperation { TypeOperand: var type }: Emit(new PushType(TypeKeys.Of(type))); break;
            case IRangeOperation range: Range(range); break;
            case IImplicitIndexerReferenceOperation indexed: ImplicitIndex(indexed); break;
            case IEventAssignmentOperation hooked: Hook(hooked); break;
            default: Other(operation); break;
        }
    }

    private static void Read(Target target)
    {
        if (target.Read is { } read)
        {
            read();
            return;
        }

        target.Prepare();
        target.Load();
    }

    // Code that doesn't compile yet is read as far as it makes sense; what isn't understood may have done anything.
    private void Other(IOperation operation)
    {
        if (operation is IInvalidOperation or { Kind: OperationKind.None })
        {
            foreach (var child in operation.ChildOperations)
                Effect(child);
            Emit(new PushOpen(KeyOf(operation)));
            return;
        }

        Emit(new Unread(Quoted(operation.Syntax), operation.Type is null ? null : KeyOf(operation)));
        foreach (var written in Captures.OwnDescendants(operation).OfType<IAssignmentOperation>())
        {
            if (written.Target is ILocalReferenceOperation { Local: var local })
            {
                Emit(new PushConstant(OpenValue.Any));
                StoreVariable(local, isReference: false);
            }
        }
    }

    // Who is typing has nothing there yet.
    private static string Quoted(SyntaxNode code)
    {
        var line = code.ToString().Split('\n')[0].Trim();
        return line.Length == 0 ? "what is still missing here" : $"'{(line.Length <= 40 ? line : line.Substring(0, 37) + "...")}'";
    }

    private void Constant(IOperation operation, object? value)
    {
        Outermost.body.NamesItsLine |= operation.IsImplicit && IsLineOfCall(operation.Parent);
        // The compiler keeps a native integer's constant as one of 32 bits.
        value = value switch
        {
            int whole when operation.Type?.SpecialType == SpecialType.System_IntPtr => (long)whole,
            uint whole when operation.Type?.SpecialType == SpecialType.System_UIntPtr => (ulong)whole,
            _ => value,
        };
        if (value is not string text)
        {
            Emit(new PushConstant(value is not null && KeyOf(operation) is { Shape: TypeShape.Enum } type ? new EnumValue(type, value) : value));
            return;
        }

        Emit(new PushConstant(LiteralOf(operation) is { } literal && literal.SyntaxTree.FilePath == body.Path
            ? new TextValue(text, Seams.Of(literal, body.Path) is { } seam ? [seam] : [], [OriginOf(literal)])
            : new TextValue(text, [], OriginsOf(ConstantOrigins.Of(operation)))));
    }

    private static bool IsLineOfCall(IOperation? around) => around is IConversionOperation { IsImplicit: true, Parent: var above }
        ? IsLineOfCall(above)
        : around is IArgumentOperation { ArgumentKind: ArgumentKind.DefaultValue, Parameter: { } parameter } && IsCallerInformation(parameter);

    /// <summary>The literal that a constant was written as, where no other file can see it under a name.</summary>
    private static LiteralExpressionSyntax? LiteralOf(IOperation operation) => operation switch
    {
        ILiteralOperation { Syntax: LiteralExpressionSyntax literal } => literal,
        IParenthesizedOperation { Operand: var inner } => LiteralOf(inner),
        ILocalReferenceOperation { Local.DeclaringSyntaxReferences: [var declared] } => InitialiserOf(declared),
        IFieldReferenceOperation { Field: { DeclaredAccessibility: Accessibility.Private, DeclaringSyntaxReferences: [var declared] } } => InitialiserOf(declared),
        _ => null,
    };

    private static LiteralExpressionSyntax? InitialiserOf(SyntaxReference declared) =>
        (declared.GetSyntax() as VariableDeclaratorSyntax)?.Initializer?.Value as LiteralExpressionSyntax;

    private void Instance(IInstanceReferenceOperation self)
    {
        switch (self.ReferenceKind)
        {
            case InstanceReferenceKind.ImplicitReceiver: Receiver(implicitReceivers); break;
            case InstanceReferenceKind.InterpolatedStringHandler: Receiver(textHandlers); break;
            case InstanceReferenceKind.PatternInput: Receiver(patternInputs); break;
            case InstanceReferenceKind.ContainingTypeInstance: Emit(new PushThis()); break;
            default: Emit(new PushOpen(KeyOf(self))); break;
        }
    }

    // In code that doesn't compile yet the object that is meant may be missing.
    private void Receiver(Stack<int> receivers) => Emit(receivers.Count > 0 ? new LoadSlot(receivers.Peek()) : new PushConstant(OpenValue.Any));

    /// <summary>Computes a binary operation whose left operand lies on the stack.</summary>
    private void Combine(IBinaryOperation binary)
    {
        if (binary.OperatorMethod is { } method && !IsGenericMaths(method) && method.ContainingType?.SpecialType != SpecialType.System_String)
        {
            Value(binary.RightOperand);
            if (binary.OperatorKind is BinaryOperatorKind.Equals or BinaryOperatorKind.NotEquals && IsRecordOfUser(method))
                Emit(new BinaryOperator(binary.OperatorKind, false, KeyOf(binary)) { AsksEquals = true });
            else if (binary.IsLifted)
                Lifted(2, binary.OperatorKind, Call);
            else
                Call();
            return;

            void Call() => EmitOperator(method, 2, binary.Syntax, [binary.LeftOperand.Syntax, binary.RightOperand.Syntax], binary.ConstrainedToType);
        }

        switch (binary.OperatorKind)
        {
            case BinaryOperatorKind.ConditionalAnd or BinaryOperatorKind.ConditionalOr:
                ShortCircuit(binary.OperatorKind == BinaryOperatorKind.ConditionalOr, () => { }, () => Value(binary.RightOperand));
                return;
        }

        Value(binary.RightOperand);
        Emit(new BinaryOperator(binary.OperatorKind, binary.IsChecked, KeyOf(binary))
        {
            IsLifted = binary.IsLifted,
            ComparesIdentity = binary.OperatorMethod is null && binary.LeftOperand.Type is { IsReferenceType: true },
        });
    }

    private static List<IOperation> PartsOf(IBinaryOperation text)
    {
        var parts = new List<IOperation>();
        var pending = new Stack<IOperation>([text]);
        while (pending.Count > 0)
        {
            var operation = pending.Pop();
            if (operation is IBinaryOperation sum && IsJoinedText(sum))
            {
                pending.Push(sum.RightOperand);
                pending.Push(sum.LeftOperand);
            }
            else
            {
                // What is joined is converted to object first; its own type says how its text is made.
                parts.Add(Unconverted(operation));
            }
        }

        return parts;
    }

    private void Tuple(ITupleOperation tuple)
    {
        foreach (var element in tuple.Elements)
            CopiedValue(element);
        Emit(new MakeTuple(tuple.Elements.Length));
    }

    private void Choose(IConditionalOperation condition)
    {
        var (otherwise, end) = (new JumpLabel(), new JumpLabel());
        Condition(condition.Condition, otherwise, jumpWhen: false, end);
        CopiedValue(condition.WhenTrue);
        Emit(new Jump(end));
        Mark(otherwise);
        if (condition.WhenFalse is { } other)
            CopiedValue(other);
        else
            Emit(new PushConstant(null));
        Mark(end);
    }

    private void Coalesce(ICoalesceOperation coalesce)
    {
        var (isNull, end) = (new JumpLabel(), new JumpLabel());
        Value(coalesce.Value);
        Emit(new Duplicate());
        Emit(new NullTest());
        Emit(new Branch(isNull, true, Stops(end)));
        Emit(new TakeAsThere());
        if (coalesce.ValueConversion.MethodSymbol is { } converter)
            EmitOperator(converter, 1, coalesce.Syntax, [coalesce.Value.Syntax]);
        else if (IsNumber(KeyOf(coalesce)) && Underlying(KeyOf(coalesce)).Shape != Underlying(KeyOf(coalesce.Value)).Shape)
            Emit(new ConvertNumber(KeyOf(coalesce), false));
        Emit(new Jump(end));
        Mark(isNull);
        Emit(new Pop());
        Value(coalesce.WhenNull);
        Mark(end);
    }

    private void Access(IConditionalAccessOperation access)
    {
        var (isNull, end) = (new JumpLabel(), new JumpLabel());
        var receiver = Temporary();
        Value(access.Operation);
        Emit(new StoreSlot(receiver));
        Emit(new LoadSlot(receiver));
        Emit(new NullTest());
        Emit(new Branch(isNull, true, Stops(end)));
        conditionalReceivers.Push(receiver);
        Value(access.WhenNotNull);
        conditionalReceivers.Pop();
        Emit(new Jump(end));
        Mark(isNull);
        Emit(new PushConstant(null));
        Mark(end);
    }

    private void Range(IRangeOperation range)
    {
        if (range.LeftOperand is { } start)
            Value(start);
        else
            Emit(new PushConstant(0));
        if (range.RightOperand is { } end)
            Value(end);
        else
            Emit(new PushConstant(new IndexValue(0, FromEnd: true)));
        Emit(new MakeRange());
    }
}
