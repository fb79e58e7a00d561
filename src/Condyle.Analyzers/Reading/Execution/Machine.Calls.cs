namespace Condyle.Analyzers.Reading;

/// <summary>Calls of the user's own functions.</summary>
internal sealed partial class Machine
{
    public void CallUser(Frame caller, MethodRef method, object? self, object?[] arguments, bool pushesResult)
    {
        var body = Target(method, self);
        if (body is null)
        {
            UnknownCode.Touch(this, self is null ? arguments : [self, .. arguments], new Origin(caller.Body.Path, default), $"'{method.Name}'");
            if (pushesResult)
                caller.Push(self is OpenValue && arguments.Length == 0 ? MemberOf(self, method.Id, method.Returns) : Opens.Of(caller.Resolve(method.Returns), this));
            return;
        }

        if (method.IsStatic)
            StaticsOf(method.ContainingType);
        var typeArguments = TypeArgumentsOf(method, caller);
        if (body.IsIterator)
        {
            caller.Push(new SequenceValue(() => Iterate(() => Enter(body, self, arguments, typeArguments))));
            return;
        }

        Begin(Enter(body, self, arguments, typeArguments), pushesResult);
    }

    private CodeBody? Target(MethodRef method, object? self)
    {
        if (!method.IsDispatched)
            return Program.BodyOf(method);
        return self is ObjectValue own ? Program.BodyFor(own.Type, method) : null;
    }

    private static Dictionary<string, TypeKey>? TypeArgumentsOf(MethodRef method, Frame caller)
    {
        if (method.TypeParameters.Count == 0)
            return null;
        var known = new Dictionary<string, TypeKey>();
        for (var i = 0; i < method.TypeParameters.Count && i < method.TypeArguments.Count; i++)
            known[method.TypeParameters[i]] = caller.Resolve(method.TypeArguments[i])!;
        return known;
    }
}
