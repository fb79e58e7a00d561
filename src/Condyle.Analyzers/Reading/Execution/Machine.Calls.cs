namespace Condyle.Analyzers.Reading;

/// <summary>Calls of the user's own functions.</summary>
internal sealed partial class Machine
{
    public void CallUser(Frame caller, MethodRef method, object? self, object?[] arguments, bool pushesResult)
    {
        method = method.On is null ? method : caller.Resolve(method);
        var body = Target(method, self);
        if (body is null)
        {
            var handed = self is null ? arguments : [self, .. arguments];
            MayRunKept(method, handed);
            if (method.Owner is { } declared && Program.IsRead(declared.Definition))
                UnknownCode.Touch(this, handed, Here, $"'{method.Name}'", "which of several methods of that name runs isn't known");
            else
                UnknownCode.Touch(this, handed, Here, $"'{method.Name}'");
            if (self is OpenValue)
                Lost.Call();
            var asks = self is OpenValue && arguments.Length == 0 && method.Name.StartsWith("get_", StringComparison.Ordinal);
            foreach (var value in asks ? [] : handed)
                Changes.Hand(value);
            MayThrow($"'{method.Name}' may fail");
            if (pushesResult)
                caller.Push(asks ? MemberOf((OpenValue)self!, method.Id, method.Returns) : Opens.Of(caller.Resolve(method.Returns), this));
            return;
        }

        if (method is { IsStatic: true, Owner: { } owner })
            Use(caller.Resolve(owner)!);
        var typeArguments = TypeArgumentsOf(method, self, caller);
        if (body.IsIterator)
        {
            var items = Call(body, self, arguments, typeArguments);
            if (pushesResult)
                caller.Push(HandedOutBy(body, (IteratorValue)items!));
            return;
        }

        var callee = Enter(body, self, arguments, typeArguments);
        callee.Waiting = method.Waiting == Waiting.Returns ? caller.Waiting : method.Waiting;
        if (!body.IsAsync)
            BeginCall(callee, caller.Resolve(method.Returns), pushesResult);
        else if (RunAsync(callee) is var task && pushesResult)
            caller.Push(task);
    }

    private CodeBody? Target(MethodRef method, object? self)
    {
        if (method.On is { Shape: TypeShape.User } on)
            return Program.TypeOf(on.Id) is { } type ? Program.BodyFor(type, method) : null;
        if (!method.IsDispatched)
            return Program.BodyOf(method);
        return self is ObjectValue own ? Program.BodyFor(own.Type, method) : null;
    }

    // An object knows what its type's parameters stand for, also where a base's method is called on it.
    private static IReadOnlyDictionary<string, TypeKey>? TypeArgumentsOf(MethodRef method, object? self, Frame caller)
    {
        var own = (self as ObjectValue)?.TypeArguments;
        if (method.TypeParameters.Count == 0)
            return own;
        var known = new Dictionary<string, TypeKey>();
        for (var i = 0; i < method.TypeParameters.Count && i < method.TypeArguments.Count; i++)
            known[method.TypeParameters[i]] = caller.Resolve(method.TypeArguments[i])!;
        foreach (var pair in own ?? new Dictionary<string, TypeKey>())
            known[pair.Key] = pair.Value;
        return known;
    }
}
