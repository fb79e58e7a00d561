using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary>Matrices of four rows and columns.</summary>
internal static class MatrixCalls
{
    private const string Owner = "System.Numerics.Matrix4x4";
    private const string Type = Owner + ".";

    public static void Register()
    {
        foreach (var name in new[] { ".ctor", "Create" })
        {
            FrameworkTable.Add(Owner, name, call => call.Count == 16 && call.Arguments.All(argument => argument is float)
                ? Components.MatrixOf([.. call.Arguments.Cast<float>()])
                : call.Arguments is [Vector4 x, Vector4 y, Vector4 z, Vector4 w] ? Rows(x, y, z, w)
                : throw call.Unknown());
        }

        Pure.Constant(Type + "Identity", Matrix4x4.Identity);
        Pure.Add(Type + "get_IsIdentity", (Matrix4x4 m) => m.IsIdentity);
        Pure.Add(Type + "get_Translation", (Matrix4x4 m) => m.Translation);
        Pure.Add(Type + "set_Translation", (Matrix4x4 m, Vector3 to) => Moved(m, to));
        Pure.Add(Type + "WithTranslation", (Matrix4x4 m, Vector3 to) => Moved(m, to));
        foreach (var name in new[] { "set_Item", "WithElement" })
            Pure.Add(Type + name, (Matrix4x4 m, int row, int column, float value) => Components.With(m, (row * 4) + column, value) ?? throw new ArgumentOutOfRangeException(nameof(row)));
        Pure.Add(Type + "get_Item", (Matrix4x4 m, int row, int column) => Components.Of(m)![(row * 4) + column]);
        Pure.Add(Type + "GetElement", (Matrix4x4 m, int row, int column) => Components.Of(m)![(row * 4) + column]);
        Pure.Add(Type + "get_Item", (Matrix4x4 m, int row) => Row(m, row));
        Pure.Add(Type + "GetRow", (Matrix4x4 m, int row) => Row(m, row));
        foreach (var (name, row) in new[] { ("X", 0), ("Y", 1), ("Z", 2), ("W", 3) })
        {
            Pure.Add(Type + "get_" + name, (Matrix4x4 m) => Row(m, row));
            Pure.Add(Type + "set_" + name, (Matrix4x4 m, Vector4 to) => WithRow(m, row, to));
        }

        Pure.Add(Type + "WithRow", (Matrix4x4 m, int row, Vector4 to) => WithRow(m, row, to));
        Pure.Add(Type + "GetDeterminant", (Matrix4x4 m) => m.GetDeterminant());
        Pure.Add(Type + "Equals", (Matrix4x4 a, Matrix4x4 b) => a.Equals(b));
        Operators();
        Made();
        Views();
        FrameworkTable.Add(Owner, "Invert", new FrameworkMethod(call =>
        {
            var isThere = Matrix4x4.Invert(call[0] as Matrix4x4? ?? throw call.Unknown(), out var inverse);
            call.Out(1, inverse);
            return isThere;
        }));
        FrameworkTable.Add(Owner, "Decompose", new FrameworkMethod(call =>
        {
            var isThere = Matrix4x4.Decompose(call[0] as Matrix4x4? ?? throw call.Unknown(), out var scale, out var rotation, out var translation);
            call.Out(1, scale);
            call.Out(2, rotation);
            call.Out(3, translation);
            return isThere;
        }));
    }

    private static Matrix4x4 WithRow(Matrix4x4 matrix, int row, Vector4 to)
    {
        var items = Components.Of(matrix)!;
        Components.Of(to)!.CopyTo(items, row * 4);
        return Components.MatrixOf(items);
    }

    private static Matrix4x4 Moved(Matrix4x4 matrix, Vector3 to)
    {
        matrix.Translation = to;
        return matrix;
    }

    private static Vector4 Row(Matrix4x4 matrix, int row) => Components.Of(matrix) is var m && row is >= 0 and < 4
        ? new Vector4(m![row * 4], m[(row * 4) + 1], m[(row * 4) + 2], m[(row * 4) + 3])
        : throw new ArgumentOutOfRangeException(nameof(row));

    private static Matrix4x4 Rows(Vector4 x, Vector4 y, Vector4 z, Vector4 w) =>
        new(x.X, x.Y, x.Z, x.W, y.X, y.Y, y.Z, y.W, z.X, z.Y, z.Z, z.W, w.X, w.Y, w.Z, w.W);

    private static void Operators()
    {
        foreach (var name in new[] { "op_Addition", "Add" })
            Pure.Add(Type + name, (Matrix4x4 a, Matrix4x4 b) => a + b);
        foreach (var name in new[] { "op_Subtraction", "Subtract" })
            Pure.Add(Type + name, (Matrix4x4 a, Matrix4x4 b) => a - b);
        foreach (var name in new[] { "op_UnaryNegation", "Negate" })
            Pure.Add(Type + name, (Matrix4x4 m) => -m);
        foreach (var name in new[] { "op_Multiply", "Multiply" })
        {
            Pure.Add(Type + name, (Matrix4x4 a, Matrix4x4 b) => a * b);
            Pure.Add(Type + name, (Matrix4x4 m, float by) => m * by);
        }

        Pure.Add(Type + "op_Equality", (Matrix4x4 a, Matrix4x4 b) => a == b);
        Pure.Add(Type + "op_Inequality", (Matrix4x4 a, Matrix4x4 b) => a != b);
        Pure.Add(Type + "Lerp", (Matrix4x4 a, Matrix4x4 b, float amount) => Matrix4x4.Lerp(a, b, amount));
        Pure.Add(Type + "Transpose", (Matrix4x4 m) => Matrix4x4.Transpose(m));
        Pure.Add(Type + "Transform", (Matrix4x4 m, Quaternion by) => Matrix4x4.Transform(m, by));
    }

