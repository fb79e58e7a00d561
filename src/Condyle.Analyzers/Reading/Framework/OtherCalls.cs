namespace Condyle.Analyzers.Reading;

/// <summary>What is left: objects, nullable values, exceptions, and calls that leave a rig alone.</summary>
internal static class OtherCalls
{
    /// <summary>Stands for the invariant culture and what belongs to it.</summary>
    public static object InvariantCulture { get; } = new();

    public static void Register()
    {
        Objects();
        Hashes();
        Nullables();
        Exceptions();
        Cultures();
        foreach (var type in new[] { "System.Delegate", "System.MulticastDelegate", "System.Action", "System.Func" })
        {
            FrameworkTable.Add(type, "GetInvocationList", call => call[0] is FunctionValue function ? new ArrayValue([.. function.Parts]) : OpenValue.Any);
            FrameworkTable.Add(type, "op_Equality", call => AreSame(call));
            FrameworkTable.Add(type, "op_Inequality", call => !AreSame(call));
        }

        // Writing to the console or a debugger changes nothing of a rig, unless the text of an object does.
        foreach (var (type, name) in new[] { ("Console", "WriteLine"), ("Console", "Write"), ("Diagnostics.Debug", "WriteLine"), ("Diagnostics.Debug", "Assert"), ("GC", "SuppressFinalize") })
            FrameworkTable.Add("System." + type, name, call => Written(call.Machine, call.Arguments));
    }

    private static object? Written(Machine machine, IEnumerable<object?> values)
    {
        foreach (var value in values.SelectMany(value => value is IStretch several ? several.Now() : [value]).OfType<ObjectValue>())
            TextOf.Of(value, machine);
        return null;
    }

    private static bool AreSame(Invocation call) => call[0] is not OpenValue && call[1] is not OpenValue ? Equals(call[0], call[1]) : throw call.Unknown();

    // Of other cultures nothing is known, so they stand for the current one.
    private static void Cultures()
    {
        const string space = "System.Globalization.";
        FrameworkTable.Add(space + "CultureInfo", "get_InvariantCulture", _ => InvariantCulture);
        FrameworkTable.Add(space + "NumberFormatInfo", "get_InvariantInfo", _ => InvariantCulture);
        FrameworkTable.Add(space + "CultureInfo", "get_NumberFormat", call => call[0] == InvariantCulture ? InvariantCulture : OpenValue.Any);
        foreach (var name in new[] { "GetCultureInfo", ".ctor" })
            FrameworkTable.Add(space + "CultureInfo", name, call => call[0] is TextValue text && text.TryKnown(out var known) && known.Length == 0 ? InvariantCulture : OpenValue.Any);
    }

    private static void Objects()
    {
        FrameworkTable.Add("System.Object", ".ctor", _ => new object());
        FrameworkTable.Add("System.Object", "ReferenceEquals", call => call.Arguments.All(argument => argument is not (OpenValue or TextValue { MayBeNull: true })) && !call.Arguments.All(argument => argument is TextValue) ? ReferenceEquals(call[0], call[1]) : null);
        foreach (var type in new[] { "System.Object", "System.ValueType", "System.IEquatable" })
            FrameworkTable.Add(type, "Equals", new FrameworkMethod(call => call.Machine.Equality.Equals(call[0], call[1])) { NeedsAll = true });
    }

    // A hash differs from run to run; asking for one changes nothing.
    private static void Hashes()
    {
        foreach (var type in new[] { "Object", "ValueType", "String", "Enum", "Boolean", "Char", "SByte", "Byte", "Int16", "UInt16", "Int32", "UInt32", "Int64", "UInt64", "Single", "Double", "Decimal", "Nullable", "ValueTuple", "Tuple" })
            FrameworkTable.Add("System." + type, "GetHashCode", _ => OpenValue.Any);
        foreach (var name in new[] { ".ctor", "Combine", "Add", "AddBytes", "ToHashCode" })
            FrameworkTable.Add("System.HashCode", name, _ => OpenValue.Any);
    }

    private static void Nullables()
    {
        const string type = "System.Nullable";
        FrameworkTable.Add(type, "get_HasValue", call => call[0] is OpenValue ? null : call[0] is not null);
        FrameworkTable.Add(type, "get_Value", call => call[0] is OpenValue ? throw call.Unknown() : call[0] ?? throw new ThrownByCode("System.InvalidOperationException", "A nullable value is null."));
        FrameworkTable.Add(type, "GetValueOrDefault", call => call[0] ?? (call.Count > 1 ? call[1] : call.Default()));
        FrameworkTable.Add(type, "Equals", new FrameworkMethod(call => call.Machine.Equality.Equals(call[0], call[1])) { NeedsAll = true });
    }

