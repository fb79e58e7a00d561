using System.Buffers.Binary;

namespace Condyle.Runtime.Gltf.Reading;

/// <summary>A chunk of a .glb file.</summary>
internal sealed record GlbChunk(uint Kind, ReadOnlyMemory<byte> Bytes);

/// <summary>The binary container of glTF 2.0 (specification, section 4.4): a header and chunks, all little-endian and four-byte aligned.</summary>
internal sealed record GlbContainer(ReadOnlyMemory<byte> Json, ReadOnlyMemory<byte>? Binary, IReadOnlyList<GlbChunk> Further)
{
    public const uint Magic = 0x46546C67;
    public const uint JsonKind = 0x4E4F534A;
    public const uint BinaryKind = 0x004E4942;
    public const int HeaderLength = 12;
    public const int ChunkHeaderLength = 8;

    public static bool IsGlb(ReadOnlySpan<byte> bytes) => bytes.Length >= 4 && BinaryPrimitives.ReadUInt32LittleEndian(bytes) == Magic;

    public static GlbContainer Read(string file, ReadOnlyMemory<byte> bytes)
    {
        var chunks = Chunks(file, bytes);
        if (chunks.Count == 0 || chunks[0].Kind != JsonKind)
            throw Broken(file, "the first chunk isn't JSON");
        var hasBinary = chunks.Count > 1 && chunks[1].Kind == BinaryKind;
        return new GlbContainer(chunks[0].Bytes, hasBinary ? chunks[1].Bytes : null, chunks[(hasBinary ? 2 : 1)..]);
    }

    private static List<GlbChunk> Chunks(string file, ReadOnlyMemory<byte> bytes)
    {
        if (bytes.Length < HeaderLength)
            throw Broken(file, $"it ends within its header, after {bytes.Length} bytes");
        var version = Word(bytes, 4);
        if (version != 2)
            throw Broken(file, $"its container version is {version}, not 2");
        var claimed = Word(bytes, 8);
        if (claimed > bytes.Length)
            throw Broken(file, $"its header claims {claimed} bytes, but there are {bytes.Length}");
        // Some tools pad the file; what comes after the claimed length is none of its content.
        bytes = bytes[..(int)claimed];

        var chunks = new List<GlbChunk>();
        for (var at = HeaderLength; at < bytes.Length;)
        {
            if (bytes.Length - at < ChunkHeaderLength)
                throw Broken(file, $"it ends within the header of chunk {chunks.Count}");
            var length = Word(bytes, at);
            if (length > bytes.Length - at - ChunkHeaderLength)
                throw Broken(file, $"chunk {chunks.Count} claims {length} bytes, but {bytes.Length - at - ChunkHeaderLength} are left");
            chunks.Add(new GlbChunk(Word(bytes, at + 4), bytes.Slice(at + ChunkHeaderLength, (int)length)));
            at += ChunkHeaderLength + (int)length;
        }
        return chunks;
    }

    private static uint Word(ReadOnlyMemory<byte> bytes, int at) => BinaryPrimitives.ReadUInt32LittleEndian(bytes.Span[at..]);

    private static BadInputException Broken(string file, string problem) => new(file, $"the .glb is damaged: {problem}", "Export or copy the file again");
}
