using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using Microsoft.CodeAnalysis.Operations;
using Microsoft.CodeAnalysis.Text;

namespace Condyle.Analyzers.Reading;

/// <summary>Calls and what they are made of: arguments, functions, new objects.</summary>
internal sealed partial class Lowerer
{
    private void Invocation(IInvocationOperation call)
    {
        var method = call.TargetMethod;
        if (method.MethodKind == MethodKind.LocalFunction)
        {
            LoadLocalFunction(method);
            var passed = PushArguments(call.Arguments);
            Emit(new InvokeFunction(passed.Count, TypeKeys.Of(method.ReturnType)));
            return;
        }

        if (method.MethodKind == MethodKind.DelegateInvoke)
        {
            Value(call.Instance);
            var passed = PushArguments(call.Arguments);
            Emit(new InvokeFunction(passed.Count, TypeKeys.Of(method.ReturnType)));
            return;
        }

        if (method.MethodKind == MethodKind.Constructor)
        {
            var passed = PushArguments(call.Arguments);
            Emit(new ConstructorCall(TypeKeys.MethodOf(method), passed.Count, passed.Order));
            return;
        }

        if (method is { IsPartialDefinition: true, PartialImplementationPart: null })
        {
            // Nobody wrote it, so the compiler leaves the call out.
            Emit(new PushConstant(null));
            return;
        }

        if (!method.IsStatic)
            Value(call.Instance);
        var arguments = PushArguments(call.Arguments);
        var isBase = call.Instance is IInstanceReferenceOperation && call.Instance.Syntax is BaseExpressionSyntax;
        EmitCall(method, arguments.Count, arguments.Order, call.Syntax, arguments.Sources, isBase, call.ConstrainedToType);
    }

    /// <summary>Pushes arguments in the order of the source; the compiler's file and line are left out.</summary>
    private (int Count, int[]? Order, IReadOnlyList<SyntaxNode?> Sources) PushArguments(IReadOnlyList<IArgumentOperation> arguments)
    {
        var ordinals = new List<int>();
        var sources = new SortedDictionary<int, SyntaxNode?>();
        foreach (var argument in arguments)
        {
            var parameter = argument.Parameter;
            if (parameter is not null && IsCallerInformation(parameter))
            {
                if (TypeKeys.Of(parameter.ContainingType).Shape == TypeShape.Condyle)
                    continue;
                // Where a file lies differs from machine to machine.
                if (argument.ArgumentKind == ArgumentKind.DefaultValue && parameter.Type.SpecialType == SpecialType.System_String)
                {
                    Emit(new PushConstant(TextValue.Open));
                    ordinals.Add(parameter.Ordinal);
                    sources[parameter.Ordinal] = null;
                    continue;
                }
            }

            if (parameter?.RefKind is RefKind.Ref or RefKind.Out)
                Place(argument.Value);
            else if (argument is { ArgumentKind: ArgumentKind.DefaultValue, Value.ConstantValue: { HasValue: true, Value: string text } })
                Emit(new PushConstant(new TextValue(text, [], ConstantOrigins.Of(parameter, argument.SemanticModel))));
            else
                CopiedValue(argument.Value);
            ordinals.Add(parameter?.Ordinal ?? ordinals.Count);
            sources[ordinals[ordinals.Count - 1]] = argument.ArgumentKind == ArgumentKind.DefaultValue ? null : argument.Value.Syntax;
        }

        var isInOrder = ordinals.Select((ordinal, index) => ordinal == index).All(same => same);
        return (ordinals.Count, isInOrder || ordinals.Distinct().Count() != ordinals.Count || ordinals.Max() >= ordinals.Count ? null : [.. ordinals], [.. sources.Values]);
    }

    private static bool IsCallerInformation(IParameterSymbol parameter) =>
        parameter.IsOptional && parameter.GetAttributes().Any(attribute => attribute.AttributeClass?.Name is "CallerFilePathAttribute" or "CallerLineNumberAttribute");

    /// <summary>Emits the call of a method whose receiver and arguments lie on the stack.</summary>
    private void EmitCall(IMethodSymbol method, int count, int[]? order, SyntaxNode syntax, IEnumerable<SyntaxNode?> sources, bool isBase = false, ITypeSymbol? on = null) =>
        Emit(CallOf(method, count, order, syntax, sources, isBase, on));

