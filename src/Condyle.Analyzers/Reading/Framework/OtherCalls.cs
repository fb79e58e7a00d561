namespace Condyle.Analyzers.Reading;

/// <summary>What is left: objects, nullable values, exceptions, and calls that leave a rig alone.</summary>
internal static class OtherCalls
{
    private static readonly string[] Numbers = ["System.Int32.", "System.Int64.", "System.Byte.", "System.Int16.", "System.UInt32.", "System.UInt64.", "System.SByte.", "System.UInt16.", "System.Single.", "System.Double.", "System.Decimal.", "System.Boolean.", "System.Char.", "System.Enum.", "System.Object.", "System.ValueType."];

    /// <summary>Stands for the invariant culture and what belongs to it.</summary>
    public static object InvariantCulture { get; } = new();

    public static void Register()
    {
        foreach (var name in new[] { "CultureInfo.get_InvariantCulture", "NumberFormatInfo.get_InvariantInfo" })
            FrameworkTable.Open("System.Globalization." + name, (_, _) => InvariantCulture);

        foreach (var type in Numbers)
        {
            FrameworkTable.Open(type + "ToString", (machine, arguments) => ToText(machine, arguments));
            FrameworkTable.Open(type + "Equals", (machine, arguments) => arguments.All(KnownEquality.IsKnown) ? machine.Equality.Equals(arguments[arguments.Length - 2], arguments[arguments.Length - 1]) : null);
        }

        FrameworkTable.Open("System.Object.ReferenceEquals", (_, arguments) => arguments.All(argument => argument is not OpenValue) ? ReferenceEquals(arguments[0], arguments[1]) : null);
        FrameworkTable.Open("System.Object..ctor", (_, _) => new object());
        FrameworkTable.Open("System.Nullable.get_HasValue", (_, arguments) => arguments[0] is OpenValue ? null : arguments[0] is not null);
        FrameworkTable.Overloaded("System.Nullable.GetValueOrDefault", (machine, arguments, method) => arguments[0] ?? (arguments.Length > 1 ? arguments[1] : Defaults.Of(method.Returns, machine)));
        FrameworkTable.Open("System.Nullable.get_Value", (_, arguments) => arguments[0] ?? throw new ThrownByCode("System.InvalidOperationException", "A nullable value was asked for that isn't there."));
        FrameworkTable.Pure("System.Char.IsDigit", arguments => arguments[0] is char character ? char.IsDigit(character) : null);
        FrameworkTable.Pure("System.Char.IsLetter", arguments => arguments[0] is char character ? char.IsLetter(character) : null);
        FrameworkTable.Pure("System.Char.ToUpperInvariant", arguments => arguments[0] is char character ? char.ToUpperInvariant(character) : null);
        FrameworkTable.Pure("System.Char.ToLowerInvariant", arguments => arguments[0] is char character ? char.ToLowerInvariant(character) : null);

        FrameworkTable.Open("System.Exception.get_Message", (_, arguments) => ExceptionValue.Of(arguments[0])?.Message ?? TextValue.Open);
        FrameworkTable.Open("System.Exception.get_InnerException", (_, arguments) => ExceptionValue.Of(arguments[0]) is { } known ? known.Inner : OpenValue.Any);
        FrameworkTable.Open("System.ArgumentException.get_Message", (_, arguments) => ExceptionValue.Of(arguments[0])?.Message ?? TextValue.Open);
        FrameworkTable.Open("System.ArgumentException.get_ParamName", (_, arguments) => ExceptionValue.Of(arguments[0]) is { } known ? known.Parameter : TextValue.Open);

        foreach (var type in new[] { "System.Delegate", "System.MulticastDelegate", "System.Action", "System.Func" })
            FrameworkTable.Open(type + ".GetInvocationList", (_, arguments) => arguments[0] is FunctionValue function ? new ArrayValue([.. function.Parts]) : OpenValue.Any);
        FrameworkTable.Open("System.Index.op_Implicit", (_, arguments) => Arithmetic.AsIndex(arguments[0]) is { } index ? new IndexValue(index, FromEnd: false) : OpenValue.Any);

        // Writing to the console or a debugger changes nothing of a rig.
        foreach (var name in new[] { "System.Console.WriteLine", "System.Console.Write", "System.Diagnostics.Debug.WriteLine", "System.Diagnostics.Debug.Assert", "System.GC.SuppressFinalize" })
            FrameworkTable.Open(name, (_, _) => null);
        FrameworkTable.Open("System.ArgumentNullException.ThrowIfNull", (_, arguments) => arguments[0] is null
            ? throw new ThrownByCode("System.ArgumentNullException", "A value that must be given is null.")
            : null);
    }

    // The format and the culture may be left out, and stand in this order.
    private static TextValue ToText(Machine machine, object?[] arguments)
    {
        var format = arguments.Skip(1).OfType<TextValue>().FirstOrDefault();
        if (format is { Text.IsOpen: true })
            return TextValue.Open;
        return TextOf.Of(arguments[0], machine, format?.ToString(), arguments.Contains(InvariantCulture));
    }
}
