using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary>Quaternions and planes.</summary>
internal static class QuaternionCalls
{
    private const string Type = "System.Numerics.Quaternion.";
    private const string Plane = "System.Numerics.Plane.";

    public static void Register()
    {
        foreach (var name in new[] { ".ctor", "Create" })
        {
            Pure.Add(Type + name, (float x, float y, float z, float w) => new Quaternion(x, y, z, w));
            Pure.Add(Type + name, (Vector3 vector, float scalar) => new Quaternion(vector, scalar));
            Pure.Add(Plane + name, (float x, float y, float z, float d) => new Plane(x, y, z, d));
            Pure.Add(Plane + name, (Vector3 normal, float d) => new Plane(normal, d));
            Pure.Add(Plane + name, (Vector4 all) => new Plane(all));
        }

        Pure.Constant(Type + "Identity", Quaternion.Identity);
        Pure.Constant(Type + "Zero", default(Quaternion));
        Pure.Add(Type + "get_IsIdentity", (Quaternion q) => q.IsIdentity);
        Pure.Add(Type + "get_Item", (Quaternion q, int at) => Components.Of(q)![at]);
        Pure.Add(Type + "set_Item", (Quaternion q, int at, float value) => Components.With(q, at, value) ?? throw new ArgumentOutOfRangeException(nameof(at)));
        Pure.Add(Type + "Length", (Quaternion q) => q.Length());
        Pure.Add(Type + "LengthSquared", (Quaternion q) => q.LengthSquared());
        Pure.Add(Type + "Equals", (Quaternion a, Quaternion b) => a.Equals(b));
        Pure.Add(Type + "op_Equality", (Quaternion a, Quaternion b) => a == b);
        Pure.Add(Type + "op_Inequality", (Quaternion a, Quaternion b) => a != b);
        foreach (var name in new[] { "op_Addition", "Add" })
            Pure.Add(Type + name, (Quaternion a, Quaternion b) => a + b);
        foreach (var name in new[] { "op_Subtraction", "Subtract" })
            Pure.Add(Type + name, (Quaternion a, Quaternion b) => a - b);
        foreach (var name in new[] { "op_Division", "Divide" })
            Pure.Add(Type + name, (Quaternion a, Quaternion b) => a / b);
        foreach (var name in new[] { "op_UnaryNegation", "Negate" })
            Pure.Add(Type + name, (Quaternion q) => -q);
        foreach (var name in new[] { "op_Multiply", "Multiply" })
        {
            Pure.Add(Type + name, (Quaternion a, Quaternion b) => a * b);
            Pure.Add(Type + name, (Quaternion q, float by) => q * by);
        }

        Pure.Add(Type + "Concatenate", (Quaternion a, Quaternion b) => Quaternion.Concatenate(a, b));
        Pure.Add(Type + "Conjugate", (Quaternion q) => Quaternion.Conjugate(q));
        Pure.Add(Type + "Inverse", (Quaternion q) => Quaternion.Inverse(q));
        Pure.Add(Type + "Normalize", (Quaternion q) => Quaternion.Normalize(q));
        Pure.Add(Type + "Dot", (Quaternion a, Quaternion b) => Quaternion.Dot(a, b));
        Pure.Add(Type + "Lerp", (Quaternion a, Quaternion b, float amount) => Quaternion.Lerp(a, b, amount));
        Pure.Add(Type + "Slerp", (Quaternion a, Quaternion b, float amount) => Quaternion.Slerp(a, b, amount));
        Pure.Add(Type + "CreateFromAxisAngle", (Vector3 axis, float angle) => Quaternion.CreateFromAxisAngle(axis, angle));
        Pure.Add(Type + "CreateFromYawPitchRoll", (float yaw, float pitch, float roll) => Quaternion.CreateFromYawPitchRoll(yaw, pitch, roll));
        Pure.Add(Type + "CreateFromRotationMatrix", (Matrix4x4 matrix) => Quaternion.CreateFromRotationMatrix(matrix));
        Planes();
    }

    private static void Planes()
    {
        Pure.Add(Plane + "CreateFromVertices", (Vector3 a, Vector3 b, Vector3 c) => System.Numerics.Plane.CreateFromVertices(a, b, c));
        Pure.Add(Plane + "Dot", (Plane plane, Vector4 value) => System.Numerics.Plane.Dot(plane, value));
        Pure.Add(Plane + "DotCoordinate", (Plane plane, Vector3 value) => System.Numerics.Plane.DotCoordinate(plane, value));
        Pure.Add(Plane + "DotNormal", (Plane plane, Vector3 value) => System.Numerics.Plane.DotNormal(plane, value));
        Pure.Add(Plane + "Normalize", (Plane plane) => System.Numerics.Plane.Normalize(plane));
        Pure.Add(Plane + "Transform", (Plane plane, Matrix4x4 by) => System.Numerics.Plane.Transform(plane, by));
        Pure.Add(Plane + "Transform", (Plane plane, Quaternion by) => System.Numerics.Plane.Transform(plane, by));
        Pure.Add(Plane + "op_Equality", (Plane a, Plane b) => a == b);
        Pure.Add(Plane + "op_Inequality", (Plane a, Plane b) => a != b);
        Pure.Add(Plane + "Equals", (Plane a, Plane b) => a.Equals(b));
    }
}
