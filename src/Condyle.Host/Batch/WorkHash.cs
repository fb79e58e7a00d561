using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using Condyle.Model;
using Condyle.Runtime;
using Condyle.Runtime.Gltf;

namespace Condyle.Host.Batch;

/// <summary>Tells by content whether a bake was done before: the rig, the delivered file, the file of clips, the settings and the program that bakes.</summary>
internal sealed class WorkHash
{
    private readonly byte[] common;

    public WorkHash(Rig rig, GltfFile delivered, object settings)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        // A build is told by the identity of its code, which stays the same when the same source is built again.
        foreach (var code in new[] { typeof(Rig), typeof(RigBaker), typeof(WorkHash) })
            Add(hash, code.Assembly.ManifestModule.ModuleVersionId.ToByteArray());
        foreach (var line in ModelText.Lines(rig.Model, _ => null))
            Add(hash, Encoding.UTF8.GetBytes(line));
        Add(hash, Encoding.UTF8.GetBytes(rig.Name));
        Add(hash, JsonSerializer.SerializeToUtf8Bytes(settings, settings.GetType()));
        Add(hash, delivered);
        common = hash.GetHashAndReset();
    }

    public string Of(GltfFile clips, string name)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Add(hash, common);
        Add(hash, Encoding.UTF8.GetBytes(name));
        Add(hash, clips);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }

    private static void Add(IncrementalHash hash, GltfFile file)
    {
        Add(hash, file.JsonText.Span);
        foreach (var buffer in file.Buffers)
            Add(hash, buffer.Whole().Span);
        foreach (var (index, image) in file.Images.OrderBy(image => image.Key))
        {
            hash.AppendData(BitConverter.GetBytes(index));
            Add(hash, image.Bytes.Span);
        }
    }

    /// <summary>With its length, so that no two parts read like two others.</summary>
    private static void Add(IncrementalHash hash, ReadOnlySpan<byte> bytes)
    {
        hash.AppendData(BitConverter.GetBytes((long)bytes.Length));
        hash.AppendData(bytes);
    }
}