    private static void Made()
    {
        Pure.Add(Type + "CreateTranslation", (Vector3 by) => Matrix4x4.CreateTranslation(by));
        Pure.Add(Type + "CreateTranslation", (float x, float y, float z) => Matrix4x4.CreateTranslation(x, y, z));
        Pure.Add(Type + "CreateScale", (float by) => Matrix4x4.CreateScale(by));
        Pure.Add(Type + "CreateScale", (Vector3 by) => Matrix4x4.CreateScale(by));
        Pure.Add(Type + "CreateScale", (float x, float y, float z) => Matrix4x4.CreateScale(x, y, z));
        Pure.Add(Type + "CreateScale", (float by, Vector3 about) => Matrix4x4.CreateScale(by, about));
        Pure.Add(Type + "CreateScale", (Vector3 by, Vector3 about) => Matrix4x4.CreateScale(by, about));
        Pure.Add(Type + "CreateScale", (float x, float y, float z, Vector3 about) => Matrix4x4.CreateScale(x, y, z, about));
        Pure.Add(Type + "CreateRotationX", (float angle) => Matrix4x4.CreateRotationX(angle));
        Pure.Add(Type + "CreateRotationY", (float angle) => Matrix4x4.CreateRotationY(angle));
        Pure.Add(Type + "CreateRotationZ", (float angle) => Matrix4x4.CreateRotationZ(angle));
        Pure.Add(Type + "CreateRotationX", (float angle, Vector3 about) => Matrix4x4.CreateRotationX(angle, about));
        Pure.Add(Type + "CreateRotationY", (float angle, Vector3 about) => Matrix4x4.CreateRotationY(angle, about));
        Pure.Add(Type + "CreateRotationZ", (float angle, Vector3 about) => Matrix4x4.CreateRotationZ(angle, about));
        Pure.Add(Type + "CreateFromAxisAngle", (Vector3 axis, float angle) => Matrix4x4.CreateFromAxisAngle(axis, angle));
        Pure.Add(Type + "CreateFromQuaternion", (Quaternion rotation) => Matrix4x4.CreateFromQuaternion(rotation));
        Pure.Add(Type + "CreateFromYawPitchRoll", (float yaw, float pitch, float roll) => Matrix4x4.CreateFromYawPitchRoll(yaw, pitch, roll));
        Pure.Add(Type + "CreateReflection", (Plane plane) => Matrix4x4.CreateReflection(plane));
        Pure.Add(Type + "CreateShadow", (Vector3 light, Plane plane) => Matrix4x4.CreateShadow(light, plane));
        Pure.Add(Type + "CreateWorld", (Vector3 at, Vector3 forward, Vector3 up) => Matrix4x4.CreateWorld(at, forward, up));
    }

    private static void Views()
    {
        Pure.Add(Type + "CreateLookAt", (Vector3 from, Vector3 to, Vector3 up) => Matrix4x4.CreateLookAt(from, to, up));
        Pure.Add(Type + "CreateBillboard", (Vector3 at, Vector3 from, Vector3 up, Vector3 forward) => Matrix4x4.CreateBillboard(at, from, up, forward));
        Pure.Add(Type + "CreateLookTo", (Vector3 from, Vector3 along, Vector3 up) => Matrix4x4.CreateLookAt(from, from + along, up));
        Pure.Add(Type + "CreateConstrainedBillboard", (Vector3 at, Vector3 from, Vector3 axis, Vector3 forward, Vector3 own) => Matrix4x4.CreateConstrainedBillboard(at, from, axis, forward, own));
        Pure.Add(Type + "CreateOrthographicOffCenter", (float left, float right, float bottom, float top, float near, float far) => Matrix4x4.CreateOrthographicOffCenter(left, right, bottom, top, near, far));
        Pure.Add(Type + "CreatePerspectiveOffCenter", (float left, float right, float bottom, float top, float near, float far) => Matrix4x4.CreatePerspectiveOffCenter(left, right, bottom, top, near, far));
        Pure.Add(Type + "CreateOrthographic", (float width, float height, float near, float far) => Matrix4x4.CreateOrthographic(width, height, near, far));
        Pure.Add(Type + "CreatePerspective", (float width, float height, float near, float far) => Matrix4x4.CreatePerspective(width, height, near, far));
        Pure.Add(Type + "CreatePerspectiveFieldOfView", (float angle, float aspect, float near, float far) => Matrix4x4.CreatePerspectiveFieldOfView(angle, aspect, near, far));
    }
}