    private static void Exceptions()
    {
        foreach (var type in new[] { "System.Exception", "System.ArgumentException", "System.AggregateException" })
            FrameworkTable.Add(type, "get_Message", call => ExceptionValue.Of(call[0])?.Message ?? TextValue.Open);
        FrameworkTable.Add("System.Exception", "get_InnerException", call => ExceptionValue.Of(call[0]) is { } known ? known.Inner : Unsaid(call));
        foreach (var name in new[] { "get_StackTrace", "get_Data", "get_Source", "get_HelpLink", "get_HResult", "get_TargetSite" })
            FrameworkTable.Add("System.Exception", name, Unsaid);
        FrameworkTable.Add("System.Exception", "GetBaseException", call => SeveralExceptions.BaseOf(call[0]) ?? Unsaid(call));
        FrameworkTable.Add(ExceptionValue.Several, "GetBaseException", call => SeveralExceptions.BaseOf(call[0]) ?? Unsaid(call));
        FrameworkTable.Add(ExceptionValue.Several, "get_InnerExceptions", call => ExceptionValue.Of(call[0])?.All is { } all ? new ReadOnlyValue("System.Collections.ObjectModel.ReadOnlyCollection", new ListValue(all)) : Unsaid(call));
        FrameworkTable.Add(ExceptionValue.Several, "Flatten", call => SeveralExceptions.Flattened(call[0]) ?? Unsaid(call));
        FrameworkTable.Add(ExceptionValue.Several, "Handle", SeveralExceptions.Handle);
        FrameworkTable.Add("System.ArgumentException", "get_ParamName", call => ExceptionValue.Of(call[0]) is { } known ? known.Parameter : TextValue.Open);
        Guard("ArgumentNullException", "ThrowIfNull", call => call[0] is null);
        Guard("ArgumentException", "ThrowIfNullOrEmpty", call => IsEmpty(call, string.IsNullOrEmpty));
        Guard("ArgumentException", "ThrowIfNullOrWhiteSpace", call => IsEmpty(call, string.IsNullOrWhiteSpace));
        Guard("ObjectDisposedException", "ThrowIf", call => call.Truth(call[0]));
        Compare("ThrowIfNegative", order => order < 0);
        Compare("ThrowIfNegativeOrZero", order => order <= 0);
        Compare("ThrowIfZero", order => order == 0);
        Compare("ThrowIfGreaterThan", order => order > 0);
        Compare("ThrowIfGreaterThanOrEqual", order => order >= 0);
        Compare("ThrowIfLessThan", order => order < 0);
        Compare("ThrowIfLessThanOrEqual", order => order <= 0);
        Guard("ArgumentOutOfRangeException", "ThrowIfEqual", call => call.Machine.Equality.Equals(call.Key(0), call.Key(1)));
        Guard("ArgumentOutOfRangeException", "ThrowIfNotEqual", call => !call.Machine.Equality.Equals(call.Key(0), call.Key(1)));
    }

    // Asking never fails, and what isn't known at all says the same each time.
    private static object? Unsaid(Invocation call) =>
        call[0] is OpenValue owner ? call.Machine.MemberOf(owner, call.Method.Id, call.Method.Returns) : OpenValue.Any;

    private static bool IsEmpty(Invocation call, Func<string, bool> isEmpty) =>
        call[0] is null ? throw Refused("System.ArgumentNullException", call) : isEmpty(call.Text(0));

    private static void Compare(string name, Func<int, bool> throws) => Guard("ArgumentOutOfRangeException", name, call =>
        throws(Orders.Default(call.Machine).Compare(call.Key(0), name.EndsWith("Than", StringComparison.Ordinal) || name.EndsWith("ThanOrEqual", StringComparison.Ordinal) ? call.Key(1) : call.Default())));

    private static void Guard(string exception, string name, Func<Invocation, bool> throws) => FrameworkTable.Add("System." + exception, name, call =>
        throws(call) ? throw Refused("System." + exception, call) : null);

    // What was refused is the last argument: the compiler writes down what stands in the code.
    private static ThrownByCode Refused(string type, Invocation call)
    {
        object? named = call.Count > 1 && call[call.Count - 1] is TextValue name ? name : OpenValue.Any;
        return new ThrownByCode(type, "A value is refused.", new ExceptionValue(type, []) { Parameter = named });
    }
}
