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

        var wanted = frame.Resolve(type)!;
        machine.Use(wanted);
        var made = known.New(machine, wanted.Arguments);
        frame.Push(made);
        if (machine.Program.BodyOf(constructor) is { } body)
            machine.Begin(machine.Enter(body, made, arguments, made.TypeArguments), pushesResult: false);
    }
}

/// <summary>Makes an object of what a type parameter stands for.</summary>
internal sealed class NewOfParameter(TypeKey parameter) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var type = frame.Resolve(parameter)!;
        if (type.Shape != TypeShape.User || machine.Program.TypeOf(type.Id) is not { } known)
        {
            frame.Push(type.IsReference || type.Shape == TypeShape.Parameter ? Opens.Of(type, machine) : Defaults.Of(type, machine));
            return;
        }

        machine.Use(type);
        var made = known.New(machine, type.Arguments);
        frame.Push(made);
        if (machine.Program.PlainConstructorOf(type.Id) is { } body)
            machine.Begin(machine.Enter(body, made, [], made.TypeArguments), pushesResult: false);
    }
}

/// <summary>Calls a method of the framework, from the table of those that the reading knows; any other is unknown code.</summary>
internal sealed class FrameworkCall(MethodRef method, int count, int[]? order, bool hasReceiver) : Instruction
{
    private readonly FrameworkMethod? known = FrameworkTable.Find(method);

    /// <summary>Whether what it returns is a place.</summary>
    public bool ReturnsPlace { get; init; }

    /// <summary>Whether nobody can write to that place.</summary>
    public bool IsReadOnly { get; init; }

    public override void Run(Machine machine, Frame frame)
    {
        var arguments = Arguments.InOrder(frame.PopMany(count), order);
        if (method.On is { } on && frame.Resolve(on) is { Shape: TypeShape.User })
        {
            machine.CallUser(frame, method, null, arguments, pushesResult: true);
            return;
        }

        if (hasReceiver)
        {
            var self = frame.Pop();
            if (self is ObjectValue own && method.IsDispatched && machine.Program.BodyFor(own.Type, method) is not null)
            {
                // The user's own type overrides or implements what the framework declares.
                machine.CallUser(frame, method, self, arguments, pushesResult: true);
                return;
            }

            arguments = [(self as ObjectValue)?.Collection ?? self, .. arguments];
        }

        var at = new Origin(frame.Body.Path, Span);
        var result = FrameworkTable.Call(machine, frame.Resolve(method), known, arguments, at);
        frame.Push(!ReturnsPlace || result is Cell ? result : IsReadOnly ? new Cell([result], 0) : UnknownPlace(machine, frame, arguments, at));
    }

    // It lies in something that was handed over, and may be written.
    private Cell UnknownPlace(Machine machine, Frame frame, object?[] arguments, Origin at)
    {
        UnknownCode.Touch(machine, arguments, at, $"'{method.Name}'");
        foreach (var cell in arguments.OfType<Cell>())
            Elements.Lose(new SpanValue(cell.Items, 0, cell.Items.Length), machine);
        return new Cell([Opens.Of(frame.Resolve(method.Returns), machine)], 0);
    }
}

/// <summary>Disposes of the object on the stack, if there is one.</summary>
internal sealed class DisposeCall(MethodRef dispose) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var held = frame.Pop();
        if (held is ObjectValue)
            machine.CallUser(frame, dispose, held, [], pushesResult: false);
        else if (held is OpenValue)
            machine.Lost.Call();
    }
}

/// <summary>Waits for the task on the stack: its result is there, or its exception, now or later.</summary>
internal sealed class Await(TypeKey type) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var task = frame.Pop();
        Fields.ThrowIfNull(task);
        frame.Push(task is TaskValue done ? done.Result : Opens.Of(frame.Resolve(type), machine));
        if (task is not TaskValue { MayBePending: false })
            machine.WaitIn(frame);
    }
}

/// <summary>Calls a delegate.</summary>
internal sealed class InvokeFunction(int count, TypeKey? returns, Waiting waiting, int[]? order) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var arguments = Arguments.InOrder(frame.PopMany(count), order);
        var function = frame.Pop();
        Fields.ThrowIfNull(function);
        if (function is FunctionValue known)
        {
            if (known is { Start: { } start, IsAsync: false })
                machine.BeginCall(start(arguments, waiting == Waiting.Returns ? frame.Waiting : waiting), frame.Resolve(returns));
            else
                frame.Push(known.InvokeAsync(machine, waiting == Waiting.Returns ? frame.Waiting : waiting, arguments));
            return;
        }

        UnknownCode.Touch(machine, arguments, new Origin(frame.Body.Path, Span), "a delegate", UnknownCode.NotKnownWhich);
        machine.Lost.Call();
        frame.Push(Opens.Of(frame.Resolve(returns ?? new TypeKey("object", TypeShape.Other)), machine));
    }
}

