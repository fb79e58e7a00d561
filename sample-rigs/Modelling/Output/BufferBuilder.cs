using System.Buffers.Binary;

namespace Modelling.Output;

/// <summary>The bytes of the buffer with a view and an accessor for each array, aligned to four bytes.</summary>
internal sealed class BufferBuilder
{
    private const int Float = 5126;
    private const int UnsignedShort = 5123;
    private const int UnsignedByte = 5121;
    private const int VertexArray = 34962;
    private const int IndexArray = 34963;

    private readonly MemoryStream _bytes = new();
    private readonly List<BufferView> _views = [];
    private readonly List<Accessor> _accessors = [];

    public IReadOnlyList<BufferView> Views => _views;

    public IReadOnlyList<Accessor> Accessors => _accessors;

    public byte[] Bytes => _bytes.ToArray();

    public int Vertices(string type, IReadOnlyList<float[]> rows, bool bounded = false) => Floats(type, rows, VertexArray, bounded);

    public int Matrices(IReadOnlyList<float[]> rows) => Floats("MAT4", rows, null, bounded: false);

    public int Joints(IReadOnlyList<byte[]> rows)
    {
        var start = _bytes.Length;
        foreach (var row in rows)
            _bytes.Write(row);
        return Close(start, VertexArray, new Accessor(_views.Count, UnsignedByte, rows.Count, "VEC4", null, null));
    }

    public int Indices(IReadOnlyList<int> indices)
    {
        var start = _bytes.Length;
        Span<byte> two = stackalloc byte[2];
        foreach (var index in indices)
        {
            BinaryPrimitives.WriteUInt16LittleEndian(two, checked((ushort)index));
            _bytes.Write(two);
        }

        return Close(start, IndexArray, new Accessor(_views.Count, UnsignedShort, indices.Count, "SCALAR", null, null));
    }

    private int Floats(string type, IReadOnlyList<float[]> rows, int? target, bool bounded)
    {
        var start = _bytes.Length;
        Span<byte> four = stackalloc byte[4];
        foreach (var value in rows.SelectMany(row => row))
        {
            BinaryPrimitives.WriteSingleLittleEndian(four, value);
            _bytes.Write(four);
        }

        float[]? Bound(Func<IEnumerable<float>, float> pick) =>
            bounded ? [.. Enumerable.Range(0, rows[0].Length).Select(i => pick(rows.Select(row => row[i])))] : null;
        return Close(start, target, new Accessor(_views.Count, Float, rows.Count, type, Bound(Enumerable.Min), Bound(Enumerable.Max)));
    }

    private int Close(long start, int? target, Accessor accessor)
    {
        _views.Add(new BufferView((int)start, (int)(_bytes.Length - start), target));
        while (_bytes.Length % 4 != 0)
            _bytes.WriteByte(0);
        _accessors.Add(accessor);
        return _accessors.Count - 1;
    }
}

internal sealed record BufferView(int Offset, int Length, int? Target);

internal sealed record Accessor(int View, int ComponentType, int Count, string Type, float[]? Min, float[]? Max);
