namespace Condyle.Runtime;

/// <summary>A named moment of a clip: what begins there.</summary>
/// <param name="At">Seconds from the clip's start.</param>
/// <param name="Name">What begins.</param>
public readonly record struct Marker(float At, string Name);
