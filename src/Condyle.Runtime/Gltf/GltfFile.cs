using System.Text.Json.Nodes;
using Condyle.Runtime.Gltf.Reading;
using Condyle.Runtime.Gltf.Writing;
using SharpGLTF.Schema2;

namespace Condyle.Runtime.Gltf;

/// <summary>
/// A glTF 2.0 file as delivered: its JSON text and its binary data, unchanged, and checked. Immutable and safe to share between threads.
/// Clips are appended without touching the bytes of delivered accessors or any other JSON value.
/// </summary>
public sealed class GltfFile
{
    private readonly ReadOnlyMemory<byte> jsonText;
    private readonly Lazy<(ModelRoot Model, string? Remark)> view;

    internal GltfFile(string path, ReadOnlyMemory<byte> jsonText, IReadOnlyList<GltfBuffer> buffers, IReadOnlyDictionary<int, GltfBuffer> images,
        IReadOnlyList<GlbChunk> furtherChunks)
    {
        Path = path;
        this.jsonText = jsonText;
        Buffers = buffers;
        Images = images;
        FurtherChunks = furtherChunks;
        view = new Lazy<(ModelRoot Model, string? Remark)>(() => StrictModel.Read(this));
    }

    /// <summary>The path that the file was read from, as the caller gave it.</summary>
    public string Path { get; }

    /// <summary>
    /// The file as SharpGLTF reads it, validated strictly but for the <see cref="Remark"/>. It is a view for reading: changes to it don't reach <see cref="Write"/>.
    /// </summary>
    /// <exception cref="BadInputException">Only for a file that clips were appended to: the result isn't valid.</exception>
    public ModelRoot Model => view.Value.Model;

    /// <summary>
    /// What breaks the standard in meshes and other data that nothing here touches, such as bounds that aren't the data's; null when nothing does.
    /// It stays as it was delivered.
    /// </summary>
    public string? Remark => view.Value.Remark;

    /// <summary>The binary data, one for each of the JSON's buffers.</summary>
    internal IReadOnlyList<GltfBuffer> Buffers { get; }

    /// <summary>The content of images that the file points to by URI, by image index.</summary>
    internal IReadOnlyDictionary<int, GltfBuffer> Images { get; }

    /// <summary>Chunks after the binary one; the standard lets others add them and wants them ignored.</summary>
    internal IReadOnlyList<GlbChunk> FurtherChunks { get; }

    /// <summary>Reads and checks a <c>.gltf</c> or <c>.glb</c> file. External buffers and images must lie below the file's folder.</summary>
    /// <exception cref="BadInputException">The file can't be read or isn't valid glTF 2.0; the message names file, node and place.</exception>
    public static GltfFile Read(string path)
    {
        var file = FileReader.Read(path);
        _ = file.Model;
        return file;
    }

    /// <summary>
    /// The file with further animations. Each clip gets one time accessor that all its samplers share. Nodes that a clip moves and that are given as a
    /// matrix become translation, rotation and scale, as the standard demands; nothing else of the JSON and no delivered byte changes.
    /// </summary>
    /// <param name="clips">The clips, in the order in which their animations are added.</param>
    /// <param name="replace">
    /// What happens when the file has an animation of a clip's name: false refuses (a delivered clip is never lost by accident), true puts the clip in its
    /// place, at the same index. The replaced animation's accessors stay in the file, since other parts may use them; bake from the delivered file,
    /// not from the last result, to keep files small.
    /// </param>
    /// <exception cref="BadInputException">
    /// A clip can't be written: a name twice, a node that isn't there, a NaN, a rotation that isn't unit length, a sheared matrix node.
    /// </exception>
    public GltfFile Append(IReadOnlyList<GltfClip> clips, bool replace = false) => ClipAppender.Append(this, clips, replace);

    /// <summary>
    /// Writes the file so that it stands alone. <c>.glb</c>: all buffers become one binary chunk, and images of a <c>.gltf</c> become buffer views in it.
    /// <c>.gltf</c>: data that isn't in the folder written to becomes data URIs, so that there is one file only; data URIs stay.
    /// The file is written beside its place, flushed and moved into it: after a crash there is the old file or the new one. Missing folders are created.
    /// </summary>
    /// <exception cref="BadInputException">The path can't be written, has another extension, or the data is too large for the format.</exception>
    public void Write(string path)
    {
        switch (System.IO.Path.GetExtension(path).ToLowerInvariant())
        {
            case ".glb":
                AtomicFile.Write(path, stream => BinaryOutput.Prepare(this).WriteTo(stream));
                break;
            case ".gltf":
                AtomicFile.Write(path, stream => TextOutput.Prepare(this, path).WriteTo(stream));
                break;
            default:
                throw new BadInputException(path, "the output's extension is neither .glb nor .gltf", "Name the file .glb (one binary file) or .gltf (text)");
        }
    }

    /// <summary>A fresh tree of the JSON, the caller's to change.</summary>
    internal JsonObject ParseJson() => Reading.JsonText.Parse(Path, jsonText).AsObject();

    /// <summary>The JSON as it was delivered.</summary>
    internal ReadOnlyMemory<byte> JsonText => jsonText;

    internal GltfFile With(JsonObject json, IReadOnlyList<GltfBuffer> buffers) => new(Path, Reading.JsonText.Compact(json), buffers, Images, FurtherChunks);
}
