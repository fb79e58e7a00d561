namespace Condyle.Analyzers.Reading;

/// <summary>An object of one of the user's own types: a class by reference, a struct or record struct by value.</summary>
internal sealed class ObjectValue(UserType type, object?[] fields)
{
    public UserType Type { get; } = type;

    public object?[] Fields { get; } = fields;

    public ObjectValue Copy() => new(Type, [.. Fields.Select(ValueCopies.Of)]);
}
