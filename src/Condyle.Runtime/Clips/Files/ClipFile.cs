using Condyle.Runtime.Clips.Files;
using Condyle.Runtime.Gltf;

namespace Condyle.Runtime;

/// <summary>
/// The clips of a glTF file whose nodes are a rig's controls. A control's node carries its channels as translation, rotation and scale; a switch, a dial or a choice is a node whose translation along X
/// is the value (of a choice the option's number, from 0). Nodes are known by what the controls file wrote into their <c>extras</c> (<c>condyleControl</c>, <c>condyleSwitch</c>, <c>condyleDial</c>,
/// <c>condyleChoice</c>), or else by name: <c>hand_left</c>, <c>hand_left.fk</c>.
/// </summary>
public sealed class ClipFile
{
    private ClipFile(string path, IReadOnlyList<Clip> clips, IReadOnlyList<string> notInRig) => (Path, Clips, NodesNotInRig) = (path, clips, notInRig);

    /// <summary>The path that the file was read from.</summary>
    public string Path { get; }

    /// <summary>The clips: every animation of the file that moves a control, a switch, a dial or a choice, in the file's order.</summary>
    public IReadOnlyList<Clip> Clips { get; }

    /// <summary>The names of nodes that these animations move and that are neither controls nor joints of the rig: nothing of their motion is in the clips.</summary>
    public IReadOnlyList<string> NodesNotInRig { get; }

    /// <summary>Reads the clips of a file.</summary>
    /// <param name="path">A <c>.gltf</c> or <c>.glb</c> file.</param>
    /// <param name="rig">The rig whose controls the file's nodes are.</param>
    /// <returns>The clips, checked against the rig.</returns>
    /// <exception cref="BadInputException">
    /// The file can't be read, no animation of it moves a control of the rig, or one does what the rig doesn't let it: moves a locked channel, takes a switch or dial out of its range, picks an option that isn't there.
    /// </exception>
    public static ClipFile Read(string path, CompiledRig rig)
    {
        ArgumentNullException.ThrowIfNull(path);
        ArgumentNullException.ThrowIfNull(rig);
        return Read(GltfFile.Read(path), rig);
    }

    /// <summary>The same of a file that was read.</summary>
    internal static ClipFile Read(GltfFile file, CompiledRig rig)
    {
        var reader = new ClipReader(file, rig);
        var clips = reader.Clips();
        foreach (var clip in clips)
            _ = new ClipPlayer(rig, clip);
        return new ClipFile(file.Path, clips, reader.NotInRig);
    }
}
