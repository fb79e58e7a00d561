namespace Condyle;

/// <summary>
/// Names the file that a rig's skeleton was delivered in, so that a program knows where the rig's motion goes:
/// <c>[SkeletonFile("stevedore.gltf")]</c> on the definition.
/// </summary>
/// <param name="path">A <c>.gltf</c> or <c>.glb</c> file; a relative path is looked up in the program's folder, then in the working directory.</param>
[AttributeUsage(AttributeTargets.Class, Inherited = false)]
public sealed class SkeletonFileAttribute(string path) : Attribute
{
    /// <summary>The file, as it was written.</summary>
    public string Path { get; } = path;
}
