using Condyle.Runtime.Clips.Files;
using Condyle.Runtime.Gltf;

namespace Condyle.Runtime;

/// <summary>
/// The controls of a rig as nodes of a glTF file, beside the skinned character as it was delivered: any program that animates nodes can be the animator's desk, and <see cref="ClipFile"/> reads what comes back.
/// </summary>
public static class ControlsFile
{
    /// <summary>
    /// Writes the delivered file with the rig's controls: each is a node whose translation, rotation and scale are its channels, at rest, under a node that places it, with an outline of lines.
    /// A switch, a dial or a choice is a node below its control. What an animator should know of them stands in their <c>extras</c>. Nothing of the delivered file changes.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="skeletonFile">The <c>.gltf</c> or <c>.glb</c> file that its skeleton was delivered in.</param>
    /// <param name="output">The file to write, <c>.glb</c> or <c>.gltf</c>; not the delivered one.</param>
    /// <param name="clips">Clips that go along as animations of these nodes, to be worked on: with the keys that they have, or, where other clips lie over them, with keys on each of 30 frames a second; none when null.</param>
    /// <exception cref="BadInputException">A file or a clip can't be used; nothing is written.</exception>
    public static void Write(CompiledRig rig, string skeletonFile, string output, IReadOnlyList<Clip>? clips = null)
    {
        ArgumentNullException.ThrowIfNull(rig);
        ArgumentNullException.ThrowIfNull(skeletonFile);
        ArgumentNullException.ThrowIfNull(output);
        if (Path.GetFullPath(output) == Path.GetFullPath(skeletonFile))
            throw new BadInputException(output, "the output is the delivered file itself", "Write to another place");
        if (rig.Controls.Count == 0)
            throw new BadInputException($"rig '{rig.Name}'", "it has no control, so there is nothing to animate", "Give it a control");
        foreach (var clip in clips ?? [])
            _ = new ClipPlayer(rig, clip);
        ControlsWriter.Add(rig, GltfFile.Read(skeletonFile), clips ?? []).Write(output);
    }
}