    private Instruction CallOf(IMethodSymbol method, int count, int[]? order, SyntaxNode syntax, IEnumerable<SyntaxNode?> sources, bool isBase = false, ITypeSymbol? on = null)
    {
        var reference = TypeKeys.MethodOf(method);
        if (on is not null && method.IsStatic)
            reference = reference with { On = TypeKeys.Of(on) };
        var hasReceiver = !method.IsStatic && method.MethodKind != MethodKind.Constructor;
        if (TypeKeys.Of(method.ContainingType).Shape == TypeShape.Condyle)
        {
            return new CondyleCall(reference.Id, hasReceiver, count, order, reference.Returns)
            {
                Span = SpanOf(syntax),
                ArgumentSpans = [.. sources.Select(source => source?.Span)],
                NameSpan = NameOf(syntax).Span,
                LineSpan = ParenthesisOf(syntax),
            };
        }

        if (method is { IsImplicitlyDeclared: true, Name: "ToString" or "Equals" or "GetHashCode" })
            return new FrameworkCall(reference with { ContainingType = "System.Object", IsDispatched = false }, count, order, hasReceiver);
        if (method.ContainingType is { } type && IsRead(type))
            return new UserCall(isBase ? reference with { IsDispatched = false } : reference, count, order, pushesResult: true);
        return new FrameworkCall(reference, count, order, hasReceiver);
    }

    private void EmitFramework(ITypeSymbol type, string name, TypeKey returns, int count, bool isStatic) =>
        Emit(new FrameworkCall(new MethodRef(name, TypeKeys.PlainNameOf(type), name) { Returns = returns, IsStatic = isStatic }, count, null, !isStatic));

