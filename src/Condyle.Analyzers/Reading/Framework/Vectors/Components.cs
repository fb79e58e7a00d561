using System.Numerics;

namespace Condyle.Analyzers.Reading;

/// <summary>The fields and items of vectors, quaternions, matrices and planes.</summary>
internal static class Components
{
    private static readonly string[] Axes = ["X", "Y", "Z", "W"];

    /// <summary>A field; none when there is no such field.</summary>
    public static object? Get(object? owner, string field) => owner switch
    {
        Plane plane => field switch { "Normal" => plane.Normal, "D" => plane.D, _ => null },
        Matrix4x4 matrix => field.Length == 3 && field[0] == 'M' && Of(matrix) is { } all ? Item(all, ((field[1] - '1') * 4) + field[2] - '1') : null,
        _ => Array.IndexOf(Axes, field) is >= 0 and var at && Of(owner) is { } items ? Item(items, at) : null,
    };

    /// <summary>The value with something else in a field; none where that isn't known.</summary>
    public static object? With(object? owner, string field, object? value) => (owner, value) switch
    {
        (Plane plane, Vector3 normal) when field == "Normal" => new Plane(normal, plane.D),
        (Plane plane, float distance) when field == "D" => new Plane(plane.Normal, distance),
        (Matrix4x4, float) when field.Length == 3 && field[0] == 'M' => With(owner, ((field[1] - '1') * 4) + field[2] - '1', value),
        _ => Array.IndexOf(Axes, field) is >= 0 and var at ? With(owner, at, value) : null,
    };

    /// <summary>The value with something else as an item, counted row by row.</summary>
    public static object? With(object? owner, int at, object? value)
    {
        if (Of(owner) is not { } items || value is not float number || at < 0 || at >= items.Length)
            return null;
        items[at] = number;
        return owner switch
        {
            Vector2 => new Vector2(items[0], items[1]),
            Vector3 => new Vector3(items[0], items[1], items[2]),
            Vector4 => new Vector4(items[0], items[1], items[2], items[3]),
            Quaternion => new Quaternion(items[0], items[1], items[2], items[3]),
            Matrix4x4 => MatrixOf(items),
            _ => null,
        };
    }

    /// <summary>All items, row by row; none where it has none.</summary>
    public static float[]? Of(object? owner) => owner switch
    {
        Vector2 v => [v.X, v.Y],
        Vector3 v => [v.X, v.Y, v.Z],
        Vector4 v => [v.X, v.Y, v.Z, v.W],
        Quaternion q => [q.X, q.Y, q.Z, q.W],
        Matrix4x4 m => [m.M11, m.M12, m.M13, m.M14, m.M21, m.M22, m.M23, m.M24, m.M31, m.M32, m.M33, m.M34, m.M41, m.M42, m.M43, m.M44],
        _ => null,
    };

    public static Matrix4x4 MatrixOf(float[] m) =>
        new(m[0], m[1], m[2], m[3], m[4], m[5], m[6], m[7], m[8], m[9], m[10], m[11], m[12], m[13], m[14], m[15]);

    private static object? Item(float[] items, int at) => at >= 0 && at < items.Length ? items[at] : null;
}
