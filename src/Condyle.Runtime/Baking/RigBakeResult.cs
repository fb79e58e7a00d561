namespace Condyle.Runtime;

/// <summary>What a bake wrote, and how it compares with the live motion.</summary>
/// <param name="Rig">The rig's name.</param>
/// <param name="File">The file that was written.</param>
/// <param name="Bytes">Its size.</param>
/// <param name="Rest">How the rig at rest compares with the skeleton as delivered.</param>
/// <param name="Clips">How each clip's baked motion compares with the live motion.</param>
/// <param name="JointsNotInRig">Joints of the file that the rig doesn't declare; they keep their rest.</param>
public sealed record RigBakeResult(string Rig, string File, long Bytes, RestReport Rest, IReadOnlyList<BakeReport> Clips, IReadOnlyList<string> JointsNotInRig)
{
    /// <summary>Whether the baked motion of every clip is the live motion on every frame.</summary>
    public bool Holds => Clips.All(clip => clip.Holds);
}
