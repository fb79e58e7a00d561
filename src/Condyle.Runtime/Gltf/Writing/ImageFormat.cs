namespace Condyle.Runtime.Gltf.Writing;

/// <summary>Tells an image's media type from its first bytes, since a URI needn't.</summary>
internal static class ImageFormat
{
    public static string MimeTypeOf(ReadOnlySpan<byte> bytes) => bytes switch
    {
        [0xFF, 0xD8, 0xFF, ..] => "image/jpeg",
        [(byte)'R', (byte)'I', (byte)'F', (byte)'F', ..] => "image/webp",
        [0xAB, (byte)'K', (byte)'T', (byte)'X', ..] => "image/ktx2",
        [(byte)'D', (byte)'D', (byte)'S', ..] => "image/vnd-ms.dds",
        _ => "image/png",
    };
}
