namespace Condyle.Runtime.Gltf;

/// <summary>The bytes of one buffer or image of a file; of a buffer exactly as many as the JSON claims.</summary>
/// <param name="Bytes">The data as it was read; glTF is little-endian throughout.</param>
/// <param name="Home">Where the data comes from.</param>
internal sealed record GltfBuffer(ReadOnlyMemory<byte> Bytes, BufferHome Home)
{
    /// <summary>What was added after it: it stays where it was made, so that a long clip isn't held twice.</summary>
    public IReadOnlyList<ReadOnlyMemory<byte>> Added { get; init; } = [];

    public long Length => Bytes.Length + Added.Sum(part => (long)part.Length);

    /// <summary>All of it in one piece.</summary>
    public ReadOnlyMemory<byte> Whole()
    {
        if (Added.Count == 0)
            return Bytes;
        var whole = new byte[Length];
        Bytes.CopyTo(whole);
        var at = Bytes.Length;
        foreach (var part in Added)
        {
            part.CopyTo(whole.AsMemory(at));
            at += part.Length;
        }

        return whole;
    }
}

internal enum BufferHome
{
    /// <summary>No URI: the binary chunk of a .glb, or data that was added here.</summary>
    Inside,

    /// <summary>A data URI in the JSON.</summary>
    DataUri,

    /// <summary>A file below the folder of the JSON.</summary>
    File,
}
