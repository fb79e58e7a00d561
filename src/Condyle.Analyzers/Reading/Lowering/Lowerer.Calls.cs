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

        if (!method.IsStatic)
            Value(call.Instance);
        var arguments = PushArguments(call.Arguments);
        var isBase = call.Instance is IInstanceReferenceOperation && call.Instance.Syntax is BaseExpressionSyntax;
        EmitCall(method, arguments.Count, arguments.Order, call.Syntax, arguments.Sources, isBase);
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
                continue;
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
    private void EmitCall(IMethodSymbol method, int count, int[]? order, SyntaxNode syntax, IEnumerable<SyntaxNode?> sources, bool isBase = false) =>
        Emit(CallOf(method, count, order, syntax, sources, isBase));

    private Instruction CallOf(IMethodSymbol method, int count, int[]? order, SyntaxNode syntax, IEnumerable<SyntaxNode?> sources, bool isBase = false)
    {
        var reference = TypeKeys.MethodOf(method);
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
        if (array.DimensionSizes.Length != 1 || array.Initializer?.ElementValues.Any(value => value is IArrayInitializerOperation) == true)
        {
            Emit(new Unread("an array of several dimensions", KeyOf(array)));
            return;
        }

        if (array.Initializer is { } initializer)
        {
            foreach (var value in initializer.ElementValues)
                CopiedValue(value);
            Emit(new MakeArray(initializer.ElementValues.Length));
            return;
        }

        Value(array.DimensionSizes[0]);
        Emit(new NewArray(TypeKeys.Of((array.Type as IArrayTypeSymbol)?.ElementType)));
    }

    private void Collection(ICollectionExpressionOperation collection)
    {
        foreach (var element in collection.Elements)
            CopiedValue(element is ISpreadOperation spread ? spread.Operand : element);
        var target = TypeKeys.PlainNameOf(collection.Type!) switch
        {
            "System.Collections.Generic.HashSet" or "System.Collections.Generic.ISet" => CollectionTarget.Set,
            "System.Collections.Generic.List" or "System.Collections.Generic.IList" or "System.Collections.Generic.ICollection" => CollectionTarget.List,
            _ => CollectionTarget.Array,
        };
        Emit(new GatherItems([.. collection.Elements.Select(element => element is ISpreadOperation)], target));
    }

    private void Lambda(IAnonymousFunctionOperation lambda)
    {
        var (nested, captures) = LowerNested(lambda.Symbol, lambda.Body, "a lambda");
        Emit(new MakeFunction(nested, captures));
    }

    private (CodeBody Body, IReadOnlyList<(int, int)> Captures) LowerNested(IMethodSymbol symbol, IOperation? content, string name)
    {
        var nested = new CodeBody(name, body.Path) { ParameterCount = symbol.Parameters.Length, ReturnsValue = !symbol.ReturnsVoid, IsAsync = symbol.IsAsync };
        var lowerer = new Lowerer(nested, symbol, this, shared);
        foreach (var parameter in symbol.Parameters)
            lowerer.Declare(parameter);
        lowerer.Statement(content);
        lowerer.Finish(content is null ? [] : [content]);
        return (nested, lowerer.captured);
    }

    private void DeclareLocalFunction(ILocalFunctionOperation function)
    {
        if (localFunctions.ContainsKey(function.Symbol))
            return;
        // Known before its body is lowered, so that it can call itself.
        var nested = new CodeBody(function.Symbol.Name, body.Path) { ParameterCount = function.Symbol.Parameters.Length, ReturnsValue = !function.Symbol.ReturnsVoid, IsAsync = function.Symbol.IsAsync };
        var captures = new List<(int, int)>();
        localFunctions[function.Symbol] = nested;
        localCaptures[function.Symbol] = captures;
        var lowerer = new Lowerer(nested, function.Symbol, this, shared);
        foreach (var parameter in function.Symbol.Parameters)
            lowerer.Declare(parameter);
        lowerer.Statement(function.Body);
        lowerer.Finish(function.Body is { } content ? [content] : []);
        captures.AddRange(lowerer.captured);
    }

    private void LoadLocalFunction(IMethodSymbol symbol)
    {
        symbol = symbol.OriginalDefinition;
        for (var from = this; from is not null; from = from.outer)
        {
            if (!from.localFunctions.TryGetValue(symbol, out var function))
                continue;
            if (from == this)
            {
                Emit(new MakeFunction(function, localCaptures[symbol]));
                return;
            }

            // Called from a nested function: what it captures must be captured here too.
            Emit(new MakeFunction(function, new OuterCaptures(this, from, from.localCaptures[symbol])));
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
