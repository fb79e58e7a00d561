namespace Condyle.Analyzers.Tests.Generated;

/// <summary>Vectors and quaternions.</summary>
internal sealed class Vectors : IExpressions
{
    public void Offer(CodeType wanted, Author author, Offers offers)
    {
        var choose = author.Choose;
        string Real() => author.Value(NumberType.Float);
        string Vector() => author.Moving(AnyType.Vector);
        switch (wanted)
        {
            case VectorType { Name: "Vector3" }:
                offers.Add(3, () => $"new Vector3({Real()}, {Real()}, {Real()})");
                offers.Add(3, () => $"({Vector()} {choose.Any("+", "-", "*")} {author.Value(wanted)})");
                offers.Add(1, () => $"({Vector()} * {Real()})");
                offers.Add(1, () => $"(-{Vector()})");
                offers.Add(1, () => "Vector3." + choose.Any("Zero", "One", "UnitX", "UnitY", "UnitZ"));
                offers.Add(1, () => $"({Vector()} with {{ {choose.Any("X", "Y", "Z")} = {Real()} }})");
                offers.Add(1, () => $"Vector3.Cross({Vector()}, {Vector()})");
                offers.Add(1, () => $"Vector3.Lerp({Vector()}, {Vector()}, 0.5f)");
                offers.Add(1, () => $"Vector3.{choose.Any("Min", "Max")}({Vector()}, {Vector()})");
                break;
            case VectorType:
                offers.Add(2, () => $"Quaternion.CreateFromAxisAngle(Vector3.Unit{choose.Any("X", "Y", "Z")}, {choose.Any("0.5f", "1f", "-2f")})");
                offers.Add(1, () => $"Quaternion.Normalize({author.Value(wanted)} * {author.Value(wanted)})");
                break;
            case NumberType { Name: "float" }:
                offers.Add(1, () => choose.Any($"Vector3.Dot({Vector()}, {Vector()})", $"{Vector()}.LengthSquared()", $"Vector3.Distance({Vector()}, {Vector()})"));
                offers.Add(1, () => $"{Vector()}.{choose.Any("X", "Y", "Z")}");
                break;
            case TruthType:
                offers.Add(1, () => $"({Vector()} {choose.Any("==", "!=")} {Vector()})");
                break;
        }
    }
}
