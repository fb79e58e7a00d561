namespace Condyle.Analyzers.Reading;

/// <summary>The default value of a type.</summary>
internal static class Defaults
{
    /// <summary>Stands for the cancellation token of no source.</summary>
    public static object NoToken { get; } = new();

    private static readonly Dictionary<string, object> Plain = new()
    {
        ["System.TimeSpan"] = TimeSpan.Zero,
        ["System.DateTime"] = default(DateTime),
        ["System.DateTimeOffset"] = default(DateTimeOffset),
        [DayValue.Type] = default(DayValue),
        [ClockValue.Type] = default(ClockValue),
        ["System.Guid"] = Guid.Empty,
        ["System.Numerics.BigInteger"] = System.Numerics.BigInteger.Zero,
        ["System.Int128"] = new WideValue(0, IsSigned: true),
        ["System.UInt128"] = new WideValue(0, IsSigned: false),
    };

    /// <summary>Whether a type of the framework is a structure that holds nothing which could change.</summary>
    public static bool IsPlain(TypeKey type) => Plain.ContainsKey(type.Id);

    public static object? Of(TypeKey? type, Machine machine) => type switch
    {
        null => null,
        { Shape: TypeShape.Bool } => false,
        { Shape: TypeShape.Char } => '\0',
        { Shape: TypeShape.SByte } => (sbyte)0,
        { Shape: TypeShape.Byte } => (byte)0,
        { Shape: TypeShape.Int16 } => (short)0,
        { Shape: TypeShape.UInt16 } => (ushort)0,
        { Shape: TypeShape.Int32 } => 0,
        { Shape: TypeShape.UInt32 } => 0u,
        { Shape: TypeShape.Int64 } => 0L,
        { Shape: TypeShape.UInt64 } => 0UL,
        { Shape: TypeShape.Single } => 0f,
        { Shape: TypeShape.Double } => 0.0,
        { Shape: TypeShape.Decimal } => 0m,
        { Shape: TypeShape.Enum } => new EnumValue(type, Of(type.Element, machine)!),
        { Shape: TypeShape.Tuple } => new TupleValue([.. type.Arguments.Select(argument => Of(argument, machine))]),
        { IsUserStruct: true } => machine.Program.TypeOf(type.Id)?.New(machine, type.Arguments) ?? (object)OpenValue.Any,
        { Shape: TypeShape.Condyle or TypeShape.Numerics, IsReference: false, Host: { } host } => Activator.CreateInstance(host),
        { Id: "System.Threading.CancellationToken" } => NoToken,
        { Shape: TypeShape.Other } when Plain.TryGetValue(type.Id, out var value) => value,
        { IsReference: true } or { Shape: TypeShape.Nullable } => null,
        _ => new OpenValue(type),
    };
}