/// <summary>Calls a local function or makes a delegate of it or of a lambda: both take their captured variables along.</summary>
internal sealed class MakeFunction(CodeBody body, IReadOnlyList<(int Outer, int Inner)> captured, bool isNamed = false, IReadOnlyList<KeyValuePair<string, TypeKey>>? generic = null) : Instruction
{
    public override void Run(Machine machine, Frame frame) => frame.Push(Make(machine, frame));

    protected override void Move(Relocation to) => body = to.Of(body);

    private FunctionValue Make(Machine machine, Frame frame)
    {
        var shared = captured.Select(pair => (pair.Inner, Cell: frame.Slots[pair.Outer])).ToArray();
        var self = frame.This;
        var typeArguments = TypeArguments(frame);
        IReadOnlyList<object?> reaches = [self, .. shared.Select(pair => pair.Cell is object?[] cell ? new Cell(cell, 0) : (object?)null)];

        Frame Start(object?[] arguments, Waiting waiting)
        {
            // The framework may offer more arguments than the function takes, such as an item's index.
            object?[] taken = [.. arguments.Take(body.ParameterCount).Select(ValueCopies.Of)];
            var callee = machine.Enter(body, self, taken, typeArguments);
            callee.Waiting = waiting;
            foreach (var (inner, cell) in shared)
                callee.Slots[inner] = cell;
            return callee;
        }

        return body.IsIterator
            ? new FunctionValue((_, arguments) => Machine.HandedOutBy(body, machine.IteratorOf(body, typeArguments, () => Start(arguments, default)))) { Takes = body.ParameterCount, Reaches = reaches }
            : new FunctionValue((running, arguments) => Start(arguments, default) is var frame && body.IsAsync ? running.RunAsync(frame) : running.RunToEnd(frame))
            {
                Start = Start,
                IsAsync = body.IsAsync,
                Takes = body.ParameterCount,
                Reaches = reaches,
                Group = isNamed ? (body, [self, .. shared.Select(pair => pair.Cell)]) : null,
            };
    }

    private IReadOnlyDictionary<string, TypeKey>? TypeArguments(Frame frame)
    {
        if (generic is null)
            return frame.TypeArguments;
        var known = (frame.TypeArguments ?? new Dictionary<string, TypeKey>()).ToDictionary(pair => pair.Key, pair => pair.Value);
        foreach (var pair in generic)
            known[pair.Key] = frame.Resolve(pair.Value)!;
        return known;
    }
}

/// <summary>Makes a delegate of a method group.</summary>
internal sealed class MakeMethodFunction(Instruction call, MethodRef method, int count) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var self = method.IsStatic ? null : frame.Pop();
        if (!method.IsStatic)
            Fields.ThrowIfNull(self);
        var path = frame.Body.Path;
        var typeArguments = frame.TypeArguments;
        var body = new CodeBody(method.Name, path) { Code = [call, new Return(hasValue: true)], ReturnsValue = true };

        Frame Start(object?[] arguments, Waiting waiting)
        {
            var callee = new Frame(body, null) { TypeArguments = typeArguments, Waiting = waiting };
            if (!method.IsStatic)
                callee.Push(self);
            foreach (var argument in arguments.Take(count))
                callee.Push(argument);
            return callee;
        }

        frame.Push(new FunctionValue((running, arguments) => call is CondyleCall condyle ? condyle.Call(running, path, self, [.. arguments.Take(count)]) : running.RunToEnd(Start(arguments, default)))
        {
            Start = call is CondyleCall ? null : Start,
            Group = (method.Id, [self]),
            Takes = count,
            Reaches = [self],
        });
    }

    protected override void Move(Relocation to) => call = call.Moved(to);
}

/// <summary>Runs the constructor of the base type, or another one of the same type, on the object that is being made.</summary>
internal sealed class ConstructorCall(MethodRef constructor, int count, int[]? order) : Instruction
{
    public override void Run(Machine machine, Frame frame)
    {
        var arguments = Arguments.InOrder(frame.PopMany(count), order);
        frame.Push(null);
        if (frame.This is ObjectValue own && own.Type.IndexOf(ExceptionValue.BaseField) is >= 0 and var field && constructor.Owner is null)
            machine.Write(own.Fields, field, ExceptionValue.Of(constructor.ContainingType, arguments, machine));
        else if (frame.This is ObjectValue { Type: { Collection: { } collection } type } made && constructor.Owner is null)
            machine.Write(made.Fields, type.IndexOf(ObjectValue.CollectionField), FrameworkTable.Call(machine, constructor with { Returns = frame.Resolve(collection) }, FrameworkTable.Find(constructor), arguments, new Origin(frame.Body.Path, Span)));
        else if (machine.Program.BodyOf(constructor) is { } body)
            machine.Begin(machine.Enter(body, frame.This, arguments, (frame.This as ObjectValue)?.TypeArguments), pushesResult: false);
    }
}

/// <summary>Makes an exception of the framework's.</summary>
internal sealed class NewException(TypeKey type, int count) : Instruction
{
    public override void Run(Machine machine, Frame frame) =>
        frame.Push(ExceptionValue.Of(type.Id, frame.PopMany(count), machine));
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
