using System.Buffers;
using System.Buffers.Binary;
using System.Runtime.InteropServices;

namespace Condyle.Runtime.Gltf.Writing;

/// <summary>An array of numbers as the bytes that a file holds for them, without a copy.</summary>
internal sealed class ArrayBytes<T>(T[] values) : MemoryManager<byte>
    where T : unmanaged
{
    private GCHandle handle;

    /// <summary>The bytes; on a machine that keeps numbers the other way round, a copy that is turned.</summary>
    public static ReadOnlyMemory<byte> Of(T[] values)
    {
        if (BitConverter.IsLittleEndian)
            return new ArrayBytes<T>(values).Memory;
        var words = MemoryMarshal.Cast<T, int>(values).ToArray();
        BinaryPrimitives.ReverseEndianness(words, words);
        return MemoryMarshal.AsBytes(words.AsSpan()).ToArray();
    }

    public override Span<byte> GetSpan() => MemoryMarshal.AsBytes(values.AsSpan());

    public override unsafe MemoryHandle Pin(int elementIndex = 0)
    {
        if (!handle.IsAllocated)
            handle = GCHandle.Alloc(values, GCHandleType.Pinned);
        return new MemoryHandle((byte*)handle.AddrOfPinnedObject() + elementIndex, pinnable: this);
    }

    public override void Unpin()
    {
        if (handle.IsAllocated)
            handle.Free();
    }

    protected override void Dispose(bool disposing) => Unpin();
}
