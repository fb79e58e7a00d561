using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary><c>System.Numerics</c>' vectors and quaternions.</summary>
internal static class NumericsCalls
{
    private const string Vector = "System.Numerics.Vector3.";
    private const string Turn = "System.Numerics.Quaternion.";

    public static void Register()
    {
        FrameworkTable.Pure(Vector + ".ctor", arguments => arguments switch
        {
            [float all] => new Vector3(all),
            [float x, float y, float z] => new Vector3(x, y, z),
            _ => OpenValue.Any,
        });
        FrameworkTable.Pure(Turn + ".ctor", arguments => arguments switch
        {
            [float x, float y, float z, float w] => new Quaternion(x, y, z, w),
            [Vector3 vector, float scalar] => new Quaternion(vector, scalar),
            _ => OpenValue.Any,
        });
        Constant(Vector + "get_Zero", Vector3.Zero);
        Constant(Vector + "get_One", Vector3.One);
        Constant(Vector + "get_UnitX", Vector3.UnitX);
        Constant(Vector + "get_UnitY", Vector3.UnitY);
        Constant(Vector + "get_UnitZ", Vector3.UnitZ);
        Constant(Turn + "get_Identity", Quaternion.Identity);
        FrameworkTable.Pure(Vector + "op_Addition", arguments => arguments is [Vector3 a, Vector3 b] ? a + b : OpenValue.Any);
        FrameworkTable.Pure(Vector + "op_Subtraction", arguments => arguments is [Vector3 a, Vector3 b] ? a - b : OpenValue.Any);
        FrameworkTable.Pure(Vector + "op_Multiply", arguments => arguments switch
        {
            [Vector3 a, Vector3 b] => a * b,
            [Vector3 a, float b] => a * b,
            [float a, Vector3 b] => a * b,
            _ => OpenValue.Any,
        });
        FrameworkTable.Pure(Vector + "op_Division", arguments => arguments switch
        {
            [Vector3 a, Vector3 b] => a / b,
            [Vector3 a, float b] => a / b,
            _ => OpenValue.Any,
        });
        FrameworkTable.Pure(Vector + "op_UnaryNegation", arguments => arguments is [Vector3 a] ? -a : OpenValue.Any);
        FrameworkTable.Pure(Vector + "op_Equality", arguments => arguments is [Vector3 a, Vector3 b] ? a == b : OpenValue.Any);
        FrameworkTable.Pure(Vector + "op_Inequality", arguments => arguments is [Vector3 a, Vector3 b] ? a != b : OpenValue.Any);
        FrameworkTable.Pure(Vector + "Length", arguments => arguments is [Vector3 a] ? a.Length() : OpenValue.Any);
        FrameworkTable.Pure(Vector + "LengthSquared", arguments => arguments is [Vector3 a] ? a.LengthSquared() : OpenValue.Any);
        FrameworkTable.Pure(Vector + "Normalize", arguments => arguments is [Vector3 a] ? Vector3.Normalize(a) : OpenValue.Any);
        FrameworkTable.Pure(Vector + "Cross", arguments => arguments is [Vector3 a, Vector3 b] ? Vector3.Cross(a, b) : OpenValue.Any);
        FrameworkTable.Pure(Vector + "Dot", arguments => arguments is [Vector3 a, Vector3 b] ? Vector3.Dot(a, b) : OpenValue.Any);
        FrameworkTable.Pure(Vector + "Distance", arguments => arguments is [Vector3 a, Vector3 b] ? Vector3.Distance(a, b) : OpenValue.Any);
        FrameworkTable.Pure(Vector + "Lerp", arguments => arguments is [Vector3 a, Vector3 b, float t] ? Vector3.Lerp(a, b, t) : OpenValue.Any);
        FrameworkTable.Pure(Vector + "Transform", arguments => arguments is [Vector3 a, Quaternion q] ? Vector3.Transform(a, q) : OpenValue.Any);
        FrameworkTable.Pure(Turn + "CreateFromAxisAngle", arguments => arguments is [Vector3 axis, float angle] ? Quaternion.CreateFromAxisAngle(axis, angle) : OpenValue.Any);
        FrameworkTable.Pure(Turn + "CreateFromYawPitchRoll", arguments =>
            arguments is [float yaw, float pitch, float roll] ? Quaternion.CreateFromYawPitchRoll(yaw, pitch, roll) : OpenValue.Any);
        FrameworkTable.Pure(Turn + "Normalize", arguments => arguments is [Quaternion a] ? Quaternion.Normalize(a) : OpenValue.Any);
        FrameworkTable.Pure(Turn + "Conjugate", arguments => arguments is [Quaternion a] ? Quaternion.Conjugate(a) : OpenValue.Any);
        FrameworkTable.Pure(Turn + "Inverse", arguments => arguments is [Quaternion a] ? Quaternion.Inverse(a) : OpenValue.Any);
        FrameworkTable.Pure(Turn + "Slerp", arguments => arguments is [Quaternion a, Quaternion b, float t] ? Quaternion.Slerp(a, b, t) : OpenValue.Any);
        FrameworkTable.Pure(Turn + "op_Multiply", arguments => arguments is [Quaternion a, Quaternion b] ? a * b : OpenValue.Any);
        FrameworkTable.Pure(Turn + "op_Equality", arguments => arguments is [Quaternion a, Quaternion b] ? a == b : OpenValue.Any);
    }

    /// <summary>A field of a vector or quaternion; none when there is no such field.</summary>
    public static object? Field(object? owner, string field) => (owner, field) switch
    {
        (Vector3 v, "X") => v.X,
        (Vector3 v, "Y") => v.Y,
        (Vector3 v, "Z") => v.Z,
        (Quaternion q, "X") => q.X,
        (Quaternion q, "Y") => q.Y,
        (Quaternion q, "Z") => q.Z,
        (Quaternion q, "W") => q.W,
        _ => null,
    };

    /// <summary>The vector with another value in a field.</summary>
    public static object? With(object? owner, string field, object? value) => (owner, field, value) switch
    {
        (Vector3 v, "X", float x) => v with { X = x },
        (Vector3 v, "Y", float y) => v with { Y = y },
        (Vector3 v, "Z", float z) => v with { Z = z },
        (Quaternion q, "X", float x) => q with { X = x },
        (Quaternion q, "Y", float y) => q with { Y = y },
        (Quaternion q, "Z", float z) => q with { Z = z },
        (Quaternion q, "W", float w) => q with { W = w },
        _ => OpenValue.Any,
    };

    private static void Constant(string name, object value) => FrameworkTable.Pure(name, _ => value);
}
