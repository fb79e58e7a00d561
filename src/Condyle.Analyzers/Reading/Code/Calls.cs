namespace Condyle.Analyzers.Reading;

/// <summary>Calls one of the user's own functions whose source is read.</summary>
internal sealed class UserCall(MethodRef method, int count, int[]? order, bool pushesResult) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var arguments = Arguments.InOrder(frame.PopMany(count), order);
        var self = method.IsStatic ? null : frame.Pop();
        if (!method.IsStatic)
            Fields.ThrowIfNull(self);
        machine.CallUser(frame, method, self, arguments, pushesResult);
    }
}

/// <summary>Makes an object of one of the user's own types and runs its constructor.</summary>
internal sealed class NewUserObject(MethodRef constructor, TypeKey type, int count, int[]? order) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var arguments = Arguments.InOrder(frame.PopMany(count), order);
        if (machine.Program.TypeOf(type.Id) is not { } known)
        {
            frame.Push(Opens.Of(type, machine));
            return;
        }

        machine.StaticsOf(type.Id);
        var made = known.New(machine, frame.Resolve(type)!.Arguments);
        frame.Push(made);
        if (machine.Program.BodyOf(constructor) is { } body)
            machine.Begin(machine.Enter(body, made, arguments, made.TypeArguments), pushesResult: false);
    }
}

/// <summary>Calls a method of the framework, from the table of those that the reading knows; any other is unknown code.</summary>
internal sealed class FrameworkCall(MethodRef method, int count, int[]? order, bool hasReceiver) : Instruction
{
    private readonly FrameworkMethod? known = FrameworkTable.Find(method);

    public override void Run(Machine machine, Frame frame)
    {
        var arguments = Arguments.InOrder(frame.PopMany(count), order);
        if (hasReceiver)
        {
            var self = frame.Pop();
            if (self is ObjectValue own && method.IsDispatched && machine.Program.BodyFor(own.Type, method) is not null)
            {
                // The user's own type overrides or implements what the framework declares.
                machine.CallUser(frame, method, self, arguments, pushesResult: true);
                return;
            }

            arguments = [self, .. arguments];
        }

        frame.Push(FrameworkTable.Call(machine, frame.Resolve(method), known, arguments, new Origin(frame.Body.Path, Span)));
    }
}

/// <summary>Waits for the task on the stack: its result is there already, or its exception.</summary>
internal sealed class Await(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var task = frame.Pop();
        Fields.ThrowIfNull(task);
        frame.Push(task is TaskValue done ? done.Result : Opens.Of(frame.Resolve(type), machine));
    }
}

/// <summary>Calls a delegate.</summary>
internal sealed class InvokeFunction(int count, TypeKey? returns) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var arguments = frame.PopMany(count);
        var function = frame.Pop();
        Fields.ThrowIfNull(function);
        if (function is FunctionValue known)
        {
            if (known.Start is { } start)
                machine.Begin(start(arguments));
            else
                frame.Push(known.Invoke(machine, arguments));
            return;
        }

        UnknownCode.Touch(machine, arguments, new Origin(frame.Body.Path, Span), "a delegate that isn't known");
        frame.Push(Opens.Of(frame.Resolve(returns ?? new TypeKey("object", TypeShape.Other)), machine));
    }
}

/// <summary>Calls a local function or makes a delegate of it or of a lambda: both take their captured variables along.</summary>
internal sealed class MakeFunction(CodeBody body, IReadOnlyList<(int Outer, int Inner)> captured) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(Make(machine, frame));

    private FunctionValue Make(Machine machine, Frame frame)
    {
        var shared = captured.Select(pair => (pair.Inner, Cell: frame.Slots[pair.Outer])).ToArray();
        var self = frame.This;
        var typeArguments = frame.TypeArguments;

        Frame Start(object?[] arguments)
        {
            // The framework may offer more arguments than the function takes, such as an item's index.
            object?[] taken = [.. arguments.Take(body.ParameterCount).Select(ValueCopies.Of)];
            var callee = machine.Enter(body, self, taken, typeArguments);
            foreach (var (inner, cell) in shared)
                callee.Slots[inner] = cell;
            return callee;
        }

        return body.IsIterator
            ? new FunctionValue((_, arguments) => new SequenceValue(() => machine.Iterate(() => Start(arguments))))
            : body.IsAsync
            ? new FunctionValue((running, arguments) => TaskValue.Of(() => running.RunToEnd(Start(arguments))))
            : new FunctionValue((running, arguments) => running.RunToEnd(Start(arguments))) { Start = Start };
    }
}

/// <summary>Makes a delegate of a method group.</summary>
internal sealed class MakeMethodFunction(Instruction call, MethodRef method, int count) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var self = method.IsStatic ? null : frame.Pop();
        var path = frame.Body.Path;
        frame.Push(new FunctionValue((running, arguments) =>
        {
            if (call is CondyleCall condyle)
                return condyle.Call(running, path, self, [.. arguments.Take(count)]);
            var body = new CodeBody(method.Name, path) { Code = [call, new Return(hasValue: true)], ReturnsValue = true };
            var callee = new Frame(body, null);
            if (!method.IsStatic)
                callee.Push(self);
            foreach (var argument in arguments.Take(count))
                callee.Push(argument);
            return running.RunToEnd(callee);
        }));
    }
}

/// <summary>Runs the constructor of the base type, or another one of the same type, on the object that is being made.</summary>
internal sealed class ConstructorCall(MethodRef constructor, int count, int[]? order) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var arguments = Arguments.InOrder(frame.PopMany(count), order);
        frame.Push(null);
        if (frame.This is ObjectValue own && own.Type.IndexOf(ExceptionValue.MessageField) is >= 0 and var message && constructor.ContainingType.StartsWith("System.", StringComparison.Ordinal))
            machine.Write(own.Fields, message, ExceptionValue.MessageOf(constructor.ContainingType, arguments));
        else if (machine.Program.BodyOf(constructor) is { } body)
            machine.Begin(machine.Enter(body, frame.This, arguments, (frame.This as ObjectValue)?.TypeArguments), pushesResult: false);
    }
}

/// <summary>Makes an exception of the framework's.</summary>
internal sealed class NewException(TypeKey type, int count) : Instruction
{
    public override void Run(Machine machine, Frame frame) =>
        frame.Push(new ExceptionValue(type.Id, ExceptionValue.MessageOf(type.Id, frame.PopMany(count))));
}

internal static class Arguments
{
    /// <summary>Puts arguments, which were evaluated in the order of the source, into the order of their parameters.</summary>
    public static object?[] InOrder(object?[] evaluated, int[]? order)
    {
        if (order is null)
            return evaluated;
        var ordered = new object?[evaluated.Length];
        for (var i = 0; i < evaluated.Length; i++)
            ordered[order[i]] = evaluated[i];
        return ordered;
    }
}
