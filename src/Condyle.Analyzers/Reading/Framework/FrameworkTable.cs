namespace Condyle.Analyzers.Reading;

/// <summary>
/// The framework calls that a reading knows, by type and name. All are our own implementations over the interpreter's values: what a
/// host's reflection would give differs between hosts and escapes the limits.
/// </summary>
internal static class FrameworkTable
{
    private static readonly Dictionary<string, Dictionary<string, FrameworkMethod>> Types = [];
    private static readonly Dictionary<string, PureOverloads> PureMethods = [];

    static FrameworkTable()
    {
        Texts();
        Numbers();
        Collections();
        Queries();
        TaskCalls.Register();
        TypeCalls.Register();
        OtherCalls.Register();
    }

    public static FrameworkMethod? Find(MethodRef method) => Find(method.ContainingType, method.Name);

    public static FrameworkMethod? Find(string type, string name) =>
        Types.TryGetValue(type, out var members) && members.TryGetValue(name, out var known) ? known : null;

    public static void Add(string type, string name, FrameworkMethod method)
    {
        if (!Types.TryGetValue(type, out var members))
            Types[type] = members = [];
        members[name] = method;
    }

    /// <summary>A static method that deals with unknown values itself.</summary>
    public static void Add(string type, string name, Func<Invocation, object?> run) => Add(type, name, new FrameworkMethod(run));

    /// <summary>Lets calls of some kind of a method that is known already run otherwise.</summary>
    public static void Where(string type, string name, Func<Invocation, bool> isOfKind, Func<Invocation, object?> run)
    {
        var others = Find(type, name)!;
        Add(type, name, call => isOfKind(call) ? run(call) : others.Call(call));
    }

    private static void Texts()
    {
        StringQuestions.Register();
        StringChanges.Register();
        StringSplits.Register();
        StringJoins.Register();
        BuilderCalls.Register();
        ReaderCalls.Register();
        CharCalls.Register();
        PathCalls.Register();
        ComparerCalls.Register();
    }

    private static void Numbers()
    {
        MathCalls.Register();
        NumberTypeCalls.Register();
        DecimalCalls.Register();
        Bits.Register();
        PrimitiveCalls.Register();
        Parsing.Register();
        ConvertCalls.Register();
        EnumCalls.Register();
        GenericMathCalls.Register();
        VectorCalls.Register();
        QuaternionCalls.Register();
        MatrixCalls.Register();
        ComplexCalls.Register();
        BigNumberCalls.Register();
        DurationCalls.Register();
        DateCalls.Register();
        DayCalls.Register();
        ClockCalls.Register();
        OffsetCalls.Register();
        IdCalls.Register();
        RandomCalls.Register();
    }

    private static void Collections()
    {
        ListCalls.Register();
        Arrays.Register();
        SpanCalls.Register();
        PlaceCalls.Register();
        IndexCalls.Register();
        BitArrayCalls.Register();
        SetCalls.Register();
        MapCalls.Register();
        LineCalls.Register();
        LinkedListCalls.Register();
        HeapCalls.Register();
        SortedCalls.Register();
        SortedViews.Register();
        ImmutableCalls.Register();
        OldCollectionCalls.Register();
        ConcurrentCalls.Register();
        ViewCalls.Register();
        TupleCalls.Register();
        EnumeratorCalls.Register();
    }

    private static void Queries()
    {
        QueryCalls.Register();
        StretchCalls.Register();
        GroupCalls.Register();
        SetQueryCalls.Register();
        ResultCalls.Register();
        TotalCalls.Register();
    }

    /// <summary>The overloads of a pure method, which <see cref="Pure"/> fills.</summary>
    public static PureOverloads OverloadsOf(string name)
    {
        if (!PureMethods.TryGetValue(name, out var overloads))
        {
            PureMethods[name] = overloads = new PureOverloads();
            var end = name.EndsWith("..ctor", StringComparison.Ordinal) ? name.Length - "..ctor".Length : name.LastIndexOf('.');
            Add(name.Substring(0, end), name.Substring(end + 1), new FrameworkMethod(overloads.Call) { NeedsAll = true });
        }

        return overloads;
    }

    public static object? Call(Machine machine, MethodRef method, FrameworkMethod? known, object?[] arguments, Origin at)
    {
        var returns = method.Returns;
        var hasReceiver = !method.IsStatic && method.Name != ".ctor";
        if (hasReceiver && arguments[0] is ReadOnlyValue shown)
        {
            arguments[0] = shown.Inner;
            if (OwnOf(shown.Inner, method)?.Changes == true)
                throw new ThrownByCode("System.NotSupportedException", "A read-only collection is changed.");
        }

        if (hasReceiver)
            known = OwnOf(arguments[0], method) ?? known;
        if (hasReceiver && arguments[0] is TextValue)
            arguments[0] = machine.Decide(arguments[0]);
        if (hasReceiver && method.ContainingType != "System.Nullable")
            Fields.ThrowIfNull(arguments[0]);
        if (hasReceiver && arguments[0] is OpenValue && (known?.Changes ?? method.ContainingType.StartsWith("System.Collections.", StringComparison.Ordinal)))
            machine.Lost.Change(method, arguments.Skip(1));
        if (hasReceiver && arguments[0] is OpenValue && method is { ContainingType: "System.Lazy", Name: "get_Value" })
            machine.Lost.Call();
        if (known is not null && hasReceiver && arguments[0] is OpenValue)
            machine.MayRunKept(method, arguments);
        if (known is null)
            return CallUnknown(machine, method, arguments, at, returns);
        var result = known.Call(new Invocation(machine, method, arguments));
        if (result is IItemsValue { TypeArguments: null } items && returns is { Arguments.Count: > 0, HasParameters: false })
            items.TypeArguments = returns.Arguments;
        var isUnknown = result is OpenValue { Type: null } || (result is null && returns is { IsReference: false, Shape: not (TypeShape.Void or TypeShape.Nullable) });
        var isPure = known.NeedsAll || method.ContainingType == "System.String";
        return isPure && result is TextValue { Text.IsOpen: true, Identity: null, Around: null } partly ? machine.AnswerOf(method, known, arguments, partly)
            : !isUnknown ? ValueCopies.Of(result)
            : isPure ? machine.AnswerOf(method, known, arguments)
            : Opens.Of(returns, machine, made: Derivation.Of(arguments, _ => OpenValue.Any));
    }

    // A member of the receiver's own type, or one that every collection has.
    private static FrameworkMethod? OwnOf(object? receiver, MethodRef method) => FrameworkTypes.NameOf(receiver) is not { } own ? null
        : Find(own, method.Name) ?? (receiver is CollectionValue or ArrayValue ? Find(ViewCalls.Any, method.Name) : null);

    private static object? CallUnknown(Machine machine, MethodRef method, object?[] arguments, Origin at, TypeKey? returns)
    {
        if (arguments.Length == 1 && !method.IsStatic && method.Name.StartsWith("get_", StringComparison.Ordinal) && arguments[0] is OpenValue owner)
            return machine.MemberOf(owner, method.Id, returns);
        machine.MayRunKept(method, arguments);
        UnknownCode.Touch(machine, arguments, at, $"'{method.Name}'");
        foreach (var value in arguments)
            machine.Changes.Hand(value);
        machine.MayThrow($"'{method.Name}' may fail");
        return Opens.Of(returns, machine, canFork: true);
    }
}
