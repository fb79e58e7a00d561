namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A type as the programs write it. Two are the same when they are written the same.</summary>
internal abstract class CodeType(string name) : IEquatable<CodeType>
{
    public string Name => name;

    public abstract bool IsValue { get; }

    public bool Equals(CodeType? other) => other?.Name == Name;

    public override bool Equals(object? other) => other is CodeType type && Equals(type);

    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);

    public override string ToString() => Name;
}

internal sealed class TextType() : CodeType("string")
{
    public override bool IsValue => false;
}

internal sealed class TruthType() : CodeType("bool")
{
    public override bool IsValue => true;
}

internal sealed class ObjectType() : CodeType("object")
{
    public override bool IsValue => false;
}

/// <summary>A value that may be null: of a structure by <c>Nullable</c>, else by reference.</summary>
internal sealed class MaybeType(CodeType of) : CodeType(of.Name + "?")
{
    public CodeType Of => of;

    public override bool IsValue => of.IsValue;
}

internal sealed class TupleType(params CodeType[] items) : CodeType($"({string.Join(", ", items.Select(item => item.Name))})")
{
    public IReadOnlyList<CodeType> Items => items;

    public override bool IsValue => true;
}

internal sealed class ArrayType(CodeType item) : CodeType(item.Name + "[]")
{
    public CodeType Item => item;

    public override bool IsValue => false;
}

/// <summary>An array of two dimensions.</summary>
internal sealed class GridType(CodeType item) : CodeType(item.Name + "[,]")
{
    public CodeType Item => item;

    public override bool IsValue => false;
}

/// <summary>A generic collection of one item type.</summary>
internal sealed class CollectionType(string family, CodeType item) : CodeType($"{family}<{item.Name}>")
{
    /// <summary>Its name without the item.</summary>
    public string Family => family;

    public CodeType Item => item;

    public override bool IsValue => family == "ImmutableArray";
}

internal sealed class MapType(string family, CodeType key, CodeType value) : CodeType($"{family}<{key.Name}, {value.Name}>")
{
    public string Family => family;

    public CodeType Key => key;

    public CodeType Value => value;

    public override bool IsValue => false;
}

/// <summary>A delegate of a type of the program's own.</summary>
internal sealed class FunctionType(string name, CodeType? result, params CodeType[] parameters) : CodeType(name)
{
    /// <summary>A <c>Func</c>, or an <c>Action</c> where nothing is returned.</summary>
    public FunctionType(CodeType? result, params CodeType[] parameters)
        : this(NameOf(result, parameters), result, parameters)
    {
    }

    public CodeType? Result => result;

    public IReadOnlyList<CodeType> Parameters => parameters;

    public override bool IsValue => false;

    private static string NameOf(CodeType? result, CodeType[] parameters) => result is not null
        ? $"Func<{string.Join(", ", parameters.Append(result).Select(type => type.Name))}>"
        : parameters.Length == 0 ? "Action" : $"Action<{string.Join(", ", parameters.Select(parameter => parameter.Name))}>";
}

/// <summary>An enum of the program's.</summary>
internal sealed class EnumType(string name, IReadOnlyList<string> members, bool isFlags, NumberType under) : CodeType(name)
{
    public IReadOnlyList<string> Members => members;

    public bool IsFlags => isFlags;

    public NumberType Under => under;

    public override bool IsValue => true;
}

/// <summary>An element of the rig: a control, a group or a joint.</summary>
internal sealed class HandleType(string name) : CodeType(name)
{
    public override bool IsValue => true;
}

/// <summary>A vector or quaternion of <c>System.Numerics</c>.</summary>
internal sealed class VectorType(string name) : CodeType(name)
{
    public override bool IsValue => true;
}
