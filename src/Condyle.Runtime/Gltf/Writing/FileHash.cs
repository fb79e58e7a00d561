using System.Security.Cryptography;

namespace Condyle.Runtime.Gltf.Writing;

/// <summary>A written file's content, by which others tell whether it changed.</summary>
internal static class FileHash
{
    /// <summary>SHA-256 in small hexadecimal digits.</summary>
    public static string Of(string path)
    {
        using var stream = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }
}