    /// <summary>What a finding points at: the verb and its arguments, not the whole sentence before it.</summary>
    private static TextSpan SpanOf(SyntaxNode syntax) => syntax is InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax member } call
        ? TextSpan.FromBounds(member.Name.SpanStart, call.Span.End)
        : syntax.Span;

    private static SyntaxNode NameOf(SyntaxNode syntax) => syntax switch
    {
        InvocationExpressionSyntax { Expression: MemberAccessExpressionSyntax member } => member.Name,
        InvocationExpressionSyntax { Expression: MemberBindingExpressionSyntax member } => member.Name,
        InvocationExpressionSyntax call => call.Expression,
        MemberAccessExpressionSyntax member => member.Name,
        _ => syntax,
    };

    // The compiler's caller line is the line of a call's own parenthesis; a method group has none.
    private static TextSpan ParenthesisOf(SyntaxNode syntax) => syntax is InvocationExpressionSyntax { ArgumentList.OpenParenToken: var open } ? open.Span : default;

    private void Creation(IObjectCreationOperation creation)
    {
        if (creation.Constructor is not { } constructor)
        {
            Emit(new PushOpen(KeyOf(creation)));
            return;
        }

        var type = KeyOf(creation);
        var arguments = PushArguments(creation.Arguments);
        if (type.Shape == TypeShape.User)
            Emit(new NewUserObject(TypeKeys.MethodOf(constructor), type, arguments.Count, arguments.Order));
        else if (IsException(creation.Type))
            Emit(new NewException(new TypeKey(TypeKeys.PlainNameOf(creation.Type!), TypeShape.Other), arguments.Count));
        else if (creation.Type!.IsValueType && constructor.Parameters.IsEmpty)
            Emit(new PushDefault(type));
        else
            EmitCall(constructor, arguments.Count, arguments.Order, creation.Syntax, arguments.Sources);
        if (creation.Initializer is { } initializer)
            Initialise(initializer);
    }

    private static bool IsException(ITypeSymbol? type)
    {
        for (var candidate = type; candidate is not null; candidate = candidate.BaseType)
        {
            if (TypeKeys.PlainNameOf(candidate) == "System.Exception")
                return true;
        }

        return false;
    }

    /// <summary>Runs an initialiser on the object on the stack, which stays there.</summary>
    private void Initialise(IObjectOrCollectionInitializerOperation initializer)
    {
        var made = Temporary();
        Emit(new StoreSlot(made));
        implicitReceivers.Push(made);
        foreach (var member in initializer.Initializers)
            Effect(member);
        implicitReceivers.Pop();
        Emit(new LoadSlot(made));
    }

    private void InitialiseMember(IMemberInitializerOperation member)
    {
        Value(member.InitializedMember);
        Initialise(member.Initializer);
    }

    private void With(IWithOperation changed)
    {
        Value(changed.Operand);
        if (KeyOf(changed).Shape == TypeShape.Condyle)
            Emit(new Unread("'with' on a type of Condyle", KeyOf(changed)));
        else
            Emit(new CloneObject());
        if (changed.Initializer is { } initializer)
            Initialise(initializer);
    }

    private void Anonymous(IAnonymousObjectCreationOperation creation)
    {
        Emit(new PushDefaultObject(TypeKeys.IdOf(creation.Type!)));
        var made = Temporary();
        Emit(new StoreSlot(made));
        implicitReceivers.Push(made);
        foreach (var part in creation.Initializers.OfType<ISimpleAssignmentOperation>())
        {
            Emit(new LoadSlot(made));
            CopiedValue(part.Value);
            Emit(new StoreField(((IPropertyReferenceOperation)part.Target).Property.Name));
        }

        implicitReceivers.Pop();
        Emit(new LoadSlot(made));
    }

    private void Array(IArrayCreationOperation array)
    {
        if (array.Initializer is { } initializer)
        {
            var count = 0;
            Items(initializer);
            Emit(new MakeArray(count, TypeKeys.Of((array.Type as IArrayTypeSymbol)?.ElementType), array.DimensionSizes.Length == 1 ? null : [.. LengthsOf(initializer)]));

            void Items(IArrayInitializerOperation row)
            {
                foreach (var value in row.ElementValues)
                {
                    if (value is IArrayInitializerOperation inner)
                    {
                        Items(inner);
                        continue;
                    }

                    CopiedValue(value);
                    count++;
                }
            }

            return;
        }

        foreach (var size in array.DimensionSizes)
            Value(size);
        Emit(new NewArray(TypeKeys.Of((array.Type as IArrayTypeSymbol)?.ElementType), array.DimensionSizes.Length));
    }

    // Memory of the stack is an array that only a span sees.
    private void OnStack(IOperation allocation)
    {
        var type = allocation.SemanticModel?.GetTypeInfo(allocation.Syntax);
        var item = ItemTypeOf(type?.ConvertedType ?? type?.Type) ?? TypeKeys.Of(null);
        var initializer = allocation.Syntax switch
        {
            StackAllocArrayCreationExpressionSyntax { Initializer: { } given } => given,
            ImplicitStackAllocArrayCreationExpressionSyntax { Initializer: var given } => given,
            _ => null,
        };
        if (initializer is not null)
        {
            foreach (var value in initializer.Expressions)
                Value(allocation.SemanticModel?.GetOperation(value));
            Emit(new MakeArray(initializer.Expressions.Count, item));
        }
        else
        {
            Value(allocation.ChildOperations.FirstOrDefault());
            Emit(new NewArray(item));
        }

        Emit(new MakeSpan());
    }

    private static IEnumerable<int> LengthsOf(IArrayInitializerOperation? rows)
    {
        for (; rows is not null; rows = rows.ElementValues.FirstOrDefault() as IArrayInitializerOperation)
            yield return rows.ElementValues.Length;
    }

    private void Collection(ICollectionExpressionOperation collection)
    {
        foreach (var element in collection.Elements)
            CopiedValue(element is ISpreadOperation spread ? spread.Operand : element);
        var name = TypeKeys.PlainNameOf(collection.Type!);
        var made = collection.ConstructMethod;
        Emit(new GatherItems([.. collection.Elements.Select(element => element is ISpreadOperation)], ItemTypeOf(collection.Type)));
        if (IsSpan(collection.Type))
            Emit(new MakeSpan());
        else if (made is { MethodKind: MethodKind.Ordinary, IsStatic: true })
            EmitCall(made, 1, null, collection.Syntax, []);
        else if (collection.Type is INamedTypeSymbol { TypeKind: not TypeKind.Interface } own && IsRead(own))
            FillOwn(own, made, collection);
        else if (name is "System.Collections.Generic.IList" or "System.Collections.Generic.ICollection")
            EmitFramework("System.Collections.Generic.List", KeyOf(collection));
        else if (made is not null)
            EmitFramework(name, KeyOf(collection));
    }

    private static TypeKey? ItemTypeOf(ITypeSymbol? type) => type switch
    {
        IArrayTypeSymbol array => TypeKeys.Of(array.ElementType),
        INamedTypeSymbol { TypeArguments: [var argument] } => TypeKeys.Of(argument),
        _ => null,
    };

    // A collection of the framework's is made of the items in one call.
    private void EmitFramework(string type, TypeKey made) =>
        Emit(new FrameworkCall(new MethodRef("#ctor", type, ".ctor") { Returns = made, IsStatic = true, TypeArguments = made.Arguments }, 1, null, hasReceiver: false));

    // A collection of the user's own is made empty, and each item added.
    private void FillOwn(INamedTypeSymbol type, IMethodSymbol? constructor, ICollectionExpressionOperation collection)
    {
        var add = Dispatch.BasesOf(type).SelectMany(candidate => candidate.GetMembers("Add")).OfType<IMethodSymbol>().FirstOrDefault(method => method.Parameters.Length == 1);
        if (constructor is null || add is null)
        {
            Emit(new Unread($"'{Shorten(collection.Syntax.ToString())}'", KeyOf(collection)));
            return;
        }

        var (items, made, enumerator) = (Temporary(), Temporary(), Temporary());
        var (head, exit) = (new JumpLabel(), new JumpLabel());
        Emit(new StoreSlot(items));
        Emit(new NewUserObject(TypeKeys.MethodOf(constructor), TypeKeys.Of(type), 0, null));
        Emit(new StoreSlot(made));
        Emit(new LoadSlot(items));
        Emit(new StartEnumeration(enumerator, ofPlaces: false));
        Mark(head);
        Emit(new NextItem(enumerator, TypeKeys.Of(add.Parameters[0].Type), Stops(head, exit)));
        var item = Temporary();
        Emit(new StoreSlot(item));
        Emit(new LoadSlot(made));
        Emit(new LoadSlot(item));
        EmitCall(add, 1, null, collection.Syntax, []);
        Emit(new Pop());
        Emit(new Jump(head));
        Mark(exit);
        Emit(new LoadSlot(made));
    }

    private static bool IsSpan(ITypeSymbol? type) => type?.OriginalDefinition is { Name: "Span" or "ReadOnlySpan", ContainingNamespace.Name: "System" };

    private void Lambda(IAnonymousFunctionOperation lambda)
    {
        var (nested, captures) = LowerNested(lambda.Symbol, lambda.Body, "a lambda");
        Emit(new MakeFunction(nested, captures));
    }

    private (CodeBody Body, IReadOnlyList<(int, int)> Captures) LowerNested(IMethodSymbol symbol, IOperation? content, string name)
    {
        var nested = new CodeBody(name, body.Path) { ParameterCount = symbol.Parameters.Length, ReturnsValue = !symbol.ReturnsVoid, IsAsync = symbol.IsAsync };
        var lowerer = new Lowerer(nested, symbol, this, shared);
        lowerer.DeclareVariables(symbol);
        lowerer.Statement(content);
        lowerer.Finish(content is null ? [] : [content]);
        return (nested, lowerer.captured);
    }

    // All functions of a block are known before the first is lowered, so that they can call themselves and each other.
    private void DeclareLocalFunctions(IReadOnlyList<ILocalFunctionOperation> functions)
    {
        foreach (var function in functions)
        {
            localFunctions[function.Symbol] = new CodeBody(function.Symbol.Name, body.Path) { ParameterCount = function.Symbol.Parameters.Length, ReturnsValue = !function.Symbol.ReturnsVoid, IsAsync = function.Symbol.IsAsync };
            localCaptures[function.Symbol] = new List<(int, int)>();
        }

        foreach (var function in functions)
        {
            var lowerer = new Lowerer(localFunctions[function.Symbol], function.Symbol, this, shared);
            lowerer.DeclareVariables(function.Symbol);
            lowerer.Statement(function.Body);
            lowerer.Finish(function.Body is { } content ? [content] : []);
            ((List<(int, int)>)localCaptures[function.Symbol]).AddRange(lowerer.captured);
        }
    }

    private void LoadLocalFunction(IMethodSymbol symbol)
    {
        List<KeyValuePair<string, TypeKey>>? generic = symbol.TypeParameters.IsEmpty
            ? null
            : [.. symbol.OriginalDefinition.TypeParameters.Zip(symbol.TypeArguments, (parameter, argument) => new KeyValuePair<string, TypeKey>(TypeKeys.ParameterIdOf(parameter), TypeKeys.Of(argument)))];
        symbol = symbol.OriginalDefinition;
        for (var from = this; from is not null; from = from.outer)
        {
            if (!from.localFunctions.TryGetValue(symbol, out var function))
                continue;
            if (from == this)
            {
                Emit(new MakeFunction(function, localCaptures[symbol], isNamed: true, generic));
                return;
            }

            // Called from a nested function: what it captures must be captured here too.
            Emit(new MakeFunction(function, new OuterCaptures(this, from, from.localCaptures[symbol]), isNamed: true, generic));
            return;
        }

        Emit(new Unread($"the local function '{symbol.Name}'", null));
    }

    private void MethodGroup(IMethodReferenceOperation reference)
    {
        var method = reference.Method;
        if (method.MethodKind == MethodKind.LocalFunction)
        {
            LoadLocalFunction(method);
            return;
        }

        if (!method.IsStatic)
            Value(reference.Instance);
        var call = CallOf(method, method.Parameters.Length, null, reference.Syntax, []);
        call.Span = reference.Syntax.Span;
        Emit(new MakeMethodFunction(call, TypeKeys.MethodOf(method), method.Parameters.Length));
    }
}
