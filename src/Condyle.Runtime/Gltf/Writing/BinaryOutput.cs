using System.Buffers.Binary;
using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf.Reading;

namespace Condyle.Runtime.Gltf.Writing;

/// <summary>A file laid out as .glb: one binary chunk that holds every buffer and every image that the source points to.</summary>
internal sealed class BinaryOutput
{
    private readonly string file;
    private readonly JsonObject json;
    private readonly List<ReadOnlyMemory<byte>> parts = [];
    private readonly IReadOnlyList<GlbChunk> further;
    private long binaryLength;

    private BinaryOutput(GltfFile source, JsonObject json)
    {
        file = source.Path;
        this.json = json;
        further = source.FurtherChunks;
    }

    public static BinaryOutput Prepare(GltfFile source) => Prepare(source, source.ParseJson());

    /// <summary>The file's data under another JSON, which is changed here.</summary>
    public static BinaryOutput Prepare(GltfFile source, JsonObject json)
    {
        var output = new BinaryOutput(source, json);
        output.MergeBuffers(source.Buffers);
        foreach (var (index, image) in source.Images)
            output.EmbedImage((JsonObject)output.json["images"]![index]!, image.Bytes);
        output.SetBuffer();
        return output;
    }

    public void WriteTo(Stream stream)
    {
        var text = JsonText.Compact(json);
        var total = GlbContainer.HeaderLength + GlbContainer.ChunkHeaderLength + Padded(text.Length)
            + (parts.Count == 0 ? 0 : GlbContainer.ChunkHeaderLength + Padded(binaryLength))
            + further.Sum(chunk => (long)GlbContainer.ChunkHeaderLength + chunk.Bytes.Length);
        if (total > uint.MaxValue)
            throw new BadInputException(file, $"it would be {total} bytes long, and a .glb can't be longer than {uint.MaxValue}", "Bake fewer clips into one file");

        WriteWords(stream, GlbContainer.Magic, 2, (uint)total);
        WriteChunk(stream, GlbContainer.JsonKind, [text], text.Length, (byte)' ');
        if (parts.Count > 0)
            WriteChunk(stream, GlbContainer.BinaryKind, parts, binaryLength, 0);
        foreach (var chunk in further)
        {
            WriteWords(stream, (uint)chunk.Bytes.Length, chunk.Kind);
            stream.Write(chunk.Bytes.Span);
        }
    }

    /// <summary>Only views of buffers after the first move, so a file with one buffer keeps its views as they are.</summary>
    private void MergeBuffers(IReadOnlyList<GltfBuffer> buffers)
    {
        var starts = buffers.Select(Add).ToArray();
        if (buffers.Count < 2)
            return;
        foreach (var view in json["bufferViews"] as JsonArray ?? [])
        {
            Rebase((JsonObject)view!, starts);
            // Extensions that compress a view point into a buffer with the same two members.
            foreach (var extension in (view!["extensions"] as JsonObject ?? []).Select(member => member.Value).OfType<JsonObject>())
                Rebase(extension, starts);
        }
    }

    private static void Rebase(JsonObject view, long[] starts)
    {
        if (view["buffer"] is not JsonValue index || !index.TryGetValue(out double buffer) || buffer < 1 || buffer >= starts.Length)
            return;
        view["buffer"] = 0;
        view["byteOffset"] = starts[(int)buffer] + (long)(view["byteOffset"]?.GetValue<double>() ?? 0);
    }

    private void EmbedImage(JsonObject image, ReadOnlyMemory<byte> bytes)
    {
        var views = json["bufferViews"] as JsonArray;
        if (views is null)
            json["bufferViews"] = views = [];
        image.Remove("uri");
        image["bufferView"] = views.Count;
        image["mimeType"] ??= ImageFormat.MimeTypeOf(bytes.Span);
        views.Add(new JsonObject { ["buffer"] = 0, ["byteOffset"] = Add(bytes), ["byteLength"] = bytes.Length });
    }

    private void SetBuffer()
    {
        if (parts.Count == 0)
            return;
        if (json["buffers"] is not JsonArray buffers)
            json["buffers"] = buffers = [];
        if (buffers.Count == 0)
            buffers.Add(new JsonObject());
        while (buffers.Count > 1)
            buffers.RemoveAt(buffers.Count - 1);
        var only = (JsonObject)buffers[0]!;
        only.Remove("uri");
        if (only["byteLength"]?.GetValue<double>() != binaryLength)
            only["byteLength"] = binaryLength;
    }

    private long Add(GltfBuffer buffer)
    {
        var start = Add(buffer.Bytes);
        foreach (var part in buffer.Added)
        {
            parts.Add(part);
            binaryLength += part.Length;
        }

        return start;
    }

    private long Add(ReadOnlyMemory<byte> bytes)
    {
        var padding = (int)(Padded(binaryLength) - binaryLength);
        if (padding > 0)
            parts.Add(new byte[padding]);
        var start = binaryLength + padding;
        parts.Add(bytes);
        binaryLength = start + bytes.Length;
        return start;
    }

    private static long Padded(long length) => (length + 3) & ~3L;

    private static void WriteChunk(Stream stream, uint kind, IEnumerable<ReadOnlyMemory<byte>> pieces, long length, byte filler)
    {
        WriteWords(stream, (uint)Padded(length), kind);
        foreach (var piece in pieces)
            stream.Write(piece.Span);
        for (var i = length; i < Padded(length); i++)
            stream.WriteByte(filler);
    }

    private static void WriteWords(Stream stream, params ReadOnlySpan<uint> words)
    {
        Span<byte> bytes = stackalloc byte[4];
        foreach (var word in words)
        {
            BinaryPrimitives.WriteUInt32LittleEndian(bytes, word);
            stream.Write(bytes);
        }
    }
}
