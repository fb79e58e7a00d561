using System.Buffers.Binary;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>An accessor whose bounds have been checked. Matrices count one padded column after the other (specification, section 3.6.2.4).</summary>
/// <param name="Spot">Where it stands in the JSON.</param>
/// <param name="View">The data; null for an accessor of zeros (with or without sparse values).</param>
/// <param name="Offset">Bytes from the view's start to the first element.</param>
/// <param name="Count">Number of elements.</param>
/// <param name="Kind">SCALAR, VEC2, …</param>
/// <param name="ComponentType">5126 for floats.</param>
internal sealed record Accessor(JsonSpot Spot, BufferView? View, int Offset, int Count, string Kind, int ComponentType)
{
    public const int Float = 5126;

    public bool IsFloat => ComponentType == Float;

    /// <summary>Numbers in one element.</summary>
    public int Components => ComponentsOf(Kind);

    /// <summary>The number of a float accessor at an element and a component; sparse values aside.</summary>
    public float At(int element, int component)
    {
        if (View is not { } view)
            return 0;
        var stride = view.Stride == 0 ? Components * sizeof(float) : view.Stride;
        return BinaryPrimitives.ReadSingleLittleEndian(view.Bytes.Span[(Offset + element * stride + component * sizeof(float))..]);
    }

    public static int ComponentsOf(string? kind) => kind switch
    {
        "SCALAR" => 1,
        "VEC2" => 2,
        "VEC3" => 3,
        "VEC4" or "MAT2" => 4,
        "MAT3" => 9,
        "MAT4" => 16,
        _ => 0,
    };

    public static int BytesOf(long componentType) => componentType switch
    {
        5120 or 5121 => 1,
        5122 or 5123 => 2,
        5125 or Float => 4,
        _ => 0,
    };

    /// <summary>Bytes of one element, with the padding of matrix columns.</summary>
    public static int ElementBytes(string kind, int componentBytes)
    {
        var components = ComponentsOf(kind);
        if (!kind.StartsWith("MAT", StringComparison.Ordinal))
            return components * componentBytes;
        var columns = (int)Math.Sqrt(components);
        return columns * ((columns * componentBytes + 3) & ~3);
    }
}
