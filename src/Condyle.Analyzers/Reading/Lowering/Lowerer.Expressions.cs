using Microsoft.CodeAnalysis;
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
            Inside(operation, ValueHere, leaves: 1);
    }

    private void ValueHere(IOperation operation)
    {
        if (operation.ConstantValue is { HasValue: true, Value: var constant } && operation is not IConversionOperation { OperatorMethod: not null } && !IsJoinedText(operation))
            Constant(operation, constant);
        else
            Compute(operation);
    }

    /// <summary>Text that is put together is so here as well, even if it is constant: each piece keeps its origin.</summary>
    private static bool IsJoinedText(IOperation operation) =>
        operation is IInterpolatedStringOperation or IBinaryOperation { OperatorKind: BinaryOperatorKind.Add, Type.SpecialType: SpecialType.System_String };

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
            case ILocalReferenceOperation or IParameterReferenceOperation or IFieldReferenceOperation or IPropertyReferenceOperation or IArrayElementReferenceOperation or IEventReferenceOperation:
                var target = TargetOf(operation);
                target.Prepare();
                target.Load();
                break;
            case IInstanceReferenceOperation self: Instance(self); break;
            case IParenthesizedOperation { Operand: var inner }: Value(inner); break;
            case IConversionOperation conversion: Convert(conversion); break;
            case IInvocationOperation call:
                Invocation(call);
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

        Emit(new Unread($"'{Shorten(operation.Syntax.ToString())}'", operation.Type is null ? null : KeyOf(operation)));
        foreach (var written in Captures.OwnDescendants(operation).OfType<IAssignmentOperation>())
        {
            if (written.Target is ILocalReferenceOperation { Local: var local })
            {
                Emit(new PushConstant(OpenValue.Any));
                StoreVariable(local, isReference: false);
            }
        }
    }

    private static string Shorten(string source)
    {
        var line = source.Split('\n')[0].Trim();
        return line.Length <= 40 ? line : line.Substring(0, 37) + "...";
    }

    private void Constant(IOperation operation, object? value)
    {
        if (value is not string text)
        {
            Emit(new PushConstant(value is not null && KeyOf(operation) is { Shape: TypeShape.Enum } type ? new EnumValue(type, value) : value));
            return;
        }

        Emit(new PushConstant(LiteralOf(operation) is { } literal && literal.SyntaxTree.FilePath == body.Path
            ? new TextValue(text, Seams.Of(literal, body.Path) is { } seam ? [seam] : [], [OriginOf(literal)])
            : new TextValue(text, [], ConstantOrigins.Of(operation))));
    }

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

    private void Convert(IConversionOperation conversion)
    {
        if (IsSpan(conversion.Type) && !conversion.Type!.Equals(conversion.Operand.Type, SymbolEqualityComparer.Default))
        {
            Value(conversion.Operand);
            Emit(new MakeSpan());
            return;
        }

        if (conversion.OperatorMethod is { } converter)
        {
            Value(conversion.Operand);
            var wanted = TypeKeys.Of(converter.Parameters[0].Type);
            if (IsNumber(wanted) && IsNumber(KeyOf(conversion.Operand)) && wanted.Shape != KeyOf(conversion.Operand).Shape)
                Emit(new ConvertNumber(wanted, false));
            EmitCall(converter, 1, null, conversion.Syntax, [conversion.Operand.Syntax]);
            return;
        }

        if (conversion.Operand is IInterpolatedStringOperation text && conversion.Type?.Name is "FormattableString" or "IFormattable")
        {
            Emit(new MakeFormattable(Interpolate(text)));
            return;
        }

        CopiedOperand(conversion.Operand);
        var to = KeyOf(conversion);
        var from = KeyOf(conversion.Operand);
        if (conversion.Operand is IAnonymousFunctionOperation or IMethodReferenceOperation or ICollectionExpressionOperation || conversion.Operand.Type is null)
            return;
        if (IsNumber(to) && IsNumber(from))
        {
            if (Underlying(to).Shape != Underlying(from).Shape || to.Shape == TypeShape.Enum || from.Shape == TypeShape.Enum || to.Element?.Shape == TypeShape.Enum || from.Element?.Shape == TypeShape.Enum)
                Emit(new ConvertNumber(to, conversion.IsChecked));
        }
        else if (conversion.IsTryCast)
        {
            Emit(new CastReference(to, throws: false));
        }
        else if (!conversion.IsImplicit && to.IsReference && !conversion.Conversion.IsIdentity)
        {
            Emit(new CastReference(to, throws: true));
        }
    }

    private void CopiedOperand(IOperation operand) => Value(operand);

    private static bool IsNumber(TypeKey type) => Underlying(type).Shape is >= TypeShape.Char and <= TypeShape.Decimal;

    private static TypeKey Underlying(TypeKey type) => type.Shape is TypeShape.Enum or TypeShape.Nullable && type.Element is { } element ? Underlying(element) : type;

    // A long sum is a deep one: its left operand is the sum of all but the last term.
    private void Binary(IBinaryOperation binary)
    {
        var sums = new Stack<IBinaryOperation>();
        IOperation left = binary;
        while (left is IBinaryOperation { ConstantValue.HasValue: false } sum && !IsJoinedText(sum))
        {
            sums.Push(sum);
            left = sum.LeftOperand;
        }

        Value(left);
        foreach (var sum in sums)
        {
            spans.Push(sum.Syntax.Span);
            Combine(sum);
            spans.Pop();
        }
    }

    /// <summary>Computes a binary operation whose left operand lies on the stack.</summary>
    private void Combine(IBinaryOperation binary)
    {
        if (binary.OperatorMethod is { } method && !IsGenericMaths(method) && !(binary.Type?.SpecialType == SpecialType.System_String || method.ContainingType?.SpecialType == SpecialType.System_String))
        {
            Value(binary.RightOperand);
            if (binary.OperatorKind is BinaryOperatorKind.Equals or BinaryOperatorKind.NotEquals && IsRecordOfUser(method))
                Emit(new BinaryOperator(binary.OperatorKind, false, KeyOf(binary)));
            else
                EmitCall(method, 2, null, binary.Syntax, [binary.LeftOperand.Syntax, binary.RightOperand.Syntax], on: binary.ConstrainedToType);
            return;
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

    /// <summary>Whether an operator is that of the framework's interfaces for numbers: what the numbers are decides what it does.</summary>
    private static bool IsGenericMaths(IMethodSymbol method) => method.ContainingType is { TypeKind: TypeKind.Interface, ContainingNamespace: { Name: "Numerics", ContainingNamespace.Name: "System" } };

    private bool IsRecordOfUser(IMethodSymbol method) => method.IsImplicitlyDeclared && method.ContainingType is { IsRecord: true } type && IsRead(type);

    /// <summary>The second condition is only asked when the first one doesn't decide.</summary>
    private void ShortCircuit(bool decidedBy, Action first, Action second)
    {
        var (decided, end) = (new JumpLabel(), new JumpLabel());
        first();
        Emit(new Branch(decided, decidedBy, Stops(end)));
        second();
        Emit(new Jump(end));
        Mark(decided);
        Emit(new PushConstant(decidedBy));
        Mark(end);
    }

    private void Unary(IUnaryOperation unary)
    {
        Value(unary.Operand);
        if (unary.OperatorMethod is { } method && !IsGenericMaths(method))
            EmitCall(method, 1, null, unary.Syntax, [unary.Operand.Syntax], on: unary.ConstrainedToType);
        else if (unary.OperatorKind == UnaryOperatorKind.Hat)
            Emit(new MakeIndex());
        else
            Emit(new UnaryOperator(unary.OperatorKind, unary.IsChecked, KeyOf(unary)));
    }

    private void Concatenate(IBinaryOperation binary)
    {
        var parts = PartsOf(binary);
        foreach (var part in parts)
            Value(part);
        var last = parts[parts.Count - 1].Syntax as LiteralExpressionSyntax;
        var seam = last is null ? null : Seams.Of(last, body.Path);
        Emit(new JoinText([.. parts.Select(_ => new Hole())], seam));
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

    /// <summary>Pushes the parts of an interpolated text and tells which are holes.</summary>
    private List<Hole?> Interpolate(IInterpolatedStringOperation text)
    {
        var holes = new List<Hole?>();
        foreach (var part in text.Parts)
        {
            switch (part)
            {
                case IInterpolatedStringTextOperation { Text: var literal }:
                    Literal(literal);
                    break;
                case IInterpolationOperation hole:
                    Fill(hole.Expression, hole.FormatString, hole.Alignment);
                    break;
                case IInterpolatedStringAppendOperation { AppendCall: IInvocationOperation { Arguments: [var first, ..] arguments } } append:
                    if (append.Kind == OperationKind.InterpolatedStringAppendLiteral)
                        Literal(first.Value);
                    else
                        Fill(first.Value, Argument("format"), Argument("alignment"));
                    break;

                    IOperation? Argument(string name) => arguments.FirstOrDefault(argument => argument.Parameter?.Name == name)?.Value;
                default:
                    Emit(new PushConstant(TextValue.Open));
                    holes.Add(null);
                    break;
            }
        }

        return holes;

        void Literal(IOperation literal)
        {
            Emit(new PushConstant(new TextValue((string)(literal.ConstantValue.Value ?? ""), [], [OriginOf(text.Syntax)])));
            holes.Add(null);
        }

        void Fill(IOperation expression, IOperation? format, IOperation? width)
        {
            Value(Unconverted(expression));
            holes.Add(new Hole(format?.ConstantValue.Value as string, width?.ConstantValue.Value as int? ?? 0));
        }
    }

    // What takes the text chooses its culture; a handler of the user's own is handed the parts one after another.
    private void Handler(IInterpolatedStringHandlerCreationOperation handler)
    {
        if (handler.Content is not IInterpolatedStringOperation text || handler.HandlerCreation.DescendantsAndSelf().Any(part => part is IInterpolatedStringHandlerArgumentPlaceholderOperation))
        {
            Emit(new Unread($"'{Shorten(handler.Syntax.ToString())}'", KeyOf(handler)));
            return;
        }

        if (handler.Type is not { } type || !IsRead(type))
        {
            Emit(new MakeFormattable(Interpolate(text)));
            return;
        }

        var made = Temporary();
        Hold(handler.HandlerCreation, made);
        textHandlers.Push(made);
        foreach (var append in text.Parts.OfType<IInterpolatedStringAppendOperation>())
            Effect(append.AppendCall);
        textHandlers.Pop();
        Emit(new LoadSlot(made));
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
        var end = new JumpLabel();
        Value(coalesce.Value);
        Emit(new Duplicate());
        Emit(new NullTest());
        Emit(new Branch(end, false, Stops(end)));
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

    private void ImplicitIndex(IImplicitIndexerReferenceOperation indexed)
    {
        Value(indexed.Instance);
        Value(indexed.Argument);
        Emit(new PartOf(KeyOf(indexed)));
    }
}
