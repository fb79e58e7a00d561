using System.Buffers.Binary;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>Every accessor lies inside its view, and every float in it is finite.</summary>
internal static class AccessorChecks
{
    /// <summary>Bounds what an accessor without data may claim; far more than any mesh or clip has.</summary>
    private const int MostZeros = 1 << 24;

    public static Accessor[] Check(JsonSpot root, BufferView[] views) => Array.ConvertAll(root["accessors"].Items, spot => CheckOne(spot, views));

    private static Accessor CheckOne(JsonSpot spot, BufferView[] views)
    {
        var kind = spot["type"].Text;
        if (kind is null || Accessor.ComponentsOf(kind) == 0)
            throw spot["type"].Wrong("is none of SCALAR, VEC2, VEC3, VEC4, MAT2, MAT3, MAT4", "Export the file again");
        var componentType = (int)spot["componentType"].Whole(0, ushort.MaxValue);
        var componentBytes = Accessor.BytesOf(componentType);
        if (componentBytes == 0)
            throw spot["componentType"].Wrong($"is {componentType}, which is no component type of glTF 2.0", "Export the file again");
        var elementBytes = Accessor.ElementBytes(kind, componentBytes);
        var count = (int)spot["count"].Whole(1, int.MaxValue);
        var offset = spot["byteOffset"].Whole(0, int.MaxValue, whenAbsent: 0);

        BufferView? view = null;
        if (spot["bufferView"] is { Exists: true } index)
            view = Inside(spot, views[index.IndexInto(views.Length, "buffer views")], offset, count, elementBytes);
        else if (count > MostZeros)
            throw spot["count"].Wrong($"claims {count} elements without any data", "Export the file again");

        var accessor = new Accessor(spot, view, (int)offset, count, kind, componentType);
        if (spot["sparse"] is { Exists: true } sparse)
            CheckSparse(sparse, views, accessor, elementBytes);
        if (accessor.IsFloat && view is { } data)
            RequireFinite(spot, data, (int)offset, count, accessor.Components);
        return accessor;
    }

    private static BufferView Inside(JsonSpot spot, BufferView view, long offset, int count, int elementBytes)
    {
        var stride = view.Stride == 0 ? elementBytes : view.Stride;
        if (stride < elementBytes)
            throw spot.Wrong($"has elements of {elementBytes} bytes in a view with a stride of {stride}", "Export the file again");
        var end = offset + (count - 1L) * stride + elementBytes;
        return end <= view.Bytes.Length ? view : throw spot.Wrong($"ends at byte {end} of a view of {view.Bytes.Length} bytes", "Export or copy the file again");
    }

    private static void CheckSparse(JsonSpot sparse, BufferView[] views, Accessor accessor, int elementBytes)
    {
        var count = (int)sparse["count"].Whole(1, accessor.Count);
        var indices = sparse["indices"];
        var indexBytes = Accessor.BytesOf(indices["componentType"].Whole(0, ushort.MaxValue));
        if (indexBytes == 0)
            throw indices["componentType"].Wrong("is no component type of glTF 2.0", "Export the file again");
        var indexOffset = indices["byteOffset"].Whole(0, int.MaxValue, whenAbsent: 0);
        var indexView = Inside(indices, ViewOf(indices) with { Stride = 0 }, indexOffset, count, indexBytes);
        for (var i = 0; i < count; i++)
        {
            if (ReadIndex(indexView.Bytes.Span[((int)indexOffset + i * indexBytes)..], indexBytes) is var index && index >= accessor.Count)
                throw indices.Wrong($"replaces element {index} of {accessor.Count}", "Export the file again");
        }

        var values = sparse["values"];
        var valueOffset = values["byteOffset"].Whole(0, int.MaxValue, whenAbsent: 0);
        var valueView = Inside(values, ViewOf(values) with { Stride = 0 }, valueOffset, count, elementBytes);
        if (accessor.IsFloat)
            RequireFinite(values, valueView, (int)valueOffset, count, accessor.Components);

        BufferView ViewOf(JsonSpot part) => views[part["bufferView"].IndexInto(views.Length, "buffer views")];
    }

    private static uint ReadIndex(ReadOnlySpan<byte> bytes, int size) => size switch
    {
        1 => bytes[0],
        2 => BinaryPrimitives.ReadUInt16LittleEndian(bytes),
        _ => BinaryPrimitives.ReadUInt32LittleEndian(bytes),
    };

    private static void RequireFinite(JsonSpot spot, BufferView view, int offset, int count, int components)
    {
        var stride = view.Stride == 0 ? components * sizeof(float) : view.Stride;
        var bytes = view.Bytes.Span[offset..];
        for (var element = 0; element < count; element++)
        {
            for (var component = 0; component < components; component++)
            {
                if (!float.IsFinite(BinaryPrimitives.ReadSingleLittleEndian(bytes[(element * stride + component * sizeof(float))..])))
                    throw spot.Wrong($"has a NaN or infinity in element {element}", "Mend the data where it was made and export again");
            }
        }
    }
}
