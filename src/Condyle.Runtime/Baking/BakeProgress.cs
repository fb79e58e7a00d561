namespace Condyle.Runtime;

/// <summary>How far a bake is.</summary>
/// <param name="Clip">The clip that is being baked.</param>
/// <param name="Done">From 0 to 1: baking first, then the comparison with the live motion.</param>
public readonly record struct BakeProgress(string Clip, double Done);
