namespace Condyle.Analyzers.Reading;

/// <summary>A method of the framework as the reading does it: receiver first, then the arguments.</summary>
/// <param name="Run">What it does; <c>null</c> stands for an answer that isn't known where the method returns a value type.</param>
/// <param name="TakesOpen">Whether it may be handed unknown values; else its answer is unknown as soon as one of them is.</param>
internal sealed record FrameworkMethod(Func<Machine, object?[], MethodRef, object?> Run, bool TakesOpen);

/// <summary>
/// The framework calls that a reading knows, by the method's name in its type. All are our own implementations over the interpreter's
/// values: what a host's reflection would give differs between hosts and escapes the limits.
/// </summary>
internal static class FrameworkTable
{
    private static readonly Dictionary<string, FrameworkMethod> Methods = [];
    private static readonly Dictionary<string, PureOverloads> PureMethods = [];

    static FrameworkTable()
    {
        StringCalls.Register();
        MathCalls.Register();
        NumericsCalls.Register();
        CollectionCalls.Register();
        MapCalls.Register();
        QueryCalls.Register();
        ArrayCalls.Register();
        GenericMathCalls.Register();
        TaskCalls.Register();
        OtherCalls.Register();
    }

    public static FrameworkMethod? Find(MethodRef method) =>
        Methods.TryGetValue(method.ContainingType + "." + method.Name, out var known) ? known : null;

    /// <summary>The overloads of a pure method, which <see cref="Reading.Pure"/> fills.</summary>
    public static PureOverloads OverloadsOf(string name)
    {
        if (!PureMethods.TryGetValue(name, out var overloads))
        {
            PureMethods[name] = overloads = new PureOverloads();
            Methods[name] = new FrameworkMethod((machine, arguments, _) => overloads.Call(machine, arguments), TakesOpen: false);
        }

        return overloads;
    }

    /// <summary>A pure method whose answer is unknown as soon as an argument is.</summary>
    public static void Pure(string name, Func<object?[], object?> run) =>
        Methods[name] = new FrameworkMethod((_, arguments, _) => run(arguments), TakesOpen: false);

    /// <summary>A method that deals with unknown values itself.</summary>
    public static void Open(string name, Func<Machine, object?[], object?> run) =>
        Methods[name] = new FrameworkMethod((machine, arguments, _) => run(machine, arguments), TakesOpen: true);

    /// <summary>The same, told which overload was called.</summary>
    public static void Overloaded(string name, Func<Machine, object?[], MethodRef, object?> run) =>
        Methods[name] = new FrameworkMethod(run, TakesOpen: true);

    public static object? Call(Machine machine, MethodRef method, FrameworkMethod? known, object?[] arguments, Origin at)
    {
        var returns = method.Returns;
        if (known is null)
            return CallUnknown(machine, method, arguments, at, returns);
        for (var i = 0; i < arguments.Length; i++)
            arguments[i] = machine.Decide(arguments[i]);
        if (!method.IsStatic && method.Name != ".ctor" && method.ContainingType != "System.Nullable")
            Fields.ThrowIfNull(arguments[0]);
        if (!known.TakesOpen && !arguments.All(KnownEquality.IsKnown))
            return Opens.Of(returns, machine);
        var result = known.Run(machine, arguments, method);
        return result is null && returns is { IsReference: false, Shape: not (TypeShape.Void or TypeShape.Nullable) } ? Opens.Of(returns, machine)
            : result is OpenValue { Type: null } ? Opens.Of(returns, machine)
            : result;
    }

    private static object? CallUnknown(Machine machine, MethodRef method, object?[] arguments, Origin at, TypeKey? returns)
    {
        if (arguments.Length == 1 && !method.IsStatic && method.Name.StartsWith("get_", StringComparison.Ordinal) && arguments[0] is OpenValue owner)
            return machine.MemberOf(owner, method.Id, returns);
        UnknownCode.Touch(machine, arguments, at, $"'{method.Name}'");
        return Opens.Of(returns, machine, canFork: true);
    }
}
