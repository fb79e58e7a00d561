using Condyle.Runtime;

namespace Condyle.Host.Commands;

/// <summary>Which motion to put onto a rig's controls.</summary>
/// <param name="File">The file of motion: <c>.bvh</c>, or <c>.gltf</c> or <c>.glb</c> with an animation of joints.</param>
/// <param name="Animation">The animation's name in a glTF file; null: it has one only.</param>
/// <param name="Rig">The rig's name; null: the program has one only.</param>
/// <param name="Joints">Which joint is which, as <c>from=to</c>.</param>
/// <param name="Choices">Which options choices have, as <c>name=option</c> or <c>name=option@seconds</c>.</param>
/// <param name="Dials">What dials are set to, as <c>name=value</c> or <c>name=value@seconds</c>.</param>
/// <param name="Settings">What is kept, and so on.</param>
/// <param name="Up">The axis of a BVH file that points up.</param>
/// <param name="Skeleton">The delivered file, instead of the one that the rig names.</param>
/// <param name="Output">The controls file, or the folder that it is written to.</param>
/// <param name="Json">Whether the result is printed as JSON.</param>
internal sealed record MatchRequest(
    string File, string? Animation, string? Rig, IReadOnlyList<string> Joints, IReadOnlyList<string> Choices, IReadOnlyList<string> Dials, MotionMatchSettings Settings, Axis Up, string? Skeleton, string Output, bool Json);
