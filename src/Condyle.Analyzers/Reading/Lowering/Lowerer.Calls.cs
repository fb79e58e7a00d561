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
            Emit(new InvokeFunction(passed.Count, TypeKeys.Of(method.ReturnType), WaitingFor(call.Syntax), passed.Order));
            return;
        }

        if (method.MethodKind == MethodKind.DelegateInvoke)
        {
            Value(call.Instance);
            var passed = PushArguments(call.Arguments);
            Emit(new InvokeFunction(passed.Count, TypeKeys.Of(method.ReturnType), WaitingFor(call.Syntax), passed.Order));
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

        if (IsOnPlace(method))
            Place(call.Instance!);
        else if (!method.IsStatic)
            Receiver(call.Instance);
        var arguments = PushArguments(call.Arguments);
        if (ExtensionOf(method) is { } extension)
        {
            // Called on its class, its receiver is the first argument.
            PutInOrder(arguments.Order ?? []);
            EmitCall(extension, extension.Parameters.Length, null, call.Syntax, arguments.Sources.Skip(extension.IsStatic ? 0 : 1));
            return;
        }

        var isBase = call.Instance is IInstanceReferenceOperation && call.Instance.Syntax is BaseExpressionSyntax;
        EmitCall(method, arguments.Count, arguments.Order, call.Syntax, arguments.Sources, isBase, call.ConstrainedToType);
    }

    private void PutInOrder(IReadOnlyList<int> ordinals)
    {
        var held = ordinals.ToDictionary(ordinal => ordinal, _ => Temporary());
        foreach (var ordinal in ordinals.Reverse())
            Emit(new StoreSlot(held[ordinal]));
        for (var i = 0; i < held.Count; i++)
            Emit(new LoadSlot(held[i]));
    }

    /// <summary>The member of an extension block behind the static method that the compiler makes of it; none behind others.</summary>
    private static IMethodSymbol? ExtensionOf(IMethodSymbol method)
    {
        if (method is not { IsStatic: true, IsImplicitlyDeclared: true, ContainingType.IsStatic: true })
            return null;
        foreach (var block in method.ContainingType.GetTypeMembers().Where(nested => nested.IsExtension))
        {
            if (block.GetMembers().OfType<IMethodSymbol>().FirstOrDefault(member => SymbolEqualityComparer.Default.Equals(member.AssociatedExtensionImplementation, method.OriginalDefinition)) is not { } found)
                continue;
            var ofBlock = method.TypeArguments.Take(block.Arity).ToArray();
            if (ofBlock.Length > 0)
                found = block.Construct(ofBlock).GetMembers(found.Name).OfType<IMethodSymbol>().First(member => SymbolEqualityComparer.Default.Equals(member.OriginalDefinition, found));
            return found.Arity > 0 ? found.Construct([.. method.TypeArguments.Skip(block.Arity)]) : found;
        }

        return null;
    }

    /// <summary>Pushes what a method is called on. A structure that can't be changed where it lies is called on a copy.</summary>
    private void Receiver(IOperation? instance)
    {
        Value(instance);
        var isCopied = instance switch
        {
            IPropertyReferenceOperation { Property.RefKind: RefKind.None } => true,
            IFieldReferenceOperation { Field.IsReadOnly: true } => owner is not IMethodSymbol { MethodKind: MethodKind.Constructor or MethodKind.StaticConstructor },
            ILocalReferenceOperation { Local.RefKind: RefKind.RefReadOnly } => true,
            IParameterReferenceOperation { Parameter.RefKind: RefKind.In or RefKind.RefReadOnlyParameter } => true,
            _ => false,
        };
        if (isCopied && instance!.Type is { IsValueType: true, SpecialType: SpecialType.None, TypeKind: not TypeKind.Enum })
            Emit(new CopyValue());
    }

    /// <summary>Pushes arguments in the order of the source; the compiler's file and line are left out.</summary>
    private (int Count, int[]? Order, IReadOnlyList<SyntaxNode?> Sources) PushArguments(IReadOnlyList<IArgumentOperation> arguments)
    {
        var ordinals = new List<int>();
        var sources = new List<SyntaxNode?>();
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
                    sources.Add(null);
                    continue;
                }
            }

            if (parameter?.RefKind is RefKind.Ref or RefKind.Out)
                Place(argument.Value);
            else if (argument is { ArgumentKind: ArgumentKind.DefaultValue, Value.ConstantValue: { HasValue: true, Value: string text } })
                Emit(new PushConstant(new TextValue(text, [], OriginsOf(ConstantOrigins.Of(parameter, argument.SemanticModel)))));
            else
                CopiedValue(argument.Value);
            ordinals.Add(parameter?.Ordinal ?? ordinals.Count);
            sources.Add(argument.ArgumentKind == ArgumentKind.DefaultValue ? null : argument.Value.Syntax);
        }

        var isInOrder = true;
        for (var i = 0; i < ordinals.Count; i++)
            isInOrder &= ordinals[i] == i;
        // Code that doesn't compile yet may give a parameter twice or not at all.
        if (isInOrder || ordinals.Distinct().Count() != ordinals.Count || ordinals.Max() >= ordinals.Count)
            return (ordinals.Count, null, sources);
        return (ordinals.Count, [.. ordinals], [.. ordinals.Zip(sources, (ordinal, source) => (ordinal, source)).OrderBy(pair => pair.ordinal).Select(pair => pair.source)]);
    }

    private static bool IsCallerInformation(IParameterSymbol parameter) =>
        parameter.IsOptional && parameter.GetAttributes().Any(attribute => attribute.AttributeClass?.Name is "CallerFilePathAttribute" or "CallerLineNumberAttribute");

    /// <summary>Emits the call of a method whose receiver and arguments lie on the stack.</summary>
    private void EmitCall(IMethodSymbol method, int count, int[]? order, SyntaxNode syntax, IEnumerable<SyntaxNode?> sources, bool isBase = false, ITypeSymbol? on = null) =>
        Emit(CallOf(method, count, order, syntax, sources, isBase, on));

    /// <summary>Emits the call of an operator or conversion whose operands lie on the stack. One that isn't static can't have been meant yet.</summary>
    private void EmitOperator(IMethodSymbol method, int count, SyntaxNode syntax, IEnumerable<SyntaxNode?> sources, ITypeSymbol? on = null)
    {
        if (method.IsStatic)
        {
            EmitCall(method, count, null, syntax, sources, on: on);
            return;
        }

        for (var i = 0; i < count; i++)
            Emit(new Pop());
        Emit(new PushOpen(TypeKeys.Of(method.ReturnType)));
    }

    private Instruction CallOf(IMethodSymbol method, int count, int[]? order, SyntaxNode syntax, IEnumerable<SyntaxNode?> sources, bool isBase = false, ITypeSymbol? on = null, Waiting? waiting = null)
    {
        var reference = TypeKeys.MethodOf(method) with { Waiting = waiting ?? WaitingFor(syntax) };
        if (on is not null && method.IsStatic)
            reference = reference with { On = TypeKeys.Of(on) };
        var hasReceiver = !method.IsStatic && method.MethodKind != MethodKind.Constructor;
        if (TypeKeys.Of(method.ContainingType).Shape == TypeShape.Condyle)
        {
            return new CondyleCall(reference.Id, hasReceiver, count, order, reference.Returns)
            {
                Span = SpanOf(syntax),
                ArgumentSpans = sources.Select(source => source?.Span).ToArray(),
                NameSpan = NameOf(syntax).Span,
                LineSpan = ParenthesisOf(syntax),
            };
        }

        if (method is { IsImplicitlyDeclared: true, Name: "ToString" or "Equals" or "GetHashCode" })
            return new FrameworkCall(reference with { ContainingType = "System.Object", IsDispatched = false }, count, order, hasReceiver);
        if (method.ContainingType is { } type && IsRead(type))
            return new UserCall(isBase ? reference with { IsDispatched = false } : reference, count, order, pushesResult: true);
        return new FrameworkCall(reference, count, order, hasReceiver) { ReturnsPlace = IsPlace(method), IsReadOnly = method.ReturnsByRefReadonly };
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
            if (candidate.Name == nameof(Exception) && TypeKeys.PlainNameOf(candidate) == "System.Exception")
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
        if (KeyOf(changed) is { Shape: TypeShape.Condyle } condyle)
            Emit(condyle.IsReference ? new CondyleCall($"M:{condyle.Host!.FullName}.<Clone>$", isInstance: true, 0, null, condyle) : new Unread("'with' on a value of Condyle", condyle));
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

    // A collection of the framework's is made of the items in one call.
    private void EmitFramework(string type, TypeKey made) =>
        Emit(new FrameworkCall(new MethodRef("#ctor", type, ".ctor") { Returns = made, IsStatic = true, TypeArguments = made.Arguments }, 1, null, hasReceiver: false));

}
