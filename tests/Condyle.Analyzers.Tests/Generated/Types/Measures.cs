namespace Condyle.Analyzers.Tests.Generated;

/// <summary>A type with its own equality, order and every operator: what dictionaries, sorting and steps ask for.</summary>
internal static class Measures
{
    public static void Declare(Author author)
    {
        var choose = author.Choose;
        var isStruct = choose.Chance(50);
        var type = new DeclaredType(author.Name("Measure"), isStruct) { Shows = "ToString()", IsOrdered = true };
        var code = author.Program.Code;
        var step = choose.Between(2, 5);
        code.Block($"internal {(isStruct ? "readonly struct" : "sealed class")} {type}(int size) : IEquatable<{type}>, IComparable<{type}>", () =>
        {
            code.Line("public int Size { get; } = size;");
            // Two are the same though they aren't made of the same.
            code.Line($"public bool Equals({type}{(isStruct ? "" : "?")} other) => {(isStruct ? "" : "other is not null && ")}Size / {step} == other.Size / {step};");
            code.Line($"public override bool Equals(object? other) => other is {type} measure && Equals(measure);");
            code.Line($"public override int GetHashCode() => {choose.Any($"Size / {step}", "7", $"HashCode.Combine(Size / {step})")};");
            code.Line($"public int CompareTo({type}{(isStruct ? "" : "?")} other) => {choose.Any("Size.CompareTo(", "-Size.CompareTo(")}{(isStruct ? "other.Size" : "other?.Size ?? 0")});");
            code.Line("public override string ToString() => $\"size {Size}\";");
            code.Line($"public static bool operator ==({type} left, {type} right) => {(isStruct ? "left.Equals(right)" : "left is null ? right is null : left.Equals(right)")};");
            code.Line($"public static bool operator !=({type} left, {type} right) => !(left == right);");
            code.Line($"public static bool operator <({type} left, {type} right) => left.Size < right.Size;");
            code.Line($"public static bool operator >({type} left, {type} right) => left.Size > right.Size;");
            code.Line($"public static {type} operator +({type} left, {type} right) => new(unchecked(left.Size + right.Size));");
            code.Line($"public static {type} operator checked +({type} left, {type} right) => new(checked(left.Size + right.Size));");
            code.Line($"public static {type} operator -({type} of) => new(unchecked(-of.Size));");
            code.Line($"public static {type} operator ++({type} of) => new(unchecked(of.Size + {step}));");
            code.Line($"public static bool operator true({type} of) => of.Size > {step};");
            code.Line($"public static bool operator false({type} of) => of.Size <= {step};");
            code.Line($"public static {type} operator &({type} left, {type} right) => left.Size < right.Size ? left : right;");
            code.Line($"public static explicit operator int({type} of) => of.Size;");
            code.Line($"public static implicit operator {type}(int size) => new(size);");
        });
        type.Members.Add(new Member("Size", NumberType.Int, CanWrite: false));
        type.Constructors.Add(new Callable(type.Name, type, [new Parameter("size", NumberType.Int)]));
        type.Operators.Add("+");
        author.Program.Types.Add(type);
    }
}
