namespace Condyle.Runtime;

/// <summary>A morph target that a rig sets.</summary>
/// <param name="Index">Its place in <see cref="CompiledRig.Morphs"/>, by which an instance is asked for its weight.</param>
/// <param name="Mesh">The mesh's name.</param>
/// <param name="Target">The morph target's name in the mesh, or its number from 0 where it has none.</param>
public sealed record CompiledMorph(int Index, string Mesh, string Target);
