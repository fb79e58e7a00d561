namespace Condyle.Analyzers.Reading;

/// <summary>A value of an enum; its number is boxed as the enum's underlying type.</summary>
internal sealed class EnumValue(TypeKey type, object number) : IEquatable<EnumValue>
{
    public TypeKey Type { get; } = type;

    public object Number { get; } = number;

    public bool Equals(EnumValue? other) => other is not null && other.Type.Id == Type.Id && other.Number.Equals(Number);

    public override bool Equals(object? other) => Equals(other as EnumValue);

    public override int GetHashCode() => Number.GetHashCode();

    /// <summary>The number behind an enum, any other value as it is.</summary>
    public static object? NumberOf(object? value) => value is EnumValue own ? own.Number : value;
}
