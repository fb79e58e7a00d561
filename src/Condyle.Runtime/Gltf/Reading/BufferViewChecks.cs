namespace Condyle.Runtime.Gltf.Reading;

/// <summary>A buffer view's bytes and the distance between its elements (0: tightly packed).</summary>
internal readonly record struct BufferView(ReadOnlyMemory<byte> Bytes, int Stride);

internal static class BufferViewChecks
{
    public static BufferView[] Check(JsonSpot root, IReadOnlyList<GltfBuffer> buffers) => Array.ConvertAll(root["bufferViews"].Items, view =>
    {
        var bytes = buffers[view["buffer"].IndexInto(buffers.Count, "buffers")].Bytes;
        var offset = view["byteOffset"].Whole(0, int.MaxValue, whenAbsent: 0);
        var length = view["byteLength"].Whole(1, int.MaxValue);
        if (offset + length > bytes.Length)
            throw view.Wrong($"ends at byte {offset + length} of a buffer of {bytes.Length} bytes", "Export or copy the file again");
        return new BufferView(bytes.Slice((int)offset, (int)length), (int)view["byteStride"].Whole(4, 252, whenAbsent: 0));
    });
}
