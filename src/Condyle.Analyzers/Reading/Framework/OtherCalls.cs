namespace Condyle.Analyzers.Reading;

/// <summary>What is left: objects, nullable values, exceptions, and calls that leave a rig alone.</summary>
internal static class OtherCalls
{
    private static readonly string[] Numbers = ["System.Int32.", "System.Int64.", "System.Byte.", "System.Int16.", "System.UInt32.", "System.Boolean.", "System.Char.", "System.Enum.", "System.Object.", "System.ValueType."];

    public static void Register()
    {
        foreach (var type in Numbers)
        {
            FrameworkTable.Overloaded(type + "ToString", (machine, arguments, method) => arguments.Length == 1
                ? TextOf.Value(arguments[0], method.Parameters.Count > 0 ? null : method.TypeArguments.FirstOrDefault(), null, machine)
                : TextValue.Open);
            FrameworkTable.Pure(type + "Equals", arguments => KnownEquality.Same.Equals(arguments[arguments.Length - 2], arguments[arguments.Length - 1]));
        }

        FrameworkTable.Open("System.Object.ReferenceEquals", (_, arguments) => arguments.All(argument => argument is not OpenValue) ? ReferenceEquals(arguments[0], arguments[1]) : null);
        FrameworkTable.Open("System.Object..ctor", (_, _) => new object());
        FrameworkTable.Open("System.Nullable.get_HasValue", (_, arguments) => arguments[0] is OpenValue ? null : arguments[0] is not null);
        FrameworkTable.Open("System.Nullable.get_Value", (_, arguments) => arguments[0]);
        FrameworkTable.Open("System.Nullable.GetValueOrDefault", (_, arguments) => arguments[0] ?? (arguments.Length > 1 ? arguments[1] : null));
        FrameworkTable.Pure("System.Char.IsDigit", arguments => arguments[0] is char character ? char.IsDigit(character) : null);
        FrameworkTable.Pure("System.Char.IsLetter", arguments => arguments[0] is char character ? char.IsLetter(character) : null);
        FrameworkTable.Pure("System.Char.ToUpperInvariant", arguments => arguments[0] is char character ? char.ToUpperInvariant(character) : null);
        FrameworkTable.Pure("System.Char.ToLowerInvariant", arguments => arguments[0] is char character ? char.ToLowerInvariant(character) : null);

        FrameworkTable.Open("System.Exception.get_Message", (_, arguments) => arguments[0] is ExceptionValue { Message.Length: > 0 } thrown ? TextValue.Plain(thrown.Message) : TextValue.Open);

        FrameworkTable.Open("System.Index.op_Implicit", (_, arguments) => Arithmetic.AsIndex(arguments[0]) is { } index ? new IndexValue(index, FromEnd: false) : OpenValue.Any);

        // Writing to the console or a debugger changes nothing of a rig.
        foreach (var name in new[] { "System.Console.WriteLine", "System.Console.Write", "System.Diagnostics.Debug.WriteLine", "System.Diagnostics.Debug.Assert", "System.GC.SuppressFinalize" })
            FrameworkTable.Open(name, (_, _) => null);
        FrameworkTable.Open("System.ArgumentNullException.ThrowIfNull", (_, arguments) => arguments[0] is null
            ? throw new ThrownByCode("System.ArgumentNullException", "A value that must be given is null.")
            : null);
    }
}
