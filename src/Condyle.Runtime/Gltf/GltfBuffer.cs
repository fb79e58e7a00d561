namespace Condyle.Runtime.Gltf;

/// <summary>The bytes of one buffer or image of a file; of a buffer exactly as many as the JSON claims.</summary>
/// <param name="Bytes">The data; glTF is little-endian throughout.</param>
/// <param name="Home">Where the data comes from.</param>
internal sealed record GltfBuffer(ReadOnlyMemory<byte> Bytes, BufferHome Home);

internal enum BufferHome
{
    /// <summary>No URI: the binary chunk of a .glb, or data that was added here.</summary>
    Inside,

    /// <summary>A data URI in the JSON.</summary>
    DataUri,

    /// <summary>A file below the folder of the JSON.</summary>
    File,
}
